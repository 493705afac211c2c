package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which pad goes into which line: as strong as the search found there are enough of, and no stronger than it has to be where another is left. */
final class PadsHandedOut {
    private final List<Gear.LinePad> left;
    private final Map<Slot, Gear.LinePad> given = new HashMap<>();

    /** A channel of a microphone of a seat, each counted from 0. */
    record Slot(int seat, int mic, int channel) {
    }

    /**
     * A line that gets a pad.
     *
     * @param cap what the search takes it from
     * @param overDb what it has to take away at least
     * @param powered whether phantom power has to pass it
     * @param standing id of the one that is in already; null for none
     */
    record Wanted(Slot slot, String cap, double overDb, boolean powered, String standing) {
    }

    PadsHandedOut(List<Gear.LinePad> pads, List<Wanted> all) {
        this.left = new ArrayList<>(pads);
        for (Wanted one : all) {
            take(one, left.stream().filter(pad -> Resources.padCap(pad).equals(one.cap())).findFirst().orElseThrow());
        }
        List<Wanted> weakestFirst = all.stream().sorted(Comparator.comparingDouble(Wanted::overDb)).toList();
        weakestFirst.forEach(this::weaker);
    }

    private void take(Wanted one, Gear.LinePad pad) {
        left.remove(pad);
        given.put(one.slot(), pad);
    }

    /** The pad that is in already, or else the weakest that does, given back what it had. */
    private void weaker(Wanted one) {
        left.add(given.get(one.slot()));
        List<Gear.LinePad> enough = left.stream().filter(pad -> pad.lossDb() >= one.overDb() && (pad.passes() || !one.powered()))
                .sorted(Comparator.comparingDouble(Gear.LinePad::lossDb).thenComparing(Gear.LinePad::passes).thenComparing(Gear.LinePad::id)).toList();
        take(one, enough.stream().filter(pad -> pad.id().equals(one.standing())).findFirst().orElseGet(() -> enough.get(0)));
    }

    /** Null where the line has none. */
    Gear.LinePad at(Slot slot) {
        return given.get(slot);
    }
}
