package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.drawing.Reader;
import pairwright.model.Range;

/** Figures as one reader writes them, with their units. */
record Measures(Reader reader) {
    private static final String MINUS = "\u2212";
    private static final double FROM_KHZ = 1000;

    /** A number without its unit; a true minus before what is below zero. */
    String number(double value, int decimals) {
        String text = reader.number(value, decimals);
        return text.startsWith("-") ? MINUS + text.substring(1) : text;
    }

    /** A number that has a sign either way, such as a change in dB. */
    String signed(double value, int decimals) {
        String text = number(value, decimals);
        return value > 0 && !text.equals("0") ? "+" + text : text;
    }

    String with(double value, int decimals, String unit) {
        return number(value, decimals) + " " + unit;
    }

    String change(double valueDb) {
        return signed(valueDb, 1) + " dB";
    }

    /** The pitch of a sound: "63 Hz", "1.5 kHz". */
    String frequency(double valueHz) {
        return valueHz < FROM_KHZ ? with(valueHz, 0, "Hz") : with(valueHz / FROM_KHZ, 1, "kHz");
    }

    String frequencies(Range rangeHz) {
        return frequency(rangeHz.low()) + " to " + frequency(rangeHz.high());
    }

    /** "3 cm to 8 cm, mostly 5 cm"; one figure where there is no range. */
    String distances(Range rangeM) {
        return rangeM.low() == rangeM.high() ? reader.distance(rangeM.low())
                : reader.distance(rangeM.low()) + " to " + reader.distance(rangeM.high()) + ", mostly " + reader.distance(rangeM.typical());
    }

    String degrees(double valueDegrees) {
        return number(valueDegrees, 0) + "\u00b0";
    }

    String degrees(Range rangeDegrees) {
        return rangeDegrees.low() == rangeDegrees.high() ? degrees(rangeDegrees.low())
                : degrees(rangeDegrees.low()) + " to " + degrees(rangeDegrees.high()) + ", mostly " + degrees(rangeDegrees.typical());
    }

    /** "12 to 17 dB, mostly 14". */
    String range(Range range, int decimals, String unit) {
        return range.low() == range.high() ? with(range.low(), decimals, unit)
                : number(range.low(), decimals) + " to " + with(range.high(), decimals, unit) + ", mostly " + number(range.typical(), decimals);
    }

    /** A sentence of the catalogue or of a rule. */
    String sentence(String says) {
        return says == null ? "" : reader.sentence(says);
    }

    List<String> sentences(List<String> says) {
        return says.stream().map(this::sentence).toList();
    }

    /** Nine changes in dB. */
    List<String> nine(OctaveCurve curveDb) {
        List<String> nine = new ArrayList<>(Octaves.COUNT);
        for (int band = 0; band < Octaves.COUNT; band++) {
            nine.add(signed(curveDb.at(band), 1));
        }
        return nine;
    }

    /** A number for a sentence that is put into the reader's measures afterwards. */
    static String plain(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        int end = text.length();
        while (decimals > 0 && text.charAt(end - 1) == '0') {
            end--;
        }
        return text.substring(0, decimals > 0 && text.charAt(end - 1) == '.' ? end - 1 : end);
    }
}
