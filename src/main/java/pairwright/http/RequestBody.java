package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import pairwright.catalogue.Shown;
import pairwright.model.FromLocker;
import pairwright.model.Limits;
import pairwright.model.MicFamily;
import pairwright.model.MovesRequest;
import pairwright.model.Neighbour;
import pairwright.model.Request;
import pairwright.model.Setup;
import pairwright.model.WhyNotRequest;

/**
 * Reads the body of a question by hand rather than by binding, so that every fault is found at once and said in plain words with its
 * place, and nothing of the inside shows.
 */
final class RequestBody extends JsonReader {
    private static final Set<String> FIELDS = Set.of("words", "source", "ways", "dynamics", "room", "character", "limits", "neighbours",
            "circumstances", "techniques", "options", "from", "until", "locker", "wishes", "lifted", "player", "draws", "heard");
    private static final Set<String> NEIGHBOUR = Set.of("source", "distanceM", "angleDegrees");
    private static final Set<String> WHY_NOT = Set.of("question", "micType", "pattern", "position");
    private static final Set<String> MOVES = Set.of("question", "option", "heard");

    private RequestBody() {
    }

    /**
     * The question in a body.
     *
     * @throws BadRequest with status 400 and every fault of form
     */
    static Request read(String body, ObjectMapper json) {
        return read(body, json, "{\"words\": \"brushed snare, small room\"}", (reader, root) -> reader.request(root, ""));
    }

    /**
     * The question of a body and the type that was not chosen.
     *
     * @throws BadRequest with status 400 and every fault of form
     */
    static WhyNotRequest readWhyNot(String body, ObjectMapper json) {
        return read(body, json, "{\"question\": {\"words\": \"brushed snare\"}, \"micType\": \"long-ribbon\"}", (reader, root) -> {
            reader.onlyKnown(root, "", WHY_NOT);
            return new WhyNotRequest(reader.question(root), reader.text(root, "/micType"), reader.pattern(root, "/pattern"),
                    reader.text(root, "/position"));
        });
    }

    /**
     * The question of a body, the microphones as they stand, and what is heard.
     *
     * @throws BadRequest with status 400 and every fault of form
     */
    static MovesRequest readMoves(String body, ObjectMapper json) {
        return read(body, json, "{\"question\": {\"words\": \"brushed snare\"}, \"option\": {...}, \"heard\": \"boomy\"}", (reader, root) -> {
            reader.onlyKnown(root, "", MOVES);
            return new MovesRequest(reader.question(root), reader.setup(root), reader.text(root, "/heard"));
        });
    }

    private static <T> T read(String body, ObjectMapper json, String example, BiFunction<RequestBody, JsonNode, T> of) {
        RequestBody reader = new RequestBody();
        return reader.sound(of.apply(reader, Body.object(body, json, example)));
    }

    /** A question that stands at a place of its own in a larger body. */
    private Request question(JsonNode root) {
        String at = "/question";
        JsonNode node = root.at(at);
        if (absent(node)) {
            return null;
        }
        if (!node.isObject()) {
            wrong(at, node, "an object, as for /api/ask");
            return null;
        }
        return request(root, at);
    }

    private Request request(JsonNode root, String at) {
        onlyKnown(root.at(at), at, FIELDS);
        Request request = new Request(
                text(root, at + "/words"),
                text(root, at + "/source"),
                texts(root, at + "/ways"),
                texts(root, at + "/dynamics"),
                text(root, at + "/room"),
                texts(root, at + "/character"),
                limits(root, at + "/limits"),
                list(root, at + "/neighbours", this::neighbour),
                texts(root, at + "/circumstances"),
                texts(root, at + "/techniques"),
                whole(root, at + "/options"),
                time(root, at + "/from"),
                time(root, at + "/until"),
                constant(root, at + "/locker", FromLocker.values(), "way to use the locker"),
                words(root, at + "/wishes", this::family),
                words(root, at + "/lifted", this::limit),
                text(root, at + "/player"),
                whole(root, at + "/draws"),
                HeardBody.read(this, root, at + "/heard"));
        return request.draws() == null ? request.withDraws(Request.USUAL_DRAWS) : request;
    }

    /** An option as the answer has it; of each microphone only how it stands is read, as everything else follows from that. */
    private Setup setup(JsonNode root) {
        String at = "/option";
        JsonNode node = root.at(at);
        if (absent(node)) {
            return null;
        }
        if (!node.isObject()) {
            wrong(at, node, "an object with mics");
            return null;
        }
        return new Setup(text(root, at + "/technique"), list(root, at + "/mics", this::put));
    }

    private Setup.Put put(JsonNode root, String at) {
        JsonNode node = root.at(at);
        if (!node.isObject()) {
            wrong(at, node, "an object with micType, position and distanceM");
            return null;
        }
        return new Setup.Put(text(root, at + "/micType"), pattern(root, at + "/pattern"), text(root, at + "/position"),
                number(root, at + "/distanceM"), number(root, at + "/aimDegrees"));
    }

    private Neighbour neighbour(JsonNode root, String at) {
        JsonNode node = root.at(at);
        if (!node.isObject()) {
            wrong(at, node, "an object with source, distanceM and angleDegrees");
            return null;
        }
        onlyKnown(node, at, NEIGHBOUR);
        String source = text(root, at + "/source");
        if (absent(node.path("source"))) {
            fault(at + "/source", "a neighbour has no source. Give the id of a source");
        }
        Double distanceM = number(root, at + "/distanceM");
        if (absent(node.path("distanceM"))) {
            fault(at + "/distanceM", "a neighbour has no distanceM. Give its distance from the microphone in metres");
        }
        Double angleDegrees = number(root, at + "/angleDegrees");
        return new Neighbour(source, distanceM == null ? 1 : distanceM, angleDegrees == null ? 90 : angleDegrees);
    }

    private String limit(JsonNode root, String at) {
        String name = text(root, at);
        if (name != null && !LIMITS.contains(name)) {
            fault(at, "there is no limit \"" + Shown.of(name) + "\". Use one of " + String.join(", ", new TreeSet<>(LIMITS)));
            return null;
        }
        return name;
    }
}
