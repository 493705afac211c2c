package pairwright.numbers;

import java.util.List;
import java.util.Map;

/**
 * What a calculation says of itself.
 *
 * @param id its word
 * @param name its name
 * @param answers the question it answers
 * @param formula the formula, with {@code lg} for the logarithm to base ten
 * @param inputs what it asks for, in the order of the formula
 * @param example inputs by name that can be sent as they are
 */
public record CalculationInfo(String id, String name, String answers, String formula, List<Input> inputs, Map<String, Object> example) {
}
