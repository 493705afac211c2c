package pairwright.search;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import pairwright.model.Meaning;
import pairwright.model.Reading;

/** What a sentence says up to a point, and what it asks for next. */
final class Head {
    /** Small words that lead to a room, in the languages of the catalogue. */
    private static final Set<String> IN = Set.of("in", "im", "dans", "en", "nel", "nella", "em", "na", "no");

    /** What must come next. */
    enum Wants {
        ANYTHING, NEIGHBOUR, ROOM, LIMIT, QUANTITY, QUALITY
    }

    private final Meaning meaning;
    private final Wants wants;
    private final String said;

    Head(SentenceReader reader, Sentence sentence) {
        meaning = reader.meaning(sentence);
        wants = wants(sentence);
        said = Unfinished.said(sentence.text());
    }

    private static Wants wants(Sentence sentence) {
        List<Token> tokens = sentence.tokens();
        int end = tokens.size();
        if (end == 0 || Unfinished.endsInStop(sentence.text())) {
            return Wants.ANYTHING;
        }
        boolean beside = sentence.tags(Kind.BEFORE_NEIGHBOUR).anyMatch(tag -> sentence.isSmall(tag.end(), end) && !sentence.isBroken(tag.end() - 1, end - 1));
        if (beside) {
            return Wants.NEIGHBOUR;
        }
        Optional<Tag> altered = sentence.modifierBefore(end);
        if (altered.isPresent()) {
            return altered.get().ids().contains("without") || altered.get().ids().contains("only") ? Wants.LIMIT : Wants.QUALITY;
        }
        String last = tokens.get(end - 1).spelling();
        boolean counted = sentence.tags(Kind.NUMBER).anyMatch(tag -> tag.end() == end && !tag.id().equals("1.0"))
                || last.chars().allMatch(Character::isDigit) && !last.equals("1");
        if (counted) {
            return Wants.QUANTITY;
        }
        boolean inside = IN.contains(last) || end > 1 && IN.contains(tokens.get(end - 2).spelling()) && sentence.isSmall(end - 1, end);
        return inside ? Wants.ROOM : Wants.ANYTHING;
    }

    Wants wants() {
        return wants;
    }

    /** The source that is recorded; null where none is said yet. */
    String source() {
        return meaning.question().source();
    }

    /** Whether a room is said. */
    boolean hasRoom() {
        return meaning.question().room() != null;
    }

    /** Whether a word such as "too" or "no" changes what comes next. */
    boolean isAltered() {
        return wants == Wants.QUALITY || wants == Wants.LIMIT;
    }

    /** Whether this is said already. */
    boolean says(String as, String id) {
        return meaning.understood().stream().anyMatch(reading -> reading.as().equals(as) && reading.id().equals(id));
    }

    /** Whether its last words are understood. */
    boolean isDone() {
        return meaning.understood().stream().map(Reading::words).anyMatch(said::endsWith);
    }

    /** Whether its last words say nothing to the program, so that they are better completed than followed. */
    boolean isAtALoss() {
        return meaning.notUnderstood().stream().anyMatch(said::endsWith);
    }

    /** Whether so many of its last letters are only a part of words that are understood together: the "drum" of "snare drum". */
    boolean cuts(int letters) {
        return meaning.understood().stream().anyMatch(reading -> !reading.as().equals("neighbour") && reading.words().length() > letters
                && said.endsWith(reading.words()));
    }
}
