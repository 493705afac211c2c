package pairwright.model;

import java.util.List;

/**
 * What must not be missed.
 *
 * @param rule id of the rule
 * @param mic which microphone of the option it speaks of, from 1; 0 for all
 * @param severity how grave
 * @param says the sentence, with its numbers
 * @param values the numbers it used
 * @param basis what the rule rests on
 */
public record Caution(String rule, int mic, Severity severity, String says, List<Value> values, String basis) {
}
