package pairwright.cli;

import java.util.List;
import java.util.stream.Collectors;
import pairwright.locker.Booking;

/** Bookings as rows of a table. */
final class BookingText {
    private static final List<String> TITLES = List.of("id", "from", "until", "kind", "for", "by");

    private BookingText() {
    }

    /** What each takes stands below its row: in a column of their own nineteen units would be a page. */
    static String table(List<Booking> bookings) {
        return Columns.of(TITLES, bookings.stream().map(BookingText::row).toList(), bookings.stream().map(BookingText::units).toList());
    }

    private static String units(Booking booking) {
        return booking.lines().stream().map(BookingText::line).collect(Collectors.joining(", "));
    }

    private static List<String> row(Booking booking) {
        return List.of(booking.id(), MomentText.shown(booking.span().from()), MomentText.shown(booking.span().until()), booking.kind().id(), booking.forWhat(),
                booking.by());
    }

    private static String line(Booking.Line line) {
        return line.unit() + (line.isOut() ? " (out)" : line.returnedAt() != null ? " (back)" : "");
    }
}
