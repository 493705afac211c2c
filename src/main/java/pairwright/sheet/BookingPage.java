package pairwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.locker.Booking;
import pairwright.locker.Event;
import pairwright.locker.Unit;
import pairwright.sheet.ReadingParts.Fact;
import pairwright.sheet.ReadingParts.Link;

/** One booking: what, who, when, its units and what was done with it. */
public final class BookingPage {
    private static final int OK = 200;
    private static final int GONE = 404;
    /** As somebody walks who fetches them: what has no place comes last. */
    private static final Comparator<Line> BY_PLACE = Comparator.comparing((Line line) -> line.storedAt().isEmpty()).thenComparing(Line::storedAt);
    private static final int MOST_EVENTS = 20;
    private static final Map<String, String> DONE = Map.of("booked", "It is booked.", "altered", "The booking was altered.",
            "given-back", "What nobody had taken is free again. What was taken and came back stays written down here.");

    private BookingPage() {
    }

    /**
     * A unit of it.
     *
     * @param href null where it has left the locker since
     * @param tag by which it is found; empty for none
     * @param word how it is with it: out, overdue, back or not taken
     */
    public record Line(String href, String label, String tag, String word, String says, String storedAt) {
    }

    /**
     * What it shows.
     *
     * @param overdue in a sentence, which comes first; empty for nothing overdue
     * @param notes what to know of its times
     * @param asReader why nothing can be done with it; empty for whoever may
     * @param writes what can be done with it; empty for a reader
     */
    public record Content(String kind, String span, String overdue, List<String> notes, String asReader, List<Link> writes, List<Fact> facts, List<Line> lines, List<HistoryPage.Line> history,
            Link allHistory, List<Link> more) {
    }

    /** A booking that is not there any more: what became of it. */
    public record Gone(List<HistoryPage.Line> history, Link allHistory, Link all, Link anew) {
    }

    /** The page; null for no such booking. */
    public static Page of(AtLocker at, String id) {
        Booking booking = at.locker().booking(id).orElse(null);
        if (booking == null) {
            return null;
        }
        Map<String, Unit> units = at.locker().units().stream().collect(Collectors.toMap(Unit::id, unit -> unit));
        Content content = new Content(ReadingWords.heading(booking.kind()), at.moments().span(booking.span()), overdue(at, booking, units),
                Stream.of(booking.span().from(), booking.span().until()).map(moment -> BookingTimes.twice(at, moment)).filter(note -> !note.isEmpty()).toList(),
                at.asReader("engineers alter and cancel bookings"), writes(at, booking), facts(booking), booking.lines().stream().map(line -> line(at, booking, line, units.get(line.unit()))).sorted(BY_PLACE).toList(),
                HistoryPage.lines(at, at.locker().history(id, null, MOST_EVENTS)), at.at().link("/locker/history?about=" + id, "All of its history"), more(at, booking));
        String done = Objects.requireNonNullElse(at.visit().first("done"), "");
        return at.page(OK, "booking", at.frame(booking.forWhat().isEmpty() ? "Booking " + id : booking.forWhat(), "bookings", List.of(at.at().link("/locker/bookings", "Bookings")),
                DONE.getOrDefault(done, "")), "booking", content);
    }

    /**
     * What became of a booking that is not there; null where nothing is known of it.
     *
     * @param typed what somebody typed to alter it, so that it can be booked anew; null for nothing
     */
    public static Page gone(AtLocker at, String id, Sent typed) {
        // an id of digits alone is never that of a unit
        List<Event> events = id.matches("\\d{1,18}") ? at.locker().history(id, null, MOST_EVENTS) : List.of();
        if (events.isEmpty()) {
            return null;
        }
        Link anew = typed == null || !at.mayWrite() ? null : at.at().link(BookingTyped.of(typed).address("/locker/bookings/new", null), "Book what you typed as a new one");
        return at.page(GONE, "booking-gone", at.frame("Booking " + id + " is not there any more", "bookings", List.of(at.at().link("/locker/bookings", "Bookings")), ""), "gone",
                new Gone(HistoryPage.lines(at, events), at.at().link("/locker/history?about=" + id, "All of its history"), at.at().link("/locker/bookings", "What is booked"), anew));
    }

    private static String overdue(AtLocker at, Booking booking, Map<String, Unit> units) {
        List<String> late = booking.lines().stream().filter(line -> isOverdue(at, line)).map(line -> label(line, units.get(line.unit())) + ", with " + line.takenBy()).toList();
        return late.isEmpty() ? "" : "Overdue since " + at.moments().moment(booking.span().until()) + ": " + String.join("; ", late) + ".";
    }

    private static boolean isOverdue(AtLocker at, Booking.Line line) {
        return line.isOut() && !line.span().until().isAfter(at.now());
    }

    private static List<Fact> facts(Booking booking) {
        List<Fact> facts = new ArrayList<>(List.of(new Fact("By", booking.by(), "")));
        if (booking.note() != null) {
            facts.add(new Fact("Note", booking.note(), ""));
        }
        facts.add(new Fact("Booking number", booking.id(), "To say on the telephone, or type at the terminal."));
        return facts;
    }

    private static List<Link> writes(AtLocker at, Booking booking) {
        List<Link> writes = new ArrayList<>();
        if (at.mayWrite()) {
            writes.add(at.at().link("/locker/bookings/" + booking.id() + "/alter", "Alter it"));
            writes.add(at.at().link("/locker/bookings/" + booking.id() + "/cancel", "Cancel it"));
        }
        return writes;
    }

    private static List<Link> more(AtLocker at, Booking booking) {
        String day = at.moments().date(booking.span().from());
        return List.of(at.at().link("/locker/bookings?from=" + day + "&until=" + day, "All that is booked on that day"),
                new Link("/api/locker/calendar.ics", "Calendar feed of the whole locker"));
    }

    private static String label(Booking.Line line, Unit unit) {
        return unit == null ? line.label() : unit.label();
    }

    private static Line line(AtLocker at, Booking booking, Booking.Line line, Unit unit) {
        String tag = unit == null || unit.tag() == null ? "" : unit.tag();
        String storedAt = unit == null || unit.storedAt() == null ? "" : unit.storedAt();
        String href = unit == null ? null : at.visit().to("/locker/units/" + unit.id());
        String label = label(line, unit);
        Moments moments = at.moments();
        if (line.isOut()) {
            return new Line(href, label, tag, isOverdue(at, line) ? "overdue" : "out", "with " + line.takenBy() + " since " + moments.moment(line.takenAt()) + ", due "
                    + moments.moment(line.span().until()), storedAt);
        }
        if (line.returnedAt() != null) {
            return new Line(href, label, tag, "back", "since " + moments.moment(line.returnedAt()) + "; " + line.takenBy() + " took it " + moments.moment(line.takenAt()), storedAt);
        }
        boolean over = !booking.span().until().isAfter(at.now());
        return new Line(href, label, tag, over ? "was not taken" : "not taken yet", unit == null ? "It has left the locker since." : unit.condition().usable() ? ""
                : "Now " + ReadingWords.words(unit.condition()) + ".", storedAt);
    }
}
