package pairwright.rules;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.deser.Deserializers;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Technique;
import pairwright.model.Together;
import pairwright.model.Word;

/** Facts for a case: the unremarkable situation of base.yaml and how the case differs from it. */
record Situation(Setting setting, Placed placed, Paired paired) {
    static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory())
            .registerModule(new SimpleModule() {
                @Override
                public void setupModule(SetupContext context) {
                    super.setupModule(context);
                    context.addDeserializers(new Words());
                }
            }.addDeserializer(OctaveCurve.class, new Curves()))
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES);

    static Situation base() {
        return differing(YAML.createObjectNode());
    }

    /** The base with the dotted paths of {@code how}, by fact: setting, placed, second, paired. */
    static Situation differing(JsonNode how) {
        ObjectNode facts = read();
        ObjectNode second = facts.get("placed").deepCopy();
        facts.get("second").fields().forEachRemaining(path -> set(second, path.getKey(), path.getValue()));
        facts.set("second", second);
        how.fields().forEachRemaining(fact -> {
            JsonNode whole = facts.get(fact.getKey());
            if (whole == null) {
                throw new IllegalArgumentException("No such fact: " + fact.getKey() + ". Use setting, placed, second or paired");
            }
            fact.getValue().fields().forEachRemaining(path -> set((ObjectNode) whole, path.getKey(), path.getValue()));
        });
        JsonNode wanted = facts.get("setting").get("wanted");
        if (wanted.isTextual()) {
            ((ObjectNode) facts.get("setting")).set("wanted", facts.get("characters").get(wanted.textValue()));
        }
        Setting setting = as(facts.get("setting"), Setting.class);
        Placed placed = as(facts.get("placed"), Placed.class);
        JsonNode pair = facts.get("paired");
        return new Situation(setting, placed, new Paired(placed, as(second, Placed.class), as(pair.get("technique"), Technique.class),
                pair.get("known").booleanValue(), pair.get("knownShare").doubleValue(), pair.get("asked").booleanValue(), pair.get("why").asText(""), pair.get("secondInverted").booleanValue(),
                pair.get("unitsKnown").booleanValue(), pair.get("matchedPair").booleanValue(),
                as(pair.get("together"), Together.class)));
    }

    /** What fires: for a pair if the case speaks of one, else for a placement. */
    List<Finding> judged(RuleBase rules, boolean asPair) {
        List<Finding> findings = new ArrayList<>(judged(rules, setting, List.of(asPair ? paired : placed)));
        findings.removeIf(finding -> asPair && finding.subject() == setting);
        return findings;
    }

    /** Points and cautions together: by subject, those of the setting first, and by rule. */
    static List<Finding> judged(RuleBase rules, Setting setting, List<?> subjects) {
        List<Finding> findings = new ArrayList<>(rules.score(setting, subjects));
        findings.addAll(rules.warn(setting, subjects));
        findings.sort(Comparator.<Finding>comparingInt(finding -> subjects.indexOf(finding.subject()))
                .thenComparing(finding -> finding.rule().id()));
        return findings;
    }

    private static ObjectNode read() {
        try (InputStream in = Situation.class.getResourceAsStream("/rules/base.yaml")) {
            return (ObjectNode) YAML.readTree(in);
        } catch (IOException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }

    /** A path goes down by field, and by number in a list: source.spectrumDb.7 is its 8 kHz. */
    private static void set(ObjectNode fact, String path, JsonNode value) {
        JsonNode at = fact;
        String[] names = path.split("\\.");
        for (int i = 0; i < names.length - 1; i++) {
            JsonNode inner = at.get(names[i]);
            if (inner == null) {
                throw new IllegalArgumentException("No such field: " + path);
            }
            at = inner.isNull() ? ((ObjectNode) at).putObject(names[i]) : inner;
        }
        String last = names[names.length - 1];
        if (at instanceof ArrayNode list) {
            list.set(Integer.parseInt(last), value);
        } else {
            ((ObjectNode) at).set(last, value);
        }
    }

    private static <T> T as(JsonNode node, Class<T> type) {
        try {
            return YAML.treeToValue(node, type);
        } catch (IOException wrong) {
            throw new IllegalArgumentException(type.getSimpleName() + ": " + wrong.getMessage(), wrong);
        }
    }

    private static final class Curves extends StdDeserializer<OctaveCurve> {
        private Curves() {
            super(OctaveCurve.class);
        }

        @Override
        public OctaveCurve deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            return OctaveCurve.of(parser.readValueAs(double[].class));
        }
    }

    /** Enums go by their words. */
    private static final class Words extends Deserializers.Base {
        @Override
        public com.fasterxml.jackson.databind.JsonDeserializer<?> findEnumDeserializer(Class<?> type,
                com.fasterxml.jackson.databind.DeserializationConfig config, com.fasterxml.jackson.databind.BeanDescription description) {
            return !Word.class.isAssignableFrom(type) ? null : new StdDeserializer<Object>(type) {
                @Override
                public Object deserialize(JsonParser parser, DeserializationContext context) throws IOException {
                    String word = parser.getText();
                    for (Object one : type.getEnumConstants()) {
                        if (((Word) one).id().equals(word)) {
                            return one;
                        }
                    }
                    throw new IllegalArgumentException("\"" + word + "\" is no " + type.getSimpleName());
                }
            };
        }
    }
}
