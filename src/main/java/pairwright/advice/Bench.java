package pairwright.advice;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import pairwright.model.PairRecipe;
import pairwright.model.Remedy;
import pairwright.rules.Finding;
import pairwright.rules.Paired;
import pairwright.rules.Placed;

/** Where placements of one scene are set up, and judged all at once. */
final class Bench {
    private final Knowledge now;
    private final Standing standing;
    private final Scene scene;
    private final Placements placements;
    private final Pairs pairs;
    private final List<Placed> placed = new ArrayList<>();
    private final List<Paired> paired = new ArrayList<>();
    private List<Judged> judged;
    private final Map<Paired, List<Finding>> together = new IdentityHashMap<>();

    /** @param standing what it begins with; null where only others are set up */
    Bench(Knowledge now, Standing standing, Scene scene) {
        this.now = now;
        this.standing = standing;
        this.scene = scene;
        this.placements = Placements.none(scene);
        this.pairs = Pairs.none(scene);
    }

    Scene scene() {
        return scene;
    }

    /** The same microphones in another scene. */
    Bench in(Scene other) {
        return new Bench(now, standing, other);
    }

    /**
     * Sets the microphones up; nothing is judged yet.
     *
     * @param remedy what led to it; null for the set-up as it stands
     * @param mic which microphone was moved, from 1; 0 for both or none
     */
    Trial trial(Remedy remedy, int mic, List<Standing.Mic> mics) {
        return trial(remedy, mic, mics, standing.recipe());
    }

    /** Sets up other microphones than its own; nothing is judged yet. */
    Trial trial(Standing other) {
        return trial(null, 0, other.mics(), other.recipe());
    }

    private Trial trial(Remedy remedy, int mic, List<Standing.Mic> mics, PairRecipe recipe) {
        List<Placed> set = new ArrayList<>();
        for (Standing.Mic one : mics) {
            boolean twin = !set.isEmpty() && one.equals(mics.get(0));
            set.add(twin ? set.get(0) : placements.set(one.mic(), one.pattern(), one.position(), one.distanceM(), one.aimDegrees()));
            if (!twin) {
                placed.add(set.get(set.size() - 1));
            }
        }
        Paired pair = recipe == null ? null : pairs.paired(recipe, set.get(0), set.get(1));
        if (pair != null) {
            paired.add(pair);
        }
        return new Trial(this, remedy, mic, mics, set, pair);
    }

    /** What the rules make of it. The first call judges all that was set up, so everything is set up before. */
    Candidate candidate(Trial trial) {
        if (judged == null) {
            judged = Advisor.judged(scene, now.rules(), placed);
            paired.forEach(pair -> together.put(pair, new ArrayList<>()));
            if (!paired.isEmpty()) {
                now.rules().score(scene.setting(), paired).stream().filter(finding -> finding.subject() instanceof Paired)
                        .forEach(finding -> together.get((Paired) finding.subject()).add(finding));
            }
        }
        Judged first = judged.get(trial.placed().get(0).index());
        return trial.pair() == null ? Candidate.of(first)
                : Candidate.of(first, judged.get(trial.placed().get(1).index()), trial.pair(), together.get(trial.pair()));
    }
}
