package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.http.Serving.assertProblem;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pairwright.listen.Sounds;

/** Recordings are measured over HTTP, whatever is sent, and nothing of them stays. */
class ListenApiTest {
    private static final String SOURCE = "/api/listen/source";
    private static final String PAIR = "/api/listen/pair";
    private static final String CHANGE = "/api/listen/change";
    private static final String BLEED = "/api/listen/bleed";
    private static final byte[] SOUND = Multipart.wav(Multipart.noise(1));

    private static Server server;

    @BeforeAll
    static void start() {
        server = started(Server.Patience.USUAL, Uploads.Limits.USUAL);
    }

    @AfterAll
    static void stop() {
        Path folder = server.uploads();
        assertTrue(Files.isDirectory(folder));
        server.close();
        assertFalse(Files.exists(folder), "the folder goes with the server");
    }

    @AfterEach
    void nothingIsKept() throws IOException {
        assertEquals(List.of(), left(server));
    }

    private static Server started(Server.Patience patience, Uploads.Limits limits) {
        return Server.start(Serving.KNOWLEDGE, null, new Listen("127.0.0.1", 0), patience, limits);
    }

    private static List<Path> left(Server of) throws IOException {
        try (Stream<Path> inside = Files.list(of.uploads())) {
            return inside.toList();
        }
    }

    private static Reply send(Multipart form, String target) {
        return form.to(server.port(), target);
    }

    private static List<String> places(Reply reply) {
        return reply.json().path("errors").findValuesAsText("at");
    }

    @Test
    void aSourceIsMeasuredAndHeldAgainstItsKind() {
        Reply reply = send(Multipart.form().file("file", "tune.wav", SOUND).field("source", "violin").field("averageDb", "82").field("distanceM", "2").field("weighting", "Z"), SOURCE);
        assertEquals(200, reply.status(), reply.body());
        assertEquals("no-store", reply.headers().get("cache-control"));
        JsonNode measured = reply.json().path("measured");
        assertEquals("tune.wav", measured.path("recording").asText());
        assertEquals(2.73, measured.path("durationS").asDouble(), 0.01);
        assertEquals(-20 + 3.01, measured.path("runningDbfs").asDouble(), 0.3, "noise of RMS 0.1, against a sine of full scale");
        assertEquals(2, measured.at("/calibrated/reading/distanceM").asDouble());
        assertEquals("violin", reply.json().at("/traits/source").asText());
        assertEquals(measured.at("/calibrated/typicalDbSpl").asDouble(), reply.json().at("/traits/typicalDbSpl").asDouble());
    }

    @Test
    void aSourceWithoutANameOrAReadingIsMeasuredForItsShapeAlone() {
        Reply reply = send(Multipart.form().file("file", "tune.wav", SOUND).field("source", "").field("averageDb", "").field("distanceM", " "), SOURCE);
        assertEquals(200, reply.status(), reply.body());
        assertTrue(reply.json().path("traits").isMissingNode() && reply.json().at("/measured/calibrated").isMissingNode(), reply.body());
    }

    @Test
    void twoTracksAreAPairAndSoAreTheChannelsOfOne() {
        double[] one = Multipart.noise(1);
        double[] later = Sounds.filtered(one, 24, hz -> -1);
        Reply tracks = send(Multipart.form().file("file", "near.wav", Multipart.wav(one)).file("file", "far.wav", Multipart.wav(later)), PAIR);
        Reply stereo = send(Multipart.form().file("file", "both.wav", Multipart.wav(one, later)), PAIR);
        for (Reply reply : List.of(tracks, stereo)) {
            assertEquals(200, reply.status(), reply.body());
            assertEquals(24, reply.json().at("/pairs/0/pair/laterFrames").asDouble(), 0.05);
            assertTrue(reply.json().at("/pairs/0/pair/inverted").asBoolean() && reply.json().at("/pairs/0/related").asBoolean());
        }
        assertEquals("far.wav is the other way up: invert it (the polarity button, \u00f8, of the channel), or look for a wrongly wired lead.", tracks.json().at("/pairs/0/says/0").asText());
        assertEquals("both.wav, right", stereo.json().at("/pairs/0/pair/second").asText());
        Multipart three = Multipart.form();
        List.of("a.wav", "b.wav", "c.wav").forEach(name -> three.file("file", name, SOUND));
        assertEquals(3, send(three, PAIR).json().path("pairs").size(), "each with each");
    }

    @Test
    void whatCannotBeAPairIsToldWithWhatToSend() {
        byte[] stereo = Multipart.wav(Multipart.noise(1), Multipart.noise(2));
        Reply alone = send(Multipart.form().file("file", "a.wav", SOUND), PAIR);
        assertProblem(400, alone);
        assertTrue(alone.body().contains("a.wav has one channel"), alone.body());
        Reply mixed = send(Multipart.form().file("file", "a.wav", SOUND).file("file", "b.wav", stereo).file("file", "c.wav", stereo), PAIR);
        assertProblem(400, mixed);
        assertEquals(2, mixed.json().path("errors").size());
        Multipart seven = Multipart.form();
        names(7).forEach(name -> seven.file("file", name, SOUND));
        Reply many = send(seven, PAIR);
        assertProblem(400, many);
        assertEquals("there are 7 files under file. Send 1 to 6", many.json().at("/errors/0/says").asText());
    }

    private static Stream<String> names(int count) {
        return Stream.iterate(1, i -> i + 1).limit(count).map(i -> i + ".wav");
    }

    @Test
    void twoTakesAreComparedAtEqualLevelAndBleedWithWhatWasReckoned() {
        byte[] softer = Multipart.wav(Sounds.times(Multipart.noise(1), 0.5));
        Reply change = send(Multipart.form().file("before", "b.wav", SOUND).file("after", "a.wav", softer), CHANGE);
        assertEquals(200, change.status(), change.body());
        assertEquals(-6.02, change.json().at("/change/louderDb").asDouble(), 0.05);
        Reply bleed = send(Multipart.form().file("own", "o.wav", SOUND).file("neighbour", "n.wav", softer).field("expectedOctavesDb", "[6, 6,6 6 6 6 6 6 15.5]"), BLEED);
        assertEquals(200, bleed.status(), bleed.body());
        assertEquals(6.02, bleed.json().at("/bleed/separationDb").asDouble(), 0.05);
        assertTrue(bleed.json().at("/bleed/says/1").asText().startsWith("The neighbour is louder than reckoned at 16 kHz"), bleed.body());
    }

    @Test
    void everyFaultIsToldAtOnce() {
        Reply reply = send(Multipart.form().file("flie", "a.wav", SOUND).field("source", "vioiln").field("averageDb", "loud").field("distanceM", "1e3").field("weighting", "C").field("key", "x"), SOURCE);
        assertProblem(400, reply);
        assertEquals(List.of("/flie", "/key", "/file", "/source", "/averageDb", "/distanceM", "/weighting"), places(reply));
        assertTrue(reply.body().contains("Did you mean violin?"), reply.body());
        assertEquals(List.of("/before", "/after"), places(send(Multipart.form(), CHANGE)));
        assertEquals(List.of("/expectedOctavesDb", "/own", "/neighbour"), places(send(Multipart.form().field("expectedOctavesDb", "1, 2"), BLEED)));
    }

    @ParameterizedTest
    @CsvSource({"averageDb,9,/averageDb", "averageDb,NaN,/averageDb", "averageDb,Infinity,/averageDb", "averageDb,-0,/averageDb", "averageDb,1.2.3,/averageDb", "distanceM,1,/averageDb", "distanceM,far,/distanceM"})
    void aReadingThatCannotBeIsRefused(String name, String value, String at) {
        Reply reply = send(Multipart.form().file("file", "a.wav", SOUND).field(name, value), SOURCE);
        assertProblem(400, reply);
        assertEquals(List.of(at), places(reply));
    }

    @Test
    void aFieldThatIsSentTwiceOrAsAFileIsRefused() {
        Reply twice = send(Multipart.form().file("file", "a.wav", SOUND).field("source", "violin").field("source", "viola"), SOURCE);
        assertProblem(400, twice);
        assertEquals("source is there 2 times. Send it once", twice.json().at("/errors/0/says").asText());
        assertEquals(List.of("/source"), places(send(Multipart.form().file("file", "a.wav", SOUND).file("source", "s.txt", "violin".getBytes(StandardCharsets.UTF_8)), SOURCE)));
        assertEquals(List.of("/source"), places(send(Multipart.form().file("file", "a.wav", SOUND).field("source", "v".repeat(5000)), SOURCE)));
    }

    @Test
    void everyFileThatCannotBeMeasuredIsToldByTheNameItWasSentWith() throws IOException {
        Reply reply = send(Multipart.form().file("before", "C:\\music\\empty.wav", new byte[0]).file("after", "../../letter.wav", "Dear Wren, the bass was too loud.".getBytes(StandardCharsets.UTF_8)), CHANGE);
        assertProblem(422, reply);
        assertEquals(List.of("/empty.wav", "/letter.wav"), places(reply));
        assertEquals("empty.wav: It has 0 bytes, too few for any recording. Copy it again from where it was recorded", reply.json().at("/errors/0/says").asText());
        assertFalse(reply.body().contains(server.uploads().getFileName().toString()), reply.body());
        Reply silent = send(Multipart.form().file("file", "silent.wav", Multipart.wav(new double[96_000])), SOURCE);
        assertProblem(422, silent);
        assertTrue(silent.json().path("detail").asText().startsWith("silent.wav: "), silent.body());
    }

    @Test
    void aNameIsCutShortAndMadeHarmless() {
        assertEquals("x".repeat(60) + "...", Uploads.harmless("x".repeat(300) + ".wav", "file"));
        assertEquals("ab.wav", Uploads.harmless("/etc/a\u0000\u202e\nb.wav", "file"));
        assertEquals("file", Uploads.harmless("music/", "file"));
        assertEquals("file", Uploads.harmless(null, "file"));
        assertEquals(200, send(Multipart.form().part("form-data; name=\"file\"", SOUND), SOURCE).status(), "a file needs no name");
    }

    @Test
    void whatIsNoFormWithFilesIsRefused() {
        for (String type : Arrays.asList(null, "application/json", "multipart/mixed; boundary=x", "text/plain; boundary=x", ";;")) {
            assertProblem(415, Multipart.send(server.port(), SOURCE, type, new byte[10]));
        }
        assertProblem(415, Multipart.send(server.port(), SOURCE, "multipart/form-data; boundary=x", new byte[10], "Content-Encoding: gzip"));
        for (String type : List.of("multipart/form-data", "multipart/form-data; boundary=", "multipart/form-data; boundary=\"\"", "multipart/form-data; boundary=" + "x".repeat(500), "multipart/form-data; charset=nonsense")) {
            assertProblem(400, Multipart.send(server.port(), SOURCE, type, new byte[10]));
        }
        assertProblem(400, send(Multipart.form().file("file", "a.wav", SOUND), SOURCE + "?source=violin"));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 10, 40, 80, 120, 5_000, 200_000})
    void aFormThatBreaksOffIsRefusedWhereverItDoes(int bytes) {
        byte[] whole = Multipart.form().file("file", "a.wav", SOUND).field("source", "violin").bytes();
        byte[] broken = Arrays.copyOf(whole, bytes);
        assertProblem(400, Multipart.send(server.port(), SOURCE, "multipart/form-data; boundary=" + Multipart.BOUNDARY, broken));
        assertProblem(400, Serving.send(server.port(), Serving.joined("POST " + SOURCE + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: multipart/form-data; boundary=" + Multipart.BOUNDARY
                + "\r\nContent-Length: " + whole.length + "\r\n\r\n", broken)));
    }

    @Test
    void anotherBoundaryTooManyPartsAndNonsenseAreRefused() {
        byte[] whole = Multipart.form().file("file", "a.wav", SOUND).bytes();
        assertProblem(400, Multipart.send(server.port(), SOURCE, "multipart/form-data; boundary=another", whole));
        Multipart thirty = Multipart.form();
        for (int i = 0; i < 30; i++) {
            thirty.field("part" + i, "x");
        }
        Reply many = send(thirty, SOURCE);
        assertProblem(400, many);
        assertTrue(many.body().contains("more than 20 parts"), many.body());
        for (String disposition : List.of("form-data", "", "form-data; name=\"\"", "form-data; name", "form-data; name=\"" + "x".repeat(20_000) + "\"")) {
            assertProblem(400, send(Multipart.form().part(disposition, new byte[5]), SOURCE));
        }
        assertProblem(422, send(Multipart.form().part("attachment; name=file", new byte[5]), SOURCE));
        assertProblem(422, send(Multipart.form().part("form-data; name=\"file\"; filename*=UTF-8''%zz", new byte[5]), SOURCE));
        Random random = new Random(5);
        for (int i = 0; i < 60; i++) {
            byte[] mangled = Multipart.form().file("before", "a.wav", Arrays.copyOf(SOUND, 3000)).field("source", "violin").bytes();
            for (int change = 0; change < 6; change++) {
                mangled[random.nextInt(i % 2 == 0 ? 150 : mangled.length)] = (byte) random.nextInt(256);
            }
            Reply reply = Multipart.send(server.port(), SOURCE, "multipart/form-data; boundary=" + Multipart.BOUNDARY, mangled);
            assertProblem(400, reply);
        }
    }

    @Test
    void whatIsTooLargeIsRefusedWithWhatToDoInstead() throws IOException {
        try (Server small = started(Server.Patience.USUAL, new Uploads.Limits(400_000, 900_000, 20, 100_000))) {
            Reply file = Multipart.form().file("file", "a.wav", new byte[450_000]).to(small.port(), SOURCE);
            assertProblem(413, file);
            assertTrue(file.json().path("detail").asText().contains("pairwright listen FILE"), file.body());
            byte[] three = Multipart.form().file("file", "a.wav", SOUND).file("file", "b.wav", SOUND).file("file", "c.wav", SOUND).bytes();
            assertProblem(413, Multipart.send(small.port(), PAIR, "multipart/form-data; boundary=" + Multipart.BOUNDARY, three));
            assertProblem(413, chunked(small, three));
            assertEquals(200, Multipart.form().file("file", "a.wav", SOUND).to(small.port(), SOURCE).status());
            assertEquals(List.of(), left(small));
        }
    }

    @Test
    void aFolderThatWasClearedAwayMeanwhileIsMadeAnew() throws IOException {
        Files.delete(server.uploads());
        assertEquals(200, send(Multipart.form().file("file", "a.wav", SOUND), SOURCE).status());
    }

    private static Reply chunked(Server to, byte[] body) {
        byte[] head = Serving.joined("POST " + SOURCE + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: multipart/form-data; boundary=" + Multipart.BOUNDARY
                + "\r\nTransfer-Encoding: chunked\r\n\r\n" + Integer.toHexString(body.length) + "\r\n", body);
        byte[] end = "\r\n0\r\n\r\n".getBytes(StandardCharsets.US_ASCII);
        byte[] all = Arrays.copyOf(head, head.length + end.length);
        System.arraycopy(end, 0, all, head.length, end.length);
        return Serving.send(to.port(), all);
    }

    @Test
    void whoFallsSilentOrDripsIsToldSoAndHoldsNothing() throws Exception {
        try (Server hurried = started(new Server.Patience(400, 600, 5_000), Uploads.Limits.USUAL)) {
            try (Socket silent = begun(hurried)) {
                assertProblem(408, Serving.read(silent.getInputStream()));
            }
            try (Socket drips = begun(hurried)) {
                CompletableFuture<Reply> reply = CompletableFuture.supplyAsync(() -> {
                    try {
                        return Serving.read(drips.getInputStream());
                    } catch (IOException broken) {
                        throw new AssertionError(broken);
                    }
                });
                while (!reply.isDone()) {
                    try {
                        drips.getOutputStream().write('x');
                    } catch (SocketException closed) {
                        break;
                    }
                    Thread.sleep(50);
                }
                assertProblem(408, reply.get(120, TimeUnit.SECONDS));
            }
            assertEquals(List.of(), left(hurried));
        }
    }

    @Test
    void measuringMayTakeLongerThanALineMayBeSilent() {
        try (Server hurried = started(new Server.Patience(300, 20_000, 5_000), Uploads.Limits.USUAL)) {
            Multipart six = Multipart.form();
            double[] sound = Sounds.noise(1 << 19, 1);
            names(6).forEach(name -> six.file("file", name, Multipart.wav(sound)));
            long start = System.nanoTime();
            Reply reply = six.to(hurried.port(), PAIR);
            assertEquals(200, reply.status(), reply.body());
            assertEquals(15, reply.json().path("pairs").size());
            assertTrue(TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start) > 300, "too quick to tell");
        }
    }

    @Test
    void whenAllPlacesAreTakenOneIsAskedToComeAgain() throws Exception {
        Socket[] senders = new Socket[6];
        try {
            for (int i = 0; i < senders.length; i++) {
                senders[i] = begun(server);
            }
            for (long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(20); left(server).size() < senders.length && System.nanoTime() < end;) {
                Thread.sleep(20);
            }
            Reply reply = send(Multipart.form().file("file", "a.wav", SOUND), SOURCE);
            assertProblem(503, reply);
            assertTrue(Integer.parseInt(reply.headers().get("retry-after")) > 0);
        } finally {
            for (Socket sender : senders) {
                sender.close();
            }
        }
        for (long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(30); !left(server).isEmpty() && System.nanoTime() < end;) {
            Thread.sleep(20);
        }
        assertEquals(200, send(Multipart.form().file("file", "a.wav", SOUND), SOURCE).status());
    }

    /** The beginning of a file, and then nothing. */
    private static Socket begun(Server to) throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), to.port());
        socket.setSoTimeout(60_000);
        socket.getOutputStream().write(("POST " + SOURCE + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Length: 1000000\r\nContent-Type: multipart/form-data; boundary=" + Multipart.BOUNDARY
                + "\r\n\r\n--" + Multipart.BOUNDARY + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a.wav\"\r\n\r\n" + "x".repeat(8000)).getBytes(StandardCharsets.US_ASCII));
        socket.getOutputStream().flush();
        return socket;
    }
}
