package pairwright.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import pairwright.model.Source;
import pairwright.model.Vocabulary;
import pairwright.model.Way;

/** Whether a word means one thing, and what it means is there. */
final class WordChecks {
    private final Around around;
    private final Set<String> sources;
    private final Set<String> characters;
    private final Set<String> micTypes;

    WordChecks(Around around) {
        this.around = around;
        this.sources = around.ids(Kind.SOURCES);
        this.characters = around.ids(Kind.CHARACTERS);
        this.micTypes = around.ids(Kind.MICS);
    }

    /** No word may mean two sources unless words/ambiguities.yaml says that it does. */
    void sharedWords() {
        Set<String> ambiguous = new HashSet<>();
        around.under().words().ambiguities().forEach(each -> each.words().forEach(word -> ambiguous.add(Around.plain(word))));
        around.items(Kind.AMBIGUITIES).forEach(each -> each.words().forEach(word -> ambiguous.add(Around.plain(word))));
        Map<String, String> taken = new HashMap<>();
        Set<String> replaced = new HashSet<>();
        around.entries().stream().filter(entry -> entry.is(Kind.SOURCES)).forEach(entry -> replaced.add(entry.id()));
        around.under().sources().forEach((id, source) -> {
            if (!replaced.contains(id)) {
                names(source).forEach(word -> taken.putIfAbsent(word, id));
            }
        });
        around.under().words().names().forEach(more -> more.words().forEach(word -> taken.putIfAbsent(Around.plain(word), more.source())));
        for (Entry<?> entry : around.entries()) {
            if (!entry.is(Kind.SOURCES) || entry.value() == null) {
                continue;
            }
            Source source = entry.source();
            for (int i = -1; i < source.words().size(); i++) {
                String word = i < 0 ? source.name() : source.words().get(i);
                String before = taken.putIfAbsent(Around.plain(word), entry.id());
                if (before != null && !before.equals(entry.id()) && !ambiguous.contains(Around.plain(word))) {
                    around.fault(entry.yaml().fault(i < 0 ? "/name" : "/words/" + i, "\"" + word + "\" already means " + before
                            + ". Take it out of one of the two, or list it in words/ambiguities.yaml with both"));
                }
            }
        }
        CatalogueReader.WordFile<?> file = around.file(Kind.NAMES);
        for (int i = 0; i < around.items(Kind.NAMES).size(); i++) {
            Vocabulary.SourceWords more = around.items(Kind.NAMES).get(i);
            for (int j = 0; j < more.words().size(); j++) {
                String before = taken.get(Around.plain(more.words().get(j)));
                if (before != null && !before.equals(more.source()) && !ambiguous.contains(Around.plain(more.words().get(j)))) {
                    around.fault(file.yaml().fault("/" + i + "/words/" + j, "\"" + more.words().get(j) + "\" already means "
                            + before + ". Take it out of one of the two, or list it in words/ambiguities.yaml with both"));
                }
            }
        }
    }

    private static List<String> names(Source source) {
        List<String> names = new ArrayList<>();
        names.add(Around.plain(source.name()));
        source.words().forEach(word -> names.add(Around.plain(word)));
        return names;
    }

    /** Whether lists of words agree with themselves, with each other, and with the entries they name. */
    void wordFiles() {
        for (CatalogueReader.WordFile<?> file : around.wordFiles()) {
            if (file.items() == null) {
                continue;
            }
            List<Object> seen = new ArrayList<>();
            Map<String, String> taken = new HashMap<>();
            Map<String, String> builtIn = builtIn(file);
            for (int i = 0; i < file.items().size(); i++) {
                Object item = file.items().get(i);
                Object key = item instanceof String word ? word : keyOf(file, item);
                if (seen.contains(key)) {
                    around.fault(file.yaml().fault("/" + i, shown(key) + " stands in this list twice. Keep one of the two"));
                }
                seen.add(key);
                wordsOfItem(file, i, shown(key), taken, builtIn);
            }
        }
        moreNames();
        opposites();
        combinations();
        CatalogueReader.WordFile<?> ambiguities = around.file(Kind.AMBIGUITIES);
        for (int i = 0; i < around.items(Kind.AMBIGUITIES).size(); i++) {
            Vocabulary.Ambiguity ambiguity = around.items(Kind.AMBIGUITIES).get(i);
            for (int j = 0; j < ambiguity.readings().size(); j++) {
                around.known(ambiguities.yaml(), "/" + i + "/readings/" + j, ambiguity.readings().get(j), sources, "source", "");
            }
        }
        CatalogueReader.WordFile<?> limits = around.file(Kind.LIMITS);
        for (int i = 0; i < around.items(Kind.LIMITS).size(); i++) {
            var sets = around.items(Kind.LIMITS).get(i).sets();
            for (int j = 0; j < sets.onlyMicTypes().size(); j++) {
                around.known(limits.yaml(), "/" + i + "/sets/onlyMicTypes/" + j, sets.onlyMicTypes().get(j), micTypes, "mic type", "");
            }
            for (int j = 0; j < sets.withoutMicTypes().size(); j++) {
                around.known(limits.yaml(), "/" + i + "/sets/withoutMicTypes/" + j, sets.withoutMicTypes().get(j), micTypes, "mic type",
                        "");
            }
        }
    }

    private void moreNames() {
        CatalogueReader.WordFile<?> file = around.file(Kind.NAMES);
        for (int i = 0; i < around.items(Kind.NAMES).size(); i++) {
            around.known(file.yaml(), "/" + i + "/source", around.items(Kind.NAMES).get(i).source(), sources, "source", "");
        }
    }

    private void opposites() {
        CatalogueReader.WordFile<?> file = around.file(Kind.OPPOSITES);
        for (int i = 0; i < around.items(Kind.OPPOSITES).size(); i++) {
            Vocabulary.Opposite opposite = around.items(Kind.OPPOSITES).get(i);
            around.known(file.yaml(), "/" + i + "/character", opposite.character(), characters, "character", "");
            around.known(file.yaml(), "/" + i + "/wants", opposite.wants(), characters, "character", "");
            around.known(file.yaml(), "/" + i + "/ratherThanTooMuch", opposite.ratherThanTooMuch(), characters, "character", "");
            if (opposite.wants().equals(opposite.character())) {
                around.fault(file.yaml().fault("/" + i + "/wants", "too much " + opposite.character() + " wants " + opposite.wants()
                        + " again. Name another character"));
            }
        }
    }

    private void combinations() {
        CatalogueReader.WordFile<?> file = around.file(Kind.COMBINATIONS);
        Set<String> with = new TreeSet<>();
        around.under().words().ways().forEach(way -> with.add(way.id()));
        around.under().words().circumstances().forEach(circumstance -> with.add(circumstance.id()));
        around.items(Kind.WAYS).forEach(way -> with.add(way.id()));
        around.items(Kind.CIRCUMSTANCES).forEach(circumstance -> with.add(circumstance.id()));
        boolean all = !around.broken(Kind.WAYS) && !around.broken(Kind.CIRCUMSTANCES);
        for (int i = 0; i < around.items(Kind.COMBINATIONS).size(); i++) {
            Vocabulary.Combination combination = around.items(Kind.COMBINATIONS).get(i);
            for (int j = 0; j < combination.of().size(); j++) {
                for (int k = 0; k < combination.of().get(j).size(); k++) {
                    around.known(file.yaml(), "/" + i + "/of/" + j + "/" + k, combination.of().get(j).get(k), sources, "source", "");
                }
            }
            if (all) {
                around.known(file.yaml(), "/" + i + "/with", combination.with(), with, "way or circumstance", "");
            }
            around.known(file.yaml(), "/" + i + "/source", combination.source(), sources, "source", "");
        }
    }

    /** What two items share, as a person would write it. */
    private static String shown(Object key) {
        if (key instanceof List<?> list) {
            return list.stream().map(WordChecks::shown).collect(Collectors.joining(", "));
        }
        return key instanceof Double number ? BigDecimal.valueOf(number).stripTrailingZeros().toPlainString() : key.toString();
    }

    private static <T> Object keyOf(CatalogueReader.WordFile<T> file, Object item) {
        return file.kind().key().apply(file.kind().record().cast(item));
    }

    /** One word, one meaning, within a list; only of ways it may have two, as long as no source knows both. */
    private void wordsOfItem(CatalogueReader.WordFile<?> file, int item, String key, Map<String, String> taken, Map<String, String> builtIn) {
        String field = file.kind().equals(Kind.OPPOSITES) ? "faults" : "words";
        JsonNode list = file.yaml().root().path(item).path(field);
        for (int j = 0; j < list.size(); j++) {
            // "behind" before a name and "behind" after it are two things
            String side = file.yaml().root().path(item).path("follows").asBoolean() ? " after it" : "";
            String word = Around.plain(list.get(j).asText()) + side;
            String before = taken.putIfAbsent(word, key);
            boolean fromBefore = before == null && builtIn.containsKey(word) && !builtIn.get(word).equals(key);
            String other = fromBefore ? builtIn.get(word) : before;
            if (other != null && (!file.kind().equals(Kind.WAYS) || other.equals(key) || oneSourceKnows(other, key))) {
                around.fault(file.yaml().fault("/" + item + "/" + field + "/" + j, "\"" + list.get(j).asText() + "\" "
                        + (other.equals(key) ? "stands here twice. Take one out" : "already means " + other
                                + (fromBefore ? ", which is built in. Take it out here" : ". Take it out of one of the two"))));
            }
        }
    }

    /** What the words of a kind mean that a house folder is laid over. */
    private <T> Map<String, String> builtIn(CatalogueReader.WordFile<T> file) {
        Map<String, String> means = new HashMap<>();
        for (T item : file.kind().in().apply(around.under().words())) {
            JsonNode tree = Json.mapper().valueToTree(item);
            String side = tree.path("follows").asBoolean() ? " after it" : "";
            tree.path(file.kind().equals(Kind.OPPOSITES) ? "faults" : "words")
                    .forEach(word -> means.putIfAbsent(Around.plain(word.asText()) + side, shown(file.kind().key().apply(item))));
        }
        return means;
    }

    private boolean oneSourceKnows(String way, String other) {
        return sources.stream().map(id -> around.effective(Kind.SOURCES, id)).filter(Objects::nonNull)
                .map(source -> source.ways().stream().map(Way::id).toList())
                .anyMatch(ways -> ways.contains(way) && ways.contains(other));
    }
}
