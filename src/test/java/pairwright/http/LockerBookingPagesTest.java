package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Element;
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
import pairwright.locker.Place;
import pairwright.locker.Role;
import pairwright.locker.Span;
import pairwright.locker.UnitDraft;
import pairwright.locker.UnitKind;

/** The pages of bookings, over HTTP, with a real locker behind them. */
class LockerBookingPagesTest {
    private static final Act ADA = Act.by("Ada");
    private static final String NEW = "/locker/bookings/new";

    @TempDir
    private Path data;
    private LockerSite site;
    private ZonedDateTime hour;

    @BeforeEach
    void open() {
        site = new LockerSite(data);
        hour = ZonedDateTime.now(ZoneId.systemDefault()).truncatedTo(ChronoUnit.HOURS).plusHours(1);
        site.locker.change(ADA, changes -> {
            changes.add(UnitDraft.mic("ribbon-1", "long-ribbon", "Ribbon 1").matchedWith("ribbon-2"));
            changes.add(UnitDraft.mic("pencil-9", "small-condenser-omni", "Pencil 9"));
            changes.add(UnitDraft.mic("ribbon-10", "long-ribbon", "Ribbon 10"));
            changes.add(UnitDraft.mic("ribbon-2", "long-ribbon", "Ribbon 2"));
            changes.add(UnitDraft.mic("ribbon-3", "long-ribbon", "Ribbon 3").in(Condition.LIMITED, "Hums a little"));
            changes.add(UnitDraft.mic("torn", "long-ribbon", "Torn one").in(Condition.IN_REPAIR, "No sound"));
            return "";
        });
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void theFormBeginsWithTheNextHourAndOffersWhatIsFree() {
        Got form = site.get(NEW);
        assertEquals(200, form.status(), form.text());
        assertEquals(List.of(), form.page().faults());
        assertEquals(local(hour), value(form, "from"));
        assertEquals(local(hour.plusHours(4)), value(form, "until"));
        assertEquals(2, form.page().page().select("fieldset.type").size());
        assertTrue(form.page().page().select("fieldset.type > legend").eachText().contains("Long passive ribbon, figure-8 4 of 5 free"), form.page().page().select("fieldset.type > legend").eachText().toString());
        Element pair = form.page().page().selectFirst("li.pair");
        assertEquals(List.of("Ribbon 1", "Ribbon 2"), pair.select("label").eachText(), "mates stand beside each other");
        assertTrue(pair.text().contains("matched pair"), pair.text());
        assertEquals("Limited: Hums a little", form.page().page().select("#tick-ribbon-3--says").text());
        assertTrue(form.page().page().select("#tick-torn").isEmpty());
        assertTrue(form.page().page().select("section[aria-labelledby=taken]").text().contains("Torn one in repair"), form.text());
        assertEquals("Bookings", form.page().page().select(".locker-menu [aria-current]").text());
    }

    @Test
    void anAddressSaysWhatStandsInTheForm() {
        Got form = site.get(NEW + "?from=2031-05-02T10:00&until=2031-05-02T12:30&unit=ribbon-1&unit=pencil-9&micType=long-ribbon&kind=lab&for=Class&by=Ben&note=Bring+two");
        assertEquals(200, form.status(), form.text());
        assertEquals(List.of("2031-05-02T10:00", "2031-05-02T12:30", "Class", "Ben", "Bring two"),
                List.of(value(form, "from"), value(form, "until"), value(form, "for"), value(form, "by"), value(form, "note")));
        assertEquals("lab", form.page().page().select("#kind option[selected]").attr("value"));
        assertEquals(List.of("ribbon-1", "pencil-9"), ticked(form).stream().sorted((one, other) -> other.compareTo(one)).toList(), "a chosen unit stays whatever is shown");
        Got only = site.get(NEW + "?micType=small-condenser-omni");
        assertEquals(List.of("Pencil 9"), only.page().page().select(".ticks label").eachText());
        Got offset = site.get(NEW + "?from=" + hour.plusDays(3).toOffsetDateTime().toString().replace("+", "%2B"));
        assertEquals(local(hour.plusDays(3)), value(offset, "from"), "a time with its offset is taken as well");
        assertEquals(local(hour.plusDays(3).plusHours(4)), value(offset, "until"));
        assertTrue(site.get(NEW + "?kind=repair").page().page().select("#tick-torn").hasAttr("name"), "what is in repair can be booked for that");
    }

    @Test
    void aTimeIsLookedAtAnewWithoutLosingWhatWasTyped() {
        book(hour.plusDays(1), 4, "ribbon-1");
        Got looked = site.look(site.get(NEW), "booking", Map.of("from", local(hour.plusDays(1)), "until", local(hour.plusDays(1).plusHours(2)), "for", "Loft & yard",
                "by", "Ben", "note", "Two stands"), "unit", List.of("ribbon-1", "ribbon-3"));
        assertEquals(200, looked.status(), looked.text());
        assertEquals(List.of("Loft & yard", "Ben", "Two stands"), List.of(value(looked, "for"), value(looked, "by"), value(looked, "note")));
        assertEquals(List.of("ribbon-1", "ribbon-3"), ticked(looked).stream().sorted().toList());
        assertTrue(looked.page().page().select("fieldset.type").first().text().startsWith("Chosen, but not free then Ribbon 1 booked for Barn take, by Ada; free again"), looked.text());
        assertEquals("Matched with Ribbon 1, which is not free", looked.page().page().select("#tick-ribbon-2--says").text());
        assertTrue(looked.page().page().select("section.around li").first().text().startsWith("Ribbon 1 is booked for Barn take, by Ada"), looked.text());
    }

    @Test
    void unitsAreBookedAndReadOnAPageOfTheirOwn() {
        Got done = site.send(site.get(NEW), "booking", Map.of("for", "Folk-jazz sextet", "by", "Ben", "note", "Bring <two> stands"), "unit", List.of("ribbon-1", "ribbon-2"));
        assertEquals(303, done.status(), done.text());
        assertEquals("/locker/bookings/1?done=booked", done.location());
        Got page = site.get(done.location());
        assertEquals("Folk-jazz sextet", page.page().heading());
        assertEquals("It is booked.", page.page().page().select("[role=status]").text());
        for (String said : List.of("Session", "Ben", "Bring <two> stands", "2 units", "not taken yet", "Booked Ribbon 1 and Ribbon 2")) {
            assertTrue(page.text().contains(said), said + " in " + page.text());
        }
        assertTrue(page.page().links().containsAll(List.of("/locker/units/ribbon-1", "/locker/units/ribbon-2", "/locker/bookings/1/alter", "/locker/bookings/1/cancel",
                "/locker/history?about=1", "/api/locker/calendar.ics")), page.page().links().toString());
        Booking kept = site.locker.booking("1").orElseThrow();
        assertEquals(new Span(hour.toInstant(), hour.plusHours(4).toInstant()), kept.span());
        assertEquals("this machine", site.locker.history("1", null, 5).get(0).who());
        site.locker.change(ADA, changes -> changes.takeOut("ribbon-1", "Cleo", null).id());
        assertTrue(site.get("/locker/bookings/1").text().contains("out with Cleo since"), site.get("/locker/bookings/1").text());
        assertTrue(site.get("/locker/units/ribbon-1").page().links().containsAll(List.of("/locker/bookings/new?unit=ribbon-1", "/locker/bookings/1")));
    }

    @Test
    void everyFaultIsToldAtItsFieldAndNothingTypedIsLost() {
        Got again = site.send(site.get(NEW), "booking", Map.of("from", "soon", "until", "2031-02-30T10:00", "for", "Barn take", "note", "Keep this"), "unit", List.of("ribbon-1"));
        assertEquals(400, again.status());
        assertEquals(List.of("#from", "#until"), again.page().page().select(".form-faults a").eachAttr("href"));
        assertEquals(List.of("soon", "2031-02-30T10:00", "Barn take", "Keep this"), List.of(value(again, "from"), value(again, "until"), value(again, "for"), value(again, "note")));
        assertEquals(List.of("ribbon-1"), ticked(again));
        assertEquals(List.of(), again.page().faults());
        Got then = site.send(again, "booking", Map.of("from", local(hour), "until", local(hour), "for", "x".repeat(300)), "unit", List.of());
        assertEquals(400, then.status());
        assertEquals(List.of("#until", "#for", "#unit"), then.page().page().select(".form-faults a").eachAttr("href"));
        String told = then.page().page().select(".form-faults").text();
        assertTrue(told.contains("not after") && told.contains("No unit is chosen. Tick at least one.") && !told.contains("Z, "), told);
        assertEquals("No unit is chosen. Tick at least one.", then.page().page().getElementById("unit-fault").text());
        for (Map<String, String> odd : List.of(Map.of("from", "1999-01-01T10:00"), Map.of("until", local(hour.plusYears(3))), Map.of("until", local(hour.plusYears(11))),
                Map.of("until", "99999-01-01T10:00"), Map.of("until", "9999-12-31T10:00"), Map.of("from", ""), Map.of("until", local(hour.minusDays(1))))) {
            Got refused = site.send(site.get(NEW), "booking", odd, "unit", List.of("ribbon-1"));
            assertEquals(400, refused.status(), odd.toString());
            assertFalse(refused.page().page().select(".form-faults a").isEmpty(), odd + " " + refused.page().page().select(".form-faults").text());
            assertFalse(refused.page().page().select(".form-faults").text().matches(".*\\d{4}-\\d{2}-\\d{2}T\\d{2}.*Z.*"), refused.page().page().select(".form-faults").text());
        }
        for (String address : List.of("?from=soon", "?unit=nobody", "?from=2031-05-02T10:00&until=2031-05-01T10:00", "?kind=party")) {
            Got asked = site.get(NEW + address);
            assertEquals(400, asked.status(), address);
            assertEquals(1, asked.page().page().select(".form-faults a").size(), address);
            assertEquals(List.of(), asked.page().faults(), address);
        }
        assertEquals(List.of(), all());
    }

    @Test
    void whatIsTakenIsNamedWithTheWaysAroundIt() {
        ZonedDateTime from = hour.plusDays(1);
        String in = book(from.plusHours(1), 4, "ribbon-1");
        Got form = site.look(site.get(NEW), "booking", Map.of("from", local(from), "until", local(from.plusHours(3)), "for", "Loft take"), "unit", List.of("ribbon-1", "pencil-9"));
        Got refused = site.send(form, "booking", Map.of("by", "Ben"), "unit", List.of("ribbon-1", "pencil-9"));
        assertEquals(409, refused.status());
        assertEquals(List.of("Loft take", "Ben", local(from)), List.of(value(refused, "for"), value(refused, "by"), value(refused, "from")));
        assertEquals(List.of("pencil-9", "ribbon-1"), ticked(refused).stream().sorted().toList());
        Element ways = refused.page().page().selectFirst("section.around");
        assertEquals("/locker/bookings/" + in, ways.selectFirst("li a").attr("href"));
        assertEquals(List.of("Ribbon 2", "Ribbon 10", "Ribbon 3"), ways.select("p a").eachText(), "a good one before a limited one");
        List<String> times = ways.select(".nearest a").eachAttr("href");
        assertTrue(times.size() >= 3, times.toString());
        for (String address : times) {
            Got prefilled = site.get(address);
            assertEquals(200, prefilled.status(), address);
            assertTrue(prefilled.page().page().select("section.around").isEmpty(), "all is free " + address);
            assertEquals("Loft take", value(prefilled, "for"));
        }
        assertEquals(local(from.minusHours(2)), value(site.get(times.get(0)), "from"), "just before it is nearest");
        Got other = site.get(ways.selectFirst("p a").attr("href"));
        assertEquals(List.of("pencil-9", "ribbon-2"), ticked(other).stream().sorted().toList());
        assertEquals(303, site.send(other, "booking", Map.of(), "unit", List.of("pencil-9", "ribbon-2")).status());
        assertEquals(2, all().size());
    }

    @Test
    void whatIsOverdueIsToldWithWhomAndSinceWhenAndOfferedOnlyIfItIsBack() {
        Instant now = Instant.now();
        try (Locker past = Locker.open(Place.in(data), () -> Serving.KNOWLEDGE.current().catalogue(), Clock.offset(Clock.systemDefaultZone(), Duration.ofHours(-48)))) {
            past.change(ADA, changes -> {
                changes.takeOut("ribbon-1", "Bram", now.minusSeconds(24 * 3600));
                return "";
            });
        }
        Got form = site.get(NEW + "?unit=ribbon-1");
        Element ways = form.page().page().selectFirst("section.around");
        String says = ways.selectFirst("li").text();
        assertTrue(says.startsWith("Ribbon 1 is overdue since yesterday ") && says.contains(", with Bram") && says.contains("counted as out for whatever begins within a day: booking "), says);
        assertFalse(says.contains("booked for"), says);
        assertTrue(form.page().page().select("#tick-ribbon-1--says").text().startsWith("overdue with Bram, due yesterday "), form.text());
        assertEquals("Nearest times it can be had, if what is overdue is back by then:", ways.select("#nearest").text());
        List<String> times = ways.select(".nearest a").eachAttr("href");
        assertFalse(times.isEmpty());
        for (String address : times) {
            String from = value(site.get(address), "from");
            assertTrue(from.matches(".*:(00|15|30|45)"), from + " begins on a quarter of an hour");
            assertFalse(LocalDateTime.parse(from).atZone(ZoneId.systemDefault()).toInstant().isBefore(now.plusSeconds(24 * 3600)), from);
        }
        String other = site.get(NEW).page().page().select("section[aria-labelledby=taken] tr:contains(Ribbon 1)").text();
        assertTrue(other.contains("overdue with Bram, due yesterday"), other);
        book(hour, 4, "ribbon-2");
        Element both = site.get(NEW + "?unit=ribbon-1&unit=ribbon-2").page().page().selectFirst("section.around");
        assertEquals(2, both.select("> ul:not(.nearest) > li").size(), both.text());
        assertTrue(both.text().contains("Ribbon 2 is booked for Barn take, by Ada"), both.text());
        assertEquals("Nearest times it can be had:", site.get(NEW + "?unit=ribbon-2").page().page().select("#nearest").text());
    }

    @Test
    void aBookingOnPaperIsAListToFetchBy() {
        site.locker.change(ADA, changes -> {
            changes.add(new UnitDraft("b", UnitKind.MIC, "long-ribbon", "From the barn", null, "0117", null, null, null, "Barn", null, null, null, null, null));
            changes.add(new UnitDraft("a", UnitKind.MIC, "long-ribbon", "From the attic", null, null, null, null, null, "Attic", null, null, null, null, null));
            return "";
        });
        Got page = site.get("/locker/bookings/" + book(hour, 4, "ribbon-1", "b", "a"));
        assertEquals(List.of("From the attic", "From the barn", "Ribbon 1"), page.page().page().select(".picks tbody th").eachText(), "place by place");
        assertEquals(List.of("Picked", "Unit", "Tag", "How it is", "Lies at"), page.page().page().select(".picks thead th").eachText());
        assertEquals(3, page.page().page().select(".picks tbody td.tick-box:first-child").size(), "a box each");
        assertEquals(List.of("0117", "Barn"), page.page().page().select(".picks tbody tr:contains(From the barn) td[data-label]").eachText());
        assertEquals(List.of("0117"), site.get("/locker?words=barn").page().page().select(".units tbody td.on-paper").eachText());
        assertEquals(1, site.get("/locker?words=barn").page().page().select(".units tbody td.tick-box").size());
    }

    @Test
    void whatWasDoneIsToldWithTimesAsTheyStandElsewhere() {
        String id = book(hour, 2, "ribbon-1");
        for (String address : List.of("/locker/bookings/" + id, "/locker/units/ribbon-1", "/locker/history")) {
            Got page = site.get(address);
            String events = page.page().page().select(".events").text();
            assertTrue(events.contains("Booked Ribbon 1"), address + ": " + events);
            assertFalse(events.matches(".*\\d{4}-\\d{2}-\\d{2}.*"), address + ": " + events);
            assertTrue(events.matches(".*(today|tomorrow) \\d{2}:00 to .*"), address + ": " + events);
        }
    }

    @Test
    void whatIsTakenBetweenLookingAndBookingIsNotBookedTwice() {
        Got form = site.get(NEW);
        book(hour, 1, "ribbon-1");
        Got refused = site.send(form, "booking", Map.of(), "unit", List.of("ribbon-1"));
        assertEquals(409, refused.status());
        assertTrue(refused.page().page().select("section.around").text().contains("Ribbon 1 is booked for Barn take, by Ada"), refused.text());
        assertEquals(1, all().size());
        site.locker.change(ADA, changes -> changes.alter("ribbon-3", site.locker.unit("ribbon-3").orElseThrow().draft().in(Condition.LOST, null), null).id());
        Got lost = site.send(form, "booking", Map.of(), "unit", List.of("ribbon-3"));
        assertEquals(409, lost.status());
        assertTrue(lost.page().page().select("section.around").text().contains("Ribbon 3 is lost"), lost.text());
        assertTrue(lost.page().page().select(".nearest").isEmpty(), "no other time helps");
    }

    @Test
    void aFormThatIsSentTwiceBooksOnce() {
        Got form = site.get(NEW);
        String first = site.send(form, "booking", Map.of("for", "A"), "unit", List.of("ribbon-1")).location();
        assertEquals(first, site.send(form, "booking", Map.of("for", "A"), "unit", List.of("ribbon-1")).location());
        assertEquals(1, all().size());
        Got other = site.send(form, "booking", Map.of("for", "B"), "unit", List.of("ribbon-2"));
        assertEquals(422, other.status());
        assertEquals("B", value(other, "for"));
        assertEquals(303, site.send(other, "booking", Map.of(), "unit", List.of("ribbon-2")).status(), "and can be sent under a new key");
        assertEquals(2, all().size());
    }

    @Test
    void whoFetchesByABookingReadsTheTags() {
        site.locker.change(ADA, changes -> changes.add(UnitDraft.mic("hand-1", "handheld-moving-coil", "Hand 1").tagged("B-301")).id());
        Got page = site.get("/locker/bookings/" + book(hour, 4, "hand-1", "pencil-9"));
        assertEquals(List.of("B-301"), page.page().page().select("td[data-label=Tag]").eachText(), page.text());
    }

    @Test
    void aBookingIsAlteredWhileAUnitIsOut() {
        String id = book(hour, 4, "ribbon-1", "ribbon-2");
        site.locker.change(ADA, changes -> changes.takeOut("ribbon-1", "Cleo", null).id());
        Got form = site.get("/locker/bookings/" + id + "/alter");
        assertTrue(form.text().contains("Ribbon 1 is out with Cleo; it stays in this booking"), form.text());
        assertEquals(List.of("ribbon-2"), ticked(form), "its own units are free for it");
        Got done = site.send(form, "booking", Map.of("until", local(hour.plusHours(6)), "note", "Longer"), "unit", List.of("ribbon-3"));
        assertEquals("/locker/bookings/" + id + "?done=altered", done.location(), done.text());
        Booking now = site.locker.booking(id).orElseThrow();
        assertEquals(List.of("ribbon-1", "ribbon-3"), now.units().stream().sorted().toList());
        assertEquals(hour.plusHours(6).toInstant(), now.span().until());
        assertEquals("Longer", now.note());
        assertEquals("Barn take", now.forWhat());
        Got cleared = site.send(site.get("/locker/bookings/" + id + "/alter"), "booking", Map.of("note", ""), "unit", List.of("ribbon-3"));
        assertEquals(303, cleared.status(), cleared.text());
        assertEquals(null, site.locker.booking(id).orElseThrow().note());
        String other = book(hour.plusHours(6), 2, "ribbon-3");
        Got refused = site.send(site.get("/locker/bookings/" + id + "/alter"), "booking", Map.of("until", local(hour.plusHours(7))), "unit", List.of("ribbon-3"));
        assertEquals(409, refused.status());
        assertTrue(refused.page().page().select("section.around a").eachAttr("href").contains("/locker/bookings/" + other), refused.text());
        assertEquals(List.of("ribbon-3"), ticked(refused));
    }

    @Test
    void noUnitIsNoAlteration() {
        String id = book(hour, 4, "ribbon-1");
        Got refused = site.send(site.get("/locker/bookings/" + id + "/alter"), "booking", Map.of("for", "Other"), "unit", List.of());
        assertEquals(400, refused.status());
        assertEquals(List.of("#unit"), refused.page().page().select(".form-faults a").eachAttr("href"));
        assertEquals(1, site.locker.booking(id).orElseThrow().version());
    }

    @Test
    void whoeverAltersWhatSomebodyAlteredMeanwhileIsToldWhat() {
        String id = book(hour, 4, "ribbon-1");
        Got form = site.get("/locker/bookings/" + id + "/alter");
        alter(id, "Class of spring");
        Got told = site.send(form, "booking", Map.of("note", "Mine"), "unit", List.of("ribbon-1", "ribbon-3"));
        assertEquals(412, told.status());
        String says = told.page().page().select(".form-faults").text();
        for (String said : List.of("Somebody altered this booking", "For what: \u201cClass of spring\u201d now, yours \u201cBarn take\u201d", "Note: nothing now, yours \u201cMine\u201d", "Ribbon 3")) {
            assertTrue(says.contains(said), said + " in " + says);
        }
        assertEquals(List.of("ribbon-1", "ribbon-3"), ticked(told).stream().sorted().toList());
        assertEquals("Class of spring", site.locker.booking(id).orElseThrow().forWhat());
        assertEquals(303, site.send(told, "booking", Map.of(), "unit", List.of("ribbon-1", "ribbon-3")).status());
        assertEquals("Barn take", site.locker.booking(id).orElseThrow().forWhat());
        Got looked = site.get("/locker/bookings/" + id + "/alter");
        alter(id, "Class of autumn");
        assertEquals(412, site.look(looked, "booking", Map.of(), "unit", List.of("ribbon-1")).status(), "looking does not take the version for granted");
    }

    @Test
    void aBookingIsCancelledOnlyAfterItWasAskedAndItsHistoryStays() {
        String id = book(hour, 4, "ribbon-1", "ribbon-2");
        Got asked = site.get("/locker/bookings/" + id + "/cancel");
        assertEquals("Cancel booking " + id + "?", asked.page().heading());
        assertTrue(asked.text().contains("Barn take, by Ada") && asked.text().contains("Ribbon 1, Ribbon 2"), asked.text());
        Got typed = site.get("/locker/bookings/" + id + "/alter");
        assertEquals(1, all().size());
        alter(id, "Another");
        Got changed = site.send(asked, "cancel", Map.of());
        assertEquals(412, changed.status());
        assertTrue(changed.text().contains("Another, by Ada"), changed.text());
        site.locker.change(ADA, changes -> changes.takeOut("ribbon-1", null, null).id());
        Got out = site.send(site.get("/locker/bookings/" + id + "/cancel"), "cancel", Map.of());
        assertEquals(409, out.status());
        assertTrue(out.text().contains("Check in first"), out.text());
        site.locker.change(ADA, changes -> changes.bringBack("ribbon-1").id());
        Got done = site.send(out, "cancel", Map.of("version", Long.toString(site.locker.booking(id).orElseThrow().version())));
        assertEquals("/locker/bookings/" + id + "?done=given-back", done.location(), "what was taken stays written down");
        assertTrue(site.get(done.location()).page().page().select("[role=status]").text().contains("free again"));

        String second = book(hour.plusDays(2), 4, "ribbon-3");
        Got page = site.get("/locker/bookings/" + second + "/cancel");
        assertEquals("/locker/bookings?done=cancelled", site.send(page, "cancel", Map.of()).location());
        assertEquals("/locker/bookings?done=cancelled", site.send(page, "cancel", Map.of()).location(), "sent twice it is done once");
        assertTrue(site.get("/locker/bookings?done=cancelled").page().page().select("[role=status]").text().contains("is cancelled"));
        Got gone = site.get("/locker/bookings/" + second);
        assertEquals(404, gone.status());
        assertTrue(gone.page().page().select(".events li").first().text().contains("Cancelled booking " + second), gone.text());
        assertTrue(gone.page().links().contains("/locker/history?about=" + second));
        assertTrue(site.get("/locker/history?about=" + second).text().contains("booking " + second + " alone"));
        Got late = site.post("/locker/bookings/" + second + "/alter", LockerSite.fields(typed.page().page().selectFirst("form#booking"), Map.of("for", "Typed in vain")));
        assertEquals(404, late.status());
        assertEquals("Typed in vain", value(site.get(late.page().page().select("a.button.main").attr("href")), "for"), "what was typed can be booked anew");
        for (String none : List.of("/locker/bookings/99", "/locker/bookings/ribbon-1", "/locker/bookings/0/alter", "/locker/bookings/x/cancel", "/locker/bookings/99999999999999999999")) {
            Got unknown = site.get(none);
            assertEquals(404, unknown.status(), none);
            assertTrue(unknown.text().contains("There is no booking"), unknown.text());
        }
    }

    @Test
    void aBookingStandsOnEveryDayItTouches() {
        LocalDate day = LocalDate.now().plusDays(10);
        ZonedDateTime morning = day.atTime(9, 0).atZone(ZoneId.systemDefault());
        String loan = book(morning.plusHours(9), 48, "ribbon-1");
        String midnight = book(day.atTime(20, 0).atZone(ZoneId.systemDefault()), 4, "ribbon-3");
        Got list = site.get("/locker/bookings?from=" + day + "&until=" + day.plusDays(3));
        assertEquals(200, list.status());
        List<String> heads = list.page().page().select("main h2").eachText();
        assertEquals(3, heads.size(), heads.toString());
        assertEquals(3, list.page().page().select("main a[href=/locker/bookings/" + loan + "]").size());
        assertEquals(1, list.page().page().select("main a[href=/locker/bookings/" + midnight + "]").size(), "what ends as a day begins is not on it");
        List<String> lines = new ArrayList<>(list.page().page().select("table.bookings tbody tr").eachText());
        assertTrue(lines.get(0).contains("18:00, until") && lines.get(2).startsWith("since ") && lines.get(2).contains("until 18:00"), lines.toString());
        assertTrue(list.page().page().select("ul.goes-on li").text().contains("Session, Barn take, by Ada, since"), list.text());
        assertTrue(list.page().links().contains(NEW));
        assertEquals(List.of(), list.page().faults());
    }

    @Test
    void aLongListComesInPagesThatMissNothing() {
        LocalDate day = LocalDate.now().plusDays(20);
        site.locker.change(ADA, changes -> {
            for (int at = 0; at < 450; at++) {
                ZonedDateTime from = day.atStartOfDay(ZoneId.systemDefault()).plusMinutes(at * 3L);
                changes.book(draft(from, from.plusMinutes(3), "ribbon-1"));
            }
            changes.book(draft(day.atStartOfDay(ZoneId.systemDefault()), day.plusDays(2).atStartOfDay(ZoneId.systemDefault()), "ribbon-2"));
            return "";
        });
        List<String> seen = new ArrayList<>();
        String next = "/locker/bookings?from=" + day + "&until=" + day.plusDays(4);
        int pages = 0;
        while (!next.isEmpty() && pages < 10) {
            Got page = site.get(next);
            assertEquals(200, page.status());
            List<String> rows = page.page().page().select("table.bookings tbody th a, ul.goes-on a").eachAttr("href");
            assertTrue(rows.size() <= 200, rows.size() + " rows");
            seen.addAll(rows);
            next = page.page().page().select("main a[rel=next]").attr("href");
            pages++;
        }
        assertEquals(3, pages);
        assertEquals(452, seen.size(), "450 of three minutes, and one on two days");
        assertEquals(451, seen.stream().distinct().count());
    }

    @Test
    void whatHasLeftTheLockerLeadsNowhere() {
        ZonedDateTime past = hour.minusDays(5);
        String id = book(past, 4, "pencil-9", "ribbon-1");
        site.locker.change(ADA, changes -> {
            changes.remove("pencil-9", null);
            return "";
        });
        for (String address : List.of("/locker/bookings/" + id, "/locker/bookings?from=" + past.toLocalDate())) {
            Got page = site.get(address);
            assertEquals(200, page.status(), page.text());
            assertTrue(page.text().contains("Pencil 9"), page.text());
            assertFalse(page.page().links().contains("/locker/units/pencil-9"), address);
            assertTrue(page.page().links().contains("/locker/units/ribbon-1"), address);
        }
        Got form = site.get("/locker/bookings/" + id + "/alter");
        assertEquals(200, form.status(), form.text());
        assertTrue(form.text().contains("Pencil 9"), "what has left stays in what was: " + form.text());
        Got done = site.send(form, "booking", Map.of("note", "Written down later"), "unit", List.of("ribbon-1"));
        assertEquals(303, done.status(), done.text());
        assertEquals(List.of("pencil-9", "ribbon-1"), site.locker.booking(id).orElseThrow().units().stream().sorted().toList());
    }

    @Test
    void whatIsOverCanBeWrittenDownAndThePageSaysSo() {
        Got form = site.get(NEW + "?from=" + local(hour.minusDays(2)));
        assertEquals(200, form.status());
        assertTrue(form.page().page().select("p.note").text().contains("This time is over"), form.text());
        assertEquals(303, site.send(form, "booking", Map.of(), "unit", List.of("ribbon-1")).status());
    }

    @Test
    void everyPageIsWrittenAsItShouldBeInMetresAndInFeet() {
        String id = book(hour, 4, "ribbon-1", "ribbon-2");
        for (String address : List.of(NEW, NEW + "?unit=ribbon-1&from=" + local(hour), "/locker/bookings", "/locker/bookings/" + id, "/locker/bookings/" + id + "/alter",
                "/locker/bookings/" + id + "/cancel")) {
            Got page = site.get(address);
            assertEquals(200, page.status(), address);
            assertEquals(List.of(), page.page().faults(), address);
            assertEquals(1, page.page().page().select(".zone").size(), address);
            Got imperial = site.get(address + (address.contains("?") ? "&" : "?") + "units=imperial");
            imperial.page().page().select("main a[href^=/]:not([href$=.csv], [href$=.ics]), main form[method=post]").forEach(link -> assertTrue(
                    (link.attr("href") + link.attr("action")).contains("units=imperial"), address + " loses the measures in " + link));
        }
        Got looked = site.look(site.get(NEW + "?units=imperial"), "booking", Map.of(), "unit", List.of("ribbon-3"));
        assertNotNull(looked.page().page().selectFirst("main form[action$=units=imperial]"), "asking keeps the measures");
    }

    @Test
    void aKindOfUnitCanBeShownAlone() {
        site.locker.change(ADA, changes -> changes.add(new UnitDraft("tall-1", UnitKind.STAND, null, "Tall 1", null, null, null, null, null, null, null, null, null, null, null)).id());
        assertEquals(List.of("Tall 1"), site.get(NEW + "?micType=stand").page().page().select(".ticks label").eachText());
        assertEquals(200, site.get(NEW + "?micType=nothing-like-it").status());
    }

    @Test
    void whoeverOnlyReadsSeesNoForm(@TempDir Path other) throws IOException, InterruptedException {
        try (Locker locker = Locker.open(Place.in(other), () -> Serving.KNOWLEDGE.current().catalogue(), Clock.systemDefaultZone())) {
            String token = locker.tokens().add("Finch", Role.READER);
            String id = locker.change(ADA, changes -> {
                changes.add(UnitDraft.mic("ribbon-1", "long-ribbon", "Ribbon 1"));
                return changes.book(draft(hour, hour.plusHours(4), "ribbon-1")).id();
            }).text();
            try (Server server = Server.start(Serving.KNOWLEDGE, locker, new Listen("127.0.0.1", 0, List.of(), true))) {
                Map<String, String> why = Map.of("/locker/bookings", "engineers book units", "/locker/bookings/" + id, "engineers alter and cancel bookings",
                        "/locker/desk", "engineers take units out and bring them back", "/locker/units/ribbon-1", "");
                for (String address : why.keySet()) {
                    HttpResponse<String> got = read(server, token, address);
                    assertEquals(200, got.statusCode(), address);
                    Document page = new Document(got.body());
                    assertTrue(page.page().select("main form[method=post]").isEmpty() && page.links().stream().noneMatch(link -> link.matches(".*/(new.*|alter|cancel)")), address);
                    assertTrue(page.page().select("main").text().contains(why.get(address).isEmpty() ? "" : "You came in as a reader, so there is nothing to change here: " + why.get(address) + "."), address);
                }
                for (String address : List.of(NEW, "/locker/bookings/" + id + "/alter", "/locker/bookings/" + id + "/cancel")) {
                    HttpResponse<String> got = read(server, token, address);
                    assertEquals(403, got.statusCode(), address);
                    assertTrue(got.body().contains("Engineers do this") && !got.body().contains("method=\"post\""), address);
                }
            }
        }
    }

    private static HttpResponse<String> read(Server server, String token, String address) throws IOException, InterruptedException {
        return HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + address)).header("Authorization", "Bearer " + token)
                .header("Accept", "text/html").build(), HttpResponse.BodyHandlers.ofString());
    }

    private void alter(String id, String forWhat) {
        site.locker.change(ADA, changes -> changes.alter(id, new BookingDraft(List.of(), null, null, null, forWhat, null, null), null).id());
    }

    private List<Booking> all() {
        return site.locker.bookings(new Span(hour.minusYears(1).toInstant(), hour.plusYears(9).toInstant()), null);
    }

    private String book(ZonedDateTime from, int hours, String... units) {
        return site.locker.change(ADA, changes -> changes.book(draft(from, from.plusHours(hours), units)).id()).text();
    }

    private static BookingDraft draft(ZonedDateTime from, ZonedDateTime until, String... units) {
        Instant begins = from.toInstant();
        return new BookingDraft(List.of(units), begins, until.toInstant(), BookingKind.SESSION, "Barn take", "Ada", null);
    }

    private static String local(ZonedDateTime at) {
        return at.toLocalDateTime().truncatedTo(ChronoUnit.MINUTES).toString();
    }

    private static String value(Got page, String field) {
        return page.page().page().select("#" + field).attr("value");
    }

    private static List<String> ticked(Got page) {
        return page.page().page().select("input[name=unit][type=checkbox][checked]").eachAttr("value");
    }
}
