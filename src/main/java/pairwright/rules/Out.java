package pairwright.rules;

import java.util.ArrayList;
import java.util.List;
import org.kie.api.definition.rule.Rule;
import pairwright.model.Value;

/** What every rule writes to. One per judgement, never shared between threads. */
public final class Out {
    private final RuleBase base;
    private final List<Finding> findings = new ArrayList<>(2048);

    Out(RuleBase base) {
        this.base = base;
    }

    /**
     * A finding with all the points of its rule.
     *
     * @param rule the rule that fires, {@code drools.getRule()}
     * @param subject the {@link Setting}, {@link Placed} or {@link Paired} it speaks of
     * @param namesAndValues name, number, name, number; each name ends in its unit
     */
    public void note(Rule rule, Object subject, Object... namesAndValues) {
        findings.add(new Finding(base.infoOf(rule), subject, 1, values(namesAndValues)));
    }

    /**
     * A finding with a part of the points of its rule.
     *
     * @param share 0 to 1, a number that was computed before; more or less than that is cut
     */
    public void scaled(Rule rule, Object subject, double share, Object... namesAndValues) {
        findings.add(new Finding(base.infoOf(rule), subject, Math.max(0, Math.min(1, share)), values(namesAndValues)));
    }

    List<Finding> findings() {
        return findings;
    }

    private static List<Value> values(Object[] namesAndValues) {
        Value[] values = new Value[namesAndValues.length / 2];
        for (int i = 0; i < values.length; i++) {
            String name = (String) namesAndValues[2 * i];
            values[i] = new Value(name, ((Number) namesAndValues[2 * i + 1]).doubleValue(), UnitNames.unitOf(name));
        }
        return List.of(values);
    }
}
