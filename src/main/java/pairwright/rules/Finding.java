package pairwright.rules;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import pairwright.model.Value;

/**
 * What one rule says of one subject. Light on purpose: a question makes thousands, and only those that are shown need their sentence
 * and their values.
 */
public final class Finding {
    private final RuleInfo rule;
    private final Object subject;
    private final double share;
    private final Object[] namesAndValues;

    Finding(RuleInfo rule, Object subject, double share, Object[] namesAndValues) {
        this.rule = rule;
        this.subject = subject;
        this.share = share;
        this.namesAndValues = namesAndValues;
    }

    /** The rule. */
    public RuleInfo rule() {
        return rule;
    }

    /** The {@link Setting}, {@link Placed} or {@link Paired} it speaks of. */
    public Object subject() {
        return subject;
    }

    /** 0 to 1 of the rule's points; 1 where the rule does not scale. */
    public double share() {
        return share;
    }

    /** The numbers it used, in the order given. */
    public List<Value> values() {
        List<Value> values = new ArrayList<>(namesAndValues.length / 2);
        for (int i = 0; i + 1 < namesAndValues.length; i += 2) {
            String name = (String) namesAndValues[i];
            values.add(new Value(name, ((Number) namesAndValues[i + 1]).doubleValue(), UnitNames.unitOf(name)));
        }
        return Collections.unmodifiableList(values);
    }

    /** Points in hundredths, a whole number, so that sums are exact. */
    public long centipoints() {
        return Math.round(rule.points() * share * 100);
    }

    @Override
    public String toString() {
        return rule.id() + " " + values();
    }
}
