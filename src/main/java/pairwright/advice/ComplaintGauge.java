package pairwright.advice;

import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.model.Complaint;
import pairwright.model.Gauge;
import pairwright.model.Predicted;
import pairwright.model.Remedy;
import pairwright.rules.Placed;

/** Measures a complaint at a set-up, and how much better another is. */
public final class ComplaintGauge {
    private final Complaint complaint;
    private final OctaveCurve weights;

    /** @param weights how much each octave of the source counts, see {@link Offers#weights} */
    public ComplaintGauge(Complaint complaint, OctaveCurve weights) {
        this.complaint = complaint;
        this.weights = weights;
    }

    /** How much of the complaint a microphone shows, in dB; null where no number tells. */
    public Double of(Placed placed) {
        Predicted predicted = placed.predicted();
        return switch (complaint.gauge()) {
            case TONE -> Band.mean(predicted.colourDb(), weights, band(complaint.fromHz()), band(complaint.toHz()));
            case ROOM -> predicted.directToReverbDb();
            case NEIGHBOURS -> predicted.separationDb();
            case NOISE -> predicted.signalToNoiseDb();
            case HEADROOM -> predicted.headroomDb();
            case COMB -> predicted.directToReverbDb() == null ? null : -predicted.directToReverbDb();
            case NONE -> null;
        };
    }

    /** The same of a set-up: of two that comb the two together, else the microphone of that number. */
    Double of(Trial trial, int mic) {
        if (complaint.gauge() == Gauge.COMB && trial.pair() != null) {
            return trial.together().firstNullHz() == null ? 0 : trial.together().rippleDb();
        }
        return of(trial.placed().get(Math.max(0, mic - 1)));
    }

    /** How much better it gets; null where no number tells. */
    Double gainDb(Trial base, Trial trial) {
        Double before = of(base, trial.mic());
        Double after = of(trial, trial.mic());
        return before == null || after == null ? null : complaint.more() ? after - before : before - after;
    }

    /** Whether it gets better by enough to be worth the move, and what stands then may stand. */
    boolean helps(Trial base, Trial trial) {
        Double gain = gainDb(base, trial);
        boolean better = complaint.gauge() == Gauge.NONE || (gain == null ? trial.remedy().unmeasured()
                : gain >= (trial.remedy().unmeasured() && !movesAMic(trial.remedy()) ? -complaint.leastDb() : complaint.leastDb()));
        return better && !trial.ruledOut() && !inTheWay(base, trial);
    }

    private static boolean movesAMic(Remedy remedy) {
        return switch (remedy.by()) {
            case DISTANCE, ANGLE, POSITION, PATTERN, MIC -> true;
            default -> false;
        };
    }

    /** Whether it would go nearer than what must stay free for the player. */
    private static boolean inTheWay(Trial base, Trial trial) {
        for (int i = 0; i < trial.placed().size(); i++) {
            Placed placed = trial.placed().get(i);
            if (placed.distanceM() < placed.keepClearM() && placed.distanceM() < base.placed().get(i).distanceM()) {
                return true;
            }
        }
        return false;
    }

    /** The octave nearest to a frequency. */
    static int band(double hz) {
        int nearest = 0;
        for (int band = 1; band < Band.COUNT; band++) {
            if (Math.abs(Math.log(Octaves.centreHz(band) / hz)) < Math.abs(Math.log(Octaves.centreHz(nearest) / hz))) {
                nearest = band;
            }
        }
        return nearest;
    }
}
