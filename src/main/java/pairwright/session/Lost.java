package pairwright.session;

import java.util.List;

/**
 * What a session has lost since it was planned.
 *
 * @param units that failed or are needed elsewhere, by id: microphones, stands, boosters, line boxes, pads
 * @param channels that failed, by id
 * @param seats who is not coming; who comes instead stands in the line-up
 */
public record Lost(List<String> units, List<String> channels, List<String> seats) {
    public static final Lost NOTHING = new Lost(null, null, null);

    public Lost {
        units = units == null ? List.of() : List.copyOf(units);
        channels = channels == null ? List.of() : List.copyOf(channels);
        seats = seats == null ? List.of() : List.copyOf(seats);
    }
}
