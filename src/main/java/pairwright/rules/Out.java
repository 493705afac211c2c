package pairwright.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.kie.api.definition.rule.Rule;

/** What every rule writes to. One per judgement, never shared between threads. */
public final class Out {
    private final Map<String, RuleInfo> rules;
    private final Guard guard;
    private final List<Finding> findings = new ArrayList<>(256);

    /**
     * How far rules may go that were not tested with the program.
     *
     * @param mostFirings of all of them together
     * @param untilNanos on the clock of {@link System#nanoTime()}
     */
    record Guard(long mostFirings, long untilNanos) {
    }

    /** What a rule may not do; its message says what, as the end of a sentence that begins with the rule. */
    static final class Refused extends RuntimeException {
        Refused(String what) {
            super(what, null, false, false);
        }
    }

    Out(Map<String, RuleInfo> rules, Guard guard) {
        this.rules = rules;
        this.guard = guard;
    }

    /**
     * A finding with all the points of its rule.
     *
     * @param rule the rule that fires, {@code drools.getRule()}
     * @param subject the {@link Setting}, {@link Placed} or {@link Paired} it speaks of
     * @param namesAndValues name, number, name, number; each name ends in its unit
     */
    public void note(Rule rule, Object subject, Object... namesAndValues) {
        add(rule.getName(), subject, 1, namesAndValues);
    }

    /**
     * A finding with a part of the points of its rule.
     *
     * @param share 0 to 1, a number that was computed before; more or less than that is cut
     */
    public void scaled(Rule rule, Object subject, double share, Object... namesAndValues) {
        add(rule.getName(), subject, Math.max(0, Math.min(1, share)), namesAndValues);
    }

    /** The same for a rule by its id: what the build makes of {@code drools.getRule()} in the rules of the program, so that they need no engine to know who they are. */
    public void note(String rule, Object subject, Object... namesAndValues) {
        add(rule, subject, 1, namesAndValues);
    }

    /** Likewise with a part of the points. */
    public void scaled(String rule, Object subject, double share, Object... namesAndValues) {
        add(rule, subject, Math.max(0, Math.min(1, share)), namesAndValues);
    }

    private void add(String rule, Object subject, double share, Object[] namesAndValues) {
        if (guard != null) {
            guard(share, namesAndValues);
        }
        findings.add(new Finding(rules.get(rule), subject, share, namesAndValues));
    }

    /** A sentence is made later, where nobody can say any more which rule gave it no number. */
    private void guard(double share, Object[] namesAndValues) {
        if (findings.size() >= guard.mostFirings()) {
            throw new Refused("fires more than " + guard.mostFirings() + " times for one question");
        }
        if (System.nanoTime() - guard.untilNanos() > 0) {
            throw new Refused("takes too long for one question");
        }
        if (Double.isNaN(share)) {
            throw new Refused("gives out.scaled a share that is no number");
        }
        if (namesAndValues == null) {
            throw new Refused("gives no names and numbers");
        }
        for (int i = 0; i < namesAndValues.length; i += 2) {
            Object value = i + 1 < namesAndValues.length ? namesAndValues[i + 1] : null;
            if (!(namesAndValues[i] instanceof String)) {
                throw new Refused("gives " + namesAndValues[i] + " where a name is expected. After the subject come name, number, name, number");
            }
            if (!(value instanceof Number number) || !Double.isFinite(number.doubleValue())) {
                throw new Refused("gives " + (value == null ? "nothing" : "\"" + value + "\"") + " for " + namesAndValues[i] + ", which is no number"
                        + ". Ask before then whether it is there, as in predicted.headroomDb != null");
            }
        }
    }

    List<Finding> findings() {
        return findings;
    }
}
