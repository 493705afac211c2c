package pairwright.session;

import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * The sources of a session, where they are, and what is wanted of the plan as a whole.
 *
 * @param name of the session; null for none
 * @param floor the room
 * @param seats who plays, in the order they are to be shown
 * @param gobos screens between them
 * @param contrast seats, two by two, that shall not sound alike
 * @param keep groups of seats that are one section: they shall sound alike, and their lines stand next to each other
 * @param from when the microphones are needed; null for now
 * @param until until when; null for the usual length
 * @param plans how many different plans are wanted
 * @param setUp how long there is to set up; null for as long as it takes
 */
public record LineUp(String name, Floor floor, List<Seat> seats, List<Gobo> gobos, List<List<String>> contrast, List<List<String>> keep,
        OffsetDateTime from, OffsetDateTime until, int plans, SetUpTime setUp) {
    public static final int MOST_SEATS = 100;
    public static final int MOST_GOBOS = 50;
    public static final int MOST_PLANS = 5;
    public static final int USUAL_PLANS = 3;

    public LineUp {
        seats = List.copyOf(seats);
        gobos = gobos == null ? List.of() : List.copyOf(gobos);
        contrast = contrast == null ? List.of() : contrast.stream().map(List::copyOf).toList();
        keep = keep == null ? List.of() : keep.stream().map(List::copyOf).toList();
    }

    /** A line-up that may be set up for as long as it takes. */
    public LineUp(String name, Floor floor, List<Seat> seats, List<Gobo> gobos, List<List<String>> contrast, List<List<String>> keep, OffsetDateTime from,
            OffsetDateTime until, int plans) {
        this(name, floor, seats, gobos, contrast, keep, from, until, plans, null);
    }

    public Optional<Seat> seat(String id) {
        return seats.stream().filter(seat -> seat.id().equals(id)).findFirst();
    }

    /** Whether its player is named at another seat as well. */
    public boolean playsTwice(Seat seat) {
        return seats.stream().anyMatch(other -> !other.id().equals(seat.id()) && other.samePlayer(seat));
    }

    /** " 2" or " (v2)": what tells a seat with no name of a player from others of its source, by its id; else nothing. */
    public String toldApart(Seat seat) {
        if (seat.player() != null || seats.stream().filter(other -> other.player() == null && other.source().equals(seat.source())).count() < 2) {
            return "";
        }
        return seat.id().startsWith(seat.source()) ? seat.id().substring(seat.source().length()).replace('-', ' ') : " (" + seat.id() + ")";
    }

    /** At how many seats a plan has to have other types or techniques to be another: a third of them. */
    int leastDifferent() {
        return Math.max(1, (int) Math.ceil(seats.size() / 3.0));
    }

    /** The same under another name. */
    public LineUp named(String other) {
        return new LineUp(other, floor, seats, gobos, contrast, keep, from, until, plans, setUp);
    }

    /** The same without some of the seats, and without what was wanted of them beside others. */
    public LineUp without(Collection<String> gone) {
        return new LineUp(name, floor, seats.stream().filter(seat -> !gone.contains(seat.id())).toList(), gobos,
                contrast.stream().filter(two -> two.stream().noneMatch(gone::contains)).toList(),
                keep.stream().map(section -> section.stream().filter(seat -> !gone.contains(seat)).toList()).filter(section -> section.size() > 1).toList(),
                from, until, plans, setUp);
    }

    /** The same with other seats. */
    public LineUp seated(List<Seat> others) {
        return new LineUp(name, floor, others, gobos, contrast, keep, from, until, plans, setUp);
    }

    /** The same with another time to set up. */
    public LineUp within(SetUpTime other) {
        return new LineUp(name, floor, seats, gobos, contrast, keep, from, until, plans, other);
    }
}
