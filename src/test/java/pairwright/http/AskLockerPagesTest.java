package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.advice.KnowledgeStore;
import pairwright.catalogue.Json;
import pairwright.http.LockerSite.Got;
import pairwright.locker.Act;
import pairwright.locker.Condition;
import pairwright.locker.DocumentDraft;
import pairwright.locker.MarkDraft;
import pairwright.locker.Role;
import pairwright.locker.UnitDraft;
import pairwright.locker.UnitKind;

/** Asking, with a real locker behind it, as a browser without script does. */
class AskLockerPagesTest {
    private static final String TRUMPET = "/?source=trumpet";
    /** Ten in the morning by the clock on the wall, three days from now, and four hours. */
    private static final OffsetDateTime FROM = Instant.now().plus(3, ChronoUnit.DAYS).atZone(ZoneId.systemDefault()).toLocalDate().atTime(10, 0)
            .atZone(ZoneId.systemDefault()).toOffsetDateTime();
    private static final OffsetDateTime UNTIL = FROM.plusHours(4);
    private static final String THEN = "&from=" + local(FROM) + "&until=" + local(UNTIL);

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

    private static String local(OffsetDateTime at) {
        return at.toLocalDateTime().toString();
    }

    private static void fill(LockerSite site) {
        site.locker.change(Act.by("Ada"), changes -> {
            changes.add(new UnitDraft("ribbon-1", UnitKind.MIC, "long-ribbon", "Ribbon 1", null, "B-17", null, Condition.LIMITED, "Hums near the lamp", "Shelf A", null, null,
                    null, null, null));
            changes.add(UnitDraft.mic("vocal-1", "handheld-moving-coil", "Vocal 1"));
            changes.add(UnitDraft.mic("vocal-2", "handheld-moving-coil", "Vocal 2"));
            return "";
        });
    }

    private Got page(String address) {
        Got page = site.get(address);
        assertEquals(200, page.status(), address + "\n" + page.text());
        assertEquals(List.of(), page.page().faults(), address);
        return page;
    }

    private static List<String> takes(Got page) {
        return page.page().page().select(".option .take").eachText();
    }

    private String book(String unit) throws IOException {
        HttpResponse<String> booked = site.api("POST", "/api/locker/bookings", ("{\"units\": [\"%s\"], \"from\": \"%s\", \"until\": \"%s\", \"kind\": \"session\", "
                + "\"for\": \"Horns\", \"by\": \"Wren of the barn\"}").formatted(unit, FROM.plusHours(1).toInstant(), FROM.plusHours(3).toInstant()));
        assertEquals(201, booked.statusCode(), booked.body());
        return Json.mapper().readTree(booked.body()).path("id").asText();
    }

    @Test
    void whatIsBookedChangesTheAnswerAtOnceAndCancelledItIsAsItWas() throws IOException {
        fill(site);
        String address = TRUMPET + THEN;
        HttpResponse<String> first = site.again(address, "none");
        String mark = first.headers().firstValue("ETag").orElseThrow();
        assertEquals(304, site.again(address, mark).statusCode());
        Got before = page(address);
        assertTrue(takes(before).get(0).startsWith("Take Ribbon 1, from Shelf A; no other of its type is free. Mind: Hums near the lamp."), takes(before).toString());
        assertEquals(List.of(), before.page().page().select(".missed").eachText());

        String booking = book("ribbon-1");
        HttpResponse<String> second = site.again(address, mark);
        assertEquals(200, second.statusCode(), "what a browser kept from before is no longer true");
        assertNotEquals(mark, second.headers().firstValue("ETag").orElseThrow());
        Got meanwhile = page(address);
        assertTrue(takes(meanwhile).stream().allMatch(take -> take.startsWith("Take Vocal")), takes(meanwhile).toString());
        assertTrue(takes(meanwhile).get(0).contains("2 of its type are free"), takes(meanwhile).toString());
        String out = meanwhile.page().page().select(".missed").text();
        assertTrue(out.matches("Better, but out The long passive ribbon.* would score [0-9.]+ more\\. Ribbon 1 is out for Horns with Wren of the barn, free again .*, 1[0-9]:00\\."), out);
        assertEquals(List.of("/locker/units/ribbon-1"), meanwhile.page().page().select(".missed a").eachAttr("href"));
        assertTrue(takes(page(TRUMPET)).get(0).startsWith("Take Ribbon 1"), "another time is not concerned");

        assertEquals(2, site.api("DELETE", "/api/locker/bookings/" + booking, "").statusCode() / 100);
        assertEquals(first.body(), site.again(address, "none").body());
        assertEquals(304, site.again(address, mark).statusCode());
    }

    @Test
    void thePageShowsWhatTheInterfaceAnswers() throws IOException {
        fill(site);
        book("ribbon-1");
        for (String use : List.of("free", "owned", "any")) {
            JsonNode answer = Json.mapper().readTree(site.api("POST", "/api/ask", "{\"source\": \"trumpet\", \"from\": \"%s\", \"until\": \"%s\", \"locker\": \"%s\"}"
                    .formatted(FROM.toInstant(), UNTIL.toInstant(), use)).body());
            Got page = page(TRUMPET + THEN + "&locker=" + use);
            List<String> there = Stream.iterate(0, i -> i < answer.path("options").size(), i -> i + 1)
                    .flatMap(i -> answer.path("options").get(i).path("mics").findValuesAsText("micType").stream()).map(type -> "/mics/" + type).toList();
            assertEquals(there, page.page().page().select(".option .set-lines > li > a").eachAttr("href"), use);
        }
    }

    @Test
    void theQuestionSaysWhenAndWhatMayBeUsed() {
        fill(site);
        Got plain = page(TRUMPET);
        Map<String, String> fields = LockerSite.fields(plain.page().page().selectFirst("form#parts"), Map.of());
        assertEquals(List.of("", "", "free"), Stream.of("from", "until", "locker").map(fields::get).toList());
        assertTrue(plain.text().contains("No time was named: the locker is taken as it is now and for 4 hours."), plain.text());
        assertTrue(plain.page().page().select("#part-locker").text().contains("Times are"), "whose clock is meant is said");
        Got then = page(TRUMPET + THEN + "&locker=owned");
        Element form = then.page().page().selectFirst("form#parts");
        Map<String, String> kept = LockerSite.fields(form, Map.of());
        assertEquals(List.of(local(FROM), local(UNTIL), "owned"), Stream.of("from", "until", "locker").map(kept::get).toList());
        assertTrue(then.page().page().select(".needed-when").text().matches("Needed .* 10:00 to 14:00\\. All that the locker owns was ranked, free or not\\."),
                then.page().page().select(".needed-when").text());
        assertEquals("The whole catalogue was ranked, whatever the locker holds.", page(TRUMPET + THEN + "&locker=any").page().page().select(".needed-when").text());
        assertEquals(List.of(), takes(page(TRUMPET + THEN + "&locker=any")));
        Element again = then.page().page().selectFirst("form.ask");
        assertEquals("owned", LockerSite.fields(again, Map.of()).get("locker"), "the next question is about the same time");
        assertEquals(FROM.toInstant(), OffsetDateTime.parse(LockerSite.fields(again, Map.of()).get("from")).toInstant());
    }

    @Test
    void aTimeWithItsOffsetIsTheSameAsByTheClockOnTheWall() {
        fill(site);
        String zulu = TRUMPET + "&from=" + FROM.toInstant() + "&until=" + UNTIL.toInstant();
        String written = TRUMPET + "&from=" + DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(FROM) + "&until=" + local(UNTIL);
        String wall = page(TRUMPET + THEN).text();
        assertEquals(wall, page(zulu).text());
        assertEquals(wall, page(written).text(), "a plus that nobody escaped is meant as one");
    }

    @Test
    void oneEndAloneIsEnough() throws IOException {
        fill(site);
        book("ribbon-1");
        Got from = page(TRUMPET + "&from=" + local(FROM));
        assertTrue(from.page().page().select(".needed-when").text().contains(", for 4 hours."), from.text());
        assertTrue(takes(from).get(0).startsWith("Take Vocal"), takes(from).toString());
        Got until = page(TRUMPET + "&until=" + local(UNTIL));
        assertTrue(until.page().page().select(".needed-when").text().startsWith("Needed until "), until.text());
        assertTrue(takes(until).get(0).startsWith("Take Vocal"), takes(until).toString());
        assertTrue(takes(page(TRUMPET + "&until=" + local(FROM))).get(0).startsWith("Take Ribbon 1"));
        assertTrue(page(TRUMPET + "&from=2020-01-01T10:00").text().contains("That is over."));
    }

    @Test
    void whatIsNoTimeIsToldAtItsFieldAndNothingElseIsLost() {
        fill(site);
        for (Map.Entry<String, String> odd : Map.of("from=soon", "Needed from: \"soon\" is no time.", "until=2027-02-30T10:00", "is on no calendar and no clock.",
                "from=" + local(UNTIL) + "&until=" + local(FROM), "is not after from", "locker=nonsense", "there is no way to use the locker \"nonsense\". Use one of free, owned, any",
                "from=9999-12-31T23:00", "Give a year from 1970 to 9998", "until=2020-01-01T10:00", "is over, and no start is named", "from=0001-01-01T00:00", "is too far away",
                "from=%3Cscript%3E&until=" + "9".repeat(500), "<script>").entrySet()) {
            for (String path : List.of("/?", "/set-up?", "/moves?mic=long-ribbon,figure-8,bell,0.6,0&heard=boxy&", "/why-not?type=long-ribbon&")) {
                Got got = site.get(path + "source=trumpet&" + odd.getKey());
                assertEquals(400, got.status(), path + odd.getKey());
                assertEquals(List.of(), got.page().faults(), path + odd.getKey());
                assertTrue(got.text().contains(odd.getValue()), odd.getKey() + "\n" + got.text());
                String name = odd.getKey().contains("&until") && !odd.getKey().contains("script") ? "until" : odd.getKey().substring(0, odd.getKey().indexOf('='));
                assertEquals("true", got.page().page().select("#f-" + name).attr("aria-invalid"), path + odd.getKey());
                assertEquals("trumpet", got.page().page().select("#f-source").attr("value"));
            }
        }
    }

    @Test
    void ownedSaysWhenItIsFreeAgainAndThenThereIsNothingToBook() throws IOException {
        fill(site);
        book("ribbon-1");
        Got page = page(TRUMPET + THEN + "&locker=owned");
        assertTrue(takes(page).get(0).matches("Ribbon 1, from Shelf A, is booked for a session; free again .*1[0-9]:00\\. Mind: Hums near the lamp\\."), takes(page).toString());
        Element first = page.page().page().selectFirst(".option");
        assertEquals(List.of(), first.select("a[href^=/locker/bookings/new]").eachAttr("href"));
        assertFalse(page.page().page().select(".option a[href^=/locker/bookings/new]").isEmpty(), "what is free can be booked");
    }

    @Test
    void aMatchedPairIsNamedAsOneAndBookedTogether() {
        site.locker.change(Act.by("Ada"), changes -> {
            changes.add(UnitDraft.mic("pencil-1", "small-condenser-cardioid", "Pencil 1").matchedWith("pencil-2"));
            changes.add(UnitDraft.mic("pencil-2", "small-condenser-cardioid", "Pencil 2"));
            return "";
        });
        Got page = page("/?words=grand+piano+in+stereo" + THEN);
        List<String> takes = page.page().page().selectFirst(".option").select(".take").eachText();
        assertEquals(List.of("Take Pencil 1; a matched pair with Pencil 2; 2 of its type are free.", "Take Pencil 2; a matched pair with Pencil 1; 2 of its type are free."), takes);
        Element book = page.page().page().selectFirst(".option a[href^=/locker/bookings/new]");
        assertTrue(book.text().startsWith("Book these"), book.text());
        assertEquals("/locker/bookings/new?from=" + local(FROM).replace(":", "%3A") + "&until=" + local(UNTIL).replace(":", "%3A") + "&unit=pencil-1&unit=pencil-2", book.attr("href"));
        Got form = page(book.attr("href"));
        assertEquals(List.of("pencil-1", "pencil-2"), form.page().page().select("input[name=unit][checked]").eachAttr("value"), form.text());
        assertEquals(List.of(local(FROM), local(UNTIL)), List.of(form.page().page().select("#from").attr("value"), form.page().page().select("#until").attr("value")));
    }

    @Test
    void whatFollowsAnAnswerIsAboutTheSameTimeAndTheSameUnits() throws IOException {
        fill(site);
        book("ribbon-1");
        Got page = page(TRUMPET + THEN + "&options=1");
        String take = takes(page).get(0);
        Got sheet = page(page.page().page().select(".option .actions a[href^=/set-up]").attr("href"));
        String fetch = sheet.page().page().select(".carry").text();
        assertTrue(take.startsWith("Take Vocal 1") && fetch.startsWith("Fetch Vocal 1 (handheld moving coil, cardioid)"), take + fetch);
        assertTrue(sheet.page().page().select(".missed").text().contains("Ribbon 1 is out for Horns with Wren of the barn"), sheet.text());
        assertTrue(sheet.page().page().select(".needed-when").text().contains("10:00 to 14:00"), sheet.text());
        Element heard = page.page().page().selectFirst("form.heard");
        StringBuilder query = new StringBuilder();
        LockerSite.fields(heard, Map.of()).forEach((name, value) -> query.append(name).append('=').append(URLEncoder.encode(value, StandardCharsets.UTF_8)).append('&'));
        Got moves = page("/moves?" + query);
        assertEquals(List.of(take), moves.page().page().select(".take").eachText());
        Got stands = page(moves.page().page().select("main .actions a[href^=/moves]").attr("href"));
        assertEquals(List.of(take), takes(stands));
        Got why = page("/why-not?type=long-ribbon&source=trumpet" + THEN);
        assertTrue(why.text().contains("Ribbon 1 is out for Horns with Wren of the barn"), why.text());
        String owned = why.page().page().select("main a[href*=locker=owned]").attr("href");
        assertTrue(takes(page(owned)).get(0).startsWith("Ribbon 1"), "a link leads to the answer with all that is owned: " + owned);
    }

    @Test
    void theSheetSaysWhatToFetchFromWhere() {
        fill(site);
        Got sheet = page("/set-up?source=trumpet" + THEN);
        List<String> fetch = sheet.page().page().select(".carry li").eachText();
        assertTrue(fetch.get(0).matches("Ribbon 1 \\(long passive ribbon, figure-8\\), tag B-17, from Shelf A\\. Mind: Hums near the lamp\\."), fetch.toString());
        assertTrue(fetch.stream().anyMatch(one -> one.contains("stand")) && fetch.contains("1 microphone lead"), fetch.toString());
        assertTrue(sheet.page().page().select(".sign").text().startsWith("Taken out by"));
        assertEquals("Switch", sheet.page().page().select("#fetch-name").text());
        Got without = page("/set-up?source=trumpet&locker=any");
        assertEquals(List.of("Fetch and switch"), without.page().page().select("#fetch-name").eachText());
        assertTrue(without.page().page().select(".carry, .sign").isEmpty());
    }

    @Test
    void whereNothingThatIsFreeFitsOneLinkTakesAllThatIsOwned() throws IOException {
        site.locker.change(Act.by("Ada"), changes -> changes.add(UnitDraft.mic("ribbon-1", "long-ribbon", "Ribbon 1")).id());
        book("ribbon-1");
        Got none = page(TRUMPET + THEN);
        List<String> links = none.page().page().select(".instead a").eachAttr("href");
        assertEquals(2, links.size(), none.text());
        assertTrue(takes(page(links.get(0))).get(0).startsWith("Ribbon 1 is booked"), takes(page(links.get(0))).toString());
        assertTrue(links.get(1).contains("locker=any") && takes(page(links.get(1))).isEmpty(), links.toString());
    }

    @Test
    void withoutAMicrophoneInTheLockerNothingOfItIsAsked() {
        site.locker.change(Act.by("Ada"), changes -> changes.add(new UnitDraft("stand-1", UnitKind.STAND, null, "Stand 1", null, null, null, null, null, null, null, null, null,
                null, null)).id());
        Got plain = page(TRUMPET);
        assertTrue(plain.page().page().select("#part-locker, .take, .needed-when, .missed").isEmpty());
        assertTrue(page(TRUMPET + THEN).page().page().select("p.note").text().contains("No locker here holds a microphone"));
        assertTrue(Serving.get(TRUMPET + THEN).body().contains("No locker here holds a microphone"));
        assertFalse(Serving.get(TRUMPET).body().contains("locker"));
    }

    @Test
    void aLockerThatDoesNotAnswerIsSaidAndTheWholeCatalogueRanked() {
        fill(site);
        String ranked = page(TRUMPET + THEN + "&locker=any").page().page().select(".option h2").text();
        site.locker.close();
        Got page = page(TRUMPET + THEN);
        assertTrue(page.page().page().select(".away").text().contains("The locker cannot be reached just now, so nobody can say what is free. The whole catalogue was ranked."),
                page.text());
        assertEquals(ranked, page.page().page().select(".option h2").text());
        assertTrue(page.page().page().select(".take").isEmpty());
        assertFalse(page.page().page().select("#part-locker").isEmpty(), "the time is not lost");
        assertTrue(page("/set-up?source=trumpet" + THEN).page().page().select(".away").text().contains("cannot be reached"));
    }

    @Test
    void readersSeeAllOfItAndBookNothing(@TempDir Path other) {
        try (LockerSite closed = new LockerSite(other, Map.of("Finch", Role.READER, "Wren", Role.ENGINEER))) {
            fill(closed);
            for (String address : List.of(TRUMPET + THEN, "/set-up?source=trumpet" + THEN)) {
                Got reader = closed.get(address, "Finch");
                Got engineer = closed.get(address, "Wren");
                assertEquals(List.of(200, 200), List.of(reader.status(), engineer.status()));
                assertEquals(engineer.page().page().select(".take, .carry li").eachText(), reader.page().page().select(".take, .carry li").eachText());
                assertTrue(reader.text().contains("Ribbon 1"));
                assertTrue(reader.page().page().select("a[href*=bookings/new]").isEmpty(), address);
                assertFalse(engineer.page().page().select("a[href*=bookings/new]").isEmpty(), address);
            }
        }
    }

    @Test
    void whoPlaysIsAskedForAndWhatWasKeptWithThemCounts() {
        fill(site);
        String duo = "{\"lineUp\": [{\"id\": \"horn\", \"player\": \"Wren\", \"source\": \"trumpet\", \"xM\": 1, \"yM\": 1, \"facingDegrees\": 0}]}";
        String position = KnowledgeStore.builtIn().current().catalogue().sources().get("trumpet").positions().get(0).id();
        site.locker.change(Act.by("Ada"), changes -> {
            for (int session = 1; session <= 4; session++) {
                changes.put(DocumentDraft.lineUp("day-" + session, "Day " + session, null, null, duo), null);
                changes.marks("day-" + session, List.of(new MarkDraft("horn", 1, "trumpet", null, "Wren", "long-ribbon", position, null, true, null, null, null, null)), null);
            }
            return "";
        });
        Got named = page(TRUMPET + "&onlyType=long-ribbon&player=Wren");
        assertEquals("Wren", named.page().page().selectFirst("#player").attr("value"));
        assertTrue(named.text().contains("with this player"), named.text());
        assertFalse(page(TRUMPET + "&onlyType=long-ribbon&player=Ines").text().contains("with this player"));
        assertEquals("", page(TRUMPET + "&player=").page().page().selectFirst("#player").attr("value"), "an empty field names nobody");
    }
}
