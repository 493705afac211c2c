package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.drawing.Reader;

/** Figures of what was heard, as the reader writes them. */
final class HeardFigures {
    private static final String NOTHING = "\u2013";

    private HeardFigures() {
    }

    /** A row for each octave; what is "In common" in percent, a "Correlation" as it is, all else in decibels. */
    static HeardView.Table bands(Reader reader, String caption, List<String> heads, List<OctaveCurve> curves) {
        return bands(reader, caption, heads, curves, band -> true);
    }

    /** @param sounds of which octaves there is anything to tell */
    static HeardView.Table bands(Reader reader, String caption, List<String> heads, List<OctaveCurve> curves, IntPredicate sounds) {
        List<List<String>> rows = new ArrayList<>();
        for (int band = 0; band < Octaves.COUNT; band++) {
            List<String> row = new ArrayList<>();
            row.add(octave(reader, band));
            for (int i = 0; i < curves.size(); i++) {
                double value = curves.get(i).at(band);
                row.add(!sounds.test(band) ? NOTHING : switch (heads.get(i + 1)) {
                    case "In common" -> figure(reader, "%.0f %%", 100 * value);
                    case "Correlation" -> signed(reader, "%.2f", value);
                    default -> db(reader, value);
                });
            }
            rows.add(row);
        }
        return new HeardView.Table(caption, heads, rows);
    }

    static String octave(Reader reader, int band) {
        double centreHz = Octaves.centreHz(band);
        return centreHz < 1000 ? figure(reader, "%.0f Hz", centreHz) : figure(reader, "%.0f kHz", centreHz / 1000);
    }

    static String db(Reader reader, double value) {
        return signed(reader, "%.1f", value) + " dB";
    }

    /** With a real minus, and none before nought. */
    private static String signed(Reader reader, String format, double value) {
        String text = figure(reader, format, Math.abs(value));
        return (value < 0 && !text.matches("0[.,]0+") ? "\u2212" : "") + text;
    }

    static String figure(Reader reader, String format, double value) {
        return reader.figures(String.format(Locale.ROOT, format, value));
    }
}
