package pairwright.sheet;

import java.util.List;
import pairwright.drawing.Drawing;

/**
 * What comes out of a form: a calculation that is worked, or what is wrong with what was typed.
 *
 * @param wrong fields with something wrong; everything else is empty unless this is
 * @param says the answer in a sentence
 * @param cautions the gravest first
 * @param result what came out
 * @param inputs what it was worked with
 * @param drawings pictures, with the words that say the same
 * @param steps the way there
 * @param formula the formula
 * @param validity where it holds
 * @param imperial whether to say that steps are worked in metres and kilograms
 */
public record WorkedView(List<NumberField> wrong, String says, List<Caution> cautions, List<Row> result, List<Row> inputs, List<Drawing> drawings, List<String> steps,
        String formula, List<Piece> validity, boolean imperial) {
    static WorkedView unusable(List<NumberField> wrong) {
        return new WorkedView(wrong, "", List.of(), List.of(), List.of(), List.of(), List.of(), "", List.of(), false);
    }

    /** A caution: danger, care or note, the word for it, and what it says. */
    public record Caution(String severity, String word, List<Piece> says) {
    }

    /** A piece of a text; {@code href} is where it leads, null for nowhere. */
    public record Piece(String text, String href) {
    }

    /** What something is called, and its value with its unit. */
    public record Row(String called, String value) {
    }
}
