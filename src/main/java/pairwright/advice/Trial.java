package pairwright.advice;

import java.util.List;
import pairwright.model.Moves;
import pairwright.model.Predicted;
import pairwright.model.Remedy;
import pairwright.model.Together;
import pairwright.rules.Paired;
import pairwright.rules.Placed;

/**
 * A set-up that is tried: what was moved, and what stands then.
 *
 * @param bench where it is set up
 * @param remedy what led to it; null for the set-up as it stands
 * @param mic which microphone was moved, from 1; 0 for both or none
 * @param mics one or two
 * @param placed the same as predicted
 * @param pair the two together; null for one
 */
record Trial(Bench bench, Remedy remedy, int mic, List<Standing.Mic> mics, List<Placed> placed, Paired pair) {
    /** The microphone that is looked at: the one that was moved, or the first. */
    Placed moved() {
        return placed.get(Math.max(0, mic - 1));
    }

    Together together() {
        return pair == null ? null : pair.together();
    }

    Candidate candidate() {
        return bench.candidate(this);
    }

    boolean ruledOut() {
        Candidate candidate = candidate();
        return candidate.first().ruledOut() || !candidate.isSingle() && (candidate.second().ruledOut() || candidate.ruledOut());
    }

    /** What this changes of another set-up, of the microphone that was moved. */
    Moves.Changed changedFrom(Trial base) {
        Predicted before = base.placed.get(Math.max(0, mic - 1)).predicted();
        Predicted after = moved().predicted();
        return new Moves.Changed(
                after.colourDb().minus(before.colourDb()),
                difference(after.typicalDbSpl(), before.typicalDbSpl()),
                after.proximityDb() - before.proximityDb(),
                difference(after.directToReverbDb(), before.directToReverbDb()),
                difference(after.separationDb(), before.separationDb()),
                difference(after.signalToNoiseDb(), before.signalToNoiseDb()),
                difference(after.headroomDb(), before.headroomDb()),
                difference(after.gainDb(), before.gainDb()),
                pair == null ? null : together().rippleDb() - base.together().rippleDb(),
                pair == null ? null : together().firstNullHz());
    }

    private static Double difference(Double after, Double before) {
        return after == null || before == null ? null : after - before;
    }
}
