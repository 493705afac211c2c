package pairwright.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.model.Nearest;

/** The schema of one kind of entry, and its findings in plain words. */
final class EntrySchema {
    private static final String FOLDER = "/pairwright/schema/";
    private static final String BASE = "https://pairwright.invalid/schema/";
    private static final int OCTAVES = 9;

    private final JsonNode tree;
    private final JsonNode common;
    private final Schema schema;

    private EntrySchema(JsonNode tree, JsonNode common, Schema schema) {
        this.tree = tree;
        this.common = common;
        this.schema = schema;
    }

    /** The schema of that name. */
    static EntrySchema named(String name) {
        return All.BY_NAME.get(name);
    }

    /** All schemas, made ready once and never changed: that takes longer than checking a file. */
    private static final class All {
        static final Map<String, EntrySchema> BY_NAME = Stream
                .concat(Kind.ENTRIES.stream().map(Kind.Entries::schema), Kind.WORDS.stream().map(Kind.Words::schema))
                .collect(Collectors.toUnmodifiableMap(name -> name, All::read));

        private static EntrySchema read(String name) {
            SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12,
                    builder -> builder.schemas(Texts::atIri));
            return new EntrySchema(Texts.tree(name), Texts.tree("common"),
                    registry.getSchema(SchemaLocation.of(BASE + name + ".schema.json")));
        }
    }

    /** Whether a top-level field is known. */
    boolean knows(String field) {
        return tree.path("properties").has(field);
    }

    /** Names of the top-level fields. */
    List<String> fields() {
        return names(tree);
    }

    /** Everything in a file that the schema does not allow, in the order of the file. */
    List<FileFault> faults(YamlFile yaml) {
        List<Error> errors = schema.validate(yaml.root());
        Set<String> ofWrongType = new HashSet<>();
        Set<String> meant = new HashSet<>();
        for (Error error : errors) {
            String at = error.getInstanceLocation().toString();
            if (error.getKeyword().equals("type")) {
                ofWrongType.add(at);
            } else if (error.getKeyword().equals("additionalProperties")) {
                Nearest.to(error.getProperty(), missing(yaml, at)).ifPresent(field -> meant.add(at + "/" + field));
            }
        }
        List<FileFault> faults = new ArrayList<>();
        for (Error error : errors) {
            String at = error.getInstanceLocation().toString();
            boolean follows = error.getKeyword().equals("type")
                    ? false
                    : ofWrongType.contains(at) || error.getKeyword().equals("required") && meant.contains(at + "/"
                            + error.getProperty());
            if (!follows) {
                faults.add(inPlainWords(error, at, yaml));
            }
        }
        return faults;
    }

    private List<String> missing(YamlFile yaml, String at) {
        List<String> absent = new ArrayList<>(names(schemaAt(at)));
        absent.removeIf(yaml.root().at(at)::has);
        return absent;
    }

    private FileFault inPlainWords(Error error, String at, YamlFile yaml) {
        JsonNode wanted = schemaAt(at);
        JsonNode value = yaml.root().at(at);
        String what = what(at);
        return switch (error.getKeyword()) {
            case "additionalProperties" -> {
                List<String> absent = missing(yaml, at);
                String name = error.getProperty();
                yield yaml.faultAtName(at + "/" + YamlFile.escaped(name), "there is no field \"" + Shown.of(name) + "\" here. "
                        + Nearest.to(name, absent).map(field -> "Did you mean " + field + "?")
                                .orElseGet(() -> "Take it out; the fields here are " + String.join(", ", names(wanted))));
            }
            case "required" -> yaml.fault(at, error.getProperty() + " is missing" + within(at) + ". Add it: "
                    + described(schemaAt(at + "/" + error.getProperty())));
            case "type" -> yaml.fault(at, what + " is " + shown(value) + ", not " + typed(wanted) + ". Give " + typed(wanted)
                    + ": " + described(wanted));
            case "enum" -> yaml.fault(at, what + " is " + shown(value) + ", which is not known. "
                    + Nearest.remedy(value.asText(), words(wanted)));
            case "minimum" -> yaml.fault(at, what + " is " + shown(value) + ", below " + bound(wanted, "minimum") + ". Give "
                    + bound(wanted, "minimum") + " or more: " + described(wanted));
            case "maximum" -> yaml.fault(at, what + " is " + shown(value) + ", above " + bound(wanted, "maximum") + ". Give "
                    + bound(wanted, "maximum") + " or less: " + described(wanted));
            case "exclusiveMinimum" -> yaml.fault(at, what + " is " + shown(value) + ". Give more than "
                    + bound(wanted, "exclusiveMinimum") + ": " + described(wanted));
            case "minItems", "maxItems" -> yaml.fault(at, count(wanted, what, value.size()));
            case "minProperties" -> yaml.fault(at, what + " is empty. Give at least one of " + String.join(", ", names(wanted)));
            case "minLength" -> yaml.fault(at, what + " is empty. Write it: " + described(wanted));
            case "maxLength" -> yaml.fault(at, what + " has " + value.asText().length() + " characters. Keep it to "
                    + bound(wanted, "maxLength"));
            case "pattern" -> yaml.fault(at, value.asText().isBlank()
                    ? what + " is blank. Write it: " + described(wanted)
                    : what + " is " + shown(value) + ". Use small letters, digits and hyphens, such as snare-drum");
            default -> yaml.fault(at, what + " is " + shown(value) + ", which does not fit. Compare with the schema: "
                    + described(wanted));
        };
    }

    private static String count(JsonNode wanted, String what, int size) {
        if (wanted.path("maxItems").asInt() == OCTAVES) {
            return what + " has " + size + (size == 1 ? " value" : " values") + ", but needs " + OCTAVES
                    + ". Give one an octave from 63 Hz to 16 kHz";
        }
        return size < wanted.path("minItems").asInt()
                ? what + " has " + (size == 0 ? "no entry" : size + (size == 1 ? " entry" : " entries")) + ". Give at least "
                        + bound(wanted, "minItems") + ": " + described(wanted)
                : what + " has " + size + " entries. Give at most " + bound(wanted, "maxItems");
    }

    private static String bound(JsonNode wanted, String keyword) {
        return wanted.path(keyword).asText();
    }

    private static String typed(JsonNode wanted) {
        return switch (wanted.path("type").asText()) {
            case "integer" -> "a whole number";
            case "number" -> "a number";
            case "boolean" -> "true or false";
            case "array" -> "a list";
            case "object" -> "a group of fields";
            default -> "text";
        };
    }

    static String shown(JsonNode value) {
        if (value.isTextual()) {
            return "\"" + Shown.of(value.textValue()) + "\"";
        }
        if (value.isObject()) {
            return "a group of fields";
        }
        if (value.isArray()) {
            return "a list";
        }
        return value.isNull() ? "empty" : value.isBigDecimal() ? value.decimalValue().toPlainString() : value.asText();
    }

    private static String described(JsonNode wanted) {
        String description = wanted.path("description").asText("see the schema");
        String start = description.length() > 1 && Character.isUpperCase(description.charAt(1))
                ? description.substring(0, 1) : description.substring(0, 1).toLowerCase(Locale.ROOT);
        List<String> words = words(wanted);
        return start + description.substring(1) + (words.isEmpty() ? "" : "; one of " + String.join(", ", words));
    }

    private static String what(String pointer) {
        if (pointer.isEmpty()) {
            return "the file";
        }
        int slash = pointer.lastIndexOf('/');
        String last = pointer.substring(slash + 1);
        if (!last.matches("[0-9]+")) {
            return last;
        }
        String list = what(pointer.substring(0, slash));
        return "entry " + (Integer.parseInt(last) + 1) + " of " + list;
    }

    private static String within(String pointer) {
        return pointer.isEmpty() ? "" : " in " + what(pointer);
    }

    private static List<String> words(JsonNode wanted) {
        List<String> words = new ArrayList<>();
        wanted.path("enum").forEach(word -> words.add(word.asText()));
        return words;
    }

    private static List<String> names(JsonNode wanted) {
        List<String> names = new ArrayList<>();
        wanted.path("properties").fieldNames().forEachRemaining(names::add);
        return names;
    }

    /** The part of the schema that speaks of a value, with what it refers to filled in. */
    JsonNode schemaAt(String pointer) {
        JsonNode part = filled(tree);
        for (String step : pointer.isEmpty() ? new String[0] : pointer.substring(1).split("/", -1)) {
            part = filled(part.path("type").asText().equals("array") ? part.path("items") : part.path("properties").path(step));
        }
        return part;
    }

    private JsonNode filled(JsonNode part) {
        String refersTo = part.path("$ref").asText();
        if (refersTo.isEmpty()) {
            return part;
        }
        ObjectNode whole = common.at(refersTo.substring(refersTo.indexOf('#') + 1)).deepCopy();
        part.fields().forEachRemaining(own -> whole.set(own.getKey(), own.getValue()));
        return whole;
    }

    /** The schema files on the class path. */
    private static final class Texts {
        static String text(String name) {
            try (InputStream in = EntrySchema.class.getResourceAsStream(FOLDER + name + ".schema.json")) {
                if (in == null) {
                    throw new IllegalStateException("the schema " + name + " is not on the class path. Build the program again");
                }
                return new String(in.readAllBytes(), StandardCharsets.UTF_8);
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }

        static JsonNode tree(String name) {
            try {
                return Json.mapper().readTree(text(name));
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }

        static String atIri(String iri) {
            return iri.startsWith(BASE) ? text(iri.substring(BASE.length()).replace(".schema.json", "")) : null;
        }
    }
}
