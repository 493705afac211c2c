package pairwright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Word;

/** A field in a record and not in its schema, or the other way round, fails here. */
class SchemasAgreeWithRecordsTest {
    @Test
    void everySchemaHasTheFieldsTypesAndWordsOfItsRecord() {
        List<String> differences = new ArrayList<>();
        for (Kind.Entries<?> kind : Kind.ENTRIES) {
            compare(kind.schema(), EntrySchema.named(kind.schema()), "", kind.record(), differences);
        }
        for (Kind.Words<?> kind : Kind.WORDS) {
            compare(kind.schema(), EntrySchema.named(kind.schema()), "/0", kind.record(), differences);
        }
        assertEquals(List.of(), differences);
    }

    @Test
    void everyFieldIsDescribed() {
        List<String> bare = new ArrayList<>();
        for (Kind.Entries<?> kind : Kind.ENTRIES) {
            EntrySchema schema = EntrySchema.named(kind.schema());
            for (String field : schema.fields()) {
                if (schema.schemaAt("/" + field).path("description").asText().isBlank()) {
                    bare.add(kind.schema() + "/" + field);
                }
            }
        }
        assertEquals(List.of(), bare);
    }

    private static void compare(String name, EntrySchema schema, String at, Type type, List<String> differences) {
        JsonNode part = schema.schemaAt(at);
        String where = name + at;
        if (type instanceof ParameterizedType list) {
            expect(where + " type", "array", part.path("type").asText(), differences);
            compare(name, schema, at + "/0", list.getActualTypeArguments()[0], differences);
        } else if (type == OctaveCurve.class) {
            expect(where + " count", "9", part.path("minItems").asText(), differences);
        } else if (type instanceof Class<?> record && record.isRecord()) {
            Set<String> components = new HashSet<>();
            for (RecordComponent component : record.getRecordComponents()) {
                components.add(component.getName());
                if (part.path("properties").has(component.getName())) {
                    compare(name, schema, at + "/" + component.getName(), component.getGenericType(), differences);
                }
            }
            Set<String> properties = new HashSet<>();
            part.path("properties").fieldNames().forEachRemaining(properties::add);
            expect(where + " fields", components, properties, differences);
            expect(where + " additionalProperties", "false", part.path("additionalProperties").asText(), differences);
        } else if (type instanceof Class<?> constants && Word.class.isAssignableFrom(constants)) {
            List<String> words = new ArrayList<>();
            part.path("enum").forEach(word -> words.add(word.asText()));
            expect(where + " words", Arrays.stream(constants.getEnumConstants()).map(each -> ((Word) each).id()).toList(), words,
                    differences);
        } else {
            String wanted = type == String.class ? "string"
                    : type == double.class || type == Double.class ? "number"
                    : type == int.class || type == Integer.class ? "integer"
                    : "boolean";
            expect(where + " type", wanted, part.path("type").asText(), differences);
        }
    }

    private static void expect(String where, Object wanted, Object found, List<String> differences) {
        if (!wanted.equals(found)) {
            differences.add(where + ": the record has " + wanted + ", the schema " + found);
        }
    }
}
