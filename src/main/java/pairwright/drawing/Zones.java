package pairwright.drawing;

import java.util.List;
import java.util.stream.Stream;
import pairwright.model.BodyShape;
import pairwright.model.KeepClear;
import pairwright.model.Position;

/**
 * What must stay free, and what of it can be drawn. The catalogue says how much room a thing needs, not where it is. It is drawn round
 * the point a microphone is measured from where the thing can only be there: where that point stands for the whole source, and the
 * microphone stands outside but not so far that the warning would be idle there. Everything else is only said.
 */
final class Zones {
    /** A microphone so many times as far away as the room that is needed has nothing to fear from what is round its point. */
    private static final double IDLE = 2.5;
    /** A source that reaches so many times farther than the room that is needed is not one point. */
    private static final double WIDE = 2;
    private static final double LEAST_PX = 5;

    /** A round that is drawn. */
    record Zone(KeepClear clear, View.Flat middle, View.Seen mic) {
        boolean holds(View.Flat at) {
            return middle.apartM(at) <= clear.distanceM();
        }
    }

    private Zones() {
    }

    /** Everything that is said, once. */
    static List<KeepClear> said(List<View.Seen> mics) {
        return mics.stream().flatMap(mic -> mic.mic().position().keepClear().stream()).distinct().toList();
    }

    /** What is drawn of it: never what a microphone of the option would lie in. */
    static List<Zone> drawn(SetUp setUp, List<View.Seen> mics, double scalePxPerM) {
        Stream<Zone> all = mics.stream().filter(mic -> !(setUp.asOne() && mic.mic().number() == 2))
                .flatMap(mic -> mic.mic().position().keepClear().stream().filter(clear -> isThere(setUp, mic.mic().position(), clear))
                        .map(clear -> new Zone(clear, mic.surface(), mic)));
        return all.filter(zone -> zone.clear().distanceM() * scalePxPerM >= LEAST_PX)
                .filter(zone -> mics.stream().noneMatch(mic -> zone.holds(mic.capsule()) || zone.holds(mic.place()))).toList();
    }

    private static boolean isThere(SetUp setUp, Position position, KeepClear clear) {
        double distanceM = position.distanceM().typical();
        return setUp.body().shape() != BodyShape.GROUP && setUp.source().sizeM() / 2 < WIDE * clear.distanceM()
                && distanceM > clear.distanceM() && distanceM < IDLE * clear.distanceM();
    }
}
