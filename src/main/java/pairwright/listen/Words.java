package pairwright.listen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import pairwright.acoustics.Octaves;

/** Figures for people. */
final class Words {
    private Words() {
    }

    /** 85 Hz, 620 Hz or 2.4 kHz. */
    static String hz(double frequencyHz) {
        return frequencyHz < 995 ? number(frequencyHz, frequencyHz < 100 ? 0 : -1) + " Hz" : number(frequencyHz / 1000, 1) + " kHz";
    }

    /** With a real minus and no more digits than mean anything; tens for -1. */
    static String number(double value, int digits) {
        double rounded = digits < 0 ? Math.rint(value / 10) * 10 : value;
        String text = String.format(Locale.ROOT, "%." + Math.max(0, digits) + "f", Math.abs(rounded));
        String trimmed = text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
        return rounded < 0 && !trimmed.equals("0") ? "\u2212" + trimmed : trimmed;
    }

    static String db(double valueDb) {
        return number(valueDb, 0) + " dB";
    }

    /** 4 cm or 1.2 m, without a sign. */
    static String way(double wayM) {
        double size = Math.abs(wayM);
        return size < 0.1 ? number(size * 100, 1) + " cm" : size < 1 ? number(size * 100, 0) + " cm" : number(size, 2) + " m";
    }

    /** 63 Hz; 63 and 125 Hz; 63 to 500 Hz; of those octaves that something is true of. */
    static String octaves(IntPredicate is) {
        List<String> parts = new ArrayList<>();
        boolean alone = IntStream.range(0, Octaves.COUNT).filter(band -> is.test(band) && (band == 0 || !is.test(band - 1))).count() == 1;
        for (int band = 0; band < Octaves.COUNT; band++) {
            if (!is.test(band)) {
                continue;
            }
            int last = band;
            while (last + 1 < Octaves.COUNT && is.test(last + 1)) {
                last++;
            }
            String from = octave(band);
            parts.add(last == band ? from : shortened(from, octave(last)) + (alone && last == band + 1 ? " and " : " to ") + octave(last));
            band = last;
        }
        return list(parts);
    }

    static String octave(int band) {
        double centreHz = Octaves.centreHz(band);
        return centreHz < 1000 ? number(centreHz, 0) + " Hz" : number(centreHz / 1000, 0) + " kHz";
    }

    /** The unit is said once where both have it. */
    private static String shortened(String from, String to) {
        return from.substring(from.indexOf(' ')).equals(to.substring(to.indexOf(' '))) ? from.substring(0, from.indexOf(' ')) : from;
    }

    static String list(List<String> parts) {
        return parts.size() < 2 ? String.join("", parts) : String.join(", ", parts.subList(0, parts.size() - 1)) + " and " + parts.get(parts.size() - 1);
    }
}
