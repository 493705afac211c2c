package pairwright.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import pairwright.model.Ask;
import pairwright.model.Catalogue;
import pairwright.model.Reading;

/**
 * The names of the entries, to find those that come near to some words: while they are typed, or where none was
 * meant clearly.
 */
final class Names {

    /** Of 1; below it two names only look alike by chance. */
    private static final double NEAR = 0.6;
    private static final int LONGEST_QUERY = 12;
    /** Of so many letters one may be wrong. */
    private static final int LETTERS_FOR_ONE_WRONG = 4;
    /** In shorter names no more than one may be: "directly" is no "direct" line. */
    private static final int TWO_WRONG = 9;
    private static final int LONGEST_CLOSE = 60;
    /** Shorter words are a letter from too many others. */
    private static final int SHORTEST_ASKED_BACK = 6;
    /** Of names that are about as near, those of sources are meant more often. */
    private static final double SOURCES_FIRST = 0.05;

    private record Name(Reading entry, String phrase, List<String> spellings) {
    }

    private record Near(Reading entry, double score) {
    }

    private final List<Name> names = new ArrayList<>();
    private final Map<String, List<Name>> namesByWord = new HashMap<>();
    private final Speller speller;

    Names(Catalogue catalogue, Speller speller, Cutter cutter) {
        this.speller = speller;
        catalogue.sources().values().forEach(source -> add("source", source.id(), source.name(), source.words(), cutter));
        catalogue.words().names().stream().filter(more -> catalogue.sources().containsKey(more.source()))
                .forEach(more -> add("source", more.source(), catalogue.sources().get(more.source()).name(), more.words(), cutter));
        catalogue.words().ambiguities().forEach(word -> word.readings().stream().filter(catalogue.sources()::containsKey)
                .forEach(id -> add("source", id, catalogue.sources().get(id).name(), word.words(), cutter)));
        catalogue.rooms().values().forEach(room -> add("room", room.id(), room.name(), room.words(), cutter));
        catalogue.characters().values().forEach(wanted -> add("character", wanted.id(), wanted.name(), wanted.words(), cutter));
        catalogue.mics().values().forEach(mic -> add("mic-type", mic.id(), mic.name(), mic.words(), cutter));
        var words = catalogue.words();
        words.ways().forEach(way -> add("way", way.id(), way.name(), way.words(), cutter));
        words.circumstances().forEach(circumstance -> add("circumstance", circumstance.id(), circumstance.name(), circumstance.words(), cutter));
        catalogue.techniques().values().forEach(technique -> add("technique", technique.id(), technique.name(), technique.words(), cutter));
    }

    private void add(String as, String id, String name, List<String> words, Cutter cutter) {
        var entry = new Reading("", as, id, name);
        add(entry, id.replace('-', ' '), cutter);
        add(entry, name, cutter);
        words.forEach(word -> add(entry, word, cutter));
    }

    private void add(Reading entry, String phrase, Cutter cutter) {
        var name = new Name(entry, phrase, spellings(cutter.tokens(phrase)));
        names.add(name);
        name.spellings().forEach(word -> namesByWord.computeIfAbsent(word, any -> new ArrayList<>(2)).add(name));
    }

    /** Phrases with a word that an unknown one may be a misspelling of, nearest first, one of each entry. */
    List<Ask.Choice> misspelt(String words, int most) {
        var typed = spellings(Text.tokens(words));
        if (typed.size() != 1 || typed.get(0).length() < SHORTEST_ASKED_BACK || !speller.isCorrectable(typed.get(0))) {
            return List.of();
        }
        var best = new LinkedHashMap<Reading, Ask.Choice>();
        // a known word of a longer name is no misspelling, but a room is known by any of its words
        offer(namesByWord.getOrDefault(typed.get(0), List.of()).stream().filter(name -> name.entry().as().equals("room")), best);
        speller.near(typed.get(0)).forEach(known -> offer(namesByWord.getOrDefault(known.spelling(), List.of()).stream(), best));
        return best.values().stream().limit(most).toList();
    }

    /** Whether words are ordinary ones that only look like a name. */
    boolean isOrdinary(String words) {
        return spellings(Text.tokens(words)).stream().allMatch(speller::isOrdinary);
    }

    /** Of several phrases with the word the shortest says it best. */
    private static void offer(Stream<Name> names, Map<Reading, Ask.Choice> best) {
        names.filter(name -> !name.entry().as().equals("mic-type")).sorted(Comparator.comparingInt(name -> name.spellings().size()))
                .forEach(name -> best.putIfAbsent(name.entry(),
                        new Ask.Choice(name.phrase(), name.entry().as(), name.entry().id(), name.entry().name())));
    }

    private static List<String> spellings(List<Token> tokens) {
        return tokens.stream().map(Token::spelling).toList();
    }

    /** Sources of which a whole name is so few letters off that the words may be a misspelling of it, nearest first. */
    List<Reading> close(String words, int most) {
        var typed = String.join(" ", spellings(Text.tokens(words)));
        int share = typed.length() / LETTERS_FOR_ONE_WRONG;
        int allowed = typed.length() < TWO_WRONG ? Math.min(1, share) : share;
        if (allowed == 0 || typed.length() > LONGEST_CLOSE || !typed.codePoints().allMatch(one -> Character.isLetter(one) || one == ' ')) {
            return List.of();
        }
        Map<Reading, Integer> best = new HashMap<>();
        for (var name : names) {
            var known = String.join(" ", name.spellings());
            if (name.entry().as().equals("source") && !known.isEmpty() && known.charAt(0) == typed.charAt(0)
                    && Math.abs(known.length() - typed.length()) <= allowed + 1) {
                int edits = Math.min(speller.editsBetween(known, typed), speller.editsBetween(singular(known), typed));
                if (edits <= allowed) {
                    best.merge(name.entry(), edits, Math::min);
                }
            }
        }
        return best.entrySet().stream().sorted(Map.Entry.<Reading, Integer>comparingByValue().thenComparing(near -> near.getKey().id()))
                .limit(Math.max(0, most)).map(near -> new Reading(words, near.getKey().as(), near.getKey().id(), near.getKey().name())).toList();
    }

    private static String singular(String name) {
        return name.length() > LETTERS_FOR_ONE_WRONG && name.endsWith("s") ? name.substring(0, name.length() - 1) : name;
    }

    List<Reading> nearest(String words, Predicate<Reading> kinds, int most) {
        var wanted = spellings(Text.tokens(words));
        if (wanted.isEmpty() || wanted.size() > LONGEST_QUERY) {
            return List.of();
        }
        Map<Reading, Double> best = new HashMap<>();
        for (var name : names) {
            if (kinds.test(name.entry())) {
                best.merge(name.entry(), likeness(wanted, name.spellings()), Math::max);
            }
        }
        return best.entrySet().stream()
                .filter(found -> found.getValue() >= NEAR)
                .map(found -> new Near(found.getKey(), found.getValue() + (found.getKey().as().equals("source") ? SOURCES_FIRST
                        : 0)))
                .sorted(Comparator.comparingDouble(Near::score).reversed().thenComparing(near -> near.entry().id()))
                .limit(Math.max(0, most))
                .map(near -> new Reading(words, near.entry().as(), near.entry().id(), near.entry().name()))
                .toList();
    }

    /** How well every wanted word is found in the name, and a little for how much of the name they are. */
    private double likeness(List<String> wanted, List<String> name) {
        if (name.isEmpty()) {
            return 0;
        }
        double sum = 0;
        for (var word : wanted) {
            sum += name.stream().mapToDouble(known -> likeness(word, known)).max().orElse(0);
        }
        double share = Math.min(1.0, (double) wanted.size() / name.size());
        return 0.9 * sum / wanted.size() + 0.1 * share;
    }

    private double likeness(String typed, String known) {
        if (known.equals(typed)) {
            return 1;
        }
        if (known.startsWith(typed)) {
            return 0.85 + 0.1 * typed.length() / known.length();
        }
        int shorter = Math.min(typed.length(), known.length());
        if (shorter < 3 || typed.charAt(0) != known.charAt(0)
                || Math.abs(typed.length() - known.length()) > shorter * (1 - NEAR)) {
            return 0;
        }
        double alike = speller.likeness(typed, known);
        return alike >= NEAR ? 0.8 * alike : 0;
    }
}
