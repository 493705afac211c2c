package pairwright.advice;

import java.util.ArrayList;
import java.util.List;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.model.Complaint;
import pairwright.model.Gauge;
import pairwright.model.Moves;
import pairwright.model.Naming;
import pairwright.model.Predicted;
import pairwright.model.Together;
import pairwright.rules.Figure;

/** Tells a move in words: what is changed, from and to, and what that does. */
final class MoveWords {
    private static final double PROXIMITY_HZ = 100;
    /** An effect smaller than this is not told as one: a figure would promise more than a prediction keeps. */
    private static final double NEXT_TO_NOTHING_DB = 0.5;
    /** What a person would not notice is not told beside what was asked for. */
    private static final double WORTH_TELLING_DB = 1;
    /** Less in hand than a pad is put in for, so it is worth a word. */
    private static final double LITTLE_HEADROOM_DB = 6;

    private final Complaint complaint;
    private final ComplaintGauge gauge;
    private final Scene scene;
    private final Trial base;

    MoveWords(Complaint complaint, ComplaintGauge gauge, Trial base) {
        this.complaint = complaint;
        this.gauge = gauge;
        this.scene = base.bench().scene();
        this.base = base;
    }

    /** From and to, such as "10 -> 20 cm". */
    String change(Trial trial) {
        if (trial.bench() != base.bench()) {
            return "source " + Decibels.figure(trial.remedy().levelDb()) + " dB";
        }
        Standing.Mic from = base.mics().get(trial.mic() - 1);
        Standing.Mic to = trial.mics().get(trial.mic() - 1);
        List<String> parts = new ArrayList<>();
        if (!from.mic().id().equals(to.mic().id())) {
            parts.add(Nested.named(from.mic()) + " -> " + Nested.named(to.mic()));
        }
        if (from.pattern().pattern() != to.pattern().pattern()) {
            parts.add(from.pattern().pattern().id() + " -> " + to.pattern().pattern().id());
        }
        if (!from.position().id().equals(to.position().id())) {
            parts.add(Naming.small(from.position().name()) + " -> " + Naming.small(to.position().name()));
        }
        if (from.distanceM() != to.distanceM()) {
            parts.add(fromTo(from.distanceM(), to.distanceM()));
        }
        if (from.aimDegrees() != to.aimDegrees() && from.position().id().equals(to.position().id())) {
            parts.add(aim(from.aimDegrees()) + " -> " + aim(to.aimDegrees()));
        }
        return String.join("; ", parts);
    }

    private static String fromTo(double fromM, double toM) {
        String from = Figure.forPeople(fromM, "m");
        String to = Figure.forPeople(toM, "m");
        String unit = from.substring(from.indexOf(' '));
        return (to.endsWith(unit) && to.substring(to.indexOf(' ')).equals(unit) ? from.substring(0, from.indexOf(' ')) : from) + " -> " + to;
    }

    private static String aim(double degrees) {
        return degrees == 0 ? "straight" : Math.round(Math.abs(degrees)) + " degrees " + (degrees < 0 ? "toward the neighbour" : "off");
    }

    /** What it does, in words. */
    String effect(Trial trial) {
        Moves.Changed changed = trial.changedFrom(base);
        List<String> parts = new ArrayList<>();
        if (complaint.gauge() == Gauge.TONE && gauge.gainDb(base, trial) != null && Math.abs(gauge.gainDb(base, trial)) >= NEXT_TO_NOTHING_DB) {
            parts.add(tone(trial, changed));
        }
        if (trial.pair() != null && complaint.gauge() == Gauge.COMB) {
            parts.add(comb(trial));
        }
        Predicted after = trial.moved().predicted();
        if (complaint.gauge() == Gauge.HEADROOM) {
            parts.add(Decibels.figure(changed.headroomDb() == null ? 0 : changed.headroomDb()) + " dB more in hand, " + Decibels.figure(after.headroomDb()) + " then");
        } else if (after.headroomDb() != null && after.headroomDb() < LITTLE_HEADROOM_DB && worth(changed.headroomDb())) {
            parts.add("leaves " + Decibels.figure(after.headroomDb()) + " dB in hand");
        }
        told(changed.directToReverbDb(), "less room", "more room", parts);
        told(changed.separationDb(), "less of the neighbours", "more of the neighbours", parts);
        if (complaint.gauge() == Gauge.NOISE || changed.signalToNoiseDb() != null && changed.signalToNoiseDb() < 0) {
            told(changed.signalToNoiseDb(), "farther from the noise", "nearer to the noise", parts);
        }
        aside(Band.HZ_125, changed.colourDb(), parts);
        aside(Band.HZ_4000, changed.colourDb(), parts);
        aside(Band.HZ_8000, changed.colourDb(), parts);
        return parts.isEmpty() ? "no number that is predicted changes by a decibel" : String.join(", ", parts);
    }

    /** The octave of the complaint that changes most the way that is wanted; of closeness the 100 Hz everybody speaks of. */
    private String tone(Trial trial, Moves.Changed changed) {
        int from = ComplaintGauge.band(complaint.fromHz());
        int to = ComplaintGauge.band(complaint.toHz());
        boolean closeness = complaint.fromHz() <= PROXIMITY_HZ && complaint.toHz() >= PROXIMITY_HZ && worth(changed.proximityDb())
                && trial.mics().get(trial.mic() - 1).distanceM() != base.mics().get(trial.mic() - 1).distanceM()
                && trial.mics().get(trial.mic() - 1).position().id().equals(base.mics().get(trial.mic() - 1).position().id());
        if (closeness) {
            return Decibels.figure(Math.abs(changed.proximityDb())) + " dB " + (changed.proximityDb() < 0 ? "less" : "more") + " at 100 Hz";
        }
        int most = from;
        for (int band = from + 1; band <= to; band++) {
            double here = changed.colourDb().at(band) * (complaint.more() ? 1 : -1);
            double before = changed.colourDb().at(most) * (complaint.more() ? 1 : -1);
            most = here * scene.weights().at(band) > before * scene.weights().at(most) ? band : most;
        }
        double db = changed.colourDb().at(most);
        return Decibels.figure(Math.abs(db)) + " dB " + (db < 0 ? "less" : "more") + " at " + Figure.forPeople(Octaves.centreHz(most), "Hz");
    }

    private String comb(Trial trial) {
        Together before = base.together();
        Together after = trial.together();
        String gap = before.firstNullHz() == null ? "" : " from " + Figure.forPeople(before.firstNullHz(), "Hz");
        return after.firstNullHz() == null ? "the first gap goes" + gap + " to nowhere, for both hear it at once"
                : "the first gap goes" + gap + " to " + Figure.forPeople(after.firstNullHz(), "Hz") + " and the ripple from "
                        + Decibels.figure(before.rippleDb()) + " to " + Decibels.figure(after.rippleDb()) + " dB";
    }

    private static boolean worth(Double db) {
        return db != null && Math.abs(db) >= WORTH_TELLING_DB;
    }

    private static void told(Double db, String more, String less, List<String> parts) {
        if (worth(db)) {
            parts.add(Decibels.figure(Math.abs(db)) + " dB " + (db > 0 ? more : less));
        }
    }

    /** What else changes of the tone, outside what was complained of. */
    private void aside(int band, OctaveCurve colourDb, List<String> parts) {
        boolean asked = complaint.gauge() == Gauge.TONE && band >= ComplaintGauge.band(complaint.fromHz()) && band <= ComplaintGauge.band(complaint.toHz());
        if (!asked && Math.abs(colourDb.at(band)) >= 1.5 * WORTH_TELLING_DB && scene.weights().at(band) > 0) {
            parts.add(Decibels.figure(Math.abs(colourDb.at(band))) + " dB " + (colourDb.at(band) < 0 ? "less" : "more") + " at "
                    + Figure.forPeople(Octaves.centreHz(band), "Hz"));
        }
    }
}
