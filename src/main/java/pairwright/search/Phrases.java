package pairwright.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The phrases of one kind, found in a sentence by the longest that fits. Filled first, then only read. */
final class Phrases {

    private record Entry(String id, String spelling) {
    }

    private final Kind kind;
    private final Map<String, List<Entry>> byStems = new HashMap<>();
    private final Set<String> stems = new LinkedHashSet<>();
    private int longest = 0;

    Phrases(Kind kind) {
        this.kind = kind;
    }

    void add(String id, List<String> phrases) {
        phrases.forEach(phrase -> add(id, phrase));
    }

    void add(String id, String phrase) {
        addOne(id, phrase);
        var german = spelledWithoutUmlauts(phrase);
        if (!german.equals(phrase)) {
            addOne(id, german);
        }
    }

    private void addOne(String id, String phrase) {
        var tokens = Text.tokens(phrase);
        if (tokens.isEmpty()) {
            return;
        }
        put(id, tokens);
        if (tokens.size() == 2 && kind.isCorrected() && !tokens.get(1).opens()) {
            // people write "kickdrum" and "kick drum" alike
            put(id, Text.tokens(tokens.get(0).spelling() + tokens.get(1).spelling()));
        }
    }

    private void put(String id, List<Token> tokens) {
        var entry = new Entry(id, spelling(tokens, 0, tokens.size()));
        var entries = byStems.computeIfAbsent(key(tokens, 0, tokens.size()), key -> new ArrayList<>(1));
        if (!entries.contains(entry)) {
            entries.add(entry);
        }
        longest = Math.max(longest, tokens.size());
        tokens.forEach(token -> stems.add(token.stem()));
    }

    /** The stems of every word of every phrase. */
    Set<String> stems() {
        return stems;
    }

    /** Whether exactly this phrase is listed. */
    boolean knows(String phrase) {
        var tokens = Text.tokens(phrase);
        return byStems.containsKey(key(tokens, 0, tokens.size()));
    }

    /** What a whole phrase names; empty if nothing. */
    List<String> named(String phrase) {
        var tokens = Text.tokens(phrase);
        var entries = byStems.getOrDefault(key(tokens, 0, tokens.size()), List.of());
        return entries.stream().map(Entry::id).distinct().toList();
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
        for (int end = Math.min(tokens.size(), first + longest); end > first; end--) {
            var entries = byStems.get(key(tokens, first, end));
            if (entries != null) {
                var spelling = spelling(tokens, first, end);
                var exact = entries.stream().filter(entry -> entry.spelling().equals(spelling)).toList();
                var ids = (exact.isEmpty() ? entries : exact).stream().map(Entry::id).distinct().toList();
                return new Tag(kind, ids, first, end, !exact.isEmpty());
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

    private static String spelledWithoutUmlauts(String phrase) {
        return phrase.replace("ä", "ae").replace("ö", "oe").replace("ü", "ue").replace("Ä", "Ae").replace("Ö", "Oe")
                .replace("Ü", "Ue");
    }
}
