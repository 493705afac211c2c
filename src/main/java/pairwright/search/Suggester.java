package pairwright.search;

import java.util.List;
import pairwright.model.Catalogue;
import pairwright.model.Suggestion;

/**
 * Completes a sentence while it is typed. What it suggests was read by the reader first, so that a suggestion is understood as it says. Built from
 * a catalogue on first use; any number of threads may ask it.
 */
public final class Suggester {
    /** Suggestions at most. */
    public static final int MOST = 8;
    /** Longer sentences are not completed. */
    public static final int LONGEST = 300;

    private final Catalogue catalogue;
    private final SentenceReader reader;
    private volatile Vocabularies vocabularies;

    /** What is made on first use. */
    record Vocabularies(Completions completions, Continuations continuations) {
    }

    /**
     * @param catalogue whose words are suggested
     * @param reader made from the same catalogue
     */
    public Suggester(Catalogue catalogue, SentenceReader reader) {
        this.catalogue = catalogue;
        this.reader = reader;
    }

    /**
     * How a sentence may go on: its unfinished end completed, then, where it may end here, what else may be said. A word that begins like none is tried
     * with one letter wrong, missing, too much or swapped.
     *
     * @param words what is typed so far, the cursor at its end
     * @return at most {@value #MOST}, best first, one of each meaning; none for a blank sentence or one of more than {@value #LONGEST} characters
     */
    public List<Suggestion> suggest(String words) {
        if (words.isBlank() || words.length() > LONGEST) {
            return List.of();
        }
        Vocabularies known = vocabularies();
        Suggested suggested = new Suggested(reader, words);
        Completing completing = new Completing(catalogue, reader, known, words, suggested);
        completing.complete();
        completing.goOn();
        return suggested.list();
    }

    private Vocabularies vocabularies() {
        Vocabularies made = vocabularies;
        if (made == null) {
            synchronized (this) {
                made = vocabularies;
                if (made == null) {
                    Completions completions = new Completions(catalogue);
                    made = new Vocabularies(completions, new Continuations(catalogue, completions));
                    vocabularies = made;
                }
            }
        }
        return made;
    }
}
