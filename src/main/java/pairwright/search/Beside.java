package pairwright.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pairwright.model.Neighbour;

/** Who plays beside what is recorded. */
final class Beside {

    /** How far the source may stand from the words that make it a neighbour, in words. */
    private static final int NEIGHBOUR_REACH = 5;
    private static final int DISTANCE_REACH = 5;
    private static final int BEFORE_REACH = 5;

    private final Lexicon lexicon;
    private final Sentence sentence;
    private final Draft draft;
    private final AskBack askBack;
    private final List<Amounts.Amount> distances;
    private final List<Amounts.Amount> free;

    Beside(Lexicon lexicon, Sentence sentence, Draft draft, AskBack askBack, Amounts amounts) {
        this.lexicon = lexicon;
        this.sentence = sentence;
        this.draft = draft;
        this.askBack = askBack;
        distances = amounts.that("distanceM");
        free = new ArrayList<>(distances.stream().filter(amount ->
                amount.value() >= Neighbour.LEAST_DISTANCE_M && amount.value() <= Neighbour.MOST_DISTANCE_M).toList());
    }

    /** @param sources all that are named; those that turn out to be neighbours are taken out */
    List<Neighbour> neighbours(List<Tag> sources) {
        var neighbours = new ArrayList<Neighbour>();
        for (var words : sentence.tags()) {
            if (words.kind() == Kind.BEFORE_NEIGHBOUR) {
                namedAfter(words, sources).forEach(source -> neighbours.add(neighbour(words, source, sources)));
            } else if (words.kind() == Kind.AFTER_NEIGHBOUR && sources.size() > 1 && !draft.isUsed(words)) {
                namedBefore(words, sources).ifPresent(source -> neighbours.add(neighbour(words, source, sources)));
            }
        }
        return neighbours;
    }

    /** The source after "next to", and those joined to it by "and" as long as one is left to be recorded. */
    private List<Tag> namedAfter(Tag words, List<Tag> sources) {
        var named = new ArrayList<Tag>();
        for (var source : List.copyOf(sources)) {
            boolean isFirst = named.isEmpty() && source.first() >= words.end() && source.first() - words.end() <= NEIGHBOUR_REACH
                    && !sentence.isBroken(words.end() - 1, source.first());
            if (isFirst && isPlayedSo(words, source)) {
                draft.use(words);
                return named;
            }
            boolean isJoined = !named.isEmpty() && sources.size() - named.size() > 1
                    && sentence.isJoined(named.get(named.size() - 1), source);
            if (isFirst || isJoined) {
                named.add(source);
            }
        }
        return named;
    }

    /** "Plays with brushes on the snare" says how it is played; "plays with a brushed snare" says who plays too. */
    private boolean isPlayedSo(Tag words, Tag source) {
        return sentence.tags(Kind.WAY).anyMatch(way -> way.end() > words.end() && way.end() < source.first()
                && sentence.isSmall(words.end(), way.first()) && sentence.isSmall(way.end(), source.first())
                && sentence.tags(Kind.MODIFIER).noneMatch(small -> small.first() >= way.end() && small.end() <= source.first()));
    }

    /** "Hats super loud right next to it": what stands between the name and the place is said of the neighbour. */
    private boolean isSaidOfIt(int first, int end) {
        for (int at = first; at < end; at++) {
            int word = at;
            if (!sentence.isSmall(at, at + 1) && aboutNeighbours().noneMatch(tag -> tag.covers(word))) {
                return false;
            }
        }
        return true;
    }

    private Stream<Tag> aboutNeighbours() {
        return sentence.tags().stream()
                .filter(tag -> tag.kind() == Kind.DYNAMIC || tag.kind() == Kind.WAY || tag.kind() == Kind.CHARACTER);
    }

    private Optional<Tag> namedBefore(Tag words, List<Tag> sources) {
        return sources.stream()
                .filter(source -> source.end() <= words.first() && words.first() - source.end() <= BEFORE_REACH)
                .filter(source -> isSaidOfIt(source.end(), words.first())
                        || distances.stream().anyMatch(amount -> amount.first() >= source.end() && amount.first() <= words.first()))
                .filter(source -> !sentence.isBroken(source.end() - 1, words.first()))
                .reduce((earlier, later) -> later);
    }

    private Neighbour neighbour(Tag words, Tag source, List<Tag> sources) {
        sources.remove(source);
        int first = Math.min(words.first(), source.first());
        int end = Math.max(words.end(), source.end());
        setAside(source, words.kind() == Kind.BEFORE_NEIGHBOUR ? words.end() : 0);
        if (words.kind() == Kind.AFTER_NEIGHBOUR) {
            aboutNeighbours().filter(tag -> tag.first() >= source.end() && tag.end() <= words.first()).forEach(draft::setAside);
        }
        var distance = free.stream()
                .filter(amount -> gap(amount, first, end) <= DISTANCE_REACH)
                .min(Comparator.comparingInt(amount -> gap(amount, first, end)));
        distance.ifPresent(free::remove);
        draft.use(words);
        draft.use(source);
        distance.ifPresent(amount -> draft.use(amount.first(), amount.end()));
        var name = lexicon.source(source.id()).name();
        // "8 feet, only dynamics, next to a trumpet": the limit between is no part of what is said of the trumpet
        boolean isOnePhrase = distance.isEmpty() || isContinuous(distance.get(), first, end);
        int from = distance.isPresent() && isOnePhrase ? Math.min(first, distance.get().first()) : first;
        int until = distance.isPresent() && isOnePhrase ? Math.max(end, distance.get().end()) : end;
        draft.tell(from, until, "neighbour", source.id(), name);
        if (!isOnePhrase) {
            draft.tell(distance.get().first(), distance.get().end(), "neighbour", source.id(), name);
        }
        if (source.ids().size() > 1) {
            source.ids().forEach(other -> draft.alsoReads(sentence.words(source), "neighbour", other, lexicon.source(other).name()));
            if (!sentence.words(source).equalsIgnoreCase(name)) {
                askBack.whichNeighbour(source);
            }
        }
        var usual = lexicon.neighbour(words.id());
        return new Neighbour(source.id(), distance.map(Amounts.Amount::value).orElse(usual.distanceM()), usual.angleDegrees());
    }

    private boolean isContinuous(Amounts.Amount amount, int first, int end) {
        boolean isBefore = amount.first() < first;
        return isBefore ? sentence.isSmall(amount.end(), first) : sentence.isSmall(end, amount.first());
    }

    private static int gap(Amounts.Amount amount, int first, int end) {
        return Math.max(0, Math.max(amount.first() - end, first - amount.end()));
    }

    /** What is said of a neighbour ("next to a loud amplifier") is not said of the source. */
    private void setAside(Tag neighbour, int from) {
        int at = neighbour.first();
        while (at > from && !sentence.tokens().get(at).opens()) {
            int before = at - 1;
            var about = aboutNeighbours().filter(tag -> tag.end() - 1 == before).toList();
            if (about.isEmpty() && !sentence.isSmall(before, at)) {
                return;
            }
            about.forEach(draft::setAside);
            at = before;
        }
    }
}
