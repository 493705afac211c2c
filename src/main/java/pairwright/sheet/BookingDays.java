package pairwright.sheet;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import pairwright.locker.Booking;
import pairwright.locker.Span;
import pairwright.locker.Unit;

/**
 * Bookings on every day they touch, as many as fit on a page.
 *
 * @param nextDay the day with which the next page begins; null where all is shown
 * @param nextSkip how many bookings of that day are on this page
 */
record BookingDays(List<BookingsPage.Day> days, LocalDate nextDay, int nextSkip) {
    static final int ON_A_PAGE = 200;
    private static final int NAMED = 12;

    /**
     * Looks them up.
     *
     * @param unit id of the only unit that counts; null for all
     * @param skip how many bookings of the first day are left out
     */
    static BookingDays of(AtLocker at, LocalDate from, LocalDate until, String unit, int skip) {
        ZoneId zone = at.clock().getZone();
        int most = skip + ON_A_PAGE + 1;
        // in the order they begin, so that of any day that is shown the first are among them, and enough to fill the page
        List<Booking> bookings = at.locker().bookings(new Span(start(from, zone), start(until.plusDays(1), zone)), unit, most);
        Map<String, Unit> units = at.locker().units().stream().collect(Collectors.toMap(Unit::id, Function.identity()));
        List<BookingsPage.Day> days = new ArrayList<>();
        int room = ON_A_PAGE;
        for (LocalDate day = from; !day.isAfter(until); day = day.plusDays(1)) {
            Span whole = new Span(start(day, zone), start(day.plusDays(1), zone));
            List<Booking> all = bookings.stream().filter(booking -> booking.span().touches(whole)).toList();
            int passed = day.equals(from) ? Math.min(skip, all.size()) : 0;
            List<Booking> shown = all.subList(passed, Math.min(all.size(), passed + room));
            if (!shown.isEmpty()) {
                days.add(day(at, day, whole, shown, units));
            }
            room -= shown.size();
            if (passed + shown.size() < all.size()) {
                return new BookingDays(days, day, passed + shown.size());
            }
        }
        return new BookingDays(days, null, 0);
    }

    private static Instant start(LocalDate day, ZoneId zone) {
        return day.atStartOfDay(zone).toInstant();
    }

    private static BookingsPage.Day day(AtLocker at, LocalDate day, Span whole, List<Booking> bookings, Map<String, Unit> units) {
        List<BookingsPage.Line> lines = new ArrayList<>();
        List<BookingsPage.Line> goOn = new ArrayList<>();
        for (Booking booking : bookings) {
            boolean before = booking.span().from().isBefore(whole.from());
            boolean later = booking.span().until().isAfter(whole.until());
            (before && later ? goOn : lines).add(new BookingsPage.Line(at.at().link("/locker/bookings/" + booking.id(), time(at.moments(), booking.span(), before, later)),
                    ReadingWords.heading(booking.kind()), booking.forWhat(), booking.by(),
                    booking.lines().stream().limit(NAMED).map(line -> named(at, line, units.get(line.unit()))).toList(), Math.max(0, booking.lines().size() - NAMED)));
        }
        return new BookingsPage.Day(at.moments().day(day), lines, goOn);
    }

    private static String time(Moments moments, Span span, boolean before, boolean later) {
        if (before) {
            return "since " + moments.moment(span.from()) + ", until " + (later ? moments.moment(span.until()) : moments.time(span.until()));
        }
        return moments.time(span.from()) + (later ? ", until " + moments.moment(span.until()) : " to " + moments.time(span.until()));
    }

    private static BookingsPage.Named named(AtLocker at, Booking.Line line, Unit unit) {
        return unit == null ? new BookingsPage.Named(null, line.label()) : new BookingsPage.Named(at.visit().to("/locker/units/" + unit.id()), unit.label());
    }
}
