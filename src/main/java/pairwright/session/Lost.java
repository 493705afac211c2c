package pairwright.session;

import java.util.List;

/**
 * What a session has lost since it was planned.
 *
 * @param units that failed or are needed elsewhere, by id: microphones, stands, boosters, line boxes, pads
 * @param channels that failed, by id
 * @param seats who is not coming; who comes instead stands in the line-up
 * @param minutes of the time to set up that the line-up gives, 0 or more
 */
public record Lost(List<String> units, List<String> channels, List<String> seats, int minutes) {
    public static final Lost NOTHING = new Lost(null, null, null, 0);

    public Lost {
        units = units == null ? List.of() : List.copyOf(units);
        channels = channels == null ? List.of() : List.copyOf(channels);
        seats = seats == null ? List.of() : List.copyOf(seats);
    }

    /** Things and people, and no time. */
    public Lost(List<String> units, List<String> channels, List<String> seats) {
        this(units, channels, seats, 0);
    }
}
