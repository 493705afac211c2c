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
import pairwright.catalogue.Shown;
import pairwright.model.Fault;
import pairwright.model.Limits;
import pairwright.model.MicFamily;
import pairwright.model.Neighbour;
import pairwright.model.Request;

/**
 * Reads the body of a question by hand rather than by binding, so that every fault is found at once and said in plain words with its
 * place, and nothing of the inside shows.
 */
final class RequestBody {
    private static final Set<String> FIELDS = Set.of("words", "source", "ways", "dynamics", "room", "character", "limits", "neighbours",
            "circumstances", "techniques", "options", "from", "until", "draws");
    private static final Set<String> LIMITS = Set.of("mics", "phantom", "preampGainDb", "preampNoiseDbu", "onlyFamilies", "withoutFamilies",
            "onlyMicTypes", "withoutMicTypes");
    private static final Set<String> NEIGHBOUR = Set.of("source", "distanceM", "angleDegrees");
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
        RequestBody reader = new RequestBody();
        Request request = reader.request(Body.object(body, json, "{\"words\": \"brushed snare, small room\"}"));
        if (!reader.faults.isEmpty()) {
            throw new BadRequest(Problem.of(400, Problem.listed(reader.faults)));
        }
        return request;
    }

    private Request request(JsonNode root) {
        onlyKnown(root, "", FIELDS);
        Request request = new Request(
                text(root, "/words"),
                text(root, "/source"),
                texts(root, "/ways"),
                texts(root, "/dynamics"),
                text(root, "/room"),
                texts(root, "/character"),
                limits(root),
                list(root, "/neighbours", this::neighbour),
                texts(root, "/circumstances"),
                texts(root, "/techniques"),
                whole(root, "/options"),
                time(root, "/from"),
                time(root, "/until"),
                whole(root, "/draws"));
        return request.draws() == null ? request.withDraws(Request.USUAL_DRAWS) : request;
    }

    private Limits limits(JsonNode root) {
        JsonNode node = root.path("limits");
        if (absent(node)) {
            return null;
        }
        if (!node.isObject()) {
            wrong("/limits", node, "an object");
            return null;
        }
        onlyKnown(node, "/limits", LIMITS);
        return new Limits(
                whole(root, "/limits/mics"),
                yesOrNo(root, "/limits/phantom"),
                number(root, "/limits/preampGainDb"),
                number(root, "/limits/preampNoiseDbu"),
                words(root, "/limits/onlyFamilies", this::family),
                words(root, "/limits/withoutFamilies", this::family),
                texts(root, "/limits/onlyMicTypes"),
                texts(root, "/limits/withoutMicTypes"));
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

    private MicFamily family(JsonNode root, String at) {
        String word = text(root, at);
        for (MicFamily family : MicFamily.values()) {
            if (family.id().equals(word)) {
                return family;
            }
        }
        if (word != null) {
            List<String> known = new ArrayList<>();
            for (MicFamily family : MicFamily.values()) {
                known.add(family.id());
            }
            faults.add(new Fault(at, "there is no family \"" + Shown.of(word) + "\". Use one of " + String.join(", ", known)));
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
