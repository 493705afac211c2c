package pairwright.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import pairwright.model.Nearest;
import pairwright.model.Source;

/** What holds for the file of any entry: its name, its ranges, its words, and what its figures rest on. */
final class FileChecks {
    /** Counts and classes, not figures somebody measured: they need no basis. */
    private static final Set<String> NEED_NO_BASIS = Set.of("channels");
    private static final Set<String> OF_A_RANGE = Set.of("low", "typical", "high");

    private final Around around;

    FileChecks(Around around) {
        this.around = around;
    }

    void check(Entry<?> entry) {
        fileName(entry);
        ranges(entry.yaml(), entry.yaml().root(), "");
        wordsTwice(entry);
        basis(entry);
    }

    /** No two files hold the same entry. */
    void twice() {
        Map<String, Entry<?>> seen = new HashMap<>();
        for (Entry<?> entry : around.entries()) {
            Entry<?> before = seen.putIfAbsent(entry.kind().folder() + "/" + entry.id(), entry);
            if (before != null && entry.yaml() != null && before.yaml() != null) {
                around.fault(entry.yaml().fault("/id", "the " + entry.kind().says() + " " + entry.id() + " stands in "
                        + before.yaml().file() + " too. Keep one of the two files"));
            }
        }
    }

    private void fileName(Entry<?> entry) {
        String written = entry.yaml().root().path("id").asText();
        if (!written.equals(entry.id())) {
            around.fault(entry.yaml().fault("/id", "id is \"" + written + "\", but the file is " + entry.id()
                    + ".yaml. Give both the same name"));
        }
        if (entry.value() instanceof Source source) {
            String folder = entry.yaml().file().toAbsolutePath().getParent().getFileName().toString();
            if (!folder.equals(source.family().id())) {
                around.fault(entry.yaml().fault("/family", "family is " + source.family().id() + ", but the file lies in " + folder
                        + "/. Move the file to " + source.family().id() + "/ or correct the family"));
            }
        }
    }

    private void ranges(YamlFile yaml, JsonNode node, String at) {
        if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                ranges(yaml, node.get(i), at + "/" + i);
            }
        } else if (node.isObject()) {
            Set<String> names = new HashSet<>();
            node.fieldNames().forEachRemaining(names::add);
            if (names.equals(OF_A_RANGE)) {
                double low = node.get("low").doubleValue();
                double typical = node.get("typical").doubleValue();
                double high = node.get("high").doubleValue();
                if (low > typical || typical > high) {
                    around.fault(yaml.fault(at, at.substring(at.lastIndexOf('/') + 1) + " runs from "
                            + EntrySchema.shown(node.get("low"))
                            + " over " + EntrySchema.shown(node.get("typical")) + " to " + EntrySchema.shown(node.get("high"))
                            + ". Put low, typical and high in rising order"));
                }
            }
            for (String name : names) {
                ranges(yaml, node.get(name), at + "/" + YamlFile.escaped(name));
            }
        }
    }

    private void wordsTwice(Entry<?> entry) {
        Set<String> seen = new HashSet<>();
        JsonNode list = entry.yaml().root().path("words");
        for (int i = 0; i < list.size(); i++) {
            if (!seen.add(Around.plain(list.get(i).asText()))) {
                around.fault(entry.yaml().fault("/words/" + i, "\"" + list.get(i).asText()
                        + "\" stands in words twice. Take one out"));
            }
        }
    }

    /** Every figure rests on one thing; nothing else is said to rest on anything. */
    private void basis(Entry<?> entry) {
        YamlFile yaml = entry.yaml();
        EntrySchema schema = EntrySchema.named(entry.kind().schema());
        Map<String, String> named = new HashMap<>();
        JsonNode list = yaml.root().path("basis");
        for (int i = 0; i < list.size(); i++) {
            JsonNode of = list.get(i).path("of");
            for (int j = 0; j < of.size(); j++) {
                String field = of.get(j).asText();
                String at = "/basis/" + i + "/of/" + j;
                if (!schema.knows(field)) {
                    around.fault(yaml.fault(at, "basis names \"" + field + "\", which is no field. "
                            + Nearest.to(field, schema.fields()).map(near -> "Did you mean " + near
                                    + "?").orElse("Take it out")));
                } else if (!yaml.root().has(field)) {
                    around.fault(yaml.fault(at, "basis names " + field + ", which this entry does not have. Take it out"));
                } else if (named.putIfAbsent(field, at) != null) {
                    around.fault(yaml.fault(at, "basis names " + field + " twice, first in line " + yaml.at(named.get(field)).line()
                            + ". Keep the one it rests on"));
                }
            }
        }
        yaml.root().fields().forEachRemaining(field -> {
            if (holdsNumber(field.getValue()) && !named.containsKey(field.getKey()) && !NEED_NO_BASIS.contains(field.getKey())) {
                around.fault(yaml.faultAtName("/" + field.getKey(), field.getKey()
                        + " is not named in basis. Say what its figures rest on"));
            }
        });
    }

    private static boolean holdsNumber(JsonNode node) {
        if (node.isContainerNode()) {
            for (JsonNode inside : node) {
                if (holdsNumber(inside)) {
                    return true;
                }
            }
            return false;
        }
        return node.isNumber();
    }
}
