package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/** Two thousand requests that mean no good: none is a mistake of the program's, none shows its inside, none stops it. */
class FuzzTest {
    private static final long SEED = 20_261_125;
    private static final int REQUESTS = 2_000;
    private static final int HALF_OPEN = 20;
    /** What only the inside of the program would say. */
    private static final Pattern INSIDE = Pattern.compile("Exception|\\bat [a-z]+\\.[a-z.]+\\(|\\.java\\b|\\.kt\\b|java\\.|javax\\.|jakarta|kotlin|fasterxml|jackson"
            + "|jetty|javalin|lucene|drools|pairwright\\.[a-z]+\\.|/root/|/home/|/tmp/|target/classes|" + Pattern.quote(System.getProperty("user.dir")), Pattern.CASE_INSENSITIVE);
    /** What is sent where, by its name in the description. */
    private static final Map<String, String> SCHEMAS = Map.of("/api/ask", "Request", "/api/ask/why-not", "WhyNotRequest", "/api/ask/moves", "MovesRequest");
    private static final ObjectMapper STRICT = JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS, DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).build();

    @Test
    void nothingHostileIsAMistakeOfTheProgramsOrShowsItsInside() throws Exception {
        System.out.println("FuzzTest: seed " + SEED + ", " + REQUESTS + " requests");
        HostileRequests requests = new HostileRequests(SEED);
        Map<String, Map<Object, Integer>> tally = new TreeMap<>();
        List<String> wrong = new ArrayList<>();
        List<Socket> halfOpen = new ArrayList<>();
        for (int i = 0; i < REQUESTS; i++) {
            if (i % (REQUESTS / HALF_OPEN) == 0) {
                halfOpen.add(halfOpen());
            }
            HostileRequests.Hostile hostile = requests.next();
            Reply reply = Serving.send(Serving.port(), hostile.bytes());
            tally.computeIfAbsent(hostile.kind(), kind -> new TreeMap<>()).merge(reply == null ? 0 : reply.status(), 1, Integer::sum);
            String fault = reply == null ? null : fault(hostile, reply);
            if (fault != null) {
                wrong.add("request " + i + ", " + hostile.kind() + ": " + fault + "\n  "
                        + shown(new String(hostile.bytes(), StandardCharsets.UTF_8)) + "\n  " + reply.status() + " " + shown(reply.body()));
            }
        }
        tally.forEach((kind, statuses) -> System.out.println("FuzzTest: " + kind + " " + statuses));
        assertEquals(List.of(), wrong, "seed " + SEED);
        assertEquals(List.of(), tally.entrySet().stream().filter(kind -> kind.getValue().containsKey(0)
                && !kind.getKey().equals("no HTTP") && !kind.getKey().equals("flipped bytes")).toList(), "closed without a word");

        Reply after = Serving.ask("{\"words\": \"brushed snare, small room\"}");
        assertEquals(200, after.status());
        assertFalse(after.json().path("options").isEmpty());
        for (Socket socket : halfOpen) {
            socket.close();
        }
    }

    private static String fault(HostileRequests.Hostile hostile, Reply reply) {
        if (INSIDE.matcher(reply.body()).find()) {
            return "shows the inside";
        }
        if (reply.status() >= 400) {
            if (reply.status() >= 500 && reply.status() != 505 && reply.status() != 501) {
                return "a mistake of the program's";
            }
            String fault = !reply.mediaType().equals(Problem.MEDIA_TYPE) ? "no problem but " + reply.mediaType()
                    : Serving.OPEN_API.faultsAs("Problem", reply.json()).stream().findFirst()
                            .orElse(reply.json().path("status").asInt() == reply.status() ? null : "another status inside");
            if (fault != null) {
                return fault;
            }
        }
        return hostile.body() == null ? null : disagreement(hostile, reply);
    }

    /** What is answered is a request as the description has it; a question that is that and is refused names something the catalogue does not have. */
    private static String disagreement(HostileRequests.Hostile hostile, Reply reply) {
        JsonNode question = read(hostile.body());
        List<String> faults = question == null ? List.of("not JSON") : Serving.OPEN_API.faultsAs(SCHEMAS.get(hostile.target()), question);
        if (reply.status() == 200) {
            return faults.isEmpty()
                    ? Serving.OPEN_API.faults("POST", hostile.target(), reply).stream().findFirst().orElse(null)
                    : "taken against the description: " + faults;
        }
        if (!hostile.target().equals("/api/ask")) { // that a type fits a place, or a technique its microphones, is more than a description can say
            return faults.isEmpty() && reply.json().path("errors").isEmpty() ? "refused without saying why" : null;
        }
        boolean sound = faults.isEmpty() && StreamSupport.stream(reply.json().path("errors").spliterator(), false)
                .anyMatch(error -> !error.path("says").asText().startsWith("there is no "));
        return sound ? "refused though the description allows it" : null;
    }

    private static JsonNode read(byte[] body) {
        try {
            return STRICT.readTree(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(body)).toString());
        } catch (IOException | NumberFormatException broken) {
            return null;
        }
    }

    private static Socket halfOpen() throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), Serving.port());
        socket.getOutputStream().write("POST /api/ask HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: 100\r\n\r\n{\"wo"
                .getBytes(StandardCharsets.US_ASCII));
        return socket;
    }

    private static String shown(String text) {
        return text.length() < 700 ? text : text.substring(0, 500) + " ... " + text.substring(text.length() - 100);
    }
}
