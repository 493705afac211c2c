package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.http.LockerSite.Got;
import pairwright.locker.Act;
import pairwright.locker.Booking;
import pairwright.locker.BookingDraft;
import pairwright.locker.BookingKind;
import pairwright.locker.Condition;
import pairwright.locker.Locker;
import pairwright.locker.Out;
import pairwright.locker.Place;
import pairwright.locker.UnitDraft;

/** The desk, over HTTP, with a real locker behind it. */
class LockerDeskPageTest {
    private static final Act INES = Act.by("Ines");
    private static final String DESK = "/locker/desk";

    @TempDir
    private Path data;
    private LockerSite site;

    @BeforeEach
    void open() {
        site = new LockerSite(data);
        site.locker.change(INES, changes -> {
            changes.add(unit("ribbon-1", "long-ribbon", "Ribbon 1", "B-1", "11").matchedWith("ribbon-2"));
            changes.add(unit("ribbon-2", "long-ribbon", "Ribbon 2", "B-2", "12").in(Condition.LIMITED, "Hums near the lamp"));
            changes.add(unit("hand-1", "handheld-moving-coil", "Hand", "B-3", "21"));
            changes.add(unit("hand-2", "handheld-moving-coil", "Hand", "B-4", "22"));
            changes.add(unit("hand-3", "handheld-moving-coil", "Hand 3", "B-5", null).in(Condition.IN_REPAIR, "No sound"));
            changes.add(unit("hand-4", "handheld-moving-coil", "Hand 4", "B-6", null).in(Condition.LOST, null));
            return "";
        });
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void aBookedUnitGoesOutByWhatIsScannedAndTheNextCanFollow() {
        book(List.of("ribbon-1", "ribbon-2"), -600, 7200, "Sextet, day 1");
        Got desk = site.get(DESK);
        assertEquals("Desk", desk.page().page().select(".locker-menu [aria-current=page]").text());
        assertTrue(desk.page().page().selectFirst("#scanned").hasAttr("autofocus"));
        assertEquals("Take out", desk.page().page().selectFirst("form#desk button").text());
        Got done = scan(desk, "b-2", Map.of("by", "Ines"));
        assertEquals(303, done.status(), done.text());
        Got next = site.get(done.location());
        String says = said(next);
        assertTrue(says.startsWith("Ribbon 2 is out with Ines, for Sextet, day 1; due back "), says);
        assertTrue(next.text().contains("Still here for the same booking: Ribbon 1."), next.text());
        assertEquals("", next.page().page().select("#scanned").attr("value"));
        assertEquals("Ines", next.page().page().select("#by").attr("value"), "the name stays");
        assertEquals("just-done handling", next.page().page().select("#scanned").attr("aria-describedby"));
        assertEquals("Handle Ribbon 2 so", next.page().page().select("section.care h2").text());
        List<String> cautions = next.page().page().select("section.care li").eachText();
        assertEquals("Limited: Hums near the lamp.", cautions.get(0));
        assertTrue(cautions.stream().anyMatch(one -> one.contains("phantom power")), cautions.toString());
        assertEquals(List.of("Ribbon 2"), next.page().page().select("table.out-now tbody th").eachText());
        assertTrue(next.page().page().select(".events li").text().contains("Ines took out Ribbon 2"), next.text());
        Got last = site.get(scan(next, "11", Map.of()).location());
        assertTrue(last.text().contains("That was the last one of its booking."), last.text());
        assertEquals(List.of(), last.page().faults());
    }

    @Test
    void aUnitComesBackByScanOrByTheButtonInTheListAndTheWayStays() {
        book(List.of("ribbon-1", "ribbon-2"), -600, 7200, "Sextet, day 1");
        take("ribbon-1");
        take("ribbon-2");
        Got desk = site.get(DESK + "?way=back");
        assertEquals("Bring back", desk.page().page().selectFirst("form#desk button").text());
        Got back = site.get(scan(desk, "Ribbon 1", Map.of()).location());
        assertEquals("Ribbon 1 is back from Ines, Sextet, day 1.", said(back));
        assertTrue(back.text().contains("Still out of the same booking: Ribbon 2."), back.text());
        assertTrue(back.page().links().contains("/locker/units/ribbon-1/alter"), "what is wrong with it can be said");
        assertEquals("Bring back", back.page().page().selectFirst("form#desk button").text());
        Got going = site.get(DESK + "?way=out&by=Cleo");
        Map<String, String> row = LockerSite.fields(going.page().page().selectFirst("table.out-now form"), Map.of());
        row.put("do", "back");
        Got pressed = site.get(site.post(DESK, row).location());
        assertEquals("Ribbon 2 is back from Ines, Sextet, day 1.", said(pressed));
        assertEquals("Take out", pressed.page().page().selectFirst("form#desk button").text(), "the list does not turn the way");
        assertEquals("Cleo", pressed.page().page().select("#by").attr("value"));
        assertEquals(List.of(), out());
        assertTrue(pressed.text().contains("Nothing is out."));
    }

    @Test
    void aFormThatIsSentTwiceSaysTheSameAndIsDoneOnce() {
        book(List.of("ribbon-1"), -600, 7200, "Sextet, day 1");
        Got desk = site.get(DESK);
        String first = scan(desk, "B-1", Map.of("by", "Ines")).location();
        assertEquals(first, scan(desk, "B-1", Map.of("by", "Ines")).location());
        assertEquals(1, site.locker.history("ribbon-1", null, 50).stream().filter(event -> event.what().equals("took out")).count());
        Got other = scan(desk, "B-3", Map.of("by", "Ines"));
        assertEquals(422, other.status());
        assertTrue(told(other).contains("was sent before with something else"), other.text());
        Got backForm = site.get(DESK + "?way=back");
        String back = scan(backForm, "B-1", Map.of()).location();
        assertEquals(back, scan(backForm, "B-1", Map.of()).location());
        assertTrue(said(site.get(first)).startsWith("Ribbon 1 went out with Ines, for Sextet, day 1, and came back today"), said(site.get(first)));
    }

    @Test
    void whereNoBookingHasItTheEndIsAskedForAndStaysForTheNext() {
        Got asked = scan(site.get(DESK), "B-3", Map.of("by", "Cleo"));
        assertEquals(400, asked.status());
        assertTrue(told(asked).contains("No booking has Hand within a day"), told(asked));
        assertEquals("B-3", asked.page().page().select("#scanned").attr("value"));
        assertEquals("Cleo", asked.page().page().select("#by").attr("value"));
        Instant offered = local(asked.page().page().select("#until").attr("value"));
        Duration ahead = Duration.between(Instant.now(), offered);
        assertTrue(ahead.compareTo(Duration.ofMinutes(238)) > 0 && ahead.compareTo(Duration.ofMinutes(256)) < 0, ahead.toString());
        assertEquals("told", asked.page().page().select("#scanned").attr("aria-describedby"));
        Got done = site.send(asked, "desk", Map.of());
        assertEquals(303, done.status(), done.text());
        Got next = site.get(done.location());
        assertTrue(said(next).startsWith("Hand is out with Cleo, on loan; due back "), said(next));
        assertEquals(303, scan(next, "B-4", Map.of()).status(), "the end stays for the next unit");
        assertEquals(List.of(offered, offered), out().stream().map(one -> one.line().span().until()).toList());
    }

    @Test
    void anEndThatCannotBeIsToldAtItsField() {
        Got no = scan(site.get(DESK), "B-3", Map.of("until", "soon"));
        assertEquals(400, no.status());
        assertTrue(told(no).contains("\u201csoon\u201d is no time"), told(no));
        assertEquals("true", no.page().page().select("#until").attr("aria-invalid"));
        assertEquals("soon", no.page().page().select("#until").attr("value"));
        Got past = scan(no, "B-3", Map.of("until", field(Instant.now().minus(2, ChronoUnit.HOURS))));
        assertEquals(400, past.status());
        assertTrue(told(past).contains("has passed"), told(past));
        Got far = scan(past, "B-3", Map.of("until", "2090-01-01T10:00"));
        assertEquals(400, far.status());
        assertTrue(told(far).contains("ten years"), told(far));
        assertEquals(List.of(), out());
        assertEquals("", site.get(DESK + "?until=2020-01-01T10:00").page().page().select("#until").attr("value"), "a time that passed is in nobody's way");
    }

    @Test
    void whatIsNotFoundOrFoundTwiceIsToldAndOneCanBeChosen() {
        Got none = scan(site.get(DESK), "", Map.of());
        assertEquals(400, none.status());
        assertTrue(told(none).contains("Nothing was scanned"), told(none));
        Got unknown = scan(none, "<B-99>", Map.of("by", "Cleo"));
        assertEquals(400, unknown.status());
        assertTrue(told(unknown).contains("No unit has the tag, serial, label or id \u201c<B-99>\u201d"), told(unknown));
        assertTrue(unknown.page().links().contains("/locker?words=%3CB-99%3E"), unknown.page().links().toString());
        Got several = scan(unknown, "hand", Map.of("until", field(Instant.now().plus(2, ChronoUnit.HOURS))));
        assertEquals(400, several.status());
        assertEquals(List.of("Hand, tag B-3, serial 21", "Hand, tag B-4, serial 22"), several.page().page().select(".choose button").eachText());
        assertEquals("Take out", several.page().page().selectFirst("form#desk button").text(), "Enter in the field must not choose for anybody");
        Got done = press(several, "hand-2");
        assertEquals(303, done.status(), done.text());
        assertEquals(List.of("hand-2"), out().stream().map(one -> one.unit().id()).toList());
        assertEquals("Cleo", out().get(0).line().takenBy());
    }

    @Test
    void whatIsOutAlreadyOrNotOutIsToldWithAButtonForTheOtherWay() {
        book(List.of("ribbon-1"), -600, 7200, "Sextet, day 1");
        take("ribbon-1");
        Got already = scan(site.get(DESK), "B-1", Map.of());
        assertEquals(409, already.status());
        assertTrue(told(already).contains("Ribbon 1 is out already, with Ines for Sextet, day 1, by Ines, due "), told(already));
        Got back = press(already, "back");
        assertEquals("Ribbon 1 is back from Ines, Sextet, day 1.", said(site.get(back.location())));
        Got notOut = scan(site.get(DESK + "?way=back"), "B-2", Map.of());
        assertEquals(409, notOut.status());
        assertTrue(told(notOut).contains("Ribbon 2 is not out"), told(notOut));
        Got asked = press(notOut, "out");
        assertEquals(400, asked.status());
        assertTrue(told(asked).contains("say when it comes back"), told(asked));
    }

    @Test
    void whatSomebodyElseBookedIsAskedAboutOnceForEachBooking() {
        String booking = book(List.of("ribbon-1", "ribbon-2", "hand-1"), 3600, 7200, "Sextet, day 1");
        Got asked = scan(site.get(DESK), "B-1", Map.of("by", "Cleo"));
        assertEquals(409, asked.status());
        assertTrue(told(asked).contains("Ribbon 1 is booked for Sextet, day 1, by Ines"), told(asked));
        assertEquals(List.of(), out(), "nothing is taken while it is asked");
        Got yes = press(asked, booking);
        assertEquals(303, yes.status(), yes.text());
        Got next = site.get(yes.location());
        assertTrue(said(next).startsWith("Ribbon 1 is out with Cleo, for Sextet, day 1"), said(next));
        Got second = scan(next, "B-2", Map.of());
        assertEquals(303, second.status(), "it was said once for the whole booking");
        assertEquals(List.of(booking, booking), out().stream().map(one -> one.booking().id()).toList());
        Got third = scan(site.get(DESK), "B-3", Map.of("by", "Cleo"));
        Instant begins = site.locker.booking(booking).orElseThrow().span().from();
        assertEquals(field(begins), third.page().page().select("#until").attr("value"), "an end is offered that leaves the booking alone");
        Got lent = press(third, "yes");
        assertEquals(303, lent.status(), lent.text());
        Booking loan = out().stream().filter(one -> one.unit().id().equals("hand-1")).findFirst().orElseThrow().booking();
        assertEquals(BookingKind.LOAN, loan.kind());
        assertEquals(303, scan(site.get(DESK), "B-4", Map.of("by", "INES", "until", field(Instant.now().plus(2, ChronoUnit.HOURS)))).status());
    }

    @Test
    void whatIsInRepairOrLostStaysAndTheWayOnIsShown() {
        for (Map.Entry<String, String> one : Map.of("B-5", "Hand 3 is in repair: No sound.", "B-6", "Hand 4 is down as lost.").entrySet()) {
            Got told = scan(site.get(DESK), one.getKey(), Map.of());
            assertEquals(409, told.status());
            assertTrue(told(told).contains(one.getValue()), told(told));
            assertTrue(told.page().page().select("#told a").attr("href").endsWith("/alter"));
        }
        book(List.of("hand-3"), -600, 7200, "Capsule", BookingKind.REPAIR);
        assertEquals(303, scan(site.get(DESK), "B-5", Map.of()).status(), "to the workshop it may go");
    }

    @Test
    void theLongestOverdueComesFirstAndIsToldByWordsHereAndAtTheUnits() {
        site.close();
        try (Locker past = Locker.open(Place.in(data), () -> Serving.KNOWLEDGE.current().catalogue(), Clock.offset(Clock.systemDefaultZone(), Duration.ofHours(-30)))) {
            Instant then = past.now();
            past.change(INES, changes -> {
                changes.takeOut("hand-1", "Bram", then.plus(20, ChronoUnit.HOURS));
                changes.takeOut("hand-2", "Cleo", then.plus(2, ChronoUnit.HOURS));
                changes.takeOut("ribbon-2", "Ines", then.plus(90, ChronoUnit.HOURS));
                return "";
            });
        }
        site = new LockerSite(data);
        Got desk = site.get(DESK);
        assertEquals("Out now: 3, of which 2 overdue", desk.page().page().select("#out-now").text());
        assertEquals(List.of("Cleo", "Bram", "Ines"), desk.page().page().select("table.out-now td[data-label=With]").eachText());
        List<String> due = desk.page().page().select("table.out-now td[data-label='Due back']").eachText();
        assertTrue(due.get(0).startsWith("overdue since") && due.get(1).startsWith("overdue since") && !due.get(2).contains("overdue"), due.toString());
        assertEquals(List.of("Back: Hand", "Back: Hand", "Back: Ribbon 2"), desk.page().page().select("table.out-now button").eachText());
        Got units = site.get("/locker");
        assertEquals("2 units are overdue", units.page().page().select("main .care a[href^=/locker/desk]").text());
        Got back = site.get(scan(site.get(DESK + "?way=back"), "B-4", Map.of()).location());
        assertTrue(said(back).startsWith("Hand is back from Cleo; it was due "), said(back));
        assertEquals(List.of(), back.page().faults());
    }

    @Test
    void noAddressMakesThePageSayWhatIsNotSo() {
        String booking = book(List.of("ribbon-1"), 3600, 7200, "Sextet, day 1");
        for (String query : List.of("did=out&unit=ribbon-1&booking=" + booking, "did=back&unit=ribbon-1&booking=" + booking, "did=out&unit=%3Cb%3E&booking=77",
                "did=out&unit=ribbon-1&booking=" + "9".repeat(40), "did=x&way=y&for=nothing&until=never", "by=%3Cscript%3E")) {
            Got page = site.get(DESK + "?" + query);
            assertEquals(200, page.status(), query);
            assertTrue(page.page().page().select("[role=status]").isEmpty(), query);
            assertEquals(List.of(), page.page().faults(), query);
        }
    }

    @Test
    void everyStateIsWrittenAsItShouldBeInMetresAndInFeet() {
        book(List.of("ribbon-1", "ribbon-2"), -600, 7200, "Sextet <1>");
        Got desk = site.get(DESK + "?units=imperial");
        Got done = scan(desk, "B-1", Map.of());
        assertTrue(done.location().contains("units=imperial"), done.location());
        Got next = site.get(done.location());
        assertEquals(List.of(), next.page().faults());
        assertTrue(next.page().page().select(".ways a").eachAttr("href").stream().allMatch(link -> link.contains("units=imperial")));
        for (Got told : List.of(scan(next, "hand", Map.of()), scan(next, "B-1", Map.of()), scan(next, "B-5", Map.of()), scan(next, "B-3", Map.of("until", "x")))) {
            assertEquals(List.of(), told.page().faults());
            assertFalse(told.page().page().select("#told").isEmpty());
        }
    }

    private Got scan(Got page, String text, Map<String, String> also) {
        Map<String, String> filled = new HashMap<>(also);
        filled.put("scanned", text);
        return site.send(page, "desk", filled);
    }

    /** Presses one of the buttons that answer what is asked, by its value. */
    private Got press(Got page, String value) {
        var button = page.page().page().select(".choose button[value=" + value + "]").first();
        Map<String, String> fields = LockerSite.fields(page.page().page().selectFirst("form#desk"), Map.of());
        fields.put(button.attr("name"), value);
        return site.post(DESK, fields);
    }

    private static String said(Got page) {
        return page.page().page().select("[role=status]").text();
    }

    private static String told(Got page) {
        return page.page().page().select("#told[role=alert]").text();
    }

    private List<Out> out() {
        return site.locker.out();
    }

    private void take(String unit) {
        site.locker.change(INES, changes -> changes.takeOut(unit, null, null).id());
    }

    private String book(List<String> units, long fromS, long untilS, String what) {
        return book(units, fromS, untilS, what, BookingKind.SESSION);
    }

    private String book(List<String> units, long fromS, long untilS, String what, BookingKind kind) {
        Instant now = Instant.now().truncatedTo(ChronoUnit.MINUTES);
        return site.locker.change(INES, changes -> changes.book(new BookingDraft(units, now.plusSeconds(fromS), now.plusSeconds(untilS), kind, what, "Ines", null)).id()).text();
    }

    private static UnitDraft unit(String id, String type, String label, String tag, String serial) {
        UnitDraft plain = UnitDraft.mic(id, type, label);
        return new UnitDraft(id, plain.kind(), type, label, serial, tag, null, null, null, null, null, null, null, null, null);
    }

    private static String field(Instant at) {
        return at.atZone(ZoneId.systemDefault()).toLocalDateTime().truncatedTo(ChronoUnit.MINUTES).toString();
    }

    private static Instant local(String field) {
        return LocalDateTime.parse(field).atZone(ZoneId.systemDefault()).toInstant();
    }
}
