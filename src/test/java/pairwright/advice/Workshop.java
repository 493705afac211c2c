package pairwright.advice;

import java.util.List;
import pairwright.model.Limits;
import pairwright.model.Neighbour;
import pairwright.model.Question;
import pairwright.rules.Placed;

/** Placements of a real source, to be judged as a test likes. */
record Workshop(Scene scene, List<Placed> placed) {
    static Workshop of(String source) {
        return of(source, Limits.NONE);
    }

    static Workshop of(String source, Limits limits, Neighbour... neighbours) {
        Scene scene = Scene.of(new Question("", source, List.of(), List.of(), null, List.of(), limits, List.of(neighbours), List.of(), 3,
                null, null), Asking.KNOWLEDGE.current().catalogue());
        return new Workshop(scene, Placements.of(scene));
    }

    /** All of them, with nothing found. */
    List<Judged> all() {
        return placed.stream().map(one -> new Judged(one, List.of(), 0, false)).toList();
    }

    /** One that looks straight at the source, in its first pattern. */
    Judged one(String mic, String position, double distanceM, long centipoints) {
        Placed found = placed.stream()
                .filter(one -> one.mic().id().equals(mic) && one.position().id().equals(position)
                        && Math.abs(one.distanceM() - distanceM) < 1e-9 && one.aimDegrees() == one.position().aimDegrees().low())
                .findFirst().orElseThrow(() -> new AssertionError("no " + mic + " at " + position + ", " + distanceM + " m"));
        return new Judged(found, List.of(), centipoints, false);
    }
}
