package pairwright.cli;

import java.util.List;
import java.util.stream.Collectors;
import pairwright.locker.Booking;

/** Bookings as rows of a table. */
final class BookingText {
    static final List<String> TITLES = List.of("id", "from", "until", "kind", "for", "by", "units");

    private BookingText() {
    }

    static List<List<String>> rows(List<Booking> bookings) {
        return bookings.stream().map(BookingText::row).toList();
    }

    private static List<String> row(Booking booking) {
        return List.of(booking.id(), MomentText.shown(booking.span().from()), MomentText.shown(booking.span().until()), booking.kind().id(), booking.forWhat(),
                booking.by(), booking.lines().stream().map(BookingText::line).collect(Collectors.joining(", ")));
    }

    private static String line(Booking.Line line) {
        return line.unit() + (line.isOut() ? " (out)" : line.returnedAt() != null ? " (back)" : "");
    }
}
