package pairwright.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/** What is recorded, and how it is played. */
final class SourceWords {

    private static final int SAME_THING_REACH = 4;
    /** Words between a player and the instrument that is played. */
    private static final int PLAYER_REACH = 8;

    private final Lexicon lexicon;
    private final Ambiguities ambiguities;
    private final Sentence sentence;
    private final Draft draft;
    private final AskBack askBack;
    private final List<Tag> clues = new ArrayList<>();
    private String used;

    SourceWords(Lexicon lexicon, Ambiguities ambiguities, Sentence sentence, Draft draft, AskBack askBack) {
        this.lexicon = lexicon;
        this.ambiguities = ambiguities;
        this.sentence = sentence;
        this.draft = draft;
        this.askBack = askBack;
    }

    /** A reading of an ambiguous word, and what speaks for it: the way of playing, that it is said again, other words, its own entry. */
    private record Weighed(String id, long ways, long again, List<Tag> clues, boolean own) {

        boolean isSaid(Weighed next) {
            return ways > next.ways || ways == next.ways && again > next.again;
        }

        boolean isPointedAt(Weighed next) {
            return clues.size() > next.clues.size();
        }
    }

    /**
     * "The drummer plays with brushes on the snare": who plays stands for the usual instrument only where no other one of its family follows.
     *
     * @param sources all that are recorded; the players whose instrument is named are taken out
     */
    void dropPlayers(List<Tag> sources) {
        for (var player : sources.stream().filter(tag -> sentence.tags(Kind.PLAYER).anyMatch(tag::covers)).toList()) {
            boolean isInstrumentNamed = sources.stream().anyMatch(other -> other.first() >= player.end()
                    && other.first() - player.end() <= PLAYER_REACH && !sentence.isBroken(player.first(), other.first())
                    && !sentence.isAndBetween(player, other) && other.ids().stream().noneMatch(player.ids()::contains)
                    && other.ids().stream().anyMatch(id -> isSameFamily(id, player)));
            if (isInstrumentNamed) {
                sources.remove(player);
                draft.use(player);
            }
        }
    }

    private boolean isSameFamily(String source, Tag player) {
        return player.ids().stream().anyMatch(id -> lexicon.source(id).family() == lexicon.source(source).family());
    }

    String source(List<Tag> sources, List<String> circumstances) {
        if (sources.isEmpty()) {
            return null;
        }
        used = combined(sources, circumstances);
        if (used == null) {
            used = first(sources);
        }
        return used;
    }

    private String first(List<Tag> sources) {
        var named = sources.get(0);
        var sameAgain = sources.stream().filter(other -> other != named && isSaidTogether(named, other)).toList();
        var readings = weighed(named, sameAgain);
        var best = readings.get(0);
        boolean isAmbiguous = readings.size() > 1;
        boolean isSaid = !isAmbiguous || best.isSaid(readings.get(1)) || isName(named, best.id());
        boolean isPointedAt = isAmbiguous && best.isPointedAt(readings.get(1));
        boolean isAnswered = isSaid || isPointedAt || ambiguities.of(sentence, named).filter(entry -> entry.farApart()).isEmpty();
        var ids = readings.stream().map(Weighed::id).toList();
        var rest = new ArrayList<>(sources.subList(1, sources.size()));
        if (!isAnswered) {
            draft.use(named);
            ids.forEach(id -> draft.alsoReads(sentence.words(named), "source", id, lexicon.source(id).name()));
            askBack.which(named, ids, null, List.of());
            offer(rest, null);
            return null;
        }
        draft.understand(named, "source", best.id(), lexicon.source(best.id()).name());
        for (var other : List.copyOf(rest)) {
            if (other.ids().equals(List.of(best.id())) || sameAgain.contains(other) && other.ids().contains(best.id())) {
                draft.understand(other, "source", best.id(), lexicon.source(best.id()).name());
                rest.remove(other);
            }
        }
        if (isAmbiguous || !rest.isEmpty()) {
            ids.forEach(id -> draft.alsoReads(sentence.words(named), "source", id, lexicon.source(id).name()));
        }
        if (!isSaid) {
            clues.addAll(isPointedAt ? best.clues() : List.of());
            askBack.which(named, ids, best.id(), isPointedAt ? best.clues() : List.of());
        }
        offer(rest, best.id());
        return best.id();
    }

    /** Whether words are the very name of a source, accents too: "flute" is no "flûte", which may be a recorder. */
    private boolean isName(Tag named, String source) {
        return sentence.words(named).equalsIgnoreCase(lexicon.source(source).name());
    }

    /** Whether a source is called just so, accents too: a "Flügel" is a piano, a "flugel" a horn. */
    private boolean isOwnWord(Tag named, String source) {
        return isName(named, source) || lexicon.source(source).words().stream().anyMatch(sentence.words(named)::equalsIgnoreCase);
    }

    /** "A guitar through an amplifier" is one thing said twice; "a viola and a guitar" and "a viola, a guitar" are two. */
    private boolean isSaidTogether(Tag named, Tag other) {
        return other.first() >= named.end() && other.first() - named.end() <= SAME_THING_REACH
                && !sentence.isBroken(named.first(), other.first())
                && !sentence.isAndBetween(named, other);
    }

    /** Best first; those that nothing speaks for stand in the order of the list. */
    private List<Weighed> weighed(Tag named, List<Tag> sameAgain) {
        var ways = draft.wanted(Kind.WAY);
        return named.ids().stream()
                .map(id -> new Weighed(id,
                        ways.stream().filter(way -> knownWay(id, way).isPresent()).count(),
                        sameAgain.stream().filter(other -> other.ids().contains(id)).count(),
                        named.ids().size() == 1 ? List.of() : ambiguities.clues(sentence, named, id),
                        isOwnWord(named, id)))
                .sorted(Comparator.comparingLong(Weighed::ways).thenComparingLong(Weighed::again)
                        .thenComparingInt(reading -> reading.clues().size()).thenComparing(Weighed::own).reversed())
                .toList();
    }

    private String best(Tag named) {
        return weighed(named, List.of()).get(0).id();
    }

    private Optional<String> knownWay(String source, Tag way) {
        return way.ids().stream().filter(id -> lexicon.knowsWay(source, id)).findFirst();
    }

    /** Sources that with something said of them are another source: a singer and a guitar of one player. */
    private String combined(List<Tag> sources, List<String> circumstances) {
        for (var combination : lexicon.combinations()) {
            var ways = draft.wanted(Kind.WAY).stream().filter(tag -> tag.ids().contains(combination.with())).toList();
            if (ways.isEmpty() && !circumstances.contains(combination.with())) {
                continue;
            }
            var parts = new ArrayList<Tag>();
            for (var choices : combination.of()) {
                sources.stream().filter(tag -> !parts.contains(tag) && tag.ids().stream().anyMatch(choices::contains)).findFirst()
                        .ifPresent(parts::add);
            }
            boolean isFirst = parts.contains(sources.get(0));
            boolean knowsItself = !ways.isEmpty() && isFirst && knownWay(best(sources.get(0)), ways.get(0)).isPresent();
            if (isFirst && !knowsItself && parts.size() == combination.of().size()) {
                parts.addAll(ways);
                var id = combination.source();
                parts.forEach(part -> draft.understand(part, "source", id, lexicon.source(id).name()));
                var rest = sources.stream().filter(tag -> !parts.contains(tag)).toList();
                if (!rest.isEmpty()) {
                    draft.alsoReads(sentence.words(parts.get(0)), "source", id, lexicon.source(id).name());
                    offer(rest, id);
                }
                return id;
            }
        }
        return null;
    }

    /** @param answered the source that is answered; null if none is */
    private void offer(List<Tag> rest, String answered) {
        for (var source : rest) {
            draft.use(source);
            weighed(source, List.of()).forEach(reading -> draft.alsoReads(sentence.words(source), "source", reading.id(),
                    lexicon.source(reading.id()).name()));
        }
        if (!rest.isEmpty() && answered != null) {
            askBack.others(answered, rest, rest.stream().map(this::best).toList());
        }
    }

    List<String> ways() {
        var ways = new LinkedHashSet<String>();
        for (var tag : draft.wanted(Kind.WAY)) {
            Optional.ofNullable(used).flatMap(id -> knownWay(id, tag)).ifPresent(way -> {
                draft.understand(tag, "way", way, lexicon.wayName(way));
                ways.add(way);
            });
        }
        return List.copyOf(ways);
    }

    /** Words that pointed at the source and said nothing else. Called when all else is understood. */
    void tellClues() {
        clues.stream().filter(clue -> !draft.isUsed(clue))
                .forEach(clue -> draft.understand(clue, "source", used, lexicon.source(used).name()));
    }
}
