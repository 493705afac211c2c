package pairwright.model;

import java.util.List;

/**
 * Why an option is better or worse.
 *
 * @param rule id of the rule
 * @param mic which microphone of the option it speaks of, from 1; 0 for the two together
 * @param effect for or against
 * @param points what it adds to the score; below zero for against
 * @param says the sentence, with its numbers
 * @param values the numbers it used
 * @param basis what the rule rests on
 */
public record Reason(String rule, int mic, Effect effect, double points, String says, List<Value> values, String basis) {
}
