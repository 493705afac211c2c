package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.http.Serving.assertProblem;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.locker.Act;
import pairwright.locker.UnitDraft;
import pairwright.locker.Locker;
import pairwright.locker.Place;
import pairwright.locker.Role;

/** Who may do what on a real server with a real locker. */
class AccessTest {
    private static final String QUESTION = "{\"words\": \"qwzx\"}";
    private static final String UNIT = "{\"micType\": \"long-ribbon\", \"label\": \"Ribbon %s\"}";

    @TempDir
    private Path folder;
    private Locker locker;
    private Server server;
    private String reader;
    private String engineer;

    @BeforeEach
    void open() {
        locker = Locker.open(Place.in(folder), () -> Serving.KNOWLEDGE.current().catalogue(), Clock.systemUTC());
    }

    @AfterEach
    void close() {
        if (server != null) {
            server.close();
        }
        locker.close();
    }

    private void start(Listen listen) {
        reader = locker.tokens().add("Finch", Role.READER);
        engineer = locker.tokens().add("Wren", Role.ENGINEER);
        server = Server.start(Serving.KNOWLEDGE, locker, listen);
    }

    private void startWithTokens() {
        start(new Listen("127.0.0.1", 0, List.of("barn.example"), true));
    }

    @Test
    void withoutATokenNothingStartsWhereOthersCanReachIt() {
        for (Listen listen : List.of(new Listen("0.0.0.0", 0), new Listen("::", 0), new Listen("127.0.0.1", 0, List.of(), true))) {
            assertThrows(NoToken.class, () -> Server.start(Serving.KNOWLEDGE, locker, listen));
            assertThrows(NoToken.class, () -> Server.start(Serving.KNOWLEDGE, null, listen));
        }
    }

    @Test
    void whereOthersCanReachItEverybodyNeedsAToken() {
        start(new Listen("0.0.0.0", 0));
        assertWhoAreYou(get("/api/rooms", ""));
        assertEquals(200, get("/api/rooms", bearer(reader)).status());
    }

    @Test
    void onThisMachineNobodyNeedsOneAndAGivenOneCounts() {
        start(new Listen("127.0.0.1", 0));
        assertEquals(200, get("/api/locker/units", "").status());
        assertEquals(201, post("/api/locker/units", UNIT.formatted(1), "").status());
        assertEquals(201, post("/api/locker/units", UNIT.formatted(2), bearer(engineer)).status());
        assertEquals(List.of("Wren", Access.HERE), locker.history(null, null, 2).stream().map(event -> event.who()).toList());
        assertProblem(403, post("/api/locker/units", UNIT.formatted(3), bearer(reader)));
        assertWhoAreYou(get("/api/rooms", bearer("wrong")));
    }

    @Test
    void everythingButHealthAndStyleNeedsAToken() {
        startWithTokens();
        for (String path : List.of("/", "/guide", "/api/rooms", "/api/locker/units", "/metrics", "/openapi.yaml", "/nothing/here", "/locker", "/health/x", "/schema/mic.schema.json")) {
            assertWhoAreYou(get(path, ""));
        }
        for (String method : List.of("POST", "PATCH", "DELETE", "PUT", "OPTIONS")) {
            assertEquals(401, send(method, "/api/locker/units", "", "").status(), method);
        }
        assertEquals(200, get("/health", "").status());
        assertEquals(200, get("/health", bearer("wrong")).status());
        String page = get("/guide", bearer(reader)).body();
        String style = page.substring(page.indexOf("/assets/"), page.indexOf('"', page.indexOf("/assets/")));
        assertEquals(200, get(style, "").status(), style);
    }

    @Test
    void aReaderAsksAndReadsAndAnEngineerWrites() {
        startWithTokens();
        assertEquals(200, post("/api/ask", QUESTION, bearer(reader)).status());
        assertEquals(200, get("/api/locker/units", bearer(reader)).status());
        Reply refused = post("/api/locker/units", UNIT.formatted(1), bearer(reader));
        assertProblem(403, refused);
        assertTrue(refused.body().contains("--role engineer"), refused.body());
        assertEquals(0, locker.units().size());
        assertEquals(201, post("/api/locker/units", UNIT.formatted(1), bearer(engineer)).status());
        assertEquals(200, post("/api/ask", QUESTION, bearer(engineer)).status());
        assertProblem(403, send("DELETE", "/api/locker/units/" + locker.units().get(0).id(), "", bearer(reader)));
        assertEquals(1, locker.units().size());
    }

    @Test
    void aBrowserOrACalendarSendsItAsAPassword() {
        startWithTokens();
        assertEquals(200, get("/api/rooms", basic("anybody", reader)).status());
        assertEquals(200, get("/api/rooms", basic("", reader)).status());
        assertWhoAreYou(get("/api/rooms", basic(reader, "")));
        for (String broken : List.of("Authorization: Basic ???", "Authorization: Basic", "Authorization: Bearer", "Authorization: Digest x")) {
            assertTrue(List.of(401, 429).contains(get("/api/rooms", broken + "\r\n").status()), broken);
        }
    }

    @Test
    void thePageThatAsksSaysWhatToEnter() {
        startWithTokens();
        Reply page = get("/", "Accept: text/html\r\n");
        assertEquals(401, page.status());
        assertEquals("text/html", page.mediaType());
        assertTrue(page.body().contains("enter any name, and your token as the password"), page.body());
        assertTrue(Serving.send(server.port(), "GET / HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n").headers().get("www-authenticate").contains("Pairwright"));
    }

    @Test
    void aTokenInTheAddressIsNone() {
        startWithTokens();
        assertWhoAreYou(get("/api/rooms?token=" + engineer + "&access_token=" + engineer, ""));
    }

    @Test
    void noRequestIsTakenForAnotherMethodThanItsOwn() {
        start(new Listen("127.0.0.1", 0));
        String unit = locker.change(Act.by("Wren"), changes -> changes.add(UnitDraft.mic("ribbon-9", "long-ribbon", "Ribbon 9")).id()).text();
        assertProblem(400, send("POST", "/api/locker/units/" + unit, "", "X-HTTP-Method-Override: DELETE\r\n"));
        assertTrue(locker.unit(unit).isPresent());
    }

    @Test
    void aRevokedTokenIsWorthless() {
        startWithTokens();
        assertEquals(200, get("/api/rooms", bearer(reader)).status());
        locker.tokens().revoke("Finch");
        assertWhoAreYou(get("/api/rooms", bearer(reader)));
    }

    @Test
    void whoeverGuessesWaitsAndOthersDoNot() {
        startWithTokens();
        for (int i = 0; i < Tries.FREE; i++) {
            assertEquals(401, get("/api/rooms", bearer("guess" + i) + "X-Forwarded-For: 198.51.100.1\r\n").status());
        }
        Reply slowed = get("/api/rooms", bearer(reader) + "X-Forwarded-For: 203.0.113.5, 198.51.100.1\r\n");
        assertProblem(429, slowed);
        assertTrue(Integer.parseInt(slowed.headers().get("retry-after")) > 0);
        assertEquals(200, get("/api/rooms", bearer(reader) + "X-Forwarded-For: 198.51.100.2\r\n").status());
        assertEquals(200, get("/api/rooms", bearer(reader)).status());
        assertEquals(401, get("/api/rooms", "X-Forwarded-For: 198.51.100.1\r\n").status(), "no try at all");
    }

    @Test
    void aNameThatWasAllowedIsTakenAndNoOther() {
        startWithTokens();
        assertEquals(200, named("barn.example"));
        assertEquals(200, named("BARN.example:443"));
        assertEquals(421, named("other.example"));
        String head = "POST /api/ask HTTP/1.1\r\nHost: barn.example\r\n" + bearer(reader) + "Connection: close\r\nContent-Type: application/json\r\nContent-Length: "
                + QUESTION.length() + "\r\n";
        assertEquals(200, Serving.send(server.port(), head + "Origin: https://barn.example\r\n\r\n" + QUESTION).status());
        assertEquals(403, Serving.send(server.port(), head + "Origin: https://other.example\r\n\r\n" + QUESTION).status());
    }

    @Test
    void whatOneWasLetInForIsForNobodyElse() {
        startWithTokens();
        Reply in = get("/api/rooms", bearer(reader));
        assertEquals("private, no-cache", in.headers().get("cache-control"));
        assertTrue(raw("/api/rooms", bearer(reader)).contains("Vary: Authorization"));
        assertEquals("no-store", get("/api/rooms", "").headers().get("cache-control"));
        assertTrue(raw("/api/rooms", "").contains("WWW-Authenticate: Bearer realm=\"Pairwright\""));
        assertTrue(raw("/api/rooms", "").contains("WWW-Authenticate: Basic realm=\"Pairwright\", charset=\"UTF-8\""));
    }

    /** Neither where it went well nor where it did not. */
    @Test
    void noTokenIsInALogAFigureOrAProblem() {
        ByteArrayOutputStream logged = new ByteArrayOutputStream();
        PrintStream before = System.err;
        StringBuilder said = new StringBuilder();
        try {
            System.setErr(new PrintStream(logged, true, StandardCharsets.UTF_8));
            startWithTokens();
            String wrong = "wrong" + engineer;
            for (String token : List.of(engineer, wrong)) {
                for (String path : List.of("/api/rooms?token=" + token, "/api/nothing?token=" + token, "/api/search?words=%FF&token=" + token)) {
                    said.append(get(path, bearer(token)).body());
                    said.append(get(path, basic("x", token)).body());
                    said.append(post(path, "{", bearer(token)).body());
                    said.append(get(path, bearer(token) + "Accept: text/html\r\n").body());
                }
            }
            said.append(get("/metrics", bearer(reader) + "X-Forwarded-For: 198.51.100.9\r\n").body());
        } finally {
            System.setErr(before);
        }
        assertTrue(said.toString().contains("pairwright_request"), "the figures were read");
        assertFalse(said.toString().contains(engineer), "said");
        assertFalse(logged.toString(StandardCharsets.UTF_8).contains(engineer), "logged");
    }

    private static void assertWhoAreYou(Reply reply) {
        assertProblem(401, reply);
        assertTrue(reply.headers().containsKey("www-authenticate"), reply.toString());
    }

    private Reply get(String target, String headers) {
        return send("GET", target, "", headers);
    }

    private Reply post(String target, String body, String headers) {
        return send("POST", target, body, headers);
    }

    private Reply send(String method, String target, String body, String headers) {
        return Serving.send(server.port(), method + " " + target + " HTTP/1.1\r\nHost: localhost\r\n" + headers + "Connection: close\r\n"
                + (method.equals("GET") ? "" : "Content-Type: application/json\r\nContent-Length: " + body.length() + "\r\n") + "\r\n" + body);
    }

    private int named(String host) {
        return Serving.send(server.port(), "GET /api/rooms HTTP/1.1\r\nHost: " + host + "\r\n" + bearer(reader) + "Connection: close\r\n\r\n").status();
    }

    /** The head as it came; a header may be there twice. */
    private String raw(String target, String headers) {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
            socket.getOutputStream().write(("GET " + target + " HTTP/1.1\r\nHost: localhost\r\n" + headers + "Connection: close\r\n\r\n").getBytes(StandardCharsets.UTF_8));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new AssertionError(broken);
        }
    }

    private static String bearer(String token) {
        return "Authorization: Bearer " + token + "\r\n";
    }

    private static String basic(String name, String token) {
        return "Authorization: Basic " + Base64.getEncoder().encodeToString((name + ":" + token).getBytes(StandardCharsets.UTF_8)) + "\r\n";
    }
}
