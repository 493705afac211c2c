package pairwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.locker.Databases;

/** The service as a person or a service manager starts and stops it. */
class ServeTest {
    private static final Pattern READY = Pattern.compile("Pairwright is ready at http://127\\.0\\.0\\.1:(\\d+)");
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    @TempDir
    Path folder;

    @Test
    void itSaysWhereItIsReadyTakesUpTheHouseFolderAndEndsWith0AfterWhatRunsIsFinished() throws Exception {
        try (Program program = Program.start(folder, "serve", "--port", "0", "--data", "state")) {
            int port = port(program.line());
            assertTrue(Files.isDirectory(folder.resolve("state")), "the data folder is made");
            assertEquals("ok", health(port).path("status").asText());

            Path rooms = Files.createDirectories(folder.resolve("state/house/catalogue/rooms"));
            Path room = rooms.resolve("tool-shed.yaml");
            Files.writeString(room, "id: tool-shed\nname: Tool shed\n");
            JsonNode broken = until(port, health -> !health.path("faults").isEmpty());
            assertEquals("ok, with the last good set", broken.path("status").asText());
            assertTrue(broken.path("faults").toString().contains("tool-shed.yaml:"), broken.toString());
            assertEquals(200, ask(port, "{\"words\": \"snare\"}").statusCode());
            assertEquals(404, get(port, "/api/rooms/tool-shed").statusCode());

            Files.writeString(room, """
                    id: tool-shed
                    name: Tool shed
                    says: A room of the house, for tests.
                    widthM: 3
                    depthM: 4
                    heightM: 2.5
                    reverbTimeS: 0.4
                    noiseDba: 25
                    kind: neutral
                    confidence: low
                    basis:
                      - {of: [widthM, depthM, heightM, reverbTimeS, noiseDba], on: estimate, note: Made up for a test.}
                    """);
            assertEquals("ok", until(port, health -> health.path("faults").isEmpty()).path("status").asText());
            assertEquals(200, get(port, "/api/rooms/tool-shed").statusCode());

            String question = "{\"words\": \"brushed snare in the tool shed\"}";
            try (Socket running = new Socket(InetAddress.getLoopbackAddress(), port)) {
                running.getOutputStream().write(("POST /api/ask HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: application/json\r\nContent-Length: "
                        + question.length() + "\r\n\r\n" + question.substring(0, 10)).getBytes(StandardCharsets.US_ASCII));
                assertEquals(200, get(port, "/health").statusCode());
                Thread.sleep(300); // so that it is being read when the signal comes
                program.terminate();
                Thread.sleep(300);
                running.getOutputStream().write(question.substring(10).getBytes(StandardCharsets.US_ASCII));
                String answer = new String(running.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
                assertTrue(answer.startsWith("HTTP/1.1 200 ") && answer.contains("\"options\":[{\"rank\":1"), answer);
            }
            assertEquals(0, program.exit());
            assertEquals("", program.rest(), "one line and no more");
            assertTrue(program.err().contains("tool-shed.yaml:") && program.err().contains("The last good set keeps answering."), program.err());
        }
    }

    @Test
    void aHouseFolderIsTakenUpBesideTheRunningServiceAndARuleThatFailsCostsNoAnswer() throws Exception {
        Path house = folder.resolve("ours");
        Files.createDirectories(house.resolve("rules"));
        Files.writeString(house.resolve("rules/ours.drl"), """
                package house;
                import pairwright.model.*;
                import pairwright.rules.*;
                global pairwright.rules.Out out;
                rule "HOUSE-001"
                  @title("Trips in a stairwell")
                  @effect("against")
                  @points(-1)
                  @says("{mic} wants {needsLoadOhm}.")
                  @why("A test.")
                  @on("house")
                  @basis("A test")
                when
                  Setting(room.id == "stairwell")
                  $p : Placed(distanceM > 0)
                then
                  out.note(drools.getRule(), $p, "needsLoadOhm", $p.mic().needsLoadOhm());
                end
                """);
        try (Program program = Program.start(folder, "serve", "--port", "0", "--house", "ours")) {
            int port = port(program.line());
            assertTrue(List.of("loading", "in use").contains(health(port).at("/house/state").asText()), "it answers at once");
            JsonNode inUse = until(port, health -> health.at("/house/state").asText().equals("in use"));
            assertEquals(1, inUse.at("/house/rules").asInt(), inUse.toString());
            HttpResponse<String> answer = ask(port, "{\"words\": \"snare in a stairwell\"}");
            assertEquals(200, answer.statusCode(), answer.body());
            assertEquals(answer.body(), ask(port, "{\"words\": \"snare in a stairwell\"}").body());
            JsonNode health = health(port);
            assertEquals("faults", health.at("/house/state").asText());
            assertEquals(0, health.at("/house/rules").asInt());
            assertTrue(health.path("faults").toString().contains("ours.drl:17:3: rule \\\"HOUSE-001\\\": the rule gives nothing for needsLoadOhm"), health.toString());
            assertEquals(404, get(port, "/api/rules/HOUSE-001").statusCode());
        }
    }

    @Test
    void thePasswordOfTheDatabaseIsNeitherAnsweredNorLogged() throws Exception {
        String secret = "hush-barn-owl";
        try (Databases.Kept database = Databases.kept(folder);
                Program program = Program.start(folder, "serve", "--port", "0", "--database", database.place().address() + "&password=" + secret)) {
            String ready = program.line();
            int port = port(ready);
            StringBuilder said = new StringBuilder(ready);
            for (String address : List.of("/health", "/api/locker/units", "/locker")) {
                HttpResponse<String> got = get(port, address);
                assertEquals(200, got.statusCode(), got.body());
                said.append(got.headers().map()).append(got.body());
            }
            database.stop();
            for (String address : List.of("/health", "/api/locker/units", "/locker")) {
                HttpResponse<String> got = get(port, address);
                assertEquals(address.equals("/health") ? 200 : 503, got.statusCode(), got.body());
                said.append(got.headers().map()).append(got.body());
            }
            program.terminate();
            said.append(program.rest());
            assertEquals(0, program.exit(), program.err());
            assertFalse(said.toString().contains(secret), "answered");
            assertFalse(program.err().contains(secret), program.err());
        }
    }

    @Test
    void aTakenPortIsSaidPlainlyAndEndsWith1() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
                Program program = Program.start(folder, "serve", "--port", Integer.toString(taken.getLocalPort()))) {
            assertNull(program.line());
            assertEquals(1, program.exit());
            assertEquals("pairwright: cannot listen on 127.0.0.1:" + taken.getLocalPort() + ". Maybe another program has that port: give another with --port,"
                    + " or 0 for a free one. Maybe the address is not one of this machine's: leave --host out\n", program.err());
        }
    }

    @Test
    void aDataFolderThatCannotBeMadeIsSaidPlainlyAndEndsWith1() throws Exception {
        Files.writeString(folder.resolve("file"), "in the way");
        try (Program program = Program.start(folder, "serve", "--port", "0", "--data", "file/state")) {
            assertNull(program.line());
            assertEquals(1, program.exit());
            assertTrue(program.err().startsWith("pairwright: the data folder ") && program.err().endsWith("cannot be made. Give another with --data\n"), program.err());
        }
    }

    private static int port(String line) {
        Matcher ready = READY.matcher(line == null ? "" : line);
        assertTrue(ready.matches(), "the first line is: " + line);
        return Integer.parseInt(ready.group(1));
    }

    /** The health once it is as awaited; the program looks at the folder every other second. */
    private static JsonNode until(int port, Predicate<JsonNode> is) throws Exception {
        JsonNode health = health(port);
        for (int i = 0; i < 150 && !is.test(health); i++) {
            Thread.sleep(200);
            health = health(port);
        }
        assertTrue(is.test(health), health.toString());
        return health;
    }

    private static JsonNode health(int port) throws IOException, InterruptedException {
        return new ObjectMapper().readTree(get(port, "/health").body());
    }

    private static HttpResponse<String> get(int port, String target) throws IOException, InterruptedException {
        return CLIENT.send(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + target)).build(), HttpResponse.BodyHandlers.ofString());
    }

    private static HttpResponse<String> ask(int port, String body) throws IOException, InterruptedException {
        return CLIENT.send(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/api/ask")).header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body)).build(), HttpResponse.BodyHandlers.ofString());
    }
}
