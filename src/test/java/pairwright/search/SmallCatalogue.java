package pairwright.search;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pairwright.model.Catalogue;
import pairwright.model.Character;
import pairwright.model.MicFamily;
import pairwright.model.Room;
import pairwright.model.Source;
import pairwright.model.Vocabulary;
import pairwright.model.Way;

/** The real words of catalogue/words, and entries that have no more than their names. */
final class SmallCatalogue {

    private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory()).registerModule(new SimpleModule()
            .addDeserializer(MicFamily.class, new FamilyById()));

    private SmallCatalogue() {
    }

    static Catalogue read() {
        Map<String, Source> sources = new LinkedHashMap<>();
        for (var row : rows("sources.csv")) {
            var ways = list(row.get(3)).stream().map(id -> new Way(id, "", 0, 0, null, null)).toList();
            sources.put(row.get(0), new Source(row.get(0), row.get(1), null, "", list(row.get(2)), null, null, null, null, null, null, null, 0,
                    null, false, List.of(), ways, List.of(), List.of(), List.of(), null, List.of()));
        }
        Map<String, Room> rooms = new LinkedHashMap<>();
        for (var row : rows("rooms.csv")) {
            rooms.put(row.get(0), new Room(row.get(0), row.get(1), "", list(row.get(2)), 0, 0, 0, 0, 0, null, false, null, List.of()));
        }
        Map<String, Character> characters = new LinkedHashMap<>();
        for (var row : rows("characters.csv")) {
            characters.put(row.get(0), new Character(row.get(0), row.get(1), "", list(row.get(2)), null, null, List.of(), list(row.get(3)),
                    null, List.of()));
        }
        return new Catalogue(Map.of(), sources, rooms, characters, Map.of(), vocabulary(), "test");
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
