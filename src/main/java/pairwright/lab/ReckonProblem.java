package pairwright.lab;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import pairwright.model.Value;
import pairwright.numbers.Given;
import pairwright.numbers.Numbers;
import pairwright.numbers.Worked;

/**
 * Something to work out.
 *
 * @param id never reused
 * @param level of the exercises it is for, 1 to 5
 * @param calculation id of the calculation that answers it
 * @param says the question, with the names of its inputs in braces
 * @param inputs what is drawn or taken, by the calculation's names
 * @param result which of its results is asked for
 * @param unit of that result
 * @param tolerance how far off still counts: a share of the value where it is {@code relative}, else in its unit
 * @param relative see {@code tolerance}
 * @param least no sensible answer is smaller
 * @param most nor larger
 * @param slip what a usual mistake makes of the right value
 * @param slipSays which mistake that is, in a sentence
 */
record ReckonProblem(String id, int level, String calculation, String says, Map<String, Drawn> inputs, String result, String unit, double tolerance, boolean relative,
        double least, double most, DoubleUnaryOperator slip, String slipSays) {

    /** How an input comes about. */
    sealed interface Drawn {
        List<String> draw(Draw draw);
    }

    /** A number out of a span, in whole steps. */
    record Span(double least, double most, double step) implements Drawn {
        @Override
        public List<String> draw(Draw draw) {
            return List.of(plain(draw.between(least, most, step)));
        }
    }

    /** Several such numbers. */
    record Some(int fewest, int most, Drawn each) implements Drawn {
        @Override
        public List<String> draw(Draw draw) {
            List<String> drawn = new ArrayList<>();
            for (int left = draw.between(fewest, most); left > 0; left--) {
                drawn.addAll(each.draw(draw));
            }
            return drawn;
        }
    }

    /** One of some words, or of some numbers. */
    record Of(List<String> any) implements Drawn {
        @Override
        public List<String> draw(Draw draw) {
            return List.of(draw.one(any));
        }
    }

    /** The question with what was drawn in it. */
    String asked(Case drawn) {
        String asked = says;
        for (String input : inputs.keySet()) {
            List<String> values = drawn.all(id + "." + input);
            asked = asked.replace("{" + input + "}", values.size() < 2 ? String.join("", values)
                    : String.join(", ", values.subList(0, values.size() - 1)) + " and " + values.get(values.size() - 1));
        }
        return asked;
    }

    /** @throws IllegalArgumentException where the case does not have what the calculation needs */
    Worked worked(Case drawn, Numbers numbers) {
        Map<String, Given> given = new LinkedHashMap<>();
        inputs.forEach((input, how) -> given.put(input, given(drawn.all(id + "." + input), how)));
        return numbers.work(calculation, given);
    }

    private static Given given(List<String> values, Drawn how) {
        List<Given> each = values.stream().map(ReckonProblem::given).toList();
        return how instanceof Some ? new Given.Many(each) : each.get(0);
    }

    private static Given given(String value) {
        try {
            return new Given.Number(Double.parseDouble(value));
        } catch (NumberFormatException word) {
            return new Given.Text(value);
        }
    }

    /** What was asked for, out of all that was worked out. */
    double right(Worked worked) {
        return worked.result().stream().filter(value -> value.name().equals(result)).mapToDouble(Value::value).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The calculation " + calculation + " has no result " + result + " here"));
    }

    double within(double right) {
        return relative ? Math.abs(right) * tolerance : tolerance;
    }

    static String plain(double number) {
        return java.math.BigDecimal.valueOf(number).setScale(4, java.math.RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }
}
