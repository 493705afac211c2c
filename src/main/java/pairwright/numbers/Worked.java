package pairwright.numbers;

import java.util.List;
import java.util.Map;
import pairwright.model.Value;

/**
 * A calculation with everything filled in.
 *
 * @param id of the calculation
 * @param inputs by name, what was given and what was taken for granted
 * @param result the numbers, the one that was asked for first; one that is infinite is left out and {@code steps} say so
 * @param says the answer in a sentence
 * @param formula the formula
 * @param steps the way there, with the numbers in it, to follow by hand; shown rounded, worked unrounded
 * @param validity where the formula holds, and what to mind at these inputs
 * @param cautions what can hurt somebody or something
 */
public record Worked(String id, Map<String, Object> inputs, List<Value> result, String says, String formula, List<String> steps,
        String validity, List<NumberCaution> cautions) {
}
