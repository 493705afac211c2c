package pairwright.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Objects;
import pairwright.model.Catalogue;
import pairwright.model.Meaning;
import pairwright.model.Reading;

/** Reads what an engineer types. Built once from a catalogue; any number of threads may ask it. */
public final class SentenceReader {

    /** Words to each side that may belong to one phrase with a misspelt word. */
    private static final int AROUND = 5;
    private static final int SUGGESTIONS = 3;

    private final Tagger tagger;
    private final Speller speller;
    private final Lexicon lexicon;
    private final Names names;

    /** Takes the words of the catalogue's entries and of its vocabulary. */
    public SentenceReader(Catalogue catalogue) {
        tagger = new Tagger(catalogue);
        speller = new Speller(tagger.correctStems());
        lexicon = new Lexicon(catalogue);
        names = new Names(catalogue, speller);
    }

    /**
     * What a sentence means; whatever stays unclear is said in the answer. No text is too odd.
     *
     * @param text a sentence of up to 2,000 characters; a longer one is read too, but takes its time
     */
    public Meaning read(String text) {
        var tokens = corrected(Text.tokens(text));
        var meaning = new Interpretation(lexicon, new Sentence(text, tokens, tagger.tags(tokens))).meaning();
        return meaning.question().source() == null ? withSuggestions(meaning) : meaning;
    }

    /**
     * The entries whose names come nearest to some words, also unfinished or misspelt ones.
     *
     * @param words what is typed
     * @param most how many at most
     * @return sources, rooms, characters and mic types ("mic-type"), nearest first
     */
    public List<Reading> nearest(String words, int most) {
        return names.nearest(words, any -> true, most);
    }

    /** Words that say nothing as they stand are read as the word they may be a misspelling of. */
    private List<Token> corrected(List<Token> given) {
        var tags = tagger.tags(given);
        var unknown = new BitSet();
        unknown.set(0, given.size());
        tags.forEach(tag -> unknown.clear(tag.first(), tag.end()));
        // null where a word was joined to the one before
        var tokens = new ArrayList<>(given);
        for (int at = unknown.nextSetBit(0); at >= 0; at = unknown.nextSetBit(at + 1)) {
            if (join(tokens, at, at + 1)) {
                unknown.clear(at + 1);
            } else if (!join(tokens, at - 1, at)) {
                respell(tokens, at);
            }
        }
        tokens.removeIf(Objects::isNull);
        return tokens;
    }

    /** "Key board" for keyboard: two words that only together name something, or name more than the one does. */
    private boolean join(List<Token> tokens, int one, int next) {
        if (one < 0 || next >= tokens.size() || tokens.get(one) == null || tokens.get(next).opens()) {
            return false;
        }
        var first = tokens.get(one);
        var last = tokens.get(next);
        var joined = Text.tokens(first.spelling() + last.spelling());
        if (joined.size() != 1 || coverage(joined, 0) == 0) {
            return false;
        }
        tokens.set(one, new Token(first.start(), last.end(), joined.get(0).spelling(), joined.get(0).stem(), first.opens()));
        tokens.set(next, null);
        return true;
    }

    /** Of the words a misspelt one may stand for, the one that makes the longest phrase with its neighbours. */
    private void respell(List<Token> tokens, int at) {
        var token = tokens.get(at);
        var around = new ArrayList<Token>();
        int place = 0;
        for (int near = Math.max(0, at - AROUND); near < Math.min(tokens.size(), at + AROUND + 1); near++) {
            if (near == at) {
                place = around.size();
            }
            if (tokens.get(near) != null) {
                around.add(tokens.get(near));
            }
        }
        int longest = coverage(around, place);
        if (longest > 0) {
            return;
        }
        for (var stem : speller.near(token.spelling())) {
            around.set(place, token.readAs(stem));
            int length = coverage(around, place);
            if (length > longest) {
                longest = length;
                tokens.set(at, around.get(place));
            }
        }
    }

    /** Length of the longest phrase over a token; 0 if there is none that says something. */
    private int coverage(List<Token> tokens, int at) {
        return tagger.tags(tokens).stream().filter(tag -> tag.kind().isCorrected()
                && tag.covers(at)).mapToInt(Tag::length).max().orElse(0);
    }

    private Meaning withSuggestions(Meaning meaning) {
        var near = new ArrayList<>(meaning.otherReadings());
        for (var words : meaning.notUnderstood()) {
            if (near.size() < SUGGESTIONS) {
                near.addAll(names.nearest(words, entry -> entry.as().equals("source"), SUGGESTIONS - near.size()));
            }
        }
        return new Meaning(meaning.question(), meaning.understood(), meaning.notUnderstood(), List.copyOf(near));
    }
}
