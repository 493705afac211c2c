package pairwright.session;

import java.util.HashMap;
import java.util.Map;

/** What seats are called in a sentence: by their player, by their source, with their id where a source sits there twice, and with their source where a player is named twice. */
final class SeatNames {
    private final Map<String, String> byId = new HashMap<>();

    private SeatNames() {
    }

    static SeatNames of(LineUp lineUp) {
        SeatNames names = new SeatNames();
        for (Seat seat : lineUp.seats()) {
            names.byId.put(seat.id(), of(seat) + (seat.player() == null ? lineUp.toldApart(seat) : lineUp.playsTwice(seat) ? " (" + seat.source().replace('-', ' ') + ")" : ""));
        }
        return names;
    }

    /** The seat in words; its id where the line-up has no such seat. */
    String of(String seat) {
        return byId.getOrDefault(seat, seat);
    }

    static String of(Seat seat) {
        return seat.player() != null ? seat.player() : "the " + seat.source().replace('-', ' ');
    }
}
