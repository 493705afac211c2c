package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairwright.catalogue.Shown;
import pairwright.lab.Answer;
import pairwright.lab.Wanted;

/** Reads what somebody wants of the lab, and what is answered. */
public final class LabBody extends JsonReader {
    static final String WANTED = "{\"kind\": \"choose\", \"level\": 2, \"benches\": 6, \"from\": \"2027-03-01T10:00:00+01:00\", \"until\": \"2027-03-01T12:00:00+01:00\"}";
    static final String MARK = "{\"bench\": 1, \"answer\": {\"mic\": \"long-ribbon\", \"distance\": 30, \"reasons\": [\"a\", \"c\"]}}";
    static final String ANSWERS = "{\"answers\": [" + MARK + "]}";
    static final String PRACTICE = "{\"kind\": \"reckon\", \"level\": 1, \"seed\": \"first try\", \"answer\": {\"value\": 3}}";
    static final String OPENS = "{\"opensAt\": \"2027-03-01T12:00:00+01:00\"}";
    private static final int MOST_ITEMS = 200;
    private static final int LONGEST_VALUE = 200;
    private static final double LARGEST = 1e9;
    private static final int FIRST_YEAR = 1970;
    private static final int LAST_YEAR = 2999;

    private LabBody() {
    }

    /** What a bench answers. */
    record Answered(int bench, Answer answer) {
    }

    /** What somebody who practises answers. */
    record Practised(String kind, Integer level, String seed, Answer answer) {
    }

    /** @throws BadRequest with status 400 and every fault of form */
    static Wanted wanted(JsonNode root) {
        LabBody reader = new LabBody();
        reader.onlyKnown(root, "", Set.of("kind", "seed", "level", "benches", "from", "until", "opensAt"));
        return reader.sound(new Wanted(reader.text(root, "/kind"), reader.seed(root), reader.whole(root, "/level"), reader.whole(root, "/benches"),
                reader.moment(root, "/from"), reader.moment(root, "/until"), reader.moment(root, "/opensAt")));
    }

    /** A moment from which on the keys are open; null for never. */
    static Instant opensAt(JsonNode root) {
        LabBody reader = new LabBody();
        reader.onlyKnown(root, "", Set.of("opensAt"));
        if (!root.has("opensAt")) {
            reader.fault("/opensAt", "opensAt is missing. Say from when on everybody may see the keys, or null for never");
        }
        Instant opensAt = reader.moment(root, "/opensAt");
        reader.sound(root);
        return opensAt;
    }

    static Answered answered(JsonNode root) {
        LabBody reader = new LabBody();
        Answered read = reader.answered(root, "");
        return reader.sound(read);
    }

    /** By bench, what it answers. */
    static Map<Integer, Answer> answers(JsonNode root) {
        LabBody reader = new LabBody();
        reader.onlyKnown(root, "", Set.of("answers"));
        List<Answered> all = reader.list(root, "/answers", reader::answered);
        Map<Integer, Answer> answers = new LinkedHashMap<>();
        for (int i = 0; all != null && i < all.size(); i++) {
            if (answers.put(all.get(i).bench(), all.get(i).answer()) != null) {
                reader.fault("/answers/" + i + "/bench", "bench " + all.get(i).bench() + " answers twice. Keep one of the two");
            }
        }
        if (all == null || all.isEmpty()) {
            reader.fault("/answers", "there are no answers. List them, such as " + ANSWERS);
        }
        return reader.sound(answers);
    }

    static Practised practised(JsonNode root) {
        LabBody reader = new LabBody();
        reader.onlyKnown(root, "", Set.of("kind", "level", "seed", "answer"));
        return reader.sound(new Practised(reader.text(root, "/kind"), reader.whole(root, "/level"), reader.seed(root), reader.answer(root, "/answer")));
    }

    private Answered answered(JsonNode root, String at) {
        JsonNode node = root.at(at);
        if (!node.isObject()) {
            wrong(at, node, "an object with bench and answer");
            return null;
        }
        onlyKnown(node, at, Set.of("bench", "answer"));
        Integer bench = whole(root, at + "/bench");
        if (absent(node.path("bench"))) {
            fault(at + "/bench", "it is not said which bench. Count them from 1");
        }
        return new Answered(bench == null ? 0 : bench, answer(root, at + "/answer"));
    }

    /** A number is as good as a word for a seed. */
    private String seed(JsonNode root) {
        return root.path("seed").isIntegralNumber() ? root.path("seed").asText() : text(root, "/seed");
    }

    private Instant moment(JsonNode root, String at) {
        OffsetDateTime time = time(root, at);
        if (time != null && (time.getYear() < FIRST_YEAR || time.getYear() > LAST_YEAR)) {
            fault(at, at.substring(1) + " is in the year " + time.getYear() + ". Give a time from " + FIRST_YEAR + " to " + LAST_YEAR);
            return null;
        }
        return time == null ? null : time.toInstant();
    }

    private Answer answer(JsonNode root, String at) {
        JsonNode node = root.at(at);
        if (!node.isObject()) {
            wrong(at, node, "an object with an answer for each item");
            return Answer.NOTHING;
        }
        if (node.size() > MOST_ITEMS) {
            fault(at, "the answer has " + node.size() + " items. Send those of the handout");
            return Answer.NOTHING;
        }
        Answer answer = Answer.NOTHING;
        for (Map.Entry<String, JsonNode> item : node.properties()) {
            answer = answer.with(item.getKey(), values(item.getValue(), at + "/" + pointer(item.getKey())));
        }
        return answer;
    }

    /** A word, a number, or a list of them; a spot may be an object. */
    private List<String> values(JsonNode node, String at) {
        if (node.isNull()) {
            return List.of();
        }
        if (node.isObject()) {
            onlyKnown(node, at, Set.of("xM", "yM", "aimDegrees"));
            return List.of(value(node.path("xM"), at + "/xM"), value(node.path("yM"), at + "/yM"), value(node.path("aimDegrees"), at + "/aimDegrees"));
        }
        List<String> values = new ArrayList<>();
        if (node.isArray() && node.size() > MOST_ITEMS) {
            fault(at, "the list has " + node.size() + " entries. Name what is meant and no more");
            return values;
        }
        (node.isArray() ? node : List.of(node)).forEach(one -> values.add(value(one, at)));
        return values;
    }

    private String value(JsonNode node, String at) {
        if (node.isNumber() && Double.isFinite(node.doubleValue())) {
            return Math.abs(node.doubleValue()) > LARGEST ? odd(node, at) : BigDecimal.valueOf(node.doubleValue()).toPlainString();
        }
        if (!node.isTextual() || node.textValue().length() > LONGEST_VALUE || node.textValue().codePoints().anyMatch(Character::isISOControl)) {
            return odd(node, at);
        }
        return node.textValue();
    }

    private String odd(JsonNode node, String at) {
        fault(at, "\"" + Shown.of(node.isTextual() ? node.textValue() : kind(node)) + "\" is no answer. Give the id of an option, several of them in a list, or a number");
        return "";
    }
}
