package pairwright.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pairwright.model.Vocabulary;

/** The words that name several sources, and what points at one of them. Filled first, then only read. */
final class Ambiguities {

    private final List<Vocabulary.Ambiguity> entries;
    private final Phrases words;
    /** For each entry, by reading. */
    private final List<Map<String, Phrases>> clues = new ArrayList<>();

    Ambiguities(List<Vocabulary.Ambiguity> entries, Cutter cutter) {
        this.entries = List.copyOf(entries);
        words = new Phrases(Kind.SOURCE);
        for (var entry : entries) {
            words.add(Integer.toString(clues.size()), entry.words(), cutter);
            var byReading = new HashMap<String, Phrases>();
            entry.clues().forEach(clue -> byReading.computeIfAbsent(clue.reading(), reading -> new Phrases(Kind.SOURCE))
                    .add(clue.reading(), clue.words(), cutter));
            clues.add(byReading);
        }
    }

    /** What the list says of an ambiguous phrase; empty where only its endings make it ambiguous. */
    Optional<Vocabulary.Ambiguity> of(Sentence sentence, Tag source) {
        return place(sentence, source).map(entries::get);
    }

    /** The phrases elsewhere in the sentence that point at a reading of an ambiguous phrase. */
    List<Tag> clues(Sentence sentence, Tag source, String reading) {
        return place(sentence, source)
                .map(place -> clues.get(place).get(reading))
                .map(phrases -> phrases.tags(sentence.tokens()).stream()
                        .filter(clue -> clue.end() <= source.first() || clue.first() >= source.end())
                        .filter(clue -> sentence.tags(Kind.TECHNIQUE).noneMatch(technique -> technique.covers(clue)))
                        .filter(clue -> sentence.modifierBefore(clue).filter(found -> found.ids().contains("without")).isEmpty())
                        .toList())
                .orElse(List.of());
    }

    private Optional<Integer> place(Sentence sentence, Tag source) {
        return words.tags(sentence.tokens().subList(source.first(), source.end())).stream()
                .filter(tag -> tag.length() == source.length()).findFirst().map(tag -> Integer.valueOf(tag.id()));
    }
}
