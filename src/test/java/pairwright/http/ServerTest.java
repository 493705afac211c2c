package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static pairwright.http.Serving.assertProblem;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.ConnectException;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.advice.KnowledgeStore;

/** How the server behaves towards those who dawdle, towards other machines, and when its house folder breaks. */
class ServerTest {
    private static final Server.Patience SHORT = new Server.Patience(400, 600, 5_000);
    private static final String HEAD = "POST /api/ask HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: application/json\r\nContent-Length: ";
    private static final String QUESTION = "{\"words\": \"brushed snare, small room\"}";
    private static final String ROOM = """
            id: %s
            name: %s
            says: A room of the house, for tests.
            words: [%s]
            widthM: 3
            depthM: 4
            heightM: 2.5
            reverbTimeS: 0.4
            noiseDba: 25
            kind: neutral
            confidence: low
            basis:
              - {of: [widthM, depthM, heightM, reverbTimeS, noiseDba], on: estimate, note: Made up for a test.}
            """;

    @Test
    void aConnectionThatSaysNothingOrStopsHalfwayIsClosed() throws IOException {
        try (Server server = Server.start(Serving.KNOWLEDGE, "127.0.0.1", 0, SHORT)) {
            for (String start : List.of("", "GET /hea", "GET /health HTTP/1.1\r\nHost: loc")) {
                try (Socket socket = connect(server, start)) {
                    Reply reply = Serving.read(socket.getInputStream());
                    if (reply != null) {
                        assertProblem(reply.status(), reply);
                    }
                }
            }
        }
    }

    @Test
    void aBodyThatStopsHalfwayIs408() throws IOException {
        try (Server server = Server.start(Serving.KNOWLEDGE, "127.0.0.1", 0, SHORT); Socket socket = connect(server, HEAD + "100\r\n\r\n{\"wo")) {
            assertProblem(408, Serving.read(socket.getInputStream()));
        }
    }

    @Test
    void aBodyThatDripsInIs408ThoughItNeverStops() throws Exception {
        try (Server server = Server.start(Serving.KNOWLEDGE, "127.0.0.1", 0, SHORT); Socket socket = connect(server, HEAD + "60000\r\n\r\n")) {
            CompletableFuture<Reply> reply = CompletableFuture.supplyAsync(() -> {
                try {
                    return Serving.read(socket.getInputStream());
                } catch (IOException broken) {
                    throw new AssertionError(broken);
                }
            });
            while (!reply.isDone()) {
                try {
                    socket.getOutputStream().write(' ');
                } catch (SocketException closed) {
                    break;
                }
                Thread.sleep(50);
            }
            assertProblem(408, reply.get(120, TimeUnit.SECONDS));
        }
    }

    @Test
    void moreWhoDawdleThanThereAreThreadsKeepNobodyWaitingForEver() throws IOException {
        Socket[] slow = new Socket[300];
        try (Server server = Server.start(Serving.KNOWLEDGE, "127.0.0.1", 0, new Server.Patience(2_000, 2_000, 5_000))) {
            for (int i = 0; i < slow.length; i++) {
                slow[i] = connect(server, HEAD + "100\r\n\r\n{\"wo");
            }
            Reply reply = null; // who waits in the queue as long as the dawdlers may be cut off with them, and asks again
            for (int i = 0; i < 10 && reply == null; i++) {
                try {
                    reply = Serving.post(server.port(), "application/json", QUESTION.getBytes(StandardCharsets.UTF_8));
                } catch (AssertionError cutOff) {
                    reply = null;
                }
            }
            assertEquals(200, reply == null ? 0 : reply.status());
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
    }

    @Test
    void whatRunsIsFinishedAndNothingNewIsTakenWhileItStops() throws Exception {
        Server server = Server.start(Serving.KNOWLEDGE, "127.0.0.1", 0, new Server.Patience(60_000, 300_000, 300_000));
        int port = server.port();
        String head = HEAD + QUESTION.length() + "\r\nExpect: 100-continue\r\n\r\n";
        try (Socket running = connect(server, head)) {
            // the server asks for the body when it starts to read it, and not before
            assertEquals("HTTP/1.1 100 Continue\r\n\r\n", new String(running.getInputStream().readNBytes(25), StandardCharsets.US_ASCII));
            CompletableFuture<Void> stopped = CompletableFuture.runAsync(server::close);
            while (takes(port)) {
                Thread.sleep(20);
            }
            assertFalse(stopped.isDone());
            write(running.getOutputStream(), QUESTION);
            Reply reply = Serving.read(running.getInputStream());
            assertEquals(200, reply.status());
            assertFalse(reply.json().path("options").isEmpty());
            stopped.get(120, TimeUnit.SECONDS);
        }
        assertThrows(ConnectException.class, () -> new Socket(InetAddress.getLoopbackAddress(), port).close());
    }

    private static void write(OutputStream out, String text) {
        try {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    @Test
    void otherMachinesAreNotLetIn() throws IOException {
        List<InetAddress> others = NetworkInterface.networkInterfaces().flatMap(NetworkInterface::inetAddresses)
                .filter(address -> address instanceof Inet4Address && !address.isLoopbackAddress()).toList();
        assumeTrue(!others.isEmpty(), "this machine has no other address");
        for (InetAddress other : others) {
            try (Socket socket = new Socket()) {
                assertThrows(IOException.class, () -> socket.connect(new InetSocketAddress(other, Serving.port()), 2_000), other.toString());
            }
        }
    }

    @Test
    void aTakenPortIsRefused() {
        assertThrows(RuntimeException.class, () -> Server.start(Serving.KNOWLEDGE, "127.0.0.1", Serving.port()));
    }

    @Test
    void severalRequestsGoOverOneConnection() throws IOException {
        String one = "GET /api/rooms/barn HTTP/1.1\r\nHost: localhost\r\n\r\n";
        String last = "GET /api/rooms/nowhere HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n";
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), Serving.port())) {
            socket.getOutputStream().write((one + one + last).getBytes(StandardCharsets.US_ASCII));
            String all = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertEquals(2, all.split("HTTP/1.1 200", -1).length - 1, all);
            assertEquals(1, all.split("HTTP/1.1 404", -1).length - 1, all);
        }
    }

    @Test
    void aBrokenHouseFolderIsReportedAndTheLastGoodSetAnswersUntilItIsMended(@TempDir Path house) throws Exception {
        Path room = house.resolve("catalogue/rooms/tool-shed.yaml");
        Files.createDirectories(room.getParent());
        Files.writeString(room, ROOM.formatted("tool-shed", "Tool shed", "garden shed"));
        KnowledgeStore knowledge = KnowledgeStore.withHouse(house);
        try (Server server = Server.start(knowledge, "127.0.0.1", 0)) {
            assertEquals(List.of(), knowledge.faults());
            assertEquals("tool-shed", room(server));
            String version = health(server).json().path("catalogueVersion").asText();

            Files.writeString(room, ROOM.formatted("tool-shed", "Tool shed", "garden shed").replace("widthM: 3", "widthM: wide"));
            lookTwice(knowledge);
            Reply broken = health(server);
            assertEquals("ok, with the last good set", broken.json().path("status").asText());
            assertEquals(1, broken.json().path("faults").size(), broken.body());
            assertTrue(broken.json().at("/faults/0").asText().contains("tool-shed.yaml:5:9: widthM is \"wide\""), broken.body());
            assertFalse(broken.body().contains(house.toString()), "where the folder lies is nobody's business: " + broken.body());
            assertEquals(List.of(), Serving.OPEN_API.faults("GET", "/health", broken));
            assertEquals("tool-shed", room(server));
            assertEquals(version, broken.json().path("catalogueVersion").asText());

            Files.writeString(room, ROOM.formatted("tool-shed", "Large tool shed", "garden shed"));
            lookTwice(knowledge);
            assertEquals("ok", health(server).json().path("status").asText());
            assertEquals("Large tool shed", get(server, "/api/rooms/tool-shed").json().path("name").asText());
            assertFalse(version.equals(health(server).json().path("catalogueVersion").asText()));

            Files.delete(room);
            Files.delete(room.getParent());
            Files.delete(room.getParent().getParent());
            lookTwice(knowledge);
            assertEquals(404, get(server, "/api/rooms/tool-shed").status(), "what is no longer there is no longer in use");
        }
    }

    /** What is being written is read once it is the same at two looks. */
    private static void lookTwice(KnowledgeStore knowledge) {
        knowledge.reloadIfChanged();
        knowledge.reloadIfChanged();
    }

    private static String room(Server server) {
        Reply reply = Serving.post(server.port(), "application/json", "{\"words\": \"snare in the garden shed\"}".getBytes(StandardCharsets.UTF_8));
        return reply.json().at("/question/meant/room").asText();
    }

    private static Reply health(Server server) {
        return get(server, "/health");
    }

    private static Reply get(Server server, String target) {
        return Serving.send(server.port(), "GET " + target + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
    }

    private static Socket connect(Server server, String start) throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port());
        socket.setSoTimeout(120_000);
        socket.getOutputStream().write(start.getBytes(StandardCharsets.US_ASCII));
        return socket;
    }

    private static boolean takes(int port) {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(1_000); // who comes too late may hear nothing at all
            socket.getOutputStream().write("GET /health HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
            Reply reply = Serving.read(socket.getInputStream());
            if (reply != null && reply.status() >= 400) {
                assertProblem(503, reply);
            }
            return reply != null && reply.status() == 200;
        } catch (IOException refused) {
            return false;
        }
    }
}
