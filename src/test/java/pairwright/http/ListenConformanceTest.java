package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pairwright.listen.Sounds;
import pairwright.locker.Place;

/** Recordings are measured over HTTP as the description promises, and every answer and field it promises is really seen. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ListenConformanceTest {
    private static final String AT = "/api/listen/";
    private static final List<String> ALL = List.of("source", "pair", "change", "bleed");
    private static final byte[] NOTES = Multipart.wav(Multipart.notes(20));
    private static final byte[] SOUND = Multipart.wav(Multipart.noise(1));

    private final HeldToDescription held = new HeldToDescription();

    @BeforeAll
    void askEverything(@TempDir Path folder) throws Exception {
        try (LockerServing open = LockerServing.open(Place.in(folder.resolve("open")))) {
            heard(open.port());
            ALL.forEach(path -> refused(open.port(), path));
        }
        try (Server hurried = Server.start(Serving.KNOWLEDGE, null, new Listen("127.0.0.1", 0), new Server.Patience(300, 500, 5_000), new Uploads.Limits(10_000, 20_000, 20, 100_000))) {
            for (String path : ALL) {
                see(path, Multipart.form().file("file", "a.wav", SOUND).to(hurried.port(), AT + path), 413);
                try (Socket silent = begun(hurried.port(), path)) {
                    see(path, Serving.read(silent.getInputStream()), 408);
                }
            }
        }
        try (LockerServing guarded = LockerServing.guarded(Place.in(folder.resolve("guarded")))) {
            see("source", Multipart.form().file("file", "a.wav", SOUND).to(guarded.port(), AT + "source", "Authorization: Bearer " + guarded.reader), 200);
            ALL.forEach(path -> slowed(guarded, path));
        }
        busy();
    }

    private void see(String path, Reply reply, int status) {
        assertEquals(status, reply.status(), path + ": " + reply.body());
        held.see("POST", AT + path, reply);
    }

    private void heard(int port) {
        Reply source = Multipart.form().file("file", "tune.wav", NOTES).field("source", "double-bass").field("averageDb", "82").to(port, AT + "source");
        see("source", source, 200);
        assertTrue(source.json().path("usable").asBoolean(), source.body());
        see("source", Multipart.form().file("file", "tune.wav", NOTES).field("source", "piccolo").to(port, AT + "source"), 200);
        see("source", Multipart.form().file("file", "tune.wav", NOTES).field("source", "snare-drum").to(port, AT + "source"), 200);
        double[] one = Multipart.noise(1);
        double[] both = new double[one.length];
        double[] room = Multipart.noise(2);
        double[] later = Sounds.filtered(one, 20, hz -> 0.8);
        for (int i = 0; i < both.length; i++) {
            both[i] = later[i] + 0.1 * room[i];
        }
        Reply pair = Multipart.form().file("file", "near.wav", Multipart.wav(one)).file("file", "far.wav", Multipart.wav(both)).to(port, AT + "pair");
        see("pair", pair, 200);
        double[] tone = Sounds.sine(1 << 16, 439.453125, 0.3); // of which every period fits
        see("pair", Multipart.form().file("file", "near.wav", Multipart.wav(tone)).file("file", "far.wav", Multipart.wav(Sounds.filtered(tone, 30, hz -> 0.5))).to(port, AT + "pair"), 200);
        see("change", Multipart.form().file("before", "b.wav", NOTES).file("after", "a.wav", NOTES).to(port, AT + "change"), 200);
        see("bleed", Multipart.form().file("own", "o.wav", NOTES).file("neighbour", "n.wav", SOUND).field("expectedOctavesDb", "1,2,3,4,5,6,7,8,9").to(port, AT + "bleed"), 200);
        double[] cut = Sounds.times(one, 40);
        for (int i = 0; i < cut.length; i++) {
            cut[i] = Math.max(-0.9, Math.min(0.9, cut[i]));
        }
        Reply clipped = Multipart.form().file("file", "cut.wav", Multipart.wav(cut)).field("source", "violin").to(port, AT + "source");
        see("source", clipped, 200);
        assertTrue(clipped.json().path("traits").isMissingNode() && !clipped.json().path("usable").asBoolean(true), clipped.body());
    }

    private void refused(int port, String path) {
        see(path, Multipart.form().field("nonsense", "x").to(port, AT + path), 400);
        see(path, Multipart.send(port, AT + path, "application/json", "{}".getBytes(StandardCharsets.UTF_8)), 415);
        Multipart form = Multipart.form();
        List<String> parts = switch (path) {
            case "change" -> List.of("before", "after");
            case "bleed" -> List.of("own", "neighbour");
            default -> List.of("file");
        };
        parts.forEach(name -> form.file(name, "letter.wav", new byte[100]));
        see(path, form.to(port, AT + path), 422);
    }

    private void slowed(LockerServing guarded, String path) {
        String from = "X-Forwarded-For: 198.51.100." + (1 + path.length());
        for (int i = 0; i < Tries.FREE; i++) {
            Multipart.form().to(guarded.port(), AT + path, "Authorization: Bearer guess" + i, from);
        }
        Reply reply = Multipart.form().to(guarded.port(), AT + path, "Authorization: Bearer " + guarded.reader, from);
        see(path, reply, 429);
        assertTrue(reply.headers().containsKey("retry-after"));
    }

    /** All places are taken by those who begin and send nothing more. */
    private void busy() throws Exception {
        List<Socket> senders = new ArrayList<>();
        try (Server server = Server.start(Serving.KNOWLEDGE, null, new Listen("127.0.0.1", 0), new Server.Patience(60_000, 60_000, 1_000), Uploads.Limits.USUAL)) {
            for (int i = 0; i < 6; i++) {
                senders.add(begun(server.port(), "source"));
            }
            for (long end = System.nanoTime() + 20_000_000_000L; server.uploads().toFile().list().length < 6 && System.nanoTime() < end;) {
                Thread.sleep(20);
            }
            for (String path : ALL) {
                Reply reply = Multipart.form().to(server.port(), AT + path);
                see(path, reply, 503);
                assertTrue(Integer.parseInt(reply.headers().get("retry-after")) > 0);
            }
            for (Socket sender : senders) {
                sender.close();
            }
        }
    }

    private static Socket begun(int port, String path) throws Exception {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), port);
        socket.setSoTimeout(60_000);
        socket.getOutputStream().write(("POST " + AT + path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Length: 10000\r\nContent-Type: multipart/form-data; boundary=" + Multipart.BOUNDARY
                + "\r\n\r\n--" + Multipart.BOUNDARY + "\r\n").getBytes(StandardCharsets.US_ASCII));
        socket.getOutputStream().flush();
        return socket;
    }

    @Test
    void everyAnswerIsAsItIsDescribed() {
        assertEquals(List.of(), held.wrong);
    }

    @Test
    void everyAnswerThatIsDescribedIsSeen() {
        Set<String> described = new TreeSet<>();
        HeldToDescription.operations(AT, (method, path, responses) -> {
            responses.fieldNames().forEachRemaining(status -> described.add(method + " " + path + " " + status));
            return path;
        });
        assertTrue(described.size() > 30, described.toString());
        described.removeIf(answer -> answer.endsWith(" default"));
        described.removeAll(held.seen);
        assertEquals(Set.of(), described, "described, and never seen: ask for it");
    }

    @Test
    void everyFieldThatIsDescribedIsSeenInSomeAnswer() {
        Set<String> described = new TreeSet<>();
        List.of("SourceHeard", "PairsHeard", "ChangeHeard", "NeighbourHeard").forEach(schema -> described.addAll(DescribedFields.of(schema)));
        described.removeAll(held.fields);
        assertEquals(Set.of(), described, "no answer has it: ask for something that does");
    }
}
