package pairwright.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import pairwright.model.Severity;
import pairwright.model.Value;

/** Writes a calculation down while it is worked. */
final class Working {
    private final List<String> steps = new ArrayList<>();
    private final Set<String> seen = new TreeSet<>();
    private final List<Value> result = new ArrayList<>();
    private final List<String> validity = new ArrayList<>();
    private final List<NumberCaution> cautions = new ArrayList<>();
    private String says;

    /**
     * One step: "Level at 2 m: 94 - 20 lg(2 / 1) = 87.98 dB SPL".
     *
     * @param line words, a colon, and the formula with {} for each number
     * @param value what it comes to, from the function that computes it everywhere
     * @param unit as printed; "1" for none
     * @return the value
     */
    double step(String line, double value, String unit, Object... shown) {
        String figure = figure(value, unit);
        steps.add(Figures.in(line, shown) + " = " + figure);
        seen.add(figure);
        return value;
    }

    /** A step without a number that is computed. */
    void remark(String sentence, Object... shown) {
        steps.add(Figures.in(sentence, shown));
    }

    /** A number that was asked for, which a step must have shown. */
    void result(String name, double value, String unit) {
        if (!Double.isFinite(value) || !seen.contains(figure(value, unit))) {
            throw new IllegalStateException(name + " = " + value + " is in no step");
        }
        result.add(new Value(name, value, unit));
    }

    /** The answer in a sentence, with {} for each number. */
    void says(String sentence, Object... shown) {
        says = Figures.told(sentence, shown);
    }

    /** Where it holds, or what to mind at these inputs. */
    void holds(String sentence, Object... shown) {
        validity.add(Figures.told(sentence, shown));
    }

    void note(String sentence, Object... shown) {
        caution(Severity.NOTE, sentence, shown);
    }

    /** What can harm gear or a take. */
    void care(String sentence, Object... shown) {
        caution(Severity.CARE, sentence, shown);
    }

    /** What can harm a person. */
    void danger(String sentence, Object... shown) {
        caution(Severity.DANGER, sentence, shown);
    }

    Worked worked(CalculationInfo info, Inputs in) {
        // the gravest first
        cautions.sort((one, other) -> other.severity().compareTo(one.severity()));
        return new Worked(info.id(), in.all(), List.copyOf(result), says, info.formula(), List.copyOf(steps), String.join(" ", validity),
                List.copyOf(cautions));
    }

    private void caution(Severity severity, String sentence, Object... shown) {
        cautions.add(new NumberCaution(severity, Figures.told(sentence, shown)));
    }

    private static String figure(double value, String unit) {
        return Figures.of(value) + (unit.equals("1") ? "" : " " + unit);
    }
}
