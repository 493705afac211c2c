package pairwright.lab;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import pairwright.advice.OfferedMic;
import pairwright.model.Gauge;
import pairwright.model.Pattern;

/** Which calculations a predicted number can be worked out with by hand. */
final class Formulas {
    private static final double FELT_DB = 0.5;

    private Formulas() {
    }

    /** Behind the number that shows whether a complaint gets better. */
    static List<String> of(Gauge gauge) {
        return switch (gauge) {
            case TONE -> List.of("proximity");
            case ROOM -> List.of("critical-distance", "level-at-distance");
            case NEIGHBOURS -> List.of("level-at-distance", "null-angles");
            case NOISE -> List.of("noise", "level-at-distance");
            case HEADROOM -> List.of("headroom", "level-at-distance");
            case COMB -> List.of("comb");
            case NONE -> List.of();
        };
    }

    /** Behind the tone of a set-up: where closeness lifts the bass, and where it is turned away with a pattern that can be deaf to a side. */
    static Set<String> tone(OfferedMic mic) {
        Set<String> behind = new LinkedHashSet<>();
        if (mic.predicted().proximityDb() >= FELT_DB) {
            behind.add("proximity");
        }
        if (mic.aimDegrees() != 0 && mic.pattern() != Pattern.OMNI && mic.pattern() != Pattern.HALF_OMNI) {
            behind.add("null-angles");
        }
        return behind;
    }
}
