package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.catalogue.CatalogueStore;
import pairwright.model.Catalogue;

class CalendarFeedTest {
    private static final Catalogue CATALOGUE = new CatalogueStore().builtIn();
    private static final Instant NOON = Instant.parse("2026-11-30T12:00:00Z");
    private static final Span MORNING = new Span(Instant.parse("2026-12-01T09:00:00Z"), Instant.parse("2026-12-01T13:30:00Z"));

    private static final Span WEEK = new Span(NOON, NOON.plus(Duration.ofDays(7)));

    private static ICalendar read(String text) {
        ICalendar calendar = Biweekly.parse(text).first();
        assertTrue(calendar.validate(ICalVersion.V2_0).isEmpty(), () -> calendar.validate(ICalVersion.V2_0).toString());
        return calendar;
    }

    private static Unit unit(String id, String label, String storedAt) {
        return new Unit(id, UnitKind.MIC, "long-ribbon", label, null, null, null, Condition.GOOD, null, storedAt, null, null, null, null, List.of(), 1);
    }

    private static Booking booking(String forWhat, String note, Booking.Line... lines) {
        return new Booking("17", List.of(lines), MORNING, BookingKind.SESSION, forWhat, "Asta", note, 4);
    }

    private static Booking.Line line(String unit, String label) {
        return new Booking.Line(unit, MORNING, null, null, null, label);
    }

    @Test
    void oneEntryABookingInPlainWords() {
        Booking booking = booking("sextet, first day", "two rooms; \\ both", line("r-1", "Ribbon 1"),
                new Booking.Line("gone", MORNING, NOON, "Bo", null, "Old one"));
        ICalendar calendar = read(CalendarFeed.ofLocker("barn", WEEK, List.of(booking), List.of(unit("r-1", "Ribbon 1", "Shelf 2, box 3")), NOON));
        VEvent event = calendar.getEvents().get(0);
        assertEquals("booking-17@barn.locker.pairwright", event.getUid().getValue());
        assertEquals("Session: sextet, first day (2 units)", event.getSummary().getValue());
        assertEquals("Booking 17, by Asta.\ntwo rooms; \\ both\n- Ribbon 1: Shelf 2, box 3\n- Old one: out, with Bo", event.getDescription().getValue());
        assertEquals("Shelf 2, box 3", event.getLocation().getValue());
        assertEquals(MORNING.from(), event.getDateStart().getValue().toInstant());
        assertEquals(MORNING.until(), event.getDateEnd().getValue().toInstant());
        assertEquals(NOON, event.getDateTimeStamp().getValue().toInstant());
        assertEquals(4, event.getSequence().getValue());
        assertEquals("PUBLISH", calendar.getMethod().getValue());
    }

    @Test
    void theFeedOfAUnitHasItsOwnTimes() {
        Span early = new Span(MORNING.from(), MORNING.from().plusSeconds(600));
        Booking booking = booking("", null, line("r-2", "Ribbon 2"), new Booking.Line("r-1", early, MORNING.from(), "Bo", early.until(), "Ribbon 1"));
        List<VEvent> events = read(CalendarFeed.ofUnit("barn", List.of(booking), unit("r-1", "Ribbon 1", null), NOON)).getEvents();
        assertEquals(1, events.size());
        assertEquals("booking-17-r-1@barn.locker.pairwright", events.get(0).getUid().getValue());
        assertEquals("Ribbon 1: Session", events.get(0).getSummary().getValue());
        assertEquals(early.until(), events.get(0).getDateEnd().getValue().toInstant());
        assertTrue(events.get(0).getDescription().getValue().endsWith("- Ribbon 1: back"));
        assertEquals(null, events.get(0).getLocation());
    }

    @Test
    void timesAreInUtcAndEveryLineEndsAsTheStandardSays() {
        String text = CalendarFeed.ofLocker("barn", WEEK, List.of(booking("x", null, line("r-1", "R"))), List.of(), NOON);
        assertTrue(text.contains("\r\nDTSTART:20261201T090000Z\r\n") && text.contains("\r\nDTEND:20261201T133000Z\r\n")
                && text.contains("\r\nDTSTAMP:20261130T120000Z\r\n"), text);
        assertTrue(text.startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n") && text.endsWith("END:VCALENDAR\r\n"), text);
        assertFalse(text.replace("\r\n", "").matches("(?s).*[\r\n].*"));
    }

    @Property(tries = 300)
    void anyTextComesBackFromFoldedLines(@ForAll @StringLength(max = 300) String any) {
        String what = any.codePoints().filter(sign -> !Character.isISOControl(sign) && Character.getType(sign) != Character.SURROGATE)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).append("x,;\\n\"x").toString();
        String text = CalendarFeed.ofLocker("barn", WEEK, List.of(booking(what, null, line("r-1", "R"))), List.of(), NOON);
        for (String line : text.split("\r\n")) {
            assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
        }
        String utf8 = new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
        assertEquals("Session: " + what + " (1 unit)", read(utf8).getEvents().get(0).getSummary().getValue());
    }

    @Test
    void linesEndsAndControlCharactersOfATextDoNoHarm() {
        String text = CalendarFeed.ofLocker("barn", WEEK, List.of(booking("a\u0000b\u0007\r\nEND:VEVENT\rc\ud800", null, line("r-1", "R"))), List.of(), NOON);
        List<VEvent> events = read(text).getEvents();
        assertEquals(1, events.size());
        assertEquals("Session: ab\nEND:VEVENT\nc\uFFFD (1 unit)", events.get(0).getSummary().getValue());
        assertEquals(1, Arrays.stream(text.split("\r\n")).filter(line -> line.equals("END:VEVENT")).count());
    }

    @Test
    void aLockerIsReadFromNinetyDaysBackToTwoYearsAhead(@TempDir Path folder) {
        try (Locker locker = Locker.open(Place.in(folder), () -> CATALOGUE, Clock.fixed(NOON, ZoneOffset.UTC))) {
            locker.change(Act.by("Asta"), changes -> {
                changes.add(UnitDraft.mic("r-1", "long-ribbon", "Ribbon, 1"));
                changes.add(UnitDraft.mic("r-2", "long-ribbon", "Ribbon 2"));
                for (int days : List.of(-91, -89, 10, 729, 735)) {
                    Instant from = NOON.plus(Duration.ofDays(days));
                    changes.book(new BookingDraft(days == 10 ? List.of("r-1", "r-2") : List.of("r-1"), from, from.plusSeconds(3600), null, "day " + days, null, null));
                }
                return "";
            });
            assertEquals(List.of("day -89", "day 10", "day 729"), read(CalendarFeed.ofLocker(locker, NOON)).getEvents().stream()
                    .map(event -> event.getSummary().getValue().replaceAll("Session: | \\(.*", "")).toList());
            ICalendar unit = read(CalendarFeed.ofUnit(locker, locker.unit("r-2").orElseThrow(), NOON));
            assertEquals(List.of("Ribbon 2: Session: day 10"), unit.getEvents().stream().map(event -> event.getSummary().getValue()).toList());
            String before = CalendarFeed.ofLocker(locker, NOON);
            locker.change(Act.by("Asta"), changes -> changes.alter("3", new BookingDraft(null, null, null, null, "moved", null, null), null).id());
            VEvent moved = read(CalendarFeed.ofLocker(locker, NOON)).getEvents().get(1);
            VEvent was = read(before).getEvents().get(1);
            assertEquals(was.getUid().getValue(), moved.getUid().getValue());
            assertEquals(was.getSequence().getValue() + 1, moved.getSequence().getValue());
        }
    }

    @Test
    void whereMuchIsBookedTheFeedLooksLessFarAndSaysSo(@TempDir Path folder) {
        try (Locker locker = Locker.open(Place.in(folder), () -> CATALOGUE, Clock.fixed(NOON, ZoneOffset.UTC))) {
            locker.change(Act.by("Asta"), changes -> {
                changes.add(UnitDraft.mic("r-1", "long-ribbon", "Ribbon 1"));
                for (int days : List.of(-80, -20, -3, 1, 2, 3, 20, 80, 300, 700)) {
                    Instant from = NOON.plus(Duration.ofDays(days));
                    changes.book(new BookingDraft(List.of("r-1"), from, from.plusSeconds(3600), null, "day " + days, null, null));
                }
                return "";
            });
            assertFeed(locker, 10, "2026-09-01 to 2028-11-30", -80, -20, -3, 1, 2, 3, 20, 80, 300, 700);
            assertFeed(locker, 9, "2026-09-01 to 2027-11-30", -80, -20, -3, 1, 2, 3, 20, 80, 300);
            assertFeed(locker, 8, "2026-10-31 to 2027-02-28", -20, -3, 1, 2, 3, 20, 80);
            assertFeed(locker, 6, "2026-11-23 to 2026-12-28", -3, 1, 2, 3, 20);
            assertFeed(locker, 3, "2026-11-29 to 2026-12-07", 1, 2, 3);
            assertFeed(locker, 2, "2026-11-29 to 2026-12-07", 1, 2);
        }
    }

    private static void assertFeed(Locker locker, int most, String says, Integer... days) {
        ICalendar calendar = read(CalendarFeed.ofLocker(locker, NOON, most));
        assertEquals("Bookings from " + says + ".", calendar.getDescriptions().get(0).getValue());
        assertEquals(List.of(days), calendar.getEvents().stream().map(event -> Integer.valueOf(event.getSummary().getValue().replaceAll(".*day (-?\\d+) .*", "$1"))).toList());
    }

    @Test
    void nothingIsLogged() {
        List<LogRecord> records = new ArrayList<>();
        Handler listener = new Handler() {
            @Override
            public void publish(LogRecord record) {
                records.add(record);
            }

            @Override
            public void flush() {
            }

            @Override
            public void close() {
            }
        };
        Logger root = Logger.getLogger("");
        root.addHandler(listener);
        try {
            CalendarFeed.ofLocker("barn", WEEK, List.of(booking("x\u0000", null, line("r-1", "R"))), List.of(), NOON);
        } finally {
            root.removeHandler(listener);
        }
        assertEquals(List.of(), records);
    }
}
