package pairwright.model;

import java.util.List;

/**
 * What was ruled out, and by what.
 *
 * @param micType id
 * @param pattern that was tried
 * @param position id
 * @param rule id of the rule; "limit" where a limit of the question stood in the way
 * @param says why
 * @param values the numbers it used
 */
public record RuledOut(String micType, Pattern pattern, String position, String rule, String says, List<Value> values) {
}
