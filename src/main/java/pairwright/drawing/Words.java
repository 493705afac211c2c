package pairwright.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;

/** How numbers stand in a drawing and in what it says: with a real minus, which is read aloud, and with plus where a sign is the point. */
final class Words {
    private static final char MINUS = '\u2212';

    private Words() {
    }

    static String number(double value, int decimals, Reader reader) {
        return (decimals <= 2 ? reader.number(value, decimals) : fine(value, decimals, reader)).replace('-', MINUS);
    }

    private static String fine(double value, int decimals, Reader reader) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.toPlainString().replace('.', reader.number(0.5, 1).charAt(1));
    }

    /** "+3", "−2.5", "0". */
    static String signed(double value, int decimals, Reader reader) {
        String text = number(value, decimals, reader);
        return text.charAt(0) == MINUS || text.equals("0") ? text : "+" + text;
    }

    /** "429 Hz", "1.2 kHz". */
    static String hertz(double hertz, Reader reader) {
        return hertz >= 1000 ? number(hertz / 1000, hertz < 10_000 ? 2 : 1, reader) + " kHz" : number(hertz, hertz < 100 ? 1 : 0, reader) + " Hz";
    }

    /** "63 Hz", "16 kHz". */
    static String octave(int band, Reader reader) {
        double hertz = Octaves.centreHz(band);
        return hertz >= 1000 ? number(hertz / 1000, 0, reader) + " kHz" : number(hertz, 0, reader) + " Hz";
    }

    /** "63 Hz +6, 125 Hz +4.5, ... 16 kHz −12 dB". */
    static String octaves(OctaveCurve curve, String unit, Reader reader) {
        StringBuilder all = new StringBuilder();
        for (int band = 0; band < Octaves.COUNT; band++) {
            all.append(band == 0 ? "" : ", ").append(octave(band, reader)).append(' ').append(signed(curve.at(band), 1, reader));
        }
        return all.append(unit.isEmpty() ? "" : " ").append(unit).toString();
    }

    /** First letter large, a full stop at the end. */
    static String sentence(String text) {
        String begun = text.isEmpty() ? text : text.substring(0, text.offsetByCodePoints(0, 1)).toUpperCase(Locale.ROOT)
                + text.substring(text.offsetByCodePoints(0, 1));
        return begun.endsWith(".") ? begun : begun + ".";
    }
}
