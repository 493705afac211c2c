package pairwright.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The phrases of one kind, found in a sentence by the longest that fits. Filled first, then only read. */
final class Phrases {

    private record Entry(String id, String spelling) {
    }

    private final Kind kind;
    private final Map<String, List<Entry>> byStems = new HashMap<>();
    private final Map<String, String> stemsBySpelling = new LinkedHashMap<>();
    /** By the stem of a first word: how long its phrases get. */
    private final Map<String, Integer> longestFrom = new HashMap<>();

    Phrases(Kind kind) {
        this.kind = kind;
    }

    void add(String id, List<String> phrases, Cutter cutter) {
        phrases.forEach(phrase -> add(id, phrase, cutter));
    }

    void add(String id, String phrase, Cutter cutter) {
        addOne(id, phrase, cutter);
        var german = spelledWithoutUmlauts(phrase);
        if (!german.equals(phrase)) {
            addOne(id, german, cutter);
        }
    }

    private void addOne(String id, String phrase, Cutter cutter) {
        var tokens = cutter.tokens(phrase);
        if (tokens.isEmpty()) {
            return;
        }
        put(id, tokens);
        tokens.forEach(token -> stemsBySpelling.put(token.spelling(), token.stem()));
        if (tokens.size() == 2 && kind.isCorrected() && !tokens.get(1).opens()) {
            // people write "kickdrum" and "kick drum" alike
            put(id, cutter.tokens(tokens.get(0).spelling() + tokens.get(1).spelling()));
        }
    }

    private void put(String id, List<Token> tokens) {
        var entry = new Entry(id, spelling(tokens, 0, tokens.size()));
        var entries = byStems.computeIfAbsent(key(tokens, 0, tokens.size()), key -> new ArrayList<>(1));
        if (!entries.contains(entry)) {
            entries.add(entry);
        }
        longestFrom.merge(tokens.get(0).stem(), tokens.size(), Math::max);
    }

    /** Every word of every phrase, and its stem. */
    Map<String, String> stemsBySpelling() {
        return stemsBySpelling;
    }

    /** The longest phrases from left to right, none overlapping. */
    List<Tag> tags(List<Token> tokens) {
        var tags = new ArrayList<Tag>();
        int at = 0;
        while (at < tokens.size()) {
            var tag = longestAt(tokens, at);
            if (tag == null) {
                at++;
            } else {
                tags.add(tag);
                at = tag.end();
            }
        }
        return tags;
    }

    private Tag longestAt(List<Token> tokens, int first) {
        int longest = longestFrom.getOrDefault(tokens.get(first).stem(), 0);
        for (int end = Math.min(tokens.size(), first + longest); end > first; end--) {
            var entries = byStems.get(key(tokens, first, end));
            if (entries != null) {
                var spelling = spelling(tokens, first, end);
                var exact = entries.stream().filter(entry -> entry.spelling().equals(spelling)).toList();
                var near = exact.isEmpty() ? entries.stream().filter(entry -> Inflection.isSame(entry.spelling(), spelling)).toList()
                        : exact;
                if (!near.isEmpty()) {
                    return new Tag(kind, near.stream().map(Entry::id).distinct().toList(), first, end, !exact.isEmpty());
                }
            }
        }
        return null;
    }

    private static String key(List<Token> tokens, int first, int end) {
        return first + 1 == end ? tokens.get(first).stem()
                : tokens.subList(first, end).stream().map(Token::stem).collect(Collectors.joining(" "));
    }

    private static String spelling(List<Token> tokens, int first, int end) {
        return first + 1 == end ? tokens.get(first).spelling()
                : tokens.subList(first, end).stream().map(Token::spelling).collect(Collectors.joining(" "));
    }

    static String spelledWithoutUmlauts(String phrase) {
        return phrase.replace("ä", "ae").replace("ö", "oe").replace("ü", "ue").replace("Ä", "Ae").replace("Ö", "Oe")
                .replace("Ü", "Ue");
    }
}
