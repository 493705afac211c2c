package pairwright.session;

import java.util.List;
import pairwright.model.Catalogue;
import pairwright.model.Question;
import pairwright.model.Way;

/**
 * What is asked for one seat of a line-up. Who else plays is not in it: {@link FloorSurroundings} says that place by place. Nor is when: what suits a
 * seat does not depend on what is free.
 */
public final class SeatQuestion {
    private static final int OPTIONS = 3;

    private SeatQuestion() {
    }

    /**
     * To be asked of a catalogue that is {@link Altered} for the seat.
     *
     * @param catalogue altered or not; ways that the source does not know are left out
     */
    public static Question of(Seat seat, Catalogue catalogue) {
        List<String> known = catalogue.sources().get(seat.source()).ways().stream().map(Way::id).toList();
        return new Question("", seat.source(), seat.ways().stream().filter(known::contains).toList(), seat.dynamics(), Altered.ROOM, seat.character(),
                seat.limits(), List.of(), seat.circumstances(), List.of(), OPTIONS, null, null, List.of());
    }
}
