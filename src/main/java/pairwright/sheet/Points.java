package pairwright.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import pairwright.drawing.Reader;

/** Points and scores, always to the hundredth, so that what is shown adds up. */
final class Points {
    private Points() {
    }

    /** A score: "16.38". */
    static String score(double score, Reader reader) {
        return text(score, reader).replace('-', '\u2212');
    }

    /** What is added or taken away, with its sign: "+4.38", "\u22121.20". */
    static String signed(double points, Reader reader) {
        String text = text(points, reader);
        return text.startsWith("-") ? text.replace('-', '\u2212') : "+" + text;
    }

    private static String text(double number, Reader reader) {
        String plain = BigDecimal.valueOf(number + 0.0).setScale(2, RoundingMode.HALF_EVEN).toPlainString();
        return plain.replace('.', reader.decimalSign());
    }
}
