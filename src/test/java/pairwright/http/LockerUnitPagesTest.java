package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.http.LockerSite.Got;
import pairwright.locker.Act;
import pairwright.locker.BookingDraft;
import pairwright.locker.BookingKind;
import pairwright.locker.Condition;
import pairwright.locker.ResponsePoint;
import pairwright.locker.Unit;
import pairwright.locker.UnitDraft;

/** The pages of units, over HTTP, with a real locker behind them. */
class LockerUnitPagesTest {
    private static final Act ADA = Act.by("Ada");

    @TempDir
    private Path data;
    private LockerSite site;

    @BeforeEach
    void open() {
        site = new LockerSite(data);
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void anEmptyLockerSaysHowToBegin() {
        Got page = site.get("/locker");
        assertEquals(200, page.status());
        assertTrue(page.text().contains("The locker is empty"), page.text());
        assertTrue(page.page().links().containsAll(List.of("/locker/units/new", "/locker/import")), page.page().links().toString());
        assertTrue(page.text().contains("Bring in a table"));
        assertEquals("Locker", page.page().page().select("header nav [aria-current]").text());
    }

    @Test
    void aUnitIsAddedByItsFormAndRead() {
        Got choose = site.get("/locker/units/new");
        assertTrue(choose.page().links().contains("/locker/units/new?kind=stand"), choose.page().links().toString());
        Got form = site.get("/locker/units/new?kind=mic");
        Got done = site.send(form, "unit", Map.of("label", "Ribbon 1", "micType", "long-ribbon", "tag", "B-7", "storedAt", "Shelf <2>", "condition", "limited",
                "note", "Hums a little", "response", "100 -1,5\n1000 0\n10000 2\n"));
        assertEquals(303, done.status(), done.text());
        Got unit = site.get(done.location());
        assertEquals("Ribbon 1", unit.page().heading());
        assertEquals("The unit is in the locker.", unit.page().page().select("[role=status]").text());
        for (String said : List.of("Shelf <2>", "B-7", "Hums a little", "Limited", "free")) {
            assertTrue(unit.text().contains(said), said + " in " + unit.text());
        }
        assertEquals(List.of("/mics/long-ribbon"), unit.page().links().stream().filter(link -> link.startsWith("/mics/")).toList());
        assertEquals(List.of("This unit, dB", "Its type, dB"), unit.page().page().select("#response tbody th").eachText());
        assertEquals(1, unit.page().page().select("#response svg").size());
        assertTrue(unit.page().page().select("section.care").text().length() > 20, "how its type is handled comes with it");
        Unit kept = site.locker.units().get(0);
        assertEquals(List.of(new ResponsePoint(100, -1.5), new ResponsePoint(1000, 0), new ResponsePoint(10_000, 2)), kept.response());
        assertEquals("this machine", site.locker.history(kept.id(), null, 5).get(0).who());
    }

    @Test
    void everyKindOfUnitHasAFormThatKeepsAllOfIt() {
        for (Map.Entry<String, Map<String, String>> one : Map.of(
                "channel", Map.of("label", "Rack 1", "channel.bank", "Rack", "channel.leastGainDb", "-6", "channel.mostGainDb", "60", "channel.inputOhm", "2000",
                        "channel.noiseDbu", "-125", "channel.phantom", "bank", "channel.phantomMa", "40"),
                "stand", Map.of("label", "Tall 1", "stand.massKg", "3.5", "stand.reachM", "0.8", "stand.footRadiusM", "0.35", "stand.legs", "3", "stand.heightM", "1.7"),
                "pad", Map.of("label", "Pad 1", "pad.lossDb", "20"),
                "booster", Map.of("label", "Lift 1", "booster.gainDb", "25", "booster.phantomMa", "3", "booster.passesPhantom", "no")).entrySet()) {
            Got done = site.send(site.get("/locker/units/new?kind=" + one.getKey()), "unit", one.getValue());
            assertEquals(303, done.status(), one.getKey() + done.text());
            String address = done.location().replaceFirst("\\?.*", "");
            Element form = site.get(address + "/alter").page().page().selectFirst("form#unit");
            Map<String, String> kept = LockerSite.fields(form, Map.of());
            one.getValue().forEach((name, value) -> assertEquals(value, kept.get(name), one.getKey() + " " + name));
            assertEquals(List.of(), site.get(address).page().faults());
        }
        assertEquals(4, site.locker.units().size());
    }

    @Test
    void allFaultsAreToldAtOnceAndWhatWasTypedIsKept() {
        Got form = site.get("/locker/units/new?kind=mic");
        Got again = site.send(form, "unit", Map.of("label", "x".repeat(200), "condition", "limited", "response", "1000 nought"));
        assertEquals(400, again.status());
        Element faults = again.page().page().selectFirst(".form-faults");
        assertEquals("-1", faults.attr("tabindex"));
        assertTrue(faults.hasAttr("autofocus"));
        assertEquals(List.of("#micType", "#label", "#note", "#response"), faults.select("a").eachAttr("href"), "what cannot be read, and all else that is wrong");
        assertEquals("x".repeat(200), again.page().page().select("#label").attr("value"));
        assertEquals("1000 nought", again.page().page().select("#response").get(0).wholeText().strip());
        Got then = site.send(again, "unit", Map.of("response", ""));
        assertEquals(400, then.status());
        List<String> led = then.page().page().select(".form-faults a").eachAttr("href");
        assertEquals(List.of("#micType", "#label", "#note"), led);
        for (String to : led) {
            Element field = then.page().page().selectFirst(to);
            assertEquals("true", field.attr("aria-invalid"), to);
            assertTrue(Stream.of(field.attr("aria-describedby").split(" ")).anyMatch(id -> then.page().page().getElementById(id).hasClass("fault")), to);
        }
        assertEquals(List.of(), then.page().faults());
        assertEquals(0, site.locker.units().size());
    }

    @Test
    void aFormThatIsSentTwiceIsDoneOnce() {
        Got form = site.get("/locker/units/new?kind=pad");
        Map<String, String> filled = Map.of("label", "Pad 1", "pad.lossDb", "20");
        String first = site.send(form, "unit", filled).location();
        assertEquals(first, site.send(form, "unit", filled).location());
        assertEquals(1, site.locker.units().size());
        Got other = site.send(form, "unit", Map.of("label", "Pad 2", "pad.lossDb", "20"));
        assertEquals(422, other.status());
        assertTrue(other.text().contains("was sent before with something else"), other.text());
        assertEquals(303, site.send(other, "unit", Map.of()).status(), "and can be sent under a new key");
        assertEquals(List.of("Pad 1", "Pad 2"), site.locker.units().stream().map(Unit::label).toList());
    }

    @Test
    void whoeverAltersWhatSomebodyAlteredMeanwhileIsToldWhat() {
        String id = add(UnitDraft.mic("ribbon-1", "long-ribbon", "Ribbon 1"));
        Got form = site.get("/locker/units/" + id + "/alter");
        site.locker.change(ADA, changes -> changes.alter(id, site.locker.unit(id).orElseThrow().draft().in(Condition.IN_REPAIR, "Torn"), null).id());
        Got told = site.send(form, "unit", Map.of("storedAt", "Shelf 3"));
        assertEquals(412, told.status());
        for (String said : List.of("Somebody altered this unit", "Condition", "in-repair", "Torn", "Shelf 3")) {
            assertTrue(told.page().page().select(".form-faults").text().contains(said), said + " in " + told.page().page().select(".form-faults").text());
        }
        assertEquals(Condition.IN_REPAIR, site.locker.unit(id).orElseThrow().condition());
        assertEquals(303, site.send(told, "unit", Map.of("condition", "in-repair", "note", "Torn")).status());
        assertEquals("Shelf 3", site.locker.unit(id).orElseThrow().storedAt());
        assertEquals("Torn", site.locker.unit(id).orElseThrow().note());
    }

    @Test
    void aUnitLeavesOnlyAfterItWasAskedAndNotWhileItIsBooked() {
        String id = add(UnitDraft.mic("ribbon-1", "long-ribbon", "Ribbon 1"));
        Got asked = site.get("/locker/units/" + id + "/remove");
        assertEquals("Remove Ribbon 1?", asked.page().heading());
        assertEquals(1, site.locker.units().size());
        String booking = book(id, 3600, 7200);
        Got refused = site.send(asked, "remove", Map.of());
        assertEquals(409, refused.status());
        assertTrue(refused.text().contains("cannot be removed"), refused.text());
        site.locker.change(ADA, changes -> {
            changes.cancel(booking, null);
            return "";
        });
        Got done = site.send(refused, "remove", Map.of());
        assertEquals("/locker?done=removed", done.location());
        assertTrue(site.get(done.location()).text().contains("has left the locker"));
        assertEquals(404, site.get("/locker/units/" + id).status());
        assertEquals(404, site.post("/locker/units/" + id + "/remove", Map.of()).status());
    }

    @Test
    void aUnitGoesOutAndComesBack() {
        String id = add(UnitDraft.mic("ribbon-1", "long-ribbon", "Ribbon 1"));
        Got page = site.get("/locker/units/" + id);
        assertTrue(page.page().page().select("form#in").isEmpty(), "what is here cannot come back");
        Got noEnd = site.send(page, "out", Map.of("by", "Ada"));
        assertTrue(noEnd.status() == 400 || noEnd.status() == 409, "nobody booked it, and no end is said: " + noEnd.status());
        assertEquals("Ada", noEnd.page().page().select("#out-by").attr("value"));
        Got noTime = site.send(noEnd, "out", Map.of("until", "soon"));
        assertEquals(400, noTime.status());
        assertEquals(List.of("#out-until"), noTime.page().page().select(".form-faults a").eachAttr("href"));
        Instant back = Instant.now().plus(40, ChronoUnit.DAYS).truncatedTo(ChronoUnit.MINUTES);
        Got out = site.send(noTime, "out", Map.of("until", local(back)));
        assertEquals(303, out.status(), out.text());
        Got now = site.get(out.location());
        assertTrue(now.page().page().select(".lead").text().contains("out with Ada until " + back.atZone(ZoneId.systemDefault()).getDayOfWeek()
                .getDisplayName(TextStyle.SHORT, Locale.UK)), now.page().page().select(".lead").text());
        assertTrue(now.page().page().select("form#out").isEmpty());
        assertTrue(site.get("/locker").page().page().select("table.units").text().contains("out with Ada until"));
        assertEquals(303, site.send(now, "in", Map.of()).status());
        assertTrue(site.get("/locker/units/" + id).page().page().select(".lead").text().contains("free"), site.get("/locker/units/" + id).text());
    }

    @Test
    void unitsAreFoundByWhatIsWrittenOfThemAndByHowTheyStand() {
        add(UnitDraft.mic("ribbon-1", "long-ribbon", "Ribbon 1").matchedWith("ribbon-2"));
        add(UnitDraft.mic("ribbon-2", "long-ribbon", "Ribbon 2"));
        add(UnitDraft.mic("omni-1", "small-condenser-omni", "Omni 1").in(Condition.IN_REPAIR, "No sound"));
        book("ribbon-1", 3600, 7200);
        assertEquals(List.of("Omni 1", "Ribbon 1", "Ribbon 2"), labels("/locker"));
        assertEquals(List.of("Ribbon 1", "Ribbon 2"), labels("/locker?words=RIBBON+long"));
        assertEquals(List.of("Omni 1"), labels("/locker?words=sound"));
        assertEquals(List.of("Omni 1"), labels("/locker?condition=in-repair"));
        assertEquals(List.of("Omni 1"), labels("/locker?type=small-condenser-omni"));
        assertEquals(List.of(), labels("/locker?kind=stand"));
        assertEquals(List.of("Ribbon 1", "Ribbon 2"), labels("/locker?free=yes"), "what is booked later is free now");
        String from = local(Instant.now().plus(75, ChronoUnit.MINUTES));
        assertEquals(List.of("Ribbon 2"), labels("/locker?free=yes&from=" + from));
        assertEquals(List.of("Ribbon 1", "Ribbon 2"), labels("/locker?free=yes&from=" + local(Instant.now().plus(5, ChronoUnit.HOURS))));
        String text = site.get("/locker").page().page().select("table.units").text();
        for (String said : List.of("matched with Ribbon 2", "matched with Ribbon 1", "free booked for Barn take, by Ada from", "in repair", "No sound")) {
            assertTrue(text.contains(said), said + " in " + text);
        }
        String then = site.get("/locker?words=ribbon+1&from=" + from).page().page().select("table.units").text();
        assertTrue(then.contains("booked for Barn take, by Ada; free again"), then);
        for (String odd : List.of("/locker?from=soon", "/locker?kind=spoon", "/locker?from=2031-05-02T10:00&until=2031-05-01T10:00", "/locker?words=" + "x".repeat(300))) {
            Got got = site.get(odd);
            assertEquals(400, got.status(), odd);
            assertEquals(List.of(), got.page().faults(), odd);
        }
    }

    @Test
    void historySaysWhoDidWhatAndCanBeReadBackToItsBeginning() {
        String id = add(UnitDraft.mic("ribbon-1", "long-ribbon", "Ribbon 1"));
        for (int time = 0; time < 60; time++) {
            String place = "Shelf " + time;
            site.locker.change(ADA, changes -> changes.alter(id, withPlace(site.locker.unit(id).orElseThrow(), place), null).id());
        }
        Got first = site.get("/locker/history");
        assertEquals(50, first.page().page().select(".events li").size());
        assertTrue(first.page().page().selectFirst(".events li").text().contains("Ada"), first.text());
        String older = first.page().page().select("main a[href*=before]").attr("href");
        Got second = site.get(older);
        assertEquals(11, second.page().page().select(".events li").size());
        assertTrue(second.page().page().select("main a[href*=before]").isEmpty());
        assertNotEquals(first.text(), second.text());
        assertEquals(0, site.get("/locker/history?about=other").page().page().select(".events li").size());
    }

    @Test
    void aNoteKeepsItsLinesFromTheFormToTheTableAndBack() {
        Got form = site.get("/locker/units/new?kind=mic");
        String id = site.send(form, "unit", Map.of("label", "Hand 1", "micType", "handheld-moving-coil", "note", "Dented.\r\nMind the cable,\t\"the red one\"\r\n"))
                .location().replaceFirst("\\?.*", "");
        String note = "Dented.\nMind the cable, \"the red one\"";
        assertEquals(note, site.locker.units().get(0).note());
        assertEquals(note, site.get(id + "/alter").page().page().selectFirst("textarea#note").wholeText().strip());
        assertTrue(site.get("/locker").page().page().selectFirst("table.units .lines").wholeText().contains(note));
        assertTrue(site.raw("/locker/units.csv").contains("\"Dented.\nMind the cable, \"\"the red one\"\"\""), site.raw("/locker/units.csv"));
        assertTrue(site.raw("/api/locker/units").contains("Dented.\\nMind the cable, \\\"the red one\\\""), site.raw("/api/locker/units"));
    }

    @Test
    void aMateIsNamedByLabelTagOrIdAndWhatIsTwoIsAskedAbout() {
        add(UnitDraft.mic("ribbon-1", "long-ribbon", "Ribbon 1").tagged("B-1"));
        add(UnitDraft.mic("hand-1", "handheld-moving-coil", "Hand"));
        add(UnitDraft.mic("hand-2", "handheld-moving-coil", "Hand"));
        Got form = site.get("/locker/units/new?kind=mic");
        assertEquals(List.of("Ribbon 1", "hand-1", "hand-2"), form.page().page().select("#pairMate-offers option").eachAttr("value").stream().sorted().toList());
        String made = site.send(form, "unit", Map.of("label", "Ribbon 2", "micType", "long-ribbon", "pairMate", "b-1")).location().replaceFirst("\\?.*", "");
        assertEquals("ribbon-1", site.locker.unit("ribbon-2").orElseThrow().pairMate());
        Got alter = site.get(made + "/alter");
        assertEquals("Ribbon 1", alter.page().page().select("#pairMate").attr("value"), "it is shown as people call it");
        assertEquals(List.of("Ribbon 1"), alter.page().page().select("#pairMate-offers option").eachAttr("value"), "only its own type is offered");
        Got two = site.send(alter, "unit", Map.of("pairMate", "hand"));
        assertEquals(400, two.status());
        assertEquals("hand", two.page().page().select("#pairMate").attr("value"));
        assertTrue(two.page().page().select("#pairMate-fault").text().contains("hand-1, hand-2"), two.text());
        Got none = site.send(alter, "unit", Map.of("pairMate", "Ribbon 9"));
        assertEquals(400, none.status());
        assertEquals("Ribbon 9", none.page().page().select("#pairMate").attr("value"));
        assertEquals(303, site.send(none, "unit", Map.of("pairMate", "ribbon-9")).status(), "one that is not there yet");
        assertEquals("ribbon-9", site.locker.unit("ribbon-2").orElseThrow().pairMate());
    }

    @Test
    void historySaysWhichFiguresWereAltered() {
        String id = site.send(site.get("/locker/units/new?kind=channel"), "unit", Map.of("label", "Rack 1", "channel.leastGainDb", "8", "channel.phantom", "bank"))
                .location().replaceFirst("\\?.*", "");
        site.send(site.get(id + "/alter"), "unit", Map.of("channel.leastGainDb", "10", "channel.mostGainDb", "66", "channel.phantom", ""));
        String says = site.get("/locker/history").page().page().selectFirst(".events li").text();
        assertTrue(says.contains("least gain 10 dB instead of 8 dB; most gain 66 dB; switch of phantom power taken away."), says);
    }

    @Test
    void everyPageIsWrittenAsItShouldBeInMetresAndInFeet() {
        add(UnitDraft.mic("ribbon-1", "long-ribbon", "Ribbon 1").matchedWith("ribbon-9"));
        book("ribbon-1", -3600, 7200);
        for (String address : List.of("/locker", "/locker?words=nothing+like+it", "/locker/units/ribbon-1", "/locker/units/ribbon-1/alter", "/locker/units/ribbon-1/remove",
                "/locker/units/new", "/locker/units/new?kind=mic", "/locker/units/new?kind=stand", "/locker/history")) {
            Got page = site.get(address);
            assertEquals(200, page.status(), address);
            assertEquals(List.of(), page.page().faults(), address);
            assertEquals(address.matches(".*/(new.*|alter|remove)") ? 0 : 1, page.page().page().select(".zone").size(), address);
            Got imperial = site.get(address + (address.contains("?") ? "&" : "?") + "units=imperial");
            imperial.page().page().select("main a[href^=/]:not([href$=.csv], [href$=.ics]), main form[method=post]").forEach(link -> assertTrue(
                    (link.attr("href") + link.attr("action")).contains("units=imperial"), address + " loses the measures in " + link));
        }
        assertEquals(404, site.get("/locker/units/nobody").status());
        assertEquals(404, site.get("/locker/units/nobody/alter").status());
    }

    @Test
    void aFormThatIsNoneIsRefusedAndNothingBreaks() {
        for (String body : List.of("label=%ff", "label=%zz", "=&&=&a")) {
            Got got = site.post("/locker/units/new?kind=pad", Map.of(body, "x"));
            assertTrue(got.status() == 400, body + " " + got.status());
        }
        assertFalse(site.get("/locker/units/%3Cscript%3E").text().contains("went wrong"));
        assertEquals(0, site.locker.units().size());
    }

    private String add(UnitDraft draft) {
        return site.locker.change(ADA, changes -> changes.add(draft).id()).text();
    }

    private String book(String unit, long fromS, long untilS) {
        Instant now = Instant.now();
        return site.locker.change(ADA, changes -> changes.book(new BookingDraft(List.of(unit), now.plusSeconds(fromS), now.plusSeconds(untilS), BookingKind.SESSION,
                "Barn take", "Ada", null)).id()).text();
    }

    private static UnitDraft withPlace(Unit unit, String place) {
        return new UnitDraft(unit.id(), unit.kind(), unit.micType(), unit.label(), null, null, null, null, null, place, null, null, null, null, null);
    }

    private static String local(Instant at) {
        return at.atZone(ZoneId.systemDefault()).toLocalDateTime().truncatedTo(ChronoUnit.MINUTES).toString();
    }

    private List<String> labels(String address) {
        Got page = site.get(address);
        assertEquals(200, page.status(), address + " " + page.text());
        return page.page().page().select("table.units tbody th > a").eachText();
    }
}
