package pairwright.session;

import java.util.HashMap;
import java.util.Map;

/** What seats are called in a sentence: by their player, by their source, or by their id where a source sits there twice, and by both where a player is named twice. */
final class SeatNames {
    private final Map<String, String> byId = new HashMap<>();

    private SeatNames() {
    }

    static SeatNames of(LineUp lineUp) {
        SeatNames names = new SeatNames();
        for (Seat seat : lineUp.seats()) {
            boolean once = lineUp.seats().stream().filter(other -> other.player() == null && other.source().equals(seat.source())).count() == 1;
            names.byId.put(seat.id(), seat.player() != null ? seat.player() + (lineUp.playsTwice(seat) ? " (" + seat.source().replace('-', ' ') + ")" : "") : "the " + (once ? seat.source() : seat.id()).replace('-', ' '));
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
