package pairwright.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import pairwright.model.Ask;
import pairwright.model.Reading;

/** What is made of one sentence so far: which words were used, what they were taken for, what else they may mean. Used once. */
final class Draft {

    private record Said(int start, Reading reading) {
    }

    private static final Set<String> PLACES = Set.of("in", "out");

    private final Sentence sentence;
    private final BitSet said = new BitSet();
    private final List<Said> understood = new ArrayList<>();
    private final List<Reading> others = new ArrayList<>();
    private final List<Ask> asks = new ArrayList<>();
    private final Set<Tag> setAside = new LinkedHashSet<>();

    Draft(Sentence sentence) {
        this.sentence = sentence;
    }

    /** A phrase that says nothing of the source: it is denied, or said of a neighbour. */
    void setAside(Tag tag) {
        setAside.add(tag);
    }

    boolean isSetAside(Tag tag) {
        return setAside.contains(tag);
    }

    /** The phrases of a kind that speak of the source. */
    List<Tag> wanted(Kind kind) {
        return sentence.tags(kind).filter(tag -> !setAside.contains(tag)).toList();
    }

    void understand(int first, int end, String as, String id, String name) {
        use(first, end);
        tell(first, end, as, id, name);
    }

    /** What words were taken for, where not all of those between the first and the last said something. */
    void tell(int first, int end, String as, String id, String name) {
        understood.add(new Said(first, new Reading(sentence.words(first, end), as, id, name)));
    }

    void understand(Tag tag, String as, String id, String name) {
        understand(tag.first(), tag.end(), as, id, name);
    }

    /** Words that did say something, whatever became of it. */
    void use(int first, int end) {
        said.set(first, end);
    }

    void use(Tag tag) {
        use(tag.first(), tag.end());
    }

    boolean isUsed(Tag tag) {
        int next = said.nextSetBit(tag.first());
        return next >= 0 && next < tag.end();
    }

    void alsoReads(String words, String as, String id, String name) {
        if (others.stream().noneMatch(reading -> reading.as().equals(as) && reading.id().equals(id))) {
            others.add(new Reading(words, as, id, name));
        }
    }

    void ask(Ask ask) {
        if (!asks.contains(ask)) {
            asks.add(ask);
        }
    }

    List<Reading> understood() {
        return understood.stream().sorted(Comparator.comparingInt(Said::start)).map(Said::reading).toList();
    }

    List<Reading> others() {
        return List.copyOf(others);
    }

    List<Ask> asks() {
        return List.copyOf(asks);
    }

    /** The words that said nothing, as they stand; a phrase that found no use is told whole. */
    List<String> notUnderstood(List<Amounts.Amount> amounts) {
        var words = new LinkedHashSet<String>();
        int at = 0;
        while (at < sentence.tokens().size()) {
            if (said.get(at) || sentence.isSmall(at, at + 1) && !isPlaceLeftOpen(at)) {
                at++;
                continue;
            }
            int end = endOfUnused(at, amounts);
            end = sentence.onlyAfter(end).filter(only -> !said.get(only.first())).map(Tag::end).orElse(end);
            words.add(sentence.words(startOfDenial(at), end));
            at = end;
        }
        return List.copyOf(words);
    }

    /** The end of the phrase that starts here, and of those that reach on from inside it: "30 metres" and "metres away". */
    private int endOfUnused(int at, List<Amounts.Amount> amounts) {
        int end = at + 1;
        for (int longer = reach(at, end, amounts); longer > end; longer = reach(at, end, amounts)) {
            end = longer;
        }
        int next = said.nextSetBit(at);
        return next < 0 ? end : Math.min(end, next);
    }

    private int reach(int from, int end, List<Amounts.Amount> amounts) {
        int amount = amounts.stream().filter(found -> from <= found.first()
                && found.first() < end).mapToInt(Amounts.Amount::end).max().orElse(end);
        return sentence.tags().stream().filter(tag -> from <= tag.first() && tag.first() < end && tag.kind() != Kind.IGNORED)
                .mapToInt(Tag::end).reduce(Math.max(end, amount), Math::max);
    }

    /** "Kick in" and "kick drum out, one mic" ask for a place; "bring the kick in" and "kick in a church" do not. */
    private boolean isPlaceLeftOpen(int at) {
        return PLACES.contains(sentence.tokens().get(at).spelling()) && !sentence.tokens().get(at).opens()
                && (at + 1 == sentence.tokens().size() || sentence.tokens().get(at + 1).opens())
                && sentence.tags(Kind.SOURCE).anyMatch(source -> source.end() == at
                        && (source.first() == 0 || sentence.tokens().get(source.first()).opens()));
    }

    private int startOfDenial(int at) {
        return sentence.modifierBefore(at)
                .filter(found -> found.ids().contains("without") || found.ids().contains("only") && !said.get(found.first())).map(Tag::first).orElse(at);
    }
}
