package pairwright.search;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A sentence cut into words, with the phrases found in it. */
final class Sentence {

    /** Small words that may stand between a modifier and what it changes: "not a very". */
    private static final int SMALL_WORDS_BETWEEN = 2;

    private final String text;
    private final List<Token> tokens;
    private final List<Tag> tags;
    private final Map<Kind, List<Tag>> tagsByKind;
    private final BitSet stops = new BitSet();
    private final BitSet small = new BitSet();
    private final BitSet numbers = new BitSet();

    /**
     * @param text as it was given
     * @param tokens its words
     * @param tags the phrases, in the order they stand
     */
    Sentence(String text, List<Token> tokens, List<Tag> tags) {
        this.text = text;
        this.tokens = tokens;
        this.tags = tags;
        tagsByKind = tags.stream().collect(Collectors.groupingBy(Tag::kind));
        for (int at = 0; at < tokens.size(); at++) {
            stops.set(at, tokens.get(at).opens());
        }
        tags(Kind.IGNORED).forEach(tag -> small.set(tag.first(), tag.end()));
        tags(Kind.MODIFIER).forEach(tag -> small.set(tag.first(), tag.end()));
        tags(Kind.NUMBER).forEach(tag -> numbers.set(tag.first(), tag.end()));
    }

    String text() {
        return text;
    }

    List<Token> tokens() {
        return tokens;
    }

    List<Tag> tags() {
        return tags;
    }

    Stream<Tag> tags(Kind kind) {
        return tagsByKind.getOrDefault(kind, List.of()).stream();
    }

    /** The words as they stand. */
    String words(int first, int end) {
        return text.substring(tokens.get(first).start(), tokens.get(end - 1).end());
    }

    String words(Tag tag) {
        return words(tag.first(), tag.end());
    }

    /** Whether a stop stands before one of the tokens after {@code first}, up to and with {@code last}. */
    boolean isBroken(int first, int last) {
        int stop = stops.nextSetBit(first + 1);
        return stop >= 0 && stop <= last;
    }

    /** Whether all tokens from {@code first} to before {@code end} are small words. */
    boolean isSmall(int first, int end) {
        return first >= end || small.nextClearBit(first) >= end;
    }

    /** The modifier that changes a phrase. */
    Optional<Tag> modifierBefore(Tag tag) {
        return modifierBefore(tag.first());
    }

    /** The nearest modifier before a token, no stop and only small words or a number between. */
    Optional<Tag> modifierBefore(int first) {
        for (int at = first - 1; at >= Math.max(0, first - 1 - SMALL_WORDS_BETWEEN) && !stops.get(at + 1); at--) {
            int last = at;
            var modifier = tags(Kind.MODIFIER).filter(found -> found.end() - 1 == last && !found.id().equals("and")).findFirst();
            if (modifier.isPresent() || !small.get(at) && !numbers.get(at)) {
                return modifier;
            }
        }
        return Optional.empty();
    }

    /** "only" right behind a phrase. */
    Optional<Tag> onlyAfter(Tag tag) {
        return onlyAfter(tag.end());
    }

    /** "only" right behind the words that end there. */
    Optional<Tag> onlyAfter(int end) {
        return tags(Kind.MODIFIER).filter(found -> found.first() == end && found.ids().contains("only")
                && !stops.get(found.first())).findFirst();
    }

    /** Whether "and" stands between two phrases. */
    boolean isAndBetween(Tag one, Tag next) {
        return tags(Kind.MODIFIER).anyMatch(tag -> tag.ids().contains("and") && one.end() <= tag.first()
                && tag.end() <= next.first());
    }

    /** Whether one phrase follows another by "and" alone, but for small words. */
    boolean isJoined(Tag one, Tag next) {
        return one.end() < next.first() && next.first() - one.end() <= 1 + SMALL_WORDS_BETWEEN && isSmall(one.end(), next.first())
                && isAndBetween(one, next);
    }
}
