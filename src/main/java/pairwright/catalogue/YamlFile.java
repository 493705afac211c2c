package pairwright.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingEndEvent;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceEndEvent;

/**
 * A YAML file as a JSON tree that knows where everything stands. Only the plain part of YAML is taken: one document, no anchors,
 * aliases or tags, no field twice; and only true, false and decimal numbers are anything but text, so that "on" and "no" stay
 * words.
 *
 * @param file where it came from
 * @param root the tree
 * @param values places of values, by JSON pointer
 * @param names places of field names, by JSON pointer
 */
public record YamlFile(Path file, JsonNode root, Map<String, Place> values, Map<String, Place> names) {
    private static final long LARGEST_BYTES = 1_000_000;
    private static final int DEEPEST = 20;
    private static final Pattern WHOLE = Pattern.compile("[-+]?[0-9]{1,18}");
    private static final Pattern DECIMAL = Pattern.compile("[-+]?([0-9]+\\.[0-9]*|\\.[0-9]+|[0-9]+)([eE][-+]?[0-9]{1,2})?");

    /** Reads a file; empty, with its faults added, if it cannot be read as a tree. JSON is YAML but for its tabs, which stand in no text of it, so it is read as well. */
    public static Optional<YamlFile> read(Path file, List<FileFault> faults) {
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                faults.add(new FileFault(file, 1, 1, "the file has " + Files.size(file)
                        + " bytes, more than any entry needs. Make it smaller"));
                return Optional.empty();
            }
            return of(file, Files.readString(file), faults);
        } catch (CharacterCodingException notUtf8) {
            faults.add(new FileFault(file, 1, 1, "the file is not UTF-8. Save it as UTF-8"));
        } catch (IOException unreadable) {
            faults.add(new FileFault(file, 1, 1, "the file cannot be read. Check that it is there and may be read"));
        }
        return Optional.empty();
    }

    /** Reads the text of a file that is held elsewhere, likewise. */
    public static Optional<YamlFile> of(Path file, String text, List<FileFault> faults) {
        String bare = text.startsWith("\uFEFF") ? text.substring(1) : text;
        return new Reader(file, faults).read(file.toString().endsWith(".json") ? bare.replace('\t', ' ') : bare);
    }

    /** Where a value stands; for one that is not there, the nearest thing around it. */
    public Place at(String pointer) {
        for (String near = pointer; !near.isEmpty(); near = near.substring(0, near.lastIndexOf('/'))) {
            if (values.containsKey(near)) {
                return values.get(near);
            }
        }
        return values.getOrDefault("", Place.START);
    }

    /** Where the name of a field stands. */
    Place nameAt(String pointer) {
        return names.getOrDefault(pointer, at(pointer));
    }

    /** A fault at a value, or at the nearest thing around one that is not there. */
    public FileFault fault(String pointer, String says) {
        Place place = at(pointer);
        return new FileFault(file, place.line(), place.column(), says);
    }

    /** A fault at the name of a field. */
    public FileFault faultAtName(String pointer, String says) {
        Place place = nameAt(pointer);
        return new FileFault(file, place.line(), place.column(), says);
    }

    /** A field name as it stands in a pointer. */
    static String escaped(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }

    private static final class Reader {
        private final Path file;
        private final List<FileFault> faults;
        private final Map<String, Place> values = new HashMap<>();
        private final Map<String, Place> names = new HashMap<>();
        private Iterator<Event> events;
        private boolean sound = true;

        Reader(Path file, List<FileFault> faults) {
            this.file = file;
            this.faults = faults;
        }

        Optional<YamlFile> read(String text) {
            try {
                events = new Yaml().parse(new StringReader(text)).iterator();
                JsonNode root = documents();
                return sound ? Optional.of(new YamlFile(file, root, Map.copyOf(values), Map.copyOf(names))) : Optional.empty();
            } catch (MarkedYAMLException broken) {
                wrong(Place.of(broken.getProblemMark()), "this is not YAML: " + broken.getProblem()
                        + ". Check the indentation and the brackets, and put quotes around text with a colon or a sign at "
                        + "its start");
            } catch (YAMLException broken) {
                wrong(Place.START, "the file holds a character that YAML does not allow. Write it again as plain text");
            }
            return Optional.empty();
        }

        private JsonNode documents() {
            JsonNode root = null;
            while (events.hasNext()) {
                Event event = events.next();
                if (event instanceof DocumentStartEvent) {
                    Event first = events.next();
                    if (root == null) {
                        root = value(first, "", 0);
                    } else {
                        wrong(Place.of(event.getStartMark()), "a second document starts here. Put one entry in one file");
                        return root;
                    }
                }
            }
            if (root == null || root.isNull()) {
                wrong(Place.START, "the file is empty. Write the entry or remove the file");
            }
            return root;
        }

        private JsonNode value(Event event, String pointer, int depth) {
            Place place = Place.of(event.getStartMark());
            values.put(pointer, place);
            if (depth > DEEPEST) {
                throw new MarkedDepth(event);
            }
            refuseExtras(event, place);
            if (event instanceof MappingStartEvent) {
                return mapping(pointer, depth);
            }
            if (event instanceof CollectionStartEvent) {
                return sequence(pointer, depth);
            }
            return event instanceof ScalarEvent scalar ? scalar(scalar) : JsonNodeFactory.instance.nullNode();
        }

        private void refuseExtras(Event event, Place place) {
            if (event instanceof AliasEvent alias) {
                wrong(place, "an alias, *" + alias.getAnchor() + ". Write the value out");
            } else if (event instanceof NodeEvent node && node.getAnchor() != null) {
                wrong(place, "an anchor, &" + node.getAnchor() + ". Take it out and write values out where they are needed");
            }
            String tag = event instanceof ScalarEvent scalar ? scalar.getTag()
                    : event instanceof CollectionStartEvent collection ? collection.getTag() : null;
            if (tag != null) {
                wrong(place, "a tag, " + tag.replace("tag:yaml.org,2002:", "!!")
                        + ". Take it out; put quotes around a value that is text");
            }
        }

        private ObjectNode mapping(String pointer, int depth) {
            ObjectNode object = JsonNodeFactory.instance.objectNode();
            for (Event event = events.next(); !(event instanceof MappingEndEvent); event = events.next()) {
                Place place = Place.of(event.getStartMark());
                refuseExtras(event, place);
                if (!(event instanceof ScalarEvent name)) {
                    wrong(place, "the name of a field is a list or a group. Give it a plain name");
                    value(event, pointer + "/", depth + 1);
                    value(events.next(), pointer + "/", depth + 1);
                    continue;
                }
                String at = pointer + "/" + escaped(name.getValue());
                boolean again = object.has(name.getValue());
                if (again) {
                    wrong(place, "the field " + name.getValue() + " stands here a second time, first in line "
                            + names.get(at).line()
                            + ". Keep one of the two");
                }
                names.putIfAbsent(at, place);
                JsonNode value = value(events.next(), at, depth + 1);
                if (!again) {
                    object.set(name.getValue(), value);
                }
            }
            return object;
        }

        private ArrayNode sequence(String pointer, int depth) {
            ArrayNode array = JsonNodeFactory.instance.arrayNode();
            for (Event event = events.next(); !(event instanceof SequenceEndEvent); event = events.next()) {
                array.add(value(event, pointer + "/" + array.size(), depth + 1));
            }
            return array;
        }

        private static JsonNode scalar(ScalarEvent scalar) {
            String text = scalar.getValue();
            if (scalar.getScalarStyle() != DumperOptions.ScalarStyle.PLAIN) {
                return JsonNodeFactory.instance.textNode(text);
            }
            if (text.isEmpty() || text.equals("~") || text.equals("null")) {
                return JsonNodeFactory.instance.nullNode();
            }
            if (text.equals("true") || text.equals("false")) {
                return JsonNodeFactory.instance.booleanNode(text.equals("true"));
            }
            if (WHOLE.matcher(text).matches()) {
                return JsonNodeFactory.instance.numberNode(Long.parseLong(text));
            }
            return DECIMAL.matcher(text).matches()
                    ? JsonNodeFactory.instance.numberNode(new BigDecimal(text))
                    : JsonNodeFactory.instance.textNode(text);
        }

        private void wrong(Place place, String says) {
            sound = false;
            faults.add(new FileFault(file, place.line(), place.column(), says));
        }
    }

    /** Nested deeper than any entry is; ends the reading of the file. */
    private static final class MarkedDepth extends MarkedYAMLException {
        MarkedDepth(Event event) {
            super(null, null, "values are nested more than " + DEEPEST + " deep", event.getStartMark());
        }
    }
}
