package pairwright.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import pairwright.model.MicType;
import pairwright.model.PairRecipe;
import pairwright.model.Pattern;
import pairwright.model.Remedy;
import pairwright.model.Technique;

/** The microphones of a set-up and how they hang together: what moving one does to the other. */
final class Rig {
    private final Standing standing;
    private final Bench bench;

    Rig(Standing standing, Bench bench) {
        this.standing = standing;
        this.bench = bench;
    }

    Scene scene() {
        return bench.scene();
    }

    boolean single() {
        return standing.single();
    }

    List<Standing.Mic> mics() {
        return standing.mics();
    }

    /** One of them, from 1. */
    Standing.Mic mic(int number) {
        return standing.mics().get(number - 1);
    }

    /** The other of two. */
    Standing.Mic other(int number) {
        return standing.mics().get(2 - number);
    }

    /** Of two only. */
    Technique technique() {
        return scene().catalogue().techniques().get(standing.recipe().technique());
    }

    /** Whether the two keep one distance, so that moving one moves the other. */
    boolean moveTogether() {
        return !single() && switch (technique().arrangement()) {
            case SAME_SPOT, COINCIDENT, NEAR_COINCIDENT, SPACED, MID_SIDE -> true;
            default -> false;
        };
    }

    /** Whether a pair has this type in this place. */
    boolean takes(int mic, MicType other) {
        PairRecipe.Part part = mic == 1 ? standing.recipe().first() : standing.recipe().second();
        return part.micTypes().isEmpty() || part.micTypes().contains(other.id());
    }

    /** Whether there are units to put this type in the place of one microphone; of a pair of one type both change. */
    boolean hasUnits(int mic, MicType other) {
        Rack atHand = scene().supply().atHand();
        return atHand.everything() || atHand.count(other.id()) >= (!single() && (technique().sameType() || other(mic).mic().id().equals(other.id())) ? 2 : 1);
    }

    /** All of them moved alike. */
    Trial all(Remedy remedy, int mic, UnaryOperator<Standing.Mic> move) {
        return bench.trial(remedy, mic, standing.mics().stream().map(move).toList());
    }

    /** One of them put elsewhere; of a pair of one type the other changes its type and pattern with it. Nothing where the technique forbids it. */
    void moved(Remedy remedy, int mic, Standing.Mic to, List<Trial> list) {
        if (!remedy.dangers().isEmpty() && to.reachedBy(remedy.dangers())) {
            return; // it is to be moved out of reach
        }
        List<Standing.Mic> mics = new ArrayList<>(standing.mics());
        mics.set(mic - 1, to);
        if (!standing.single()) {
            Technique technique = technique();
            if (technique.sameType()) {
                Standing.Mic other = other(mic);
                mics.set(2 - mic, new Standing.Mic(to.mic(), to.pattern(), other.position(), other.distanceM(), other.aimDegrees()));
            }
            if (!allowed(technique.firstPatterns(), mics.get(0)) || !allowed(technique.secondPatterns(), mics.get(1))) {
                return;
            }
        }
        list.add(bench.trial(remedy, mic, List.copyOf(mics)));
    }

    private static boolean allowed(List<Pattern> patterns, Standing.Mic mic) {
        return patterns.isEmpty() || patterns.contains(mic.pattern().pattern());
    }
}
