package pairwright.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import pairwright.advice.ComplaintGauge;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.model.Complaint;
import pairwright.model.MoveKind;

/**
 * A microphone that was moved, turned, switched or exchanged, and nothing else: one thing differs from how it stood.
 *
 * @param by what was changed
 * @param to how it stands then
 */
record Moved(MoveKind by, Offer to) {
    /** Closer in distance than this, as a ratio, is the same place. */
    private static final double SAME_DISTANCE_RATIO = 1.15;

    /** Everything that one change leads to, out of all there is, in its order. */
    static List<Moved> from(Offer stands, List<Offer> all) {
        List<Moved> moved = new ArrayList<>();
        for (Offer other : all) {
            MoveKind by = by(OneMic.mic(stands), OneMic.mic(other));
            if (by != null) {
                moved.add(new Moved(by, other));
            }
        }
        return moved;
    }

    /** Null where more than one thing differs, or nothing. */
    private static MoveKind by(OfferedMic from, OfferedMic to) {
        boolean place = from.position().id().equals(to.position().id());
        boolean type = from.micType().id().equals(to.micType().id());
        boolean pattern = from.pattern() == to.pattern();
        boolean aim = from.aimDegrees() == to.aimDegrees();
        double ratio = Math.max(from.distanceM() / to.distanceM(), to.distanceM() / from.distanceM());
        if (!place) {
            return type && pattern && to.aimDegrees() == to.position().aimDegrees().low() ? MoveKind.POSITION : null;
        }
        if (!type) {
            return aim && ratio < SAME_DISTANCE_RATIO ? MoveKind.MIC : null;
        }
        if (!pattern) {
            return aim && ratio == 1 ? MoveKind.PATTERN : null;
        }
        return !aim && ratio == 1 ? MoveKind.ANGLE : aim && ratio >= SAME_DISTANCE_RATIO ? MoveKind.DISTANCE : null;
    }

    /** How much better it is by a complaint, in dB; 0 where no number tells. */
    double gainDb(Offer stands, Complaint heard, ComplaintGauge gauge) {
        Double before = gauge.of(OneMic.mic(stands).placed());
        Double after = gauge.of(OneMic.mic(to).placed());
        return before == null || after == null ? 0 : heard.more() ? after - before : before - after;
    }

    /** What the catalogue makes of it: the lower, the less it costs; -1 where it is none of what is tried against that. */
    int rank(Complaint heard) {
        return IntStream.range(0, heard.moves().size()).filter(i -> heard.moves().get(i).by() == by).findFirst().orElse(-1);
    }

    boolean nearer(Offer stands) {
        return by == MoveKind.DISTANCE && OneMic.mic(to).distanceM() < OneMic.mic(stands).distanceM();
    }

    /** What is changed, as the name of a check. */
    String called() {
        return switch (by) {
            case DISTANCE -> "Another distance";
            case ANGLE -> "Another aim";
            case PATTERN -> "Another pattern";
            case POSITION -> "Another place";
            default -> "Another microphone";
        };
    }

    /**
     * What is done, in a sentence that does not say what comes of it.
     *
     * @param neighbour whether somebody else plays, so that a turn has a side
     */
    String says(Offer stands, boolean neighbour) {
        OfferedMic from = OneMic.mic(stands);
        OfferedMic then = OneMic.mic(to);
        String distance = ChooseExercise.far(then.distanceM());
        return switch (by) {
            case DISTANCE -> "Go " + (nearer(stands) ? "nearer" : "farther") + ": from " + ChooseExercise.far(from.distanceM()) + " to " + distance + ".";
            case ANGLE -> then.aimDegrees() == 0 ? "Aim it straight at the source." : "Turn it to " + Math.round(Math.abs(then.aimDegrees())) + "\u00b0 off the line to the source"
                    + (!neighbour ? "" : then.aimDegrees() > 0 ? ", away from the neighbour" : ", toward the neighbour") + ".";
            case PATTERN -> "Switch it to " + then.pattern().id() + ".";
            case POSITION -> "Put it elsewhere: " + then.position().name() + ", " + distance + ".";
            default -> "Put another in its place: " + OneMic.called(then.micType(), then.pattern()) + ".";
        };
    }

    /** What comes of it, by the number that shows the complaint. */
    static String effect(Complaint heard, double gainDb) {
        String by = String.format(java.util.Locale.ROOT, "%.1f dB", Math.abs(gainDb));
        boolean more = heard.more() == gainDb >= 0;
        return switch (heard.gauge()) {
            case TONE -> by + (more ? " more" : " less") + " from " + Math.round(heard.fromHz()) + " to " + Math.round(heard.toHz()) + " Hz";
            case ROOM, COMB -> by + (more ? " less of the room" : " more of the room");
            case NEIGHBOURS -> by + (more ? " less of the neighbour" : " more of the neighbour");
            case NOISE -> by + (more ? " farther from the noise" : " nearer to the noise");
            case HEADROOM -> by + (more ? " more in hand" : " less in hand");
            case NONE -> "no number shows it";
        };
    }
}
