package pairwright.rules;

import java.util.List;
import pairwright.model.Value;

/**
 * What one rule says of one subject. Light on purpose: the sentence is made only for what is shown.
 *
 * @param rule the rule
 * @param subject the {@link Setting}, {@link Placed} or {@link Paired} it speaks of
 * @param share 0 to 1 of the rule's points; 1 where the rule does not scale
 * @param values the numbers it used, in the order given
 */
public record Finding(RuleInfo rule, Object subject, double share, List<Value> values) {

    /** Points in hundredths, a whole number, so that sums are exact. */
    public long centipoints() {
        return Math.round(rule.points() * share * 100);
    }
}
