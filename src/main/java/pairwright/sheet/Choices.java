package pairwright.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import pairwright.model.Catalogue;
import pairwright.model.MicFamily;
import pairwright.model.MicType;
import pairwright.model.Source;
import pairwright.model.Vocabulary;
import pairwright.model.Word;

/** What can be chosen in the forms, in the order of the catalogue. */
final class Choices {
    private Choices() {
    }

    /** All sources by family. */
    static List<Choice.Group> sources(Catalogue catalogue, String chosen) {
        return grouped(catalogue.sources().values().stream().sorted(Comparator.comparing(Source::family).thenComparing(Source::name)).toList(), source -> named(source.family().id()), Source::id, Source::name, chosen);
    }

    /** All types that take sound up, by family. */
    static List<Choice.Group> mics(Catalogue catalogue, String chosen) {
        return grouped(catalogue.mics().values().stream().filter(MicType::captures)
                .sorted(Comparator.comparing(MicType::family).thenComparing(MicType::name)).toList(), mic -> family(catalogue, mic.family()), MicType::id,
                MicType::name, chosen);
    }

    private static <T> List<Choice.Group> grouped(Collection<T> entries, Function<T, String> group, Function<T, String> id, Function<T, String> name,
            String chosen) {
        Map<String, List<Choice>> groups = new LinkedHashMap<>();
        entries.forEach(entry -> groups.computeIfAbsent(group.apply(entry), any -> new ArrayList<>())
                .add(new Choice(id.apply(entry), name.apply(entry), id.apply(entry).equals(chosen))));
        return groups.entrySet().stream().map(entry -> new Choice.Group(entry.getKey(), entry.getValue())).toList();
    }

    static <T> List<Choice> of(Collection<T> entries, Function<T, String> id, Function<T, String> name, Collection<String> chosen) {
        return entries.stream().map(entry -> new Choice(id.apply(entry), name.apply(entry), chosen.contains(id.apply(entry)))).toList();
    }

    static List<Choice> families(Catalogue catalogue, Collection<MicFamily> chosen) {
        return Stream.of(MicFamily.values()).map(family -> new Choice(family.id(), family(catalogue, family), chosen.contains(family))).toList();
    }

    /** What people call a family. */
    static String family(Catalogue catalogue, MicFamily family) {
        return catalogue.words().families().stream().filter(words -> words.families().size() == 1 && words.families().get(0) == family)
                .map(Vocabulary.FamilyWords::name).findFirst().orElseGet(() -> named(family.id()));
    }

    /** A word of the catalogue as a heading: "drum-kit" is "Drum kit". */
    static String named(String id) {
        return capital(id.replace('-', ' '));
    }

    /** With a capital at its beginning. */
    static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    static List<String> ids(Collection<? extends Word> words) {
        return words.stream().<String>map(Word::id).toList();
    }
}
