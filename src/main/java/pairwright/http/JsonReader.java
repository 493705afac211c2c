package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
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
import pairwright.model.Word;

/**
 * Reads the fields of a body by hand rather than by binding, so that every fault is found at once and said in plain words with its
 * place, and nothing of the inside shows. Each kind of body is read by a class of its own.
 */
abstract class JsonReader {
    private static final int MOST_ENTRIES = 1000;
    private static final Pattern RFC_3339 = Pattern.compile("\\d{4}-\\d\\d-\\d\\d[Tt]\\d\\d:\\d\\d:\\d\\d(\\.\\d{1,9})?([Zz]|[+-]\\d\\d:\\d\\d)");

    /** What may be said of limits, in a question and of a seat. */
    static final Set<String> LIMITS = Set.of("mics", "phantom", "preampGainDb", "preampNoiseDbu", "onlyFamilies", "withoutFamilies",
            "onlyMicTypes", "withoutMicTypes");

    private final List<Fault> faults = new ArrayList<>();

    /**
     * What was read, if nothing was wrong with it.
     *
     * @throws BadRequest with status 400 and every fault of form
     */
    final <T> T sound(T read) {
        if (!faults.isEmpty()) {
            throw new BadRequest(Problem.of(400, Problem.listed(faults)));
        }
        return read;
    }

    /** Every fault so far. */
    final List<Fault> faults() {
        return faults;
    }

    final void fault(String at, String says) {
        faults.add(new Fault(at, says));
    }

    final <W extends Word> W constant(JsonNode root, String at, W[] words, String kind) {
        String word = text(root, at);
        for (W one : words) {
            if (one.id().equals(word)) {
                return one;
            }
        }
        if (word != null) {
            fault(at, "there is no " + kind + " \"" + Shown.of(word) + "\". Use one of "
                    + Stream.of(words).map(Word::id).collect(Collectors.joining(", ")));
        }
        return null;
    }

    final String text(JsonNode root, String at) {
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

    final List<String> texts(JsonNode root, String at) {
        return words(root, at, this::text);
    }

    /** A list, or one word where a list of one is meant. */
    final <T> List<T> words(JsonNode root, String at, BiFunction<JsonNode, String, T> entry) {
        if (!root.at(at).isTextual()) {
            return list(root, at, entry);
        }
        T only = entry.apply(root, at);
        return only == null ? List.of() : List.of(only);
    }

    final <T> List<T> list(JsonNode root, String at, BiFunction<JsonNode, String, T> entry) {
        JsonNode node = root.at(at);
        if (absent(node)) {
            return null;
        }
        if (!node.isArray()) {
            wrong(at, node, "a list");
            return null;
        }
        if (node.size() > MOST_ENTRIES) {
            fault(at, "the list has " + node.size() + " entries. Leave most of them out");
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

    final Integer whole(JsonNode root, String at) {
        JsonNode node = root.at(at);
        if (absent(node)) {
            return null;
        }
        boolean vanished = node.isFloatingPointNumber() && node.doubleValue() == 0; // 1e-999 is read as 0 and is not
        if (!node.isNumber() || vanished || !node.canConvertToExactIntegral() || !node.canConvertToInt()) {
            wrong(at, node, "a whole number");
            return null;
        }
        return node.intValue();
    }

    final Double number(JsonNode root, String at) {
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

    final Boolean yesOrNo(JsonNode root, String at) {
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

    final OffsetDateTime time(JsonNode root, String at) {
        String text = text(root, at);
        if (text == null) {
            return null;
        }
        OffsetDateTime time = time(text);
        if (time == null) {
            fault(at, noTime(text));
        }
        return time;
    }

    /** A moment as RFC 3339 writes it; null where the text is none. */
    static OffsetDateTime time(String text) {
        try {
            return RFC_3339.matcher(text).matches() ? OffsetDateTime.parse(text) : null;
        } catch (DateTimeException notATime) {
            return null; // a day or an hour there is not
        }
    }

    static String noTime(String text) {
        return "\"" + Shown.of(text) + "\" is " + (RFC_3339.matcher(text).matches() ? "on no calendar and no clock" : "not a time with an offset") + ". Write it like 2027-03-01T10:00:00+01:00";
    }

    final void onlyKnown(JsonNode node, String at, Set<String> known) {
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            String name = field.getKey();
            if (!known.contains(name)) {
                fault(at + "/" + pointer(name), "there is no field \"" + Shown.of(name) + "\" here. Known: "
                        + String.join(", ", new TreeSet<>(known)));
            }
        }
    }

    final Limits limits(JsonNode root, String at) {
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

    final MicFamily family(JsonNode root, String at) {
        return constant(root, at, MicFamily.values(), "family");
    }

    final pairwright.model.Pattern pattern(JsonNode root, String at) {
        return constant(root, at, pairwright.model.Pattern.values(), "pattern");
    }

    static String pointer(String name) {
        return Shown.of(name).replace("~", "~0").replace("/", "~1");
    }

    static boolean absent(JsonNode node) {
        return node.isMissingNode() || node.isNull();
    }

    final void wrong(String at, JsonNode node, String wanted) {
        fault(at, name(at) + " must be " + wanted + ", but was " + kind(node));
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
