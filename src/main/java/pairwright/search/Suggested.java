package pairwright.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import pairwright.model.Meaning;
import pairwright.model.Naming;
import pairwright.model.Reading;
import pairwright.model.Suggestion;

/** The suggestions for one sentence so far. A phrase becomes one only where the whole sentence, with it, is understood as it should be. Used once. */
final class Suggested {
    /** What has a name that people say; a limit has a description. */
    private static final Set<String> NAMED = Set.of("source", "neighbour", "room", "character", "way", "technique", "dynamic");

    private final SentenceReader reader;
    private final String typed;
    private final List<Suggestion> list = new ArrayList<>(Suggester.MOST);
    private final Set<String> meanings = new HashSet<>();
    private final Map<String, List<Speller.Known>> near = new HashMap<>();

    Suggested(SentenceReader reader, String typed) {
        this.reader = reader;
        this.typed = typed;
    }

    List<Suggestion> list() {
        return List.copyOf(list);
    }

    boolean isEmpty() {
        return list.isEmpty();
    }

    boolean isFull() {
        return list.size() >= Suggester.MOST;
    }

    /**
     * Takes a phrase if it holds.
     *
     * @param head what is understood before it
     * @param before the sentence up to it
     * @param lead words before the phrase that belong to the suggestion: "next to the "
     * @param word that led to it, if it is another than the name; else null
     * @return whether it is a suggestion now, or was one before
     */
    boolean take(Head head, String before, String lead, Phrase phrase, String word) {
        String text = lead + phrase.text();
        String sentence = before + (before.isEmpty() || Character.isWhitespace(before.charAt(before.length() - 1)) ? "" : " ") + text;
        if (sentence.length() > Suggester.LONGEST || Unfinished.plain(sentence).equals(Unfinished.plain(typed))) {
            return false;
        }
        Meaning meaning = reader.meaning(sentence(sentence));
        Reading reading = meaning.understood().stream().filter(one -> sentence.endsWith(one.words()) && isMeant(head, phrase, one, text)).findFirst()
                .orElse(null);
        if (reading == null || head.source() != null && !head.source().equals(meaning.question().source()) || head.says(reading.as(), reading.id())
                || isAmbiguous(phrase, reading, meaning)) {
            return false;
        }
        if (meanings.add(reading.as() + " " + reading.id())) {
            String led = word == null || !NAMED.contains(reading.as()) ? null : head.isAltered() ? reading.words() : word;
            list.add(new Suggestion(sentence, text, reading.as(), reading.id(), reading.name(),
                    led == null || led.equalsIgnoreCase(reading.name()) ? null : led + " \u2192 " + Naming.small(reading.name())));
        }
        return true;
    }

    /** Cut and tagged; what misspelt words in it may stand for is looked up once for all. */
    Sentence sentence(String text) {
        return reader.sentence(text, near);
    }

    /** Another word for several sources is no answer to which of them; the name is. */
    private static boolean isAmbiguous(Phrase phrase, Reading reading, Meaning meaning) {
        return phrase.kind() == Kind.SOURCE && !phrase.isName()
                && meaning.otherReadings().stream().anyMatch(other -> reading.words().endsWith(other.words()) && !other.id().equals(reading.id()));
    }

    /** Puts those of one kind together, from a place on; which kind came first stays first. */
    void gatherKinds(int from) {
        List<Suggestion> tail = list.subList(from, list.size());
        List<String> kinds = tail.stream().map(Suggestion::as).distinct().toList();
        tail.sort(Comparator.comparingInt(one -> kinds.indexOf(one.as())));
    }

    private boolean isMeant(Head head, Phrase phrase, Reading reading, String text) {
        boolean isOfKind = switch (phrase.kind()) {
            case SOURCE -> reading.as().equals("source") || reading.as().equals("neighbour");
            case FAMILY -> reading.as().equals("limit") || reading.as().equals("wish");
            case QUANTITY -> reading.as().equals("limit");
            default -> reading.as().equals(phrase.kind().name().toLowerCase(Locale.ROOT));
        };
        boolean isWhole = phrase.kind() == Kind.SOURCE ? reading.words().endsWith(phrase.text()) : reading.words().length() >= text.length();
        boolean isIt = reading.id().equals(phrase.id()) || phrase.kind() == Kind.FAMILY || head.isAltered() && phrase.kind() != Kind.SOURCE;
        return isOfKind && isWhole && isIt;
    }
}
