package pairwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tokens from a terminal, and the server that asks for them. */
class TokenCommandTest {
    @TempDir
    private Path folder;

    @Test
    void aTokenIsShownOnceAndListedWithoutIt() {
        Run made = run("add", "Wren", "--role", "engineer");
        assertEquals(0, made.exit(), made.err());
        String token = made.out().strip();
        assertTrue(token.length() > 20 && made.out().lines().count() == 1, "nothing else on standard output");
        Run list = run("list");
        assertTrue(list.out().contains("Wren") && list.out().contains("engineer") && !list.out().contains(token), list.out());
        assertEquals(2, run("add", "wren", "--role", "reader").exit());
        assertEquals(0, run("revoke", "Wren").exit());
        assertTrue(run("list").out().startsWith("There is no token"));
        assertEquals(1, run("revoke", "Wren").exit());
    }

    @Test
    void aRoleThatIsNoneIsSaidWithThoseThereAre() {
        Run run = run("add", "Wren", "--role", "boss");
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("\"boss\" is none of reader, engineer, instructor"), run.err());
        assertEquals(2, run("add", "Wren").exit());
    }

    @Test
    void whereOthersCanReachItAServerDoesNotStartBeforeThereIsAToken() throws Exception {
        try (Program program = Program.start(folder, "serve", "--host", "0.0.0.0", "--port", "0", "--data", "state")) {
            assertNull(program.line());
            assertEquals(1, program.exit());
            assertEquals("pairwright: others can reach 0.0.0.0, so everybody needs a token, and there is none. Make one first: "
                    + "pairwright token add NAME --role engineer --data state\n", program.err());
        }
        Run made = Run.of("token", "add", "Wren", "--role", "reader", "--data", folder.resolve("state").toString());
        try (Program program = Program.start(folder, "serve", "--host", "0.0.0.0", "--port", "0", "--data", "state")) {
            String line = program.line();
            int port = Integer.parseInt(line.substring(line.lastIndexOf(':') + 1));
            assertEquals(401, status(port, null));
            assertEquals(200, status(port, made.out().strip()));
            program.terminate();
            assertEquals(0, program.exit());
        }
    }

    @Test
    void aLockerThatCannotBeOpenedEndsAServerPlainly() throws Exception {
        Files.createDirectories(folder.resolve("state/locker.db"));
        try (Program program = Program.start(folder, "serve", "--port", "0", "--data", "state")) {
            assertNull(program.line());
            assertEquals(1, program.exit());
            assertTrue(program.err().startsWith("pairwright: ") && program.err().lines().count() == 1 && !program.err().contains("Exception"), program.err());
        }
    }

    @Test
    void aNameThatIsAnAddressOfAPageIsRefused() {
        Run run = Run.of("serve", "--allow-host", "https://locker.example/", "--data", folder.resolve("none").toString());
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("--allow-host takes a name such as locker.example"), run.err());
        assertFalse(Files.exists(folder.resolve("none")));
    }

    private Run run(String... typed) {
        String[] all = Stream.of(Stream.of("token"), Arrays.stream(typed), Stream.of("--data", folder.toString()))
                .flatMap(one -> one).toArray(String[]::new);
        return Run.of(all);
    }

    private static int status(int port, String token) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/api/rooms"));
        if (token != null) {
            request.header("Authorization", "Bearer " + token);
        }
        return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.discarding()).statusCode();
    }
}
