package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.locker.CountingDriver;
import pairwright.sheet.Assets;

/** What a request costs, counted and not timed: statements of SQL, and bytes that are sent. */
class RequestCostTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final String WHEN = "from=2027-03-01T10:00:00Z&until=2027-03-01T18:00:00Z";
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    /** Bytes of each page when its bound was set, plain and packed. */
    private static final String MEASURED = """
            / 3035 1347
            /catalogue 9275 2595
            /characters 4428 1655
            /complaints 4892 1820
            /guide 13601 5402
            /lab 16680 3399
            /lab/course 26314 6109
            /lab/exercises 2292 969
            /lab/exercises/new 5010 1808
            /listen 10278 3120
            /locker 24016 3924
            /locker/bookings 3154 1276
            /locker/bookings/new 17002 3367
            /locker/coverage 3703 1419
            /locker/desk 6391 1964
            /locker/history 11378 2082
            /locker/import 3758 1564
            /locker/month 122799 5867
            /locker/units/new 2948 1106
            /mics 13431 4341
            /numbers 4963 1770
            /rooms 4883 2030
            /rules 32374 6889
            /sessions 3468 1469
            /sessions/buy 3362 1328
            /sessions/import 3482 1472
            /sessions/new 19582 4337
            /sources 32304 9698
            /techniques 5611 1998
            /?words=violin 162193 35606
            /?words=drum+kit%2C+dark%2C+church 201350 46415
            css 70314 15219
            first 720 720
            js 46071 12461
            svg 398 398
            """;
    /** So much more is let pass, for texts that grow a little. */
    private static final double MARGIN = 1.25;
    private static final int MARGIN_BYTES = 500;
    @TempDir
    private static Path folder;
    private static CountingDriver driver;
    private static LockerServing serving;
    private int made;

    @BeforeAll
    static void start() throws SQLException {
        driver = CountingDriver.open();
        serving = LockerServing.demo(folder, TODAY);
    }

    @AfterAll
    static void stop() throws SQLException {
        serving.close();
        driver.close();
    }

    /** BEGIN and COMMIT count as well. The bounds are what was measured: a statement more is a decision, and one for each row a mistake. */
    @Test
    void aRequestRunsNoMoreStatementsThanItDid() {
        Map<String, Integer> most = new LinkedHashMap<>();
        most.put("/api/locker/units", 3);
        most.put("/api/locker/bookings?" + WHEN, 3);
        most.put("/api/locker/free?" + WHEN, 5);
        most.put("/api/search?words=violin", 0);
        most.put("/?words=violin", 8);
        most.put("/locker", 19);
        most.put("/sessions", 6);
        most.put("/locker/coverage", 5);
        Map<String, String> faults = new LinkedHashMap<>();
        most.forEach((address, bound) -> held(faults, address, bound, () -> serving.get(address)));
        held(faults, "POST /api/ask", 10, () -> serving.post("/api/ask", "{\"words\": \"violin\", \"from\": \"2027-03-01T10:00:00Z\", \"until\": \"2027-03-01T18:00:00Z\"}"));
        held(faults, "POST /api/locker/units", 9, () -> serving.post("/api/locker/units", "{\"id\": \"counted-" + ++made + "\", \"micType\": \"long-ribbon\", \"label\": \"Counted " + made + "\"}"));
        held(faults, "POST /api/locker/bookings", 12, () -> serving.post("/api/locker/bookings",
                "{\"units\": [\"counted-1\"], \"from\": \"" + (2030 + ++made) + "-03-01T10:00:00Z\", \"until\": \"" + (2030 + made) + "-03-01T18:00:00Z\", \"kind\": \"session\", \"for\": \"barn sextet\", \"by\": \"Wren\"}"));
        assertEquals(Map.of(), faults, "statements, and what they were. Look for a query within a loop, or for a second reading of what was read already");
    }

    @Test
    void oneStatementForEachUnitWouldBeNoticed() {
        Map<String, String> faults = new LinkedHashMap<>();
        held(faults, "two requests in place of one", 3, () -> {
            serving.get("/api/locker/units");
            return serving.get("/api/locker/units");
        });
        assertNotEquals(Map.of(), faults);
    }

    private interface Asked {
        Reply answer();
    }

    private static void held(Map<String, String> faults, String address, int most, Asked asked) {
        asked.answer(); // what is kept after the first time is not what a request costs
        driver.taken();
        Reply reply = asked.answer();
        List<String> run = driver.taken();
        System.out.println(address + ": " + run.size() + " statements, at most " + most + ", status " + reply.status());
        if (run.size() > most || reply.status() >= 400) {
            faults.put(address, run.size() + " > " + most + ", status " + reply.status() + ": " + run + (reply.status() >= 400 ? reply.body() : ""));
        }
    }

    /** Bytes of a page as a browser asks for it (packed) and unpacked; of every page whose address needs no name, and of some that do. */
    @Test
    void aPageSendsNoMoreThanItDid() throws Exception {
        List<String> addresses = new ArrayList<>(serving.addresses().stream().filter(one -> one.startsWith("GET /") && !one.contains("{")).map(one -> one.substring(4))
                .filter(one -> !one.startsWith("/api/")).toList());
        addresses.addAll(List.of("/?words=violin", "/?words=drum+kit%2C+dark%2C+church", "/catalogue/mics/long-ribbon", "/catalogue/sources/violin"));
        Map<String, int[]> measured = measured();
        List<String> faults = new ArrayList<>();
        for (String address : addresses) {
            HttpResponse<byte[]> plain = get(address, false);
            if (plain.statusCode() == 200 && plain.headers().firstValue("Content-Type").orElse("").startsWith("text/html")) {
                bounded(faults, address, plain.body().length, get(address, true).body().length, measured.remove(address));
            }
        }
        Assets assets = new Assets();
        Map<String, String> named = Map.of("css", assets.style(), "first", assets.first(), "js", assets.script(), "svg", assets.mark());
        for (Map.Entry<String, String> asset : named.entrySet()) {
            bounded(faults, asset.getKey(), get(asset.getValue(), false).body().length, get(asset.getValue(), true).body().length, measured.remove(asset.getKey()));
        }
        assertEquals(List.of(), faults, "bytes. Look at what the template repeats, at drawings, and at what could be fetched when it is asked for");
        assertEquals(Map.of(), measured, "pages that are gone: take their lines out");
    }

    @Test
    void aPageThatDoublesOrHasNoBoundIsNoticed() {
        List<String> faults = new ArrayList<>();
        bounded(faults, "/guide", 2 * 13_601, 5_402, measured().get("/guide"));
        bounded(faults, "/guide", 13_601, 2 * 5_402, measured().get("/guide"));
        bounded(faults, "/new", 1, 1, measured().get("/new"));
        assertEquals(3, faults.size(), faults.toString());
    }

    private static Map<String, int[]> measured() {
        Map<String, int[]> measured = new LinkedHashMap<>();
        MEASURED.lines().map(line -> line.split(" ")).forEach(line -> measured.put(line[0], new int[] {Integer.parseInt(line[1]), Integer.parseInt(line[2])}));
        return measured;
    }

    private static void bounded(List<String> faults, String address, int plain, int packed, int[] measured) {
        if (measured == null) {
            faults.add("no line for " + address + ": it sends " + plain + " bytes, packed " + packed);
        } else if (plain > most(measured[0]) || packed > most(measured[1])) {
            faults.add(address + ": " + plain + " bytes (at most " + most(measured[0]) + "), packed " + packed + " (at most " + most(measured[1]) + ")");
        }
    }

    private static int most(int measured) {
        return (int) (measured * MARGIN) + MARGIN_BYTES;
    }

    private static HttpResponse<byte[]> get(String address, boolean packed) throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + serving.port() + address)).header("Accept", "text/html,*/*");
        return CLIENT.send((packed ? request.header("Accept-Encoding", "gzip") : request).build(), HttpResponse.BodyHandlers.ofByteArray());
    }
}
