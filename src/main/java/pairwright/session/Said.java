package pairwright.session;

import java.util.List;
import pairwright.model.Effect;
import pairwright.model.Severity;
import pairwright.model.Value;

/**
 * What a rule says of a plan or of a part of it.
 *
 * @param rule id
 * @param seats of whom it speaks; empty for the whole plan
 * @param lines of which microphones it speaks, by number; empty for none in particular
 * @param effect for, against or caution
 * @param points what it adds to the score of the plan; 0 for a caution
 * @param severity of a caution; else null
 * @param says the sentence, with its numbers
 * @param values the numbers it used
 * @param basis what the rule rests on
 */
public record Said(String rule, List<String> seats, List<Integer> lines, Effect effect, double points, Severity severity, String says, List<Value> values,
        String basis) {
    public Said {
        seats = List.copyOf(seats);
        lines = List.copyOf(lines);
        values = List.copyOf(values);
    }
}
