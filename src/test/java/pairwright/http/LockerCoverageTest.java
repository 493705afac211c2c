package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.advice.Advisor;
import pairwright.http.LockerSite.Got;
import pairwright.locker.Act;
import pairwright.locker.BookingDraft;
import pairwright.locker.BookingKind;
import pairwright.locker.DemoLocker;
import pairwright.locker.Unit;
import pairwright.locker.UnitKind;
import pairwright.model.Answer;
import pairwright.model.FromLocker;
import pairwright.model.Request;
import pairwright.model.Stock;

/** Coverage over HTTP, of the demonstration locker. */
class LockerCoverageTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final OffsetDateTime FROM = OffsetDateTime.parse("2031-03-02T10:00:00Z");
    private static final String SUNDAY = "from=2031-03-02T10:00:00Z&until=2031-03-02T12:00:00Z";

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

    private void demo() {
        DemoLocker.fill(site.locker, Serving.KNOWLEDGE.current().catalogue(), LocalDate.now(), ZoneId.systemDefault());
    }

    private JsonNode ready(String query) throws Exception {
        String address = "/api/locker/coverage" + query;
        JsonNode told = read(address);
        int done = -1;
        while (told.path("state").asText().equals("computing")) {
            assertTrue(told.path("done").asInt() >= done, told.toString());
            assertTrue(told.path("sources").isEmpty(), "nothing half done");
            done = told.path("done").asInt();
            Thread.sleep(50);
            told = read(address);
        }
        assertEquals("ready", told.path("state").asText(), told.toString());
        return told;
    }

    private JsonNode read(String address) throws JsonProcessingException {
        return JSON.readTree(site.raw(address));
    }

    private Got page(String address) throws InterruptedException {
        Got page = site.get(address);
        while (page.page().page().selectFirst("progress") != null) {
            assertTrue(page.page().page().select("main a.button").text().contains("Look again"), page.text());
            Thread.sleep(50);
            page = site.get(page.page().page().selectFirst("main a.button").attr("href"));
        }
        return page;
    }

    @Test
    void theDemoIsServedAsItsAnswersSay() throws Exception {
        demo();
        List<Unit> inRepair = site.locker.units().stream().filter(unit -> unit.kind() == UnitKind.MIC && !unit.condition().usable()).toList();
        assertEquals(1, inRepair.size(), "the demo has one, which does not count");
        JsonNode owned = ready("");
        JsonNode free = ready("?" + SUNDAY);
        assertEquals("owned", owned.path("locker").asText());
        assertEquals("free", free.path("locker").asText());
        Advisor advisor = new Advisor(Serving.KNOWLEDGE::current, (from, until) -> without(inRepair.get(0).id(), CoverageRoutes.stock(site.locker, null)));
        List<String> differ = new ArrayList<>();
        for (JsonNode source : owned.path("sources")) {
            compare(advisor, source, FromLocker.OWNED, "score", differ);
            compare(advisor, source, FromLocker.ANY, "bestScore", differ);
        }
        Advisor then = new Advisor(Serving.KNOWLEDGE::current, new LockerAtHand(site.locker, Clock.systemDefaultZone()));
        for (JsonNode source : free.path("sources")) {
            compare(then, source, FromLocker.FREE, "score", differ);
        }
        assertEquals(List.of(), differ);
        assertEquals(Serving.KNOWLEDGE.current().catalogue().sources().size(), owned.path("sources").size());
        assertTrue(verdicts(owned).contains("well"), verdicts(owned).toString());
    }

    /** The different verdicts there are. */
    private static List<String> verdicts(JsonNode told) {
        List<String> verdicts = new ArrayList<>();
        told.path("sources").forEach(source -> verdicts.add(source.path("verdict").asText()));
        return verdicts.stream().distinct().sorted().toList();
    }

    private static Stock without(String unit, Stock stock) {
        return new Stock(true, stock.units().stream().filter(held -> !held.id().equals(unit)).toList());
    }

    private static void compare(Advisor advisor, JsonNode source, FromLocker use, String field, List<String> differ) {
        Request request = new Request(null, source.path("source").asText(), null, null, null, null, null, null, null, null, null, null, null, null)
                .at(use == FromLocker.FREE ? FROM : null, use == FromLocker.FREE ? FROM.plusHours(2) : null, use);
        Answer answer = advisor.ask(request);
        Double score = answer.options().isEmpty() ? null : Double.valueOf(answer.options().get(0).score());
        Double shown = source.has(field) ? Double.valueOf(source.path(field).asDouble()) : null;
        if (!java.util.Objects.equals(score, shown)) {
            differ.add(source.path("source").asText() + " " + use + ": " + score + " is answered, " + shown + " shown");
        }
    }

    @Test
    void aBookingTakesFromWhatIsFreeThenAndNotFromWhatIsOwned() throws Exception {
        demo();
        JsonNode before = ready("?" + SUNDAY);
        JsonNode owned = ready("");
        List<String> mics = site.locker.units().stream().filter(unit -> unit.kind() == UnitKind.MIC && unit.condition().usable()).map(Unit::id).toList();
        Instant from = Instant.parse("2031-03-02T09:00:00Z");
        site.locker.change(Act.by("Ada"), changes -> changes.book(new BookingDraft(mics, from, from.plusSeconds(36_000), BookingKind.SESSION, "all of it", "Wren", null)).id());
        assertTrue(verdicts(before).contains("well"));
        assertEquals(List.of("not-at-all"), verdicts(ready("?" + SUNDAY)));
        assertEquals(owned.path("sources"), ready("").path("sources"));
    }

    @Test
    void whatCannotBeIsToldAndNoFailure() throws Exception {
        for (String query : List.of("?locker=any", "?locker=owned&" + SUNDAY, "?from=soon", "?from=2031-03-02T10:00:00Z&until=2031-03-02T09:00:00Z", "?type=x")) {
            assertEquals(400, read("/api/locker/coverage" + query).path("status").asInt(), query);
        }
        for (String query : List.of("?locker=any", "?from=soon", "?served=maybe", "?from=2031-03-02T10:00&until=2031-03-02T09:00")) {
            assertEquals(400, site.get("/locker/coverage" + query).status(), query);
        }
    }

    @Test
    void thePageSaysTheSameInWordsAndFiltersByVerdict() throws Exception {
        demo();
        JsonNode told = ready("");
        Got page = page("/locker/coverage");
        assertEquals(200, page.status());
        assertEquals("Coverage", page.page().page().select(".locker-menu [aria-current=page]").text());
        assertEquals(told.path("sources").size(), page.page().page().select("table.served tbody tr").size());
        assertEquals(told.path("sources").size(), page.page().page().select("table.served th[scope=row] a[href*=source]").size(), "each leads to its answer");
        assertEquals(page.page().page().select("table.served").size(), page.page().page().select("table.served caption").size());
        assertEquals(Math.min(8, told.path("helps").size()), page.page().page().select("table.helps tbody tr").size(), page.text());
        assertTrue(page.page().page().selectFirst("figure svg title, figure svg desc") != null, "the picture is told in words");
        assertTrue(page.page().page().select("table.served thead th").eachText().contains("Best of all types"), page.text());
        boolean ahead = false;
        for (JsonNode source : told.path("sources")) {
            ahead |= source.has("score") && source.path("score").asDouble() > source.path("bestScore").asDouble();
        }
        assertTrue(ahead, "the matched pairs of this locker put it ahead somewhere");
        assertTrue(page.text().contains("What is at hand may be ahead"), page.text());
        List<String> poorly = new ArrayList<>();
        told.path("sources").forEach(source -> {
            if (source.path("verdict").asText().equals("poorly")) {
                poorly.add(source.path("name").asText());
            }
        });
        assertFalse(poorly.isEmpty(), "there is something to filter for");
        Got only = page("/locker/coverage?served=poorly");
        assertEquals(poorly, only.page().page().select("table.served th[scope=row]").eachText());
        assertEquals(List.of("Poorly"), only.page().page().select("table.served .verdict").eachText().stream().distinct().toList());
        assertEquals(List.of(), page.page().faults());
    }

    @Test
    void anEmptyLockerSaysWhatToBeginWith() throws Exception {
        JsonNode told = ready("");
        assertEquals(List.of("not-at-all"), verdicts(told));
        Got page = page("/locker/coverage");
        assertTrue(page.text().contains("The locker holds no microphone yet"));
        assertFalse(page.text().contains("may be ahead"), "said only where it is so");
    }
}
