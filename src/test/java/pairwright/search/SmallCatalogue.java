package pairwright.search;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pairwright.model.Catalogue;
import pairwright.model.Character;
import pairwright.model.MicFamily;
import pairwright.model.Room;
import pairwright.model.Source;
import pairwright.model.Vocabulary;
import pairwright.model.Way;

/**
 * The words and names of the real catalogue, and of its sources that are still to come those in sources.csv;
 * nothing else of the entries.
 */
final class SmallCatalogue {

    private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory()).registerModule(new SimpleModule()
            .addDeserializer(MicFamily.class, new FamilyById()));

    private SmallCatalogue() {
    }

    static Catalogue read() {
        Map<String, Source> sources = new TreeMap<>();
        for (var row : rows("sources.csv")) {
            sources.put(row.get(0), source(row.get(0), row.get(1), list(row.get(2)), list(row.get(3))));
        }
        entries("sources").forEach(entry -> sources.put(id(entry), source(id(entry), name(entry), strings(entry.path("words")),
                entry.path("ways").findValuesAsText("id"))));
        Map<String, Room> rooms = new TreeMap<>();
        entries("rooms").forEach(entry -> rooms.put(id(entry), new Room(id(entry), name(entry), "",
                strings(entry.path("words")), 0, 0, 0, 0, 0,
                null, false, null, List.of())));
        Map<String, Character> characters = new TreeMap<>();
        entries("characters")
                .forEach(entry -> characters.put(id(entry), new Character(id(entry), name(entry), "",
                        strings(entry.path("words")),
                null, null, List.of(), strings(entry.path("against")), null, List.of())));
        return new Catalogue(Map.of(), sources, rooms, characters, Map.of(), vocabulary(), "test");
    }

    private static Source source(String id, String name, List<String> words, List<String> ways) {
        return new Source(id, name, null, "", words, null, null, null, null, null, null, null, 0, null, false, List.of(),
                ways.stream().map(way -> new Way(way, "", 0, 0, null, null))
                        .toList(), List.of(), List.of(), List.of(), null, List.of());
    }

    private static List<JsonNode> entries(String folder) {
        try (var files = Files.walk(Path.of("catalogue", folder))) {
            var entries = new ArrayList<JsonNode>();
            for (var file : files.filter(path -> path.toString().endsWith(".yaml")).sorted().toList()) {
                entries.add(YAML.readTree(file.toFile()));
            }
            return entries;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String id(JsonNode entry) {
        return entry.path("id").asText();
    }

    private static String name(JsonNode entry) {
        return entry.path("name").asText();
    }

    private static List<String> strings(JsonNode list) {
        var strings = new ArrayList<String>();
        list.forEach(each -> strings.add(each.asText()));
        return strings;
    }

    static Vocabulary vocabulary() {
        return new Vocabulary(
                words("ways", new TypeReference<>() { }), words("dynamics", new TypeReference<>() { }),
                words("limits", new TypeReference<>() { }), words("neighbours", new TypeReference<>() { }),
                words("ambiguities", new TypeReference<>() { }), words("circumstances", new TypeReference<>() { }),
                words("families", new TypeReference<>() { }), words("ignored", new TypeReference<>() { }),
                words("names", new TypeReference<>() { }), words("opposites", new TypeReference<>() { }),
                words("combinations", new TypeReference<>() { }), words("modifiers", new TypeReference<>() { }),
                words("numbers", new TypeReference<>() { }), words("quantities", new TypeReference<>() { }));
    }

    private static <T> List<T> words(String file, TypeReference<List<T>> type) {
        try {
            return YAML.readValue(Path.of("catalogue/words", file + ".yaml").toFile(), type);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The rows of a table under src/test/resources/search, without its heading. */
    static List<List<String>> rows(String file) {
        try {
            return Files.readAllLines(Path.of("src/test/resources/search", file)).stream().skip(1)
                    .map(line -> Arrays.asList(line.split(";", -1))).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<String> list(String cell) {
        return cell.isEmpty() ? List.of() : List.of(cell.split("\\|"));
    }

    private static final class FamilyById extends StdDeserializer<MicFamily> {

        private static final long serialVersionUID = 1;

        FamilyById() {
            super(MicFamily.class);
        }

        @Override
        public MicFamily deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            var id = parser.getText();
            return Arrays.stream(MicFamily.values()).filter(family -> family.id().equals(id)).findFirst().orElseThrow();
        }
    }
}
