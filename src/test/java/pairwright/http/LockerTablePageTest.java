package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.http.LockerSite.Got;
import pairwright.locker.Act;
import pairwright.locker.Condition;
import pairwright.locker.Unit;
import pairwright.locker.UnitDraft;

/** Units as a table: taken out, looked at, brought in. */
class LockerTablePageTest {
    private static final Act ADA = Act.by("Ada");
    private static final String TABLE = """
            id,micType,label,condition,note
            ribbon-1,long-ribbon,Ribbon 1,limited,"Hums, a little"
            ,small-condenser-omni,Omni 1,good,
            """;

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
    void aTableIsLookedAtFirstAndThenBroughtIn() {
        site.locker.change(ADA, changes -> changes.add(UnitDraft.mic("ribbon-1", "long-ribbon", "Ribbon 1")).id());
        Got seen = site.send(site.get("/locker/import"), "look", Map.of("table", TABLE));
        assertEquals(200, seen.status(), seen.text());
        assertEquals(List.of(), seen.page().faults());
        assertTrue(seen.page().page().select("#would").text().contains("1 new, 1 changed, 0 the same"), seen.text());
        String rows = seen.page().page().select("table.preview").text();
        assertTrue(rows.contains("condition: good \u2192 limited") && rows.contains("note: nothing \u2192 Hums, a little"), rows);
        assertEquals(1, site.locker.units().size(), "nothing is done by looking");
        Got done = site.send(seen, "bring-in", Map.of());
        assertEquals(303, done.status(), done.text());
        assertTrue(site.get(done.location()).text().contains("The table was brought in"));
        assertEquals(List.of("Omni 1", "Ribbon 1"), site.locker.units().stream().map(Unit::label).toList());
        assertEquals(Condition.LIMITED, site.locker.unit("ribbon-1").orElseThrow().condition());
        long revision = site.locker.revision();
        assertEquals(303, site.send(seen, "bring-in", Map.of()).status());
        assertEquals(revision, site.locker.revision(), "what is sent twice is done once");
    }

    @Test
    void everyFaultIsToldByItsLineAndColumnAndNothingIsBroughtIn() {
        Got seen = site.send(site.get("/locker/import"), "look", Map.of("table", "micType,label,condition\nlong-ribon,Ribbon 1,good\nlong-ribbon,Ribbon 2,shiny\nlong-ribbon,Ribbon 3,limited\n"));
        assertEquals(400, seen.status());
        assertEquals(List.of(), seen.page().faults());
        List<String> wrong = seen.page().page().select("#wrong tbody tr").eachText();
        assertTrue(wrong.stream().anyMatch(row -> row.startsWith("Line 2 micType long-ribon")), wrong.toString());
        assertTrue(wrong.stream().anyMatch(row -> row.startsWith("Line 3 condition shiny")), wrong.toString());
        assertTrue(wrong.stream().anyMatch(row -> row.startsWith("Line 4 note")), wrong.toString());
        assertTrue(seen.page().page().select("form#bring-in").isEmpty());
        assertTrue(seen.page().page().select("#table").get(0).wholeText().contains("long-ribon"), "what was pasted is kept");
        assertEquals(400, site.send(site.get("/locker/import"), "look", Map.of()).status());
        assertEquals(0, site.locker.units().size());
    }

    @Test
    void whatWasChangedSinceOneLookedIsShownAnew() {
        Got seen = site.send(site.get("/locker/import"), "look", Map.of("table", TABLE));
        site.locker.change(ADA, changes -> changes.add(UnitDraft.mic("ribbon-1", "long-ribbon", "Old ribbon")).id());
        Got anew = site.send(seen, "bring-in", Map.of());
        assertEquals(409, anew.status());
        assertTrue(anew.text().contains("changed since you looked"), anew.text());
        assertTrue(anew.page().page().select("table.preview").text().contains("label: Old ribbon \u2192 Ribbon 1"), anew.text());
        assertEquals(1, site.locker.units().size());
        assertEquals(303, site.send(anew, "bring-in", Map.of()).status());
        assertEquals(2, site.locker.units().size());
    }

    @Test
    void whatIsTakenAsATableIsTheSameWhenItIsBroughtBack() {
        site.locker.change(ADA, changes -> changes.add(UnitDraft.mic("ribbon-1", "long-ribbon", "Ribbon \u201e1\u201c, the \"old\" one")).id());
        String table = site.raw("/locker/units.csv");
        Got seen = site.send(site.get("/locker/import"), "look", Map.of("table", table));
        assertTrue(seen.text().contains("0 new, 0 changed, 1 the same"), seen.text());
        assertTrue(seen.text().contains("There is nothing to do"), seen.text());
        Got commas = site.send(site.get("/locker/import"), "look", Map.of("table", site.raw("/locker/units.csv?decimals=comma")));
        assertTrue(commas.text().contains("1 the same"), commas.text());
    }

    @Test
    void thousandsOfRowsAreShownInPartAndBroughtInWhole() {
        StringBuilder table = new StringBuilder("kind,label,lossDb\n");
        for (int pad = 1; pad <= 1200; pad++) {
            table.append("pad,Pad ").append(pad).append(",20\n");
        }
        Got seen = site.send(site.get("/locker/import"), "look", Map.of("table", table.toString()));
        assertEquals(200, seen.status());
        assertTrue(seen.text().contains("700 more rows are not shown here"), seen.page().page().select("#would").text());
        assertEquals(303, site.send(seen, "bring-in", Map.of()).status());
        assertEquals(1200, site.locker.units().size());
        Got list = site.get("/locker");
        assertEquals(100, list.page().page().select("table.units tbody tr").size());
        assertEquals("Pad 2", list.page().page().select("table.units tbody th > a").get(1).text());
        Got next = site.get(list.page().page().select("nav.beside a").attr("href"));
        assertEquals("Pad 101", next.page().page().select("table.units tbody th > a").get(0).text());
        assertFalse(next.page().page().select("nav.beside a[href='/locker?page=1']").isEmpty());
    }
}
