package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.http.Serving.assertProblem;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Units as a table, for programs. */
class LockerTableApiTest {
    private static final String IMPORT = "/api/locker/units/import";
    private static final String CSV = "Content-Type: text/csv";

    @TempDir
    private Path folder;
    private LockerServing serving;

    @BeforeEach
    void open() {
        serving = LockerServing.demo(folder, LocalDate.now());
    }

    @AfterEach
    void close() {
        serving.close();
    }

    @Test
    void whatComesOutGoesInAndChangesNothing() {
        long revision = serving.locker.revision();
        for (String decimals : List.of("", "?decimals=point", "?decimals=comma")) {
            Reply table = serving.get("/api/locker/units.csv" + decimals);
            assertEquals("text/csv", table.mediaType());
            assertEquals("no-store", table.headers().get("cache-control"));
            JsonNode done = serving.post(IMPORT, table.body(), CSV).json();
            assertEquals(44, done.path("same").asInt(), done.toString());
            assertEquals(0, done.path("added").asInt() + done.path("changed").asInt() + done.path("rows").size());
            assertEquals(table.body(), serving.get("/api/locker/units.csv" + decimals).body());
        }
        assertEquals(revision, serving.locker.revision());
        assertProblem(400, serving.get("/api/locker/units.csv?decimals=semicolon"));
    }

    @Test
    void aTableThatWasTakenOutFillsAnotherLocker(@TempDir Path other) {
        String table = serving.get("/api/locker/units.csv").body();
        try (LockerServing empty = LockerServing.open(pairwright.locker.Place.in(other))) {
            assertEquals(44, empty.post(IMPORT, table, CSV).json().path("added").asInt());
            assertEquals(table, empty.get("/api/locker/units.csv").body());
        }
    }

    @Test
    void aPreviewSaysEveryFaultByItsRowAndDoesNothing() {
        long revision = serving.locker.revision();
        String table = "id,micType,label,condition,tag\r\n"
                + "pencil-1,small-condenser-cardioid,Pencil 1,limited,B-101\r\n"
                + "new-1,no-such-type,New,good,\r\n"
                + "new-2,long-ribbon,New 2,fine,B-102\r\n";
        Reply preview = serving.post(IMPORT + "?preview=true", table, CSV, "Idempotency-Key: k");
        assertEquals(200, preview.status(), preview.body());
        List<String> places = new ArrayList<>();
        preview.json().path("faults").forEach(fault -> places.add(fault.path("line").asInt() + " " + fault.path("column").asText()));
        assertTrue(places.containsAll(List.of("2 note", "3 micType", "4 condition", "4 tag")), preview.body());
        assertEquals(revision, serving.locker.revision());
        Reply refused = serving.post(IMPORT, table, CSV, "Idempotency-Key: k");
        assertProblem(400, refused);
        List<String> pointers = new ArrayList<>();
        refused.json().path("errors").forEach(error -> pointers.add(error.path("at").asText()));
        assertTrue(pointers.containsAll(List.of("/lines/2/note", "/lines/3/micType", "/lines/4/condition", "/lines/4/tag")), refused.body());
        assertEquals(revision, serving.locker.revision(), "all of it or nothing");
    }

    @Test
    void whatIsSentTwiceIsBroughtInOnce() {
        String table = "micType\r\nlong-ribbon\r\nlong-ribbon\r\n";
        assertEquals(200, serving.post(IMPORT + "?preview=true", table, CSV, "Idempotency-Key: two-ribbons").status());
        Reply first = serving.post(IMPORT, table, CSV, "Idempotency-Key: two-ribbons");
        Reply again = serving.post(IMPORT, table, CSV, "Idempotency-Key: two-ribbons");
        assertEquals(first.body(), again.body());
        assertEquals("true", again.headers().get("idempotent-replay"));
        assertEquals(46, serving.locker.units().size());
        assertProblem(422, serving.post(IMPORT, table + "long-ribbon\r\n", CSV, "Idempotency-Key: two-ribbons"));
        assertEquals(46, serving.locker.units().size());
        assertNotEquals(first.headers().get("idempotent-replay"), "true");
    }

    /** Each of them asks for a label or an id of its own, and meanwhile nobody else can write: this was a matter of minutes. */
    @Test
    void thousandsOfUnitsWithoutAnIdAreToldApartWithoutKeepingOthersWaiting() {
        int many = 4_000;
        String unnamed = "kind,lossDb,label\r\n" + "pad,20,\r\n".repeat(many) + "pad,20,Pad 9000\r\npad,20,\r\n";
        assertEquals(many + 2, serving.post(IMPORT, unnamed, CSV).json().path("added").asInt());
        List<String> labels = serving.locker.units().stream().map(pairwright.locker.Unit::label).toList();
        assertTrue(labels.containsAll(List.of("Pad 1", "Pad " + many, "Pad 9000", "Pad 9001")), labels.toString());
        assertEquals(many + 2, labels.stream().filter(label -> label.matches("Pad \\d+")).distinct().count());
        assertEquals(many, serving.post(IMPORT, "kind,lossDb,label\r\n" + "pad,20,Alike\r\n".repeat(many), CSV).json().path("added").asInt());
        assertTrue(serving.locker.unit("alike").isPresent() && serving.locker.unit("alike-" + many).isPresent());
    }

    @Test
    void aTableIsReadAsCsvInUtf8AndNothingElse() {
        assertProblem(415, serving.post(IMPORT, "micType\r\nlong-ribbon\r\n"));
        assertProblem(415, serving.post(IMPORT, "micType\r\nlong-ribbon\r\n", "Content-Type: text/csv; charset=iso-8859-1"));
        assertProblem(400, serving.post(IMPORT, "", CSV));
        assertProblem(400, serving.post(IMPORT, "micType,label\r\nlong-ribbon,\"never closed\r\n", CSV));
        assertProblem(400, serving.post(IMPORT + "?preview=maybe", "micType\r\nlong-ribbon\r\n", CSV));
        assertEquals(44, serving.locker.units().size());
    }

    @Test
    void aUnitThatIsNamedImportIsAUnitLikeAnyOther() {
        assertEquals(201, serving.post("/api/locker/units", "{\"id\": \"import\", \"kind\": \"stand\"}").status());
        assertEquals(200, serving.get("/api/locker/units/import").status());
        assertEquals(204, serving.send("DELETE", "/api/locker/units/import", null).status());
    }
}
