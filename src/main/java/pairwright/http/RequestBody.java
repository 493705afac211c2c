package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.catalogue.Shown;
import pairwright.model.Fault;
import pairwright.model.Limits;
import pairwright.model.MicFamily;
import pairwright.model.MovesRequest;
import pairwright.model.Neighbour;
import pairwright.model.Request;
import pairwright.model.Setup;
import pairwright.model.WhyNotRequest;
import pairwright.model.Word;

/**
 * Reads the body of a question by hand rather than by binding, so that every fault is found at once and said in plain words with its
 * place, and nothing of the inside shows.
 */
final class RequestBody {
    private static final Set<String> FIELDS = Set.of("words", "source", "ways", "dynamics", "room", "character", "limits", "neighbours",
            "circumstances", "techniques", "options", "from", "until", "wishes", "lifted", "draws");
    private static final Set<String> LIMITS = Set.of("mics", "phantom", "preampGainDb", "preampNoiseDbu", "onlyFamilies", "withoutFamilies",
            "onlyMicTypes", "withoutMicTypes");
    private static final Set<String> NEIGHBOUR = Set.of("source", "distanceM", "angleDegrees");
    private static final Set<String> WHY_NOT = Set.of("question", "micType", "pattern", "position");
    private static final Set<String> MOVES = Set.of("question", "option", "heard");
    private static final int MOST_ENTRIES = 1000;
    private static final Pattern RFC_3339 = Pattern.compile("\\d{4}-\\d\\d-\\d\\d[Tt]\\d\\d:\\d\\d:\\d\\d(\\.\\d{1,9})?([Zz]|[+-]\\d\\d:\\d\\d)");

    private final List<Fault> faults = new ArrayList<>();

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
        T request = of.apply(reader, Body.object(body, json, example));
        if (!reader.faults.isEmpty()) {
            throw new BadRequest(Problem.of(400, Problem.listed(reader.faults)));
        }
        return request;
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
                words(root, at + "/wishes", this::family),
                words(root, at + "/lifted", this::limit),
                whole(root, at + "/draws"));
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

    private Limits limits(JsonNode root, String at) {
        JsonNode node = root.at(at);
        if (absent(node)) {
            return null;
        }
        if (!node.isObject()) {
            wrong(at, node, "an object");
            return null;
        }
        onlyKnown(node, at, LIMITS);
        return new Limits(
                whole(root, at + "/mics"),
                yesOrNo(root, at + "/phantom"),
                number(root, at + "/preampGainDb"),
                number(root, at + "/preampNoiseDbu"),
                words(root, at + "/onlyFamilies", this::family),
                words(root, at + "/withoutFamilies", this::family),
                texts(root, at + "/onlyMicTypes"),
                texts(root, at + "/withoutMicTypes"));
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
            faults.add(new Fault(at + "/source", "a neighbour has no source. Give the id of a source"));
        }
        Double distanceM = number(root, at + "/distanceM");
        if (absent(node.path("distanceM"))) {
            faults.add(new Fault(at + "/distanceM", "a neighbour has no distanceM. Give its distance from the microphone in metres"));
        }
        Double angleDegrees = number(root, at + "/angleDegrees");
        return new Neighbour(source, distanceM == null ? 1 : distanceM, angleDegrees == null ? 90 : angleDegrees);
    }

    private String limit(JsonNode root, String at) {
        String name = text(root, at);
        if (name != null && !LIMITS.contains(name)) {
            faults.add(new Fault(at, "there is no limit \"" + Shown.of(name) + "\". Use one of " + String.join(", ", new TreeSet<>(LIMITS))));
            return null;
        }
        return name;
    }

    private MicFamily family(JsonNode root, String at) {
        return constant(root, at, MicFamily.values(), "family");
    }

    private pairwright.model.Pattern pattern(JsonNode root, String at) {
        return constant(root, at, pairwright.model.Pattern.values(), "pattern");
    }

    private <W extends Word> W constant(JsonNode root, String at, W[] words, String kind) {
        String word = text(root, at);
        for (W one : words) {
            if (one.id().equals(word)) {
                return one;
            }
        }
        if (word != null) {
            faults.add(new Fault(at, "there is no " + kind + " \"" + Shown.of(word) + "\". Use one of "
                    + Stream.of(words).map(Word::id).collect(Collectors.joining(", "))));
        }
        return null;
    }

    private String text(JsonNode root, String at) {
        JsonNode node = root.at(at);
        if (absent(node)) {
            return null;
        }
        if (!node.isTextual()) {
            wrong(at, node, "text");
            return null;
        }
        return node.textValue();
    }

    private List<String> texts(JsonNode root, String at) {
        return words(root, at, this::text);
    }

    /** A list, or one word where a list of one is meant. */
    private <T> List<T> words(JsonNode root, String at, BiFunction<JsonNode, String, T> entry) {
        if (!root.at(at).isTextual()) {
            return list(root, at, entry);
        }
        T only = entry.apply(root, at);
        return only == null ? List.of() : List.of(only);
    }

    private <T> List<T> list(JsonNode root, String at, BiFunction<JsonNode, String, T> entry) {
        JsonNode node = root.at(at);
        if (absent(node)) {
            return null;
        }
        if (!node.isArray()) {
            wrong(at, node, "a list");
            return null;
        }
        if (node.size() > MOST_ENTRIES) {
            faults.add(new Fault(at, "the list has " + node.size() + " entries. Leave most of them out"));
            return null;
        }
        List<T> entries = new ArrayList<>();
        for (int i = 0; i < node.size(); i++) {
            if (node.get(i).isNull()) {
                wrong(at + "/" + i, node.get(i), "a value");
                continue;
            }
            T read = entry.apply(root, at + "/" + i);
            if (read != null) {
                entries.add(read);
            }
        }
        return entries;
    }

    private Integer whole(JsonNode root, String at) {
        JsonNode node = root.at(at);
        if (absent(node)) {
            return null;
        }
        if (!node.isNumber() || !node.canConvertToExactIntegral() || !node.canConvertToInt()) {
            wrong(at, node, "a whole number");
            return null;
        }
        return node.intValue();
    }

    private Double number(JsonNode root, String at) {
        JsonNode node = root.at(at);
        if (absent(node)) {
            return null;
        }
        if (!node.isNumber() || !Double.isFinite(node.doubleValue())) {
            wrong(at, node, "a number");
            return null;
        }
        return node.doubleValue();
    }

    private Boolean yesOrNo(JsonNode root, String at) {
        JsonNode node = root.at(at);
        if (absent(node)) {
            return null;
        }
        if (!node.isBoolean()) {
            wrong(at, node, "true or false");
            return null;
        }
        return node.booleanValue();
    }

    private OffsetDateTime time(JsonNode root, String at) {
        String text = text(root, at);
        if (text == null) {
            return null;
        }
        try {
            if (RFC_3339.matcher(text).matches()) {
                return OffsetDateTime.parse(text);
            }
        } catch (DateTimeException notATime) {
            // a day or an hour there is not; said below
        }
        faults.add(new Fault(at, "\"" + Shown.of(text) + "\" is not a time with an offset. Write it like 2027-03-01T10:00:00+01:00"));
        return null;
    }

    private void onlyKnown(JsonNode node, String at, Set<String> known) {
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            String name = field.getKey();
            if (!known.contains(name)) {
                faults.add(new Fault(at + "/" + pointer(name), "there is no field \"" + Shown.of(name) + "\" here. Known: "
                        + String.join(", ", new TreeSet<>(known))));
            }
        }
    }

    private static String pointer(String name) {
        return Shown.of(name).replace("~", "~0").replace("/", "~1");
    }

    private static boolean absent(JsonNode node) {
        return node.isMissingNode() || node.isNull();
    }

    private void wrong(String at, JsonNode node, String wanted) {
        faults.add(new Fault(at, name(at) + " must be " + wanted + ", but was " + kind(node)));
    }

    private static String name(String at) {
        int slash = at.lastIndexOf('/');
        String last = at.substring(slash + 1);
        boolean entry = !last.isEmpty() && last.chars().allMatch(c -> c >= '0' && c <= '9');
        return entry ? "entry " + (Integer.parseInt(last) + 1) + " of " + name(at.substring(0, slash)) : last;
    }

    /** What a value is, said back. */
    static String kind(JsonNode node) {
        if (node.isTextual()) {
            return "the text \"" + Shown.of(node.textValue()) + "\"";
        }
        if (node.isArray()) {
            return "a list";
        }
        if (node.isObject()) {
            return "an object";
        }
        return node.isMissingNode() ? "nothing" : Shown.of(node.asText());
    }
}
