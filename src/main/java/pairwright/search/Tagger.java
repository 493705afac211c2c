package pairwright.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pairwright.model.Catalogue;
import pairwright.model.Vocabulary;

/** Finds the phrases of the catalogue in a sentence. */
final class Tagger {

    private final Map<Kind, Phrases> phrases = new EnumMap<>(Kind.class);

    Tagger(Catalogue catalogue, Cutter cutter) {
        for (var kind : Kind.values()) {
            phrases.put(kind, new Phrases(kind));
        }
        addAmbiguities(catalogue, cutter);
        catalogue.sources().values().forEach(source -> add(Kind.SOURCE, source.id(), source.name(), source.words(), cutter));
        catalogue.rooms().values().forEach(room -> add(Kind.ROOM, room.id(), room.name(), room.words(), cutter));
        catalogue.characters().values().forEach(wanted -> add(Kind.CHARACTER, wanted.id(), wanted.name(), wanted.words(), cutter));
        catalogue.techniques().values().forEach(technique -> add(Kind.TECHNIQUE, technique.id(), technique.name(), technique.words(), cutter));
        catalogue.mics().values().forEach(mic -> add(Kind.MIC_TYPE, mic.id(), mic.name(), mic.words(), cutter));
        addWords(catalogue.words(), cutter);
    }

    /** Before the sources, so that the readings stand in the order of the list; a source that is not there is no reading. */
    private void addAmbiguities(Catalogue catalogue, Cutter cutter) {
        var sources = catalogue.sources().keySet();
        var words = catalogue.words();
        words.ambiguities().forEach(ambiguity -> ambiguity.readings().stream().filter(sources::contains)
                .forEach(reading -> of(Kind.SOURCE).add(reading, ambiguity.words(), cutter)));
        words.names().stream().filter(more -> sources.contains(more.source()))
                .forEach(more -> of(Kind.SOURCE).add(more.source(), more.words(), cutter));
    }

    private void addWords(Vocabulary words, Cutter cutter) {
        words.ways().forEach(way -> add(Kind.WAY, way.id(), way.name(), way.words(), cutter));
        words.dynamics().forEach(dynamic -> of(Kind.DYNAMIC).add(dynamic.id(), dynamic.words(), cutter));
        words.opposites().forEach(opposite -> of(Kind.FAULT).add(opposite.character(), opposite.faults(), cutter));
        words.limits().forEach(limit -> of(Kind.LIMIT).add(limit.id(), limit.words(), cutter));
        words.neighbours().forEach(beside -> of(beside.follows() ? Kind.AFTER_NEIGHBOUR : Kind.BEFORE_NEIGHBOUR)
                .add(beside.id(), beside.words(), cutter));
        words.circumstances().forEach(circumstance -> of(Kind.CIRCUMSTANCE).add(circumstance.id(), circumstance.words(), cutter));
        words.families().forEach(family -> of(Kind.FAMILY).add(family.id(), family.words(), cutter));
        words.modifiers().forEach(modifier -> of(Kind.MODIFIER).add(modifier.id(), modifier.words(), cutter));
        words.numbers().forEach(number -> of(Kind.NUMBER).add(Double.toString(number.value()), number.words(), cutter));
        words.quantities().forEach(quantity -> of(Kind.QUANTITY).add(quantity.id(), quantity.words(), cutter));
        of(Kind.PLAYER).add("player", words.players(), cutter);
        of(Kind.IGNORED).add("ignored", words.ignored(), cutter);
    }

    private void add(Kind kind, String id, String name, List<String> words, Cutter cutter) {
        of(kind).add(id, id.replace('-', ' '), cutter);
        of(kind).add(id, name, cutter);
        of(kind).add(id, words, cutter);
    }

    private Phrases of(Kind kind) {
        return phrases.get(kind);
    }

    /** The words a misspelt word may stand for, and their stems. */
    Map<String, String> correctStems() {
        var stems = new LinkedHashMap<String, String>();
        phrases.forEach((kind, list) -> list.stemsBySpelling().forEach((spelling, stem) -> {
            if (kind.isCorrected() && spelling.length() >= kind.shortestCorrected()) {
                stems.putIfAbsent(spelling, stem);
            }
        }));
        return stems;
    }

    /** The phrases that hold against each other, in the order they stand. */
    List<Tag> tags(List<Token> tokens) {
        var all = new ArrayList<Tag>();
        phrases.values().forEach(list -> all.addAll(list.tags(tokens)));
        all.sort(Comparator.comparingInt(Tag::first).thenComparing(Comparator.comparingInt(Tag::length).reversed())
                .thenComparing(Tag::kind));
        // whatever overrules a phrase covers its first word too
        var covering = new ArrayList<List<Tag>>();
        tokens.forEach(token -> covering.add(new ArrayList<>(4)));
        all.forEach(tag -> covering.subList(tag.first(), tag.end()).forEach(tags -> tags.add(tag)));
        return all.stream().filter(tag -> covering.get(tag.first()).stream().noneMatch(other -> overrules(other, tag)
                || isMeasured(tokens, all, other) && other.covers(tag) && tag.kind().isCorrected())).toList();
    }

    /** Whether a phrase is a unit with its number before it: the "ft" of "5 ft" is no floor tom. */
    private static boolean isMeasured(List<Token> tokens, List<Tag> all, Tag tag) {
        return tag.kind() == Kind.QUANTITY && tag.first() > 0 && (tokens.get(tag.first() - 1).isFigure()
                || all.stream().anyMatch(number -> number.kind() == Kind.NUMBER && number.end() == tag.first()));
    }

    /** A longer phrase overrules one inside it, and a word spelt exactly overrules one that only shares its stem. */
    private static boolean overrules(Tag other, Tag tag) {
        if (other.kind() == tag.kind() || !other.covers(tag)) {
            return false;
        }
        return other.length() > tag.length() ? !tag.kind().survivesInside(other.kind())
                : tag.length() == 1 && other.exact() && !tag.exact();
    }
}
