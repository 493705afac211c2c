package pairwright.rules;

import java.util.ArrayList;
import java.util.List;
import org.kie.api.definition.rule.Rule;

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
        findings.add(new Finding(base.infoOf(rule), subject, 1, namesAndValues));
    }

    /**
     * A finding with a part of the points of its rule.
     *
     * @param share 0 to 1, a number that was computed before; more or less than that is cut
     */
    public void scaled(Rule rule, Object subject, double share, Object... namesAndValues) {
        findings.add(new Finding(base.infoOf(rule), subject, Math.max(0, Math.min(1, share)), namesAndValues));
    }

    List<Finding> findings() {
        return findings;
    }
}
