package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The fields the description of the interface promises, and which of them are really seen. */
final class DescribedFields {
    private DescribedFields() {
    }

    /** Every field of a schema and of those it leads to, as in {@code Answer.options}. */
    static Set<String> of(String schema) {
        Set<String> fields = new TreeSet<>();
        reach(schema, fields, new TreeSet<>());
        return fields;
    }

    /** Adds the fields a value has of the schemas it follows. */
    static void see(String schema, JsonNode value, Set<String> seen) {
        value.properties().forEach(field -> {
            seen.add(schema + "." + field.getKey());
            String inner = holds(schema(schema).path("properties").path(field.getKey()));
            if (inner != null) {
                (field.getValue().isArray() ? field.getValue() : List.of(field.getValue())).forEach(one -> see(inner, one, seen));
            }
        });
    }

    private static void reach(String name, Set<String> fields, Set<String> done) {
        if (done.add(name)) {
            schema(name).path("properties").properties().forEach(field -> {
                fields.add(name + "." + field.getKey());
                String inner = holds(field.getValue());
                if (inner != null) {
                    reach(inner, fields, done);
                }
            });
        }
    }

    /** The schema of an object a field holds one or many of; null for others. */
    private static String holds(JsonNode field) {
        String reference = (field.path("type").asText().equals("array") ? field.path("items") : field).path("$ref").asText();
        String name = reference.substring(reference.lastIndexOf('/') + 1);
        return schema(name).has("properties") ? name : null;
    }

    private static JsonNode schema(String name) {
        return Serving.OPEN_API.tree().path("components").path("schemas").path(name);
    }
}
