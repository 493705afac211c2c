package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import pairwright.acoustics.FirstOrder;
import pairwright.acoustics.Lobe;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.drawing.Drawing;
import pairwright.drawing.Look;
import pairwright.drawing.OctaveDrawing;
import pairwright.drawing.PolarDrawing;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.sheet.ReadingParts.Curve;
import pairwright.sheet.ReadingParts.Plot;

/** Values by octave as a picture, and the same in numbers. */
final class Plots {
    private static final String NO_NULL = "none";

    private Plots() {
    }

    /** One curve in dB. */
    static Plot octaves(Desk desk, String id, String caption, String name, OctaveCurve curveDb) {
        Drawing drawing = OctaveDrawing.of(caption, "dB", List.of(new OctaveDrawing.Series(name, curveDb, Look.ONE)), null, id + "-drawing",
                desk.visit().reader());
        return new Plot(id, caption, drawing, List.of(new Curve(name + ", dB", desk.measures().nine(curveDb))));
    }

    /** What a pattern hears from where; null for one that hears no air. */
    static Plot polar(Desk desk, String id, PatternData data) {
        if (data.pattern() == Pattern.CONTACT || data.pattern() == Pattern.ELECTRICAL) {
            return null;
        }
        List<Curve> curves = new ArrayList<>();
        if (data.coefficient() != null) {
            curves.add(new Curve("Null, degrees off the front", nulls(desk, data.coefficient())));
        }
        curves.add(new Curve("From the side, dB", from(desk, data, 90)));
        curves.add(new Curve("From behind, dB", from(desk, data, 180)));
        curves.add(new Curve("Room heard less than by an omni, dB", desk.measures().nine(directivityIndexDb(data))));
        String caption = "What it hears from where, octave by octave";
        return new Plot(id, caption, PolarDrawing.octaves(caption + ", as " + ReadingWords.pattern(data.pattern()), data, id + "-drawing",
                desk.visit().reader()), curves);
    }

    /** Where a pattern hears least at 1 kHz, in a sentence; empty where it hears no air. */
    static String quietest(Desk desk, PatternData data) {
        return switch (data.pattern()) {
            case CONTACT -> "Hears what it touches and no air.";
            case ELECTRICAL -> "Hears the lead and no air.";
            case LOBAR -> "Hears least from behind; it has no clean null to turn to a neighbour.";
            default -> {
                var nullDegrees = FirstOrder.nullDegrees(data.coefficient().at(4));
                yield nullDegrees.isPresent()
                        ? "Null at 1 kHz: " + desk.measures().degrees(nullDegrees.getAsDouble()) + " off its front, "
                        + (nullDegrees.getAsDouble() > 175 ? "straight behind." : "on every side alike.")
                        : data.coefficient().at(4) > 0.95 ? "No null at 1 kHz: it hears all round alike." : "No null at 1 kHz; it hears least straight behind.";
            }
        };
    }

    private static List<String> nulls(Desk desk, OctaveCurve coefficient) {
        List<String> nine = new ArrayList<>(Octaves.COUNT);
        for (int band = 0; band < Octaves.COUNT; band++) {
            var nullDegrees = FirstOrder.nullDegrees(coefficient.at(band));
            nine.add(nullDegrees.isPresent() ? desk.measures().degrees(nullDegrees.getAsDouble()) : NO_NULL);
        }
        return nine;
    }

    private static List<String> from(Desk desk, PatternData data, double angleDegrees) {
        List<String> nine = new ArrayList<>(Octaves.COUNT);
        for (int band = 0; band < Octaves.COUNT; band++) {
            nine.add(desk.measures().signed(data.pattern() == Pattern.LOBAR
                    ? Lobe.responseDb(data.directivityIndexDb().at(band), angleDegrees, FirstOrder.PRACTICAL_NULL_DB)
                    : FirstOrder.responseDb(data.coefficient().at(band), angleDegrees, FirstOrder.PRACTICAL_NULL_DB), 1));
        }
        return nine;
    }

    private static OctaveCurve directivityIndexDb(PatternData data) {
        return data.directivityIndexDb() != null ? data.directivityIndexDb() : data.coefficient().map(FirstOrder::directivityIndexDb);
    }
}
