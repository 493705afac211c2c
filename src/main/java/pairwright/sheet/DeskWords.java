package pairwright.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import pairwright.locker.Booking;
import pairwright.locker.BookingKind;
import pairwright.locker.Condition;
import pairwright.locker.Event;
import pairwright.locker.Out;
import pairwright.locker.Unit;
import pairwright.model.MicType;
import pairwright.sheet.ReadingParts.Link;

/** What the desk says of units that went out or came back, and of those that somebody has. */
final class DeskWords {
    private static final int LOOKED_THROUGH = 200;
    private static final int MOST_EVENTS = 6;
    private static final int MOST_NAMED = 8;
    private static final List<String> MOVES = List.of("took out", "brought back");

    private final AtLocker at;

    DeskWords(AtLocker at) {
        this.at = at;
    }

    /** The line of a unit in a booking; null where there is none. */
    static Booking.Line line(Booking booking, String unit) {
        return booking == null ? null : booking.lines().stream().filter(line -> line.unit().equals(unit)).findFirst().orElse(null);
    }

    /** What was done with a unit, as it is by now; empty where the booking knows nothing of it. */
    String done(boolean out, Booking booking, String unit) {
        Booking.Line line = line(booking, unit);
        if (line == null || line.takenAt() == null || !out && line.isOut()) {
            return "";
        }
        if (line.isOut()) {
            return line.label() + " is out " + with(booking, line) + "; due back " + at.moments().moment(line.span().until()) + ".";
        }
        if (out) {
            return line.label() + " went out " + with(booking, line) + ", and came back " + at.moments().moment(line.returnedAt()) + ".";
        }
        boolean late = line.returnedAt().isAfter(line.span().until());
        return line.label() + " is back from " + line.takenBy() + (booking.forWhat().isEmpty() ? "" : ", " + booking.forWhat())
                + (late ? "; it was due " + at.moments().moment(line.span().until()) : "") + ".";
    }

    private static String with(Booking booking, Booking.Line line) {
        return "with " + line.takenBy() + (!booking.forWhat().isEmpty() ? ", for " + booking.forWhat()
                : booking.kind() == BookingKind.LOAN ? ", on loan" : ", for a " + booking.kind().id());
    }

    /** How the rest of the booking stands: what is still to go out, or to come back; empty for a booking of one unit. */
    static String rest(boolean out, Booking booking) {
        if (booking.lines().size() < 2) {
            return "";
        }
        Predicate<Booking.Line> open = out ? line -> line.takenAt() == null : Booking.Line::isOut;
        List<String> labels = booking.lines().stream().filter(open).map(Booking.Line::label).toList();
        if (labels.isEmpty()) {
            return out ? "That was the last one of its booking." : "Nothing else of its booking is out.";
        }
        String named = labels.stream().limit(MOST_NAMED).collect(Collectors.joining(", "));
        return (out ? "Still here for the same booking: " : "Still out of the same booking: ") + named
                + (labels.size() > MOST_NAMED ? " and " + (labels.size() - MOST_NAMED) + " more" : "") + ".";
    }

    /** What whoever carries a unit must know: what is written of this one first, then how its type is handled. */
    List<String> handling(Unit unit) {
        List<String> all = new ArrayList<>();
        if (unit.note() != null) {
            all.add(SendForm.sentence(unit.condition() == Condition.LIMITED ? "Limited: " + unit.note() : unit.note()));
        }
        MicType type = unit.micType() == null ? null : at.known().catalogue().mics().get(unit.micType());
        if (type != null) {
            all.addAll(at.measures().sentences(type.handling()));
        }
        return all;
    }

    /** "Sextet, day 1, by Ines, tomorrow 10:00 to 18:00". */
    String booked(Booking booking) {
        return UnitStates.what(booking) + ", " + at.moments().span(booking.span());
    }

    /** A unit somebody has. */
    DeskPage.Row row(Out out) {
        String due = at.moments().moment(out.line().span().until());
        return new DeskPage.Row(out.unit().id(), UnitsPage.link(at, out.unit().id(), out.unit().label()),
                Objects.requireNonNullElse(out.line().takenBy(), out.booking().by()),
                out.booking().forWhat().isEmpty() ? ReadingWords.heading(out.booking().kind()) : out.booking().forWhat(), due, out.overdue(),
                UUID.randomUUID().toString());
    }

    /** The last units that went out or came back today, newest first. */
    List<HistoryPage.Line> today() {
        LocalDate today = at.now().atZone(at.clock().getZone()).toLocalDate();
        List<Event> moves = at.locker().history(null, null, LOOKED_THROUGH).stream().filter(event -> MOVES.contains(event.what()))
                .filter(event -> event.at().atZone(at.clock().getZone()).toLocalDate().equals(today)).limit(MOST_EVENTS).toList();
        return HistoryPage.lines(at, moves);
    }

    /** "2 units are overdue", leading to the desk; null where none is. */
    static Link overdue(AtLocker at, List<Out> out) {
        long late = out.stream().filter(Out::overdue).count();
        return late == 0 ? null : at.at().link(DeskPage.ADDRESS + "?way=" + DeskForm.BACK, late == 1 ? "1 unit is overdue" : late + " units are overdue");
    }
}
