package pairwright.catalogue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Catalogue;
import pairwright.model.MicType;
import pairwright.model.Nearest;
import pairwright.model.Vocabulary;

/** Reads a catalogue folder, or a house folder laid over a catalogue. */
public final class CatalogueReader {
    /** A catalogue with nothing in it. */
    public static final Catalogue NOTHING = new Catalogue(Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(),
            new Vocabulary(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of()), "");

    private static final String ENDING = ".yaml";
    private static final String RESPONSE = "responseDb";
    /** What editors leave beside a file while it is written. */
    private static final List<String> PASSED_OVER = List.of(".md", "~", ".bak", ".tmp", ".swp");

    private final Path folder;
    private final Catalogue under;
    private final JsonMapper json = Json.mapper();
    private final List<FileFault> faults = new ArrayList<>();
    private final List<Entry<?>> entries = new ArrayList<>();
    private final Map<String, WordFile<?>> words = new LinkedHashMap<>();
    /** Measured responses by mic type; empty where the file has faults. */
    private final Map<String, Optional<ResponseFile>> responses = new TreeMap<>();

    private CatalogueReader(Path folder, Catalogue under) {
        this.folder = folder;
        this.under = under;
    }

    /**
     * What was read.
     *
     * @param catalogue the whole; null where there is a fault
     * @param faults everything that is wrong, file by file
     * @param files how many files it was read from, not counting what it was laid over
     */
    public record Result(Catalogue catalogue, List<FileFault> faults, int files) {
    }

    /**
     * A file of words.
     *
     * @param items what it lists; null if it has faults
     */
    record WordFile<T>(Kind.Words<T> kind, YamlFile yaml, List<T> items) {
    }

    /** A folder that stands alone. */
    public static Result read(Path folder) {
        return new CatalogueReader(folder, NOTHING).read();
    }

    /** A house folder: its entries replace those of the same id, add to the rest, and may refer to them. */
    public static Result readOver(Catalogue under, Path houseFolder) {
        return new CatalogueReader(houseFolder, under).read();
    }

    private Result read() {
        if (!Files.isDirectory(folder)) {
            return new Result(null, List.of(new FileFault(folder, 1, 1,
                    "there is no such folder. Name a folder that holds mics/, sources/ ...")), 0);
        }
        strangers();
        responses();
        Kind.ENTRIES.forEach(this::entries);
        Kind.WORDS.forEach(this::words);
        new CrossChecks(under, entries, words, faults).run();
        faults.sort(Comparator.comparing(FileFault::file).thenComparingInt(FileFault::line).thenComparingInt(FileFault::column)
                .thenComparing(FileFault::says));
        List<FileFault> found = faults.stream().distinct().toList();
        return new Result(found.isEmpty() ? whole() : null, found, entries.size() + words.size() + responses.size());
    }

    /** Folders and files that would silently be left unread. */
    private void strangers() {
        Set<String> known = Stream.concat(Kind.ENTRIES.stream().map(Kind.Entries::folder), Stream.of(Kind.WORDS_FOLDER, "schema"))
                .collect(Collectors.toCollection(TreeSet::new));
        for (Path each : list(folder)) {
            String name = each.getFileName().toString();
            if (Files.isDirectory(each) && !known.contains(name)) {
                faults.add(new FileFault(each, 1, 1, "no kind of entry has a folder named " + name + ". " + Nearest.remedy(name,
                        known)));
            }
        }
    }

    /** A file of a measured response has the name of the mic type it belongs to, one of this folder or a built-in one. */
    private void responses() {
        for (Path file : list(folder.resolve(Kind.MICS.folder()))) {
            String name = file.getFileName().toString();
            if (name.endsWith(ResponseFile.ENDING) && Files.isRegularFile(file)) {
                String id = name.substring(0, name.length() - ResponseFile.ENDING.length());
                Path entry = file.resolveSibling(id + ENDING);
                if (!Files.exists(entry) && !under.mics().containsKey(id)) {
                    faults.add(new FileFault(file, 1, 1, "there is no mic type \"" + Shown.of(id) + "\". "
                            + Nearest.to(id, under.mics().keySet()).map(near -> "Did you mean " + near + ResponseFile.ENDING + "?")
                                    .orElse("Give the file the name of the type it was measured of, or add " + id + ENDING)));
                }
                responses.put(id, ResponseFile.read(file, faults));
            }
        }
    }

    private <T> void entries(Kind.Entries<T> kind) {
        for (Path file : yamlFiles(folder.resolve(kind.folder()), kind == Kind.SOURCES ? 2 : 1)) {
            String name = file.getFileName().toString();
            String id = name.substring(0, name.length() - ENDING.length());
            YamlFile yaml = YamlFile.read(file, faults).orElse(null);
            if (yaml != null && kind == Kind.MICS && responses.containsKey(id)) {
                fillIn(yaml, responses.get(id));
            }
            T value = yaml == null ? null : value(yaml, kind);
            entries.add(new Entry<>(kind, id, yaml, value));
        }
    }

    /** The measured response where the entry leaves it out; nine zeros in place of a faulty one, whose faults are told already. */
    private void fillIn(YamlFile yaml, Optional<ResponseFile> measured) {
        if (!(yaml.root() instanceof ObjectNode entry)) {
            return;
        }
        if (entry.has(RESPONSE)) {
            faults.add(yaml.faultAtName("/" + RESPONSE, RESPONSE + " is given here, and measured in the " + ResponseFile.ENDING
                    + " file of the same name. Keep one of the two"));
            return;
        }
        ArrayNode nine = entry.putArray(RESPONSE);
        for (double band : measured.map(ResponseFile::responseDb).orElse(OctaveCurve.ZERO).toArray()) {
            nine.add(BigDecimal.valueOf(band));
        }
    }

    private <T> T value(YamlFile yaml, Kind.Entries<T> kind) {
        List<FileFault> wrong = EntrySchema.named(kind.schema()).faults(yaml);
        faults.addAll(wrong);
        return wrong.isEmpty() ? bound(yaml, yaml.root(), "", kind.record()) : null;
    }

    private <T> void words(Kind.Words<T> kind) {
        Path file = folder.resolve(Kind.WORDS_FOLDER).resolve(kind.file());
        if (!Files.exists(file)) {
            return;
        }
        YamlFile yaml = YamlFile.read(file, faults).orElse(null);
        List<T> items = null;
        if (yaml != null) {
            List<FileFault> wrong = EntrySchema.named(kind.schema()).faults(yaml);
            faults.addAll(wrong);
            if (wrong.isEmpty()) {
                items = new ArrayList<>();
                for (int i = 0; i < yaml.root().size(); i++) {
                    items.add(bound(yaml, yaml.root().get(i), "/" + i, kind.record()));
                }
            }
        }
        words.put(kind.name(), new WordFile<>(kind, yaml, items == null || items.contains(null) ? null : items));
    }

    /** The record; the schema was kept, so a fault here is one the schema has not got. */
    private <T> T bound(YamlFile yaml, JsonNode node, String at, Class<T> record) {
        try {
            return json.treeToValue(node, record);
        } catch (JsonMappingException wrong) {
            String pointer = at + wrong.getPath().stream()
                    .map(step -> "/" + (step.getFieldName() == null ? step.getIndex() : YamlFile.escaped(step.getFieldName())))
                    .collect(Collectors.joining());
            faults.add(yaml.fault(pointer, "this cannot be used: " + wrong.getOriginalMessage() + ". Compare with the schema"));
        } catch (JsonProcessingException wrong) {
            faults.add(yaml.fault(at, "this cannot be used: " + wrong.getOriginalMessage() + ". Compare with the schema"));
        }
        return null;
    }

    private List<Path> yamlFiles(Path root, int depth) {
        List<Path> files = new ArrayList<>();
        for (Path each : list(root)) {
            String name = each.getFileName().toString();
            if (Files.isDirectory(each)) {
                if (depth > 1) {
                    files.addAll(yamlFiles(each, depth - 1));
                } else {
                    faults.add(new FileFault(each, 1, 1,
                            "a folder where files are expected is not read. Move its files up or away"));
                }
            } else if (root.equals(folder.resolve(Kind.MICS.folder())) && name.endsWith(ResponseFile.ENDING)) {
                continue; // read already
            } else if (!name.endsWith(ENDING)) {
                faults.add(new FileFault(each, 1, 1, "a file that does not end in " + ENDING
                        + " is not read. Rename it or move it away"));
            } else {
                files.add(each);
            }
        }
        return files;
    }

    /** What is in a folder, by name; nothing if it is not there. Hidden files, pages to read and what editors leave are passed over. */
    private List<Path> list(Path root) {
        if (!Files.isDirectory(root)) {
            return List.of();
        }
        try (Stream<Path> inside = Files.list(root)) {
            return inside.filter(path -> !isPassedOver(path.getFileName().toString())).sorted().toList();
        } catch (IOException unreadable) {
            faults.add(new FileFault(root, 1, 1, "the folder cannot be read. Check that it is there and may be read"));
            return List.of();
        }
    }

    private static boolean isPassedOver(String name) {
        return name.startsWith(".") || name.startsWith("#") || PASSED_OVER.stream().anyMatch(name::endsWith);
    }

    private Catalogue whole() {
        Catalogue unversioned = new Catalogue(measured(whole(Kind.MICS)), whole(Kind.SOURCES), whole(Kind.ROOMS), whole(Kind.CHARACTERS),
                whole(Kind.TECHNIQUES), whole(Kind.COMPLAINTS), whole(Kind.GRADES), whole(Kind.TASKS), whole(Kind.CUSTOMS), whole(Kind.LEADS), whole(Kind.LESSONS), new Vocabulary(whole(Kind.WAYS), whole(Kind.DYNAMICS), whole(Kind.LIMITS),
                        whole(Kind.NEIGHBOURS),
                        whole(Kind.AMBIGUITIES), whole(Kind.CIRCUMSTANCES), whole(Kind.FAMILIES), whole(Kind.IGNORED),
                        whole(Kind.NAMES), whole(Kind.OPPOSITES), whole(Kind.COMBINATIONS), whole(Kind.MODIFIERS),
                                whole(Kind.NUMBERS),
                        whole(Kind.QUANTITIES), whole(Kind.PLAYERS)), "");
        return CatalogueVersion.stamped(unversioned);
    }

    private <T> Map<String, T> whole(Kind.Entries<T> kind) {
        Map<String, T> all = new TreeMap<>(kind.in().apply(under));
        for (Entry<?> entry : entries) {
            if (entry.is(kind)) {
                all.put(entry.id(), kind.record().cast(entry.value()));
            }
        }
        return Collections.unmodifiableMap(new LinkedHashMap<>(all));
    }

    private Map<String, MicType> measured(Map<String, MicType> mics) {
        if (responses.isEmpty()) {
            return mics;
        }
        Map<String, MicType> all = new LinkedHashMap<>(mics);
        Set<String> own = entries.stream().filter(entry -> entry.is(Kind.MICS)).map(Entry::id).collect(Collectors.toSet());
        responses.forEach((id, response) -> all.computeIfPresent(id, (any, mic) -> Measured.of(mic, response.orElseThrow(), own.contains(id))));
        return Collections.unmodifiableMap(all);
    }

    private <T> List<T> whole(Kind.Words<T> kind) {
        Map<Object, T> all = new LinkedHashMap<>();
        kind.in().apply(under.words()).forEach(item -> all.put(kind.key().apply(item), item));
        WordFile<?> file = words.get(kind.name());
        if (file != null) {
            for (Object each : file.items()) {
                T item = kind.record().cast(each);
                all.merge(kind.key().apply(item), item, (before, now) -> withWordsOf(kind, before, now));
            }
        }
        return List.copyOf(all.values());
    }

    /** A house says an item anew but adds to its words: what people have always said is still understood. */
    private <T> T withWordsOf(Kind.Words<T> kind, T before, T now) {
        JsonNode old = json.<JsonNode>valueToTree(before).path("words");
        if (!(json.<JsonNode>valueToTree(now) instanceof ObjectNode both) || !(both.get("words") instanceof ArrayNode words)) {
            return now;
        }
        Set<String> said = new LinkedHashSet<>();
        old.forEach(word -> said.add(word.textValue()));
        words.forEach(word -> said.add(word.textValue()));
        words.removeAll();
        said.forEach(words::add);
        try {
            return json.treeToValue(both, kind.record());
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("an item of words/" + kind.file() + " cannot be read again: " + impossible.getOriginalMessage(), impossible);
        }
    }
}
