package pairwright.search;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import pairwright.model.Catalogue;
import pairwright.model.Meaning;
import pairwright.model.Reading;

/** Reads what an engineer types. Built once from a catalogue; any number of threads may ask it. */
public final class SentenceReader {
    /** Where the build keeps the phrases of the catalogue as they are cut into words, among the classes. */
    public static final String CUTS = "META-INF/pairwright/cuts.bin";

    /** Words to each side that may belong to one phrase with a misspelt word. */
    private static final int AROUND = 5;
    private static final int SUGGESTIONS = 3;
    /** Unknown words that are asked back; a text of many is in another language, or no question. */
    private static final int MOST_ASKED_BACK = 6;
    /** Kinds of entries that are looked up by name. */
    private static final Set<String> SHOWN = Set.of("source", "room", "character", "mic-type");

    private final Tagger tagger;
    private final Speller speller;
    private final Lexicon lexicon;
    private final Ambiguities ambiguities;
    private final Names names;

    /** Takes the words of the catalogue's entries and of its vocabulary. */
    public SentenceReader(Catalogue catalogue) {
        this(catalogue, new Cutter(Cuts.shipped()));
    }

    private SentenceReader(Catalogue catalogue, Cutter cutter) {
        tagger = new Tagger(catalogue, cutter);
        speller = new Speller(tagger.correctStems(), Ordinary.words());
        lexicon = new Lexicon(catalogue);
        ambiguities = new Ambiguities(catalogue.words().ambiguities().stream()
                .filter(entry -> catalogue.sources().keySet().containsAll(entry.readings())).toList(), cutter);
        names = new Names(catalogue, speller, cutter);
    }

    /**
     * Writes how the phrases of a catalogue are cut into words, for {@link #CUTS}.
     *
     * @throws IOException where it cannot be written
     */
    public static void writeCuts(Catalogue catalogue, OutputStream to) throws IOException {
        var cuts = new TreeMap<String, List<Token>>();
        new SentenceReader(catalogue, new Cutter(cuts));
        Cuts.write(cuts, to);
    }

    /**
     * What a sentence means; whatever stays unclear is said in the answer. No text is too odd.
     *
     * @param text a sentence of up to 2,000 characters; a longer one is read too, but takes its time
     */
    public Meaning read(String text) {
        return withSuggestions(meaning(sentence(text)));
    }

    private Sentence sentence(String text) {
        return sentence(text, new HashMap<>());
    }

    /**
     * A sentence, cut and tagged.
     *
     * @param near what misspelt words may stand for, as far as it was looked up before; what is looked up is added
     */
    Sentence sentence(String text, Map<String, List<Speller.Known>> near) {
        var tokens = corrected(Text.tokens(text), near);
        return new Sentence(text, tokens, tagger.tags(tokens));
    }

    /** What a sentence means, without what comes near to the words that say nothing. */
    Meaning meaning(Sentence sentence) {
        return new Interpretation(lexicon, ambiguities, sentence).meaning();
    }

    /**
     * The entries whose names come nearest to some words, also unfinished or misspelt ones.
     *
     * @param words what is typed
     * @param most how many at most
     * @return sources, rooms, characters and mic types ("mic-type"), nearest first
     */
    public List<Reading> nearest(String words, int most) {
        return names.nearest(words, entry -> SHOWN.contains(entry.as()), most);
    }

    /** Words that say nothing as they stand are read as the word they may be a misspelling of. */
    private List<Token> corrected(List<Token> given, Map<String, List<Speller.Known>> near) {
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
                respell(tokens, at, near);
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
        if (joined.size() != 1 || tagger.tags(joined).stream().noneMatch(tag -> tag.kind().isCorrected() && tag.exact())) {
            return false;
        }
        tokens.set(one, new Token(first.start(), last.end(), joined.get(0).spelling(), joined.get(0).stem(), first.opens()));
        tokens.set(next, null);
        return true;
    }

    /** Of the words a misspelt one may stand for, the one that makes the longest phrase with its neighbours. */
    private void respell(List<Token> tokens, int at, Map<String, List<Speller.Known>> near) {
        var token = tokens.get(at);
        var around = new ArrayList<Token>();
        int place = 0;
        for (int beside = Math.max(0, at - AROUND); beside < Math.min(tokens.size(), at + AROUND + 1); beside++) {
            if (beside == at) {
                place = around.size();
            }
            if (tokens.get(beside) != null) {
                around.add(tokens.get(beside));
            }
        }
        var candidates = near.computeIfAbsent(token.spelling(), speller::near);
        int longest = candidates.isEmpty() ? 0 : coverage(around, place);
        if (longest > 0) {
            return;
        }
        for (var known : candidates) {
            around.set(place, token.readAs(known));
            int length = coverage(around, place);
            if (length > longest) {
                longest = length;
                tokens.set(at, around.get(place));
            }
        }
        if (longest == 0 && around.size() > 1) {
            // no spelling has a blank in it
            for (var known : near.computeIfAbsent(token.spelling() + " ", any -> speller.alike(token.spelling()))) {
                around.set(place, token.readAs(known));
                if (isNamedTogether(around, place)) {
                    tokens.set(at, around.get(place));
                    return;
                }
            }
        }
    }

    /** Whether a word and those beside it are the name of a source. */
    private boolean isNamedTogether(List<Token> tokens, int at) {
        return tagger.tags(tokens).stream().anyMatch(tag -> tag.kind() == Kind.SOURCE && tag.exact() && tag.length() > 1 && tag.covers(at));
    }

    /** Length of the longest phrase over a token; 0 if there is none that says something. */
    private int coverage(List<Token> tokens, int at) {
        return tagger.tags(tokens).stream().filter(tag -> tag.kind().isCorrected()
                && tag.covers(at)).mapToInt(Tag::length).max().orElse(0);
    }

    /** Where no source was understood the nearest are offered; words that are nearly known are asked back. */
    private Meaning withSuggestions(Meaning meaning) {
        boolean isUnanswered = meaning.question().source() == null && meaning.ask().isEmpty();
        var near = new ArrayList<>(meaning.otherReadings());
        var ask = new ArrayList<>(meaning.ask());
        int asked = 0;
        for (var words : meaning.notUnderstood()) {
            if (asked == MOST_ASKED_BACK) {
                break;
            }
            var choices = new LinkedHashSet<>(names.misspelt(words, SUGGESTIONS));
            if (isUnanswered && near.size() < SUGGESTIONS && !names.isOrdinary(words)) {
                var sources = names.close(words, SUGGESTIONS - near.size());
                near.addAll(sources);
                sources.stream().map(AskBack::named)
                        .filter(source -> choices.stream().noneMatch(choice -> choice.id().equals(source.id()))).forEach(choices::add);
            }
            if (!choices.isEmpty()) {
                ask.add(AskBack.unknown(words, List.copyOf(choices)));
                asked++;
            }
        }
        return new Meaning(meaning.question(), meaning.understood(), meaning.notUnderstood(), List.copyOf(near), List.copyOf(ask));
    }
}
