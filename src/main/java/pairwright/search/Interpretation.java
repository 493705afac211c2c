package pairwright.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import pairwright.model.Limits;
import pairwright.model.Meaning;
import pairwright.model.Neighbour;
import pairwright.model.Question;
import pairwright.model.Reading;

/** Weighs the phrases of one sentence against each other. Used once. */
final class Interpretation {

    /** How far the source may stand from the words that make it a neighbour, in words. */
    private static final int NEIGHBOUR_REACH = 5;
    private static final int DISTANCE_REACH = 5;
    private static final int SAME_THING_REACH = 4;
    /** Options that are shown where nobody says how many. */
    private static final int USUAL_OPTIONS = 3;

    private record Said(int start, Reading reading) {
    }

    /** A number and what it counts, as one phrase. */
    private record Amount(String id, double value, int first, int end) {
    }

    private final Lexicon lexicon;
    private final Sentence sentence;
    private final BitSet said = new BitSet();
    private final List<Said> understood = new ArrayList<>();
    private final List<Reading> others = new ArrayList<>();
    private final Set<Tag> denied = new LinkedHashSet<>();
    private final Set<Tag> aboutNeighbours = new LinkedHashSet<>();
    private final List<Amount> amounts;
    private Limits limits = Limits.NONE;

    Interpretation(Lexicon lexicon, Sentence sentence) {
        this.lexicon = lexicon;
        this.sentence = sentence;
        this.amounts = amounts();
    }

    Meaning meaning() {
        deny();
        var sources = new ArrayList<>(sentence.tags(Kind.SOURCE).filter(tag -> !denied.contains(tag)).toList());
        var neighbours = neighbours(sources);
        var circumstances = circumstances();
        var source = source(sources, circumstances);
        var ways = ways(source);
        var dynamics = dynamics();
        var room = room();
        var character = character();
        limits();
        understood.sort(Comparator.comparingInt(Said::start));
        var question = new Question(sentence.text(), source, ways, dynamics, room, character, limits, neighbours, circumstances,
                USUAL_OPTIONS, null, null);
        return new Meaning(question, understood.stream().map(Said::reading).toList(), notUnderstood(), List.copyOf(others));
    }

    // what is counted or measured

    private List<Amount> amounts() {
        var found = new ArrayList<Amount>();
        var numbers = new TreeMap<Integer, Amount>();
        for (int at = 0; at < sentence.tokens().size(); at++) {
            var spelling = sentence.tokens().get(at).spelling();
            if (spelling.matches("\\d{1,6}([.,]\\d{1,6})?")) {
                numbers.put(at, new Amount("", Double.parseDouble(spelling.replace(',', '.')), at, at + 1));
            }
        }
        sentence.tags(Kind.NUMBER).forEach(tag -> numbers.put(tag.first(),
                new Amount("", Double.parseDouble(tag.id()), tag.first(), tag.end())));
        for (var number : numbers.values()) {
            sentence.tags(Kind.QUANTITY)
                    .filter(tag -> tag.first() >= number.end() && tag.first() <= number.end() + 1
                            && sentence.isSmall(number.end(), tag.first()) && !sentence.isBroken(number.first(), tag.first()))
                    .findFirst()
                    .ifPresent(tag -> found.add(new Amount(tag.id(),
                            number.value() * lexicon.quantity(tag.id()).factor(), number.first(), tag.end())));
        }
        return found;
    }

    private List<Amount> amounts(String sets) {
        return amounts.stream().filter(amount -> lexicon.quantity(amount.id()).sets().equals(sets)).toList();
    }

    // what is said not to be

    /** "No drums", "without brushes": neither asks for them. */
    private void deny() {
        sentence.tags().stream()
                .filter(tag -> tag.kind() == Kind.SOURCE || tag.kind() == Kind.WAY || tag.kind() == Kind.ROOM
                        || tag.kind() == Kind.CIRCUMSTANCE)
                .filter(tag -> isModified(tag, "without"))
                .forEach(denied::add);
    }

    private boolean isModified(Tag tag, String modifier) {
        return sentence.modifierBefore(tag).filter(found -> found.ids().contains(modifier)).isPresent();
    }

    private List<Tag> wanted(Kind kind) {
        return sentence.tags(kind).filter(tag -> !denied.contains(tag) && !aboutNeighbours.contains(tag)).toList();
    }

    // who plays beside it

    private List<Neighbour> neighbours(List<Tag> sources) {
        var neighbours = new ArrayList<Neighbour>();
        var free = new ArrayList<>(amounts("distanceM").stream().filter(amount ->
                amount.value() >= Neighbour.LEAST_DISTANCE_M && amount.value() <= Neighbour.MOST_DISTANCE_M).toList());
        for (var words : sentence.tags()) {
            if (words.kind() == Kind.BEFORE_NEIGHBOUR) {
                namedAfter(words, sources).forEach(source -> neighbours.add(neighbour(words, source, sources, free)));
            } else if (words.kind() == Kind.AFTER_NEIGHBOUR && sources.size() > 1) {
                namedBefore(words, sources).ifPresent(source -> neighbours.add(neighbour(words, source, sources, free)));
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
            boolean isJoined = !named.isEmpty() && sources.size() - named.size() > 1
                    && sentence.isJoined(named.get(named.size() - 1), source);
            if (isFirst || isJoined) {
                named.add(source);
            }
        }
        return named;
    }

    private Optional<Tag> namedBefore(Tag words, List<Tag> sources) {
        return sources.stream()
                .filter(source -> source.end() <= words.first() && words.first() - source.end() <= 3)
                .filter(source -> sentence.isSmall(source.end(), words.first())
                        || amounts("distanceM").stream().anyMatch(amount -> amount.first() >= source.end()
                                && amount.first() <= words.first()))
                .filter(source -> !sentence.isBroken(source.end() - 1, words.first()))
                .reduce((earlier, later) -> later);
    }

    private Neighbour neighbour(Tag words, Tag source, List<Tag> sources, List<Amount> free) {
        sources.remove(source);
        int first = Math.min(words.first(), source.first());
        int end = Math.max(words.end(), source.end());
        setAside(source, words.kind() == Kind.BEFORE_NEIGHBOUR ? words.end() : 0);
        var distance = free.stream()
                .filter(amount -> gap(amount, first, end) <= DISTANCE_REACH)
                .min(Comparator.comparingInt(amount -> gap(amount, first, end)));
        distance.ifPresent(free::remove);
        int from = distance.map(amount -> Math.min(first, amount.first())).orElse(first);
        int until = distance.map(amount -> Math.max(end, amount.end())).orElse(end);
        var usual = lexicon.neighbour(words.id());
        say(words.first(), words.end());
        say(source.first(), source.end());
        distance.ifPresent(amount -> say(amount.first(), amount.end()));
        var id = source.id();
        var text = sentence.words(from, until);
        understood.add(new Said(from, new Reading(text, "neighbour", id, lexicon.source(id).name())));
        if (source.ids().size() > 1) {
            source.ids().forEach(other -> alsoReads(sentence.words(source), "neighbour", other, lexicon.source(other).name()));
        }
        return new Neighbour(id, distance.map(Amount::value).orElse(usual.distanceM()), usual.angleDegrees());
    }

    private static int gap(Amount amount, int first, int end) {
        return Math.max(0, Math.max(amount.first() - end, first - amount.end()));
    }

    /** What is said of a neighbour ("next to a loud amplifier") is not said of the source. */
    private void setAside(Tag neighbour, int from) {
        int at = neighbour.first();
        while (at > from && !sentence.tokens().get(at).opens()) {
            int before = at - 1;
            var about = sentence.tags().stream()
                    .filter(tag -> tag.end() - 1 == before
                            && (tag.kind() == Kind.DYNAMIC || tag.kind() == Kind.WAY || tag.kind() == Kind.CHARACTER))
                    .toList();
            if (about.isEmpty() && !sentence.isSmall(before, at)) {
                return;
            }
            aboutNeighbours.addAll(about);
            at = before;
        }
    }

    // what is recorded

    private String source(List<Tag> sources, List<String> circumstances) {
        if (sources.isEmpty()) {
            return null;
        }
        var combined = combined(sources, circumstances);
        if (combined != null) {
            return combined;
        }
        var named = sources.get(0);
        var sameAgain = sources.stream().filter(other -> other != named && isSaidTogether(named, other)).toList();
        var readings = bestFirst(named, sameAgain);
        var source = readings.get(0);
        understand(named.first(), named.end(), "source", source, lexicon.source(source).name());
        var rest = new ArrayList<>(sources.subList(1, sources.size()));
        for (var other : List.copyOf(rest)) {
            if (other.ids().equals(List.of(source)) || sameAgain.contains(other) && other.ids().contains(source)) {
                understand(other.first(), other.end(), "source", source, lexicon.source(source).name());
                rest.remove(other);
            }
        }
        if (readings.size() > 1 || !rest.isEmpty()) {
            readings.forEach(id -> alsoReads(sentence.words(named), "source", id, lexicon.source(id).name()));
            offer(rest);
        }
        return source;
    }

    /** "A guitar through an amplifier" is one thing said twice; "a viola and a guitar" and "a viola, a guitar" are two. */
    private boolean isSaidTogether(Tag named, Tag other) {
        return other.first() >= named.end() && other.first() - named.end() <= SAME_THING_REACH
                && !sentence.isBroken(named.first(), other.first())
                && !sentence.isAndBetween(named, other);
    }

    private List<String> bestFirst(Tag named) {
        return bestFirst(named, List.of());
    }

    /** The readings of an ambiguous word: those that know how it is played go first, then those that are said again. */
    private List<String> bestFirst(Tag named, List<Tag> sameAgain) {
        var ways = wanted(Kind.WAY);
        return named.ids().stream()
                .sorted(Comparator.comparingLong((String id) -> ways.stream().filter(way -> knownWay(id, way).isPresent())
                        .count())
                        .thenComparingLong(id -> sameAgain.stream().filter(other -> other.ids().contains(id)).count()).reversed())
                .toList();
    }

    private Optional<String> knownWay(String source, Tag way) {
        return way.ids().stream().filter(id -> lexicon.knowsWay(source, id)).findFirst();
    }

    /** Sources that with something said of them are another source: a singer and a guitar of one player. */
    private String combined(List<Tag> sources, List<String> circumstances) {
        for (var combination : lexicon.combinations()) {
            var ways = wanted(Kind.WAY).stream().filter(tag -> tag.ids().contains(combination.with())).toList();
            if (ways.isEmpty() && !circumstances.contains(combination.with())) {
                continue;
            }
            var parts = new ArrayList<Tag>();
            for (var choices : combination.of()) {
                sources.stream().filter(tag -> !parts.contains(tag) && tag.ids().stream().anyMatch(choices::contains)).findFirst()
                        .ifPresent(parts::add);
            }
            boolean isFirst = parts.contains(sources.get(0));
            boolean knowsItself = !ways.isEmpty() && isFirst
                    && knownWay(bestFirst(sources.get(0)).get(0), ways.get(0)).isPresent();
            if (isFirst && !knowsItself && parts.size() == combination.of().size()) {
                parts.addAll(ways);
                parts.forEach(part -> understand(part.first(), part.end(), "source", combination.source(),
                        lexicon.source(combination.source()).name()));
                var rest = sources.stream().filter(tag -> !parts.contains(tag)).toList();
                if (!rest.isEmpty()) {
                    alsoReads(sentence.words(parts.get(0)), "source", combination.source(), lexicon.source(combination.source())
                            .name());
                    offer(rest);
                }
                return combination.source();
            }
        }
        return null;
    }

    private void offer(List<Tag> sources) {
        for (var source : sources) {
            say(source.first(), source.end());
            bestFirst(source).forEach(id -> alsoReads(sentence.words(source), "source", id, lexicon.source(id).name()));
        }
    }

    private List<String> ways(String source) {
        var ways = new LinkedHashSet<String>();
        for (var tag : wanted(Kind.WAY)) {
            Optional.ofNullable(source).flatMap(id -> knownWay(id, tag)).ifPresent(way -> {
                understand(tag.first(), tag.end(), "way", way, lexicon.wayName(way));
                ways.add(way);
            });
        }
        return List.copyOf(ways);
    }

    // how loud, where, and how it should sound

    /** One level for the whole: the strongest that is said first. */
    private List<String> dynamics() {
        String loudness = null;
        for (var tag : wanted(Kind.DYNAMIC)) {
            var modifier = sentence.modifierBefore(tag).filter(found -> !found.id().equals("only"));
            var dynamic = modifier.map(found -> switch (found.id()) {
                case "very" -> lexicon.stronger(tag.id());
                case "less", "not-too", "without" -> lexicon.weaker(tag.id());
                default -> lexicon.dynamic(tag.id());
            }).orElse(lexicon.dynamic(tag.id()));
            double levelDb = loudness == null ? 0 : lexicon.dynamic(loudness).levelDb();
            boolean isOpposed = levelDb * dynamic.levelDb() < 0;
            int first = modifier.map(Tag::first).orElse(tag.first());
            if (isOpposed) {
                say(first, tag.end());
                alsoReads(sentence.words(first, tag.end()), "dynamic", dynamic.id(), dynamic.name());
                continue;
            }
            understand(first, tag.end(), "dynamic", dynamic.id(), dynamic.name());
            if (loudness == null || Math.abs(dynamic.levelDb()) > Math.abs(levelDb)) {
                loudness = dynamic.id();
            }
        }
        return loudness == null ? List.of() : List.of(loudness);
    }

    private String room() {
        String room = null;
        for (var tag : wanted(Kind.ROOM)) {
            if (room == null || room.equals(tag.id())) {
                understand(tag.first(), tag.end(), "room", tag.id(), lexicon.roomName(tag.id()));
                room = tag.id();
            } else {
                say(tag.first(), tag.end());
                alsoReads(sentence.words(tag), "room", tag.id(), lexicon.roomName(tag.id()));
            }
        }
        return room;
    }

    private List<String> character() {
        var characters = new LinkedHashSet<String>();
        for (var tag : sentence.tags()) {
            // a word that names a character and a fault is taken for the character
            boolean isFault = tag.kind() == Kind.FAULT
                    && sentence.tags(Kind.CHARACTER).noneMatch(character -> character.covers(tag));
            if ((tag.kind() == Kind.CHARACTER || isFault) && !aboutNeighbours.contains(tag)) {
                var modifier = sentence.modifierBefore(tag).filter(found -> !found.id().equals("only"));
                wantedCharacter(tag, modifier).ifPresent(id -> {
                    understand(modifier.map(Tag::first)
                            .orElse(tag.first()), tag.end(), "character", id, lexicon.characterName(id));
                    characters.add(id);
                });
            }
        }
        return List.copyOf(characters);
    }

    /** Too much of a character, or less of it, asks for its opposite; a fault always does. */
    private Optional<String> wantedCharacter(Tag tag, Optional<Tag> modifier) {
        if (tag.kind() == Kind.FAULT) {
            return lexicon.opposite(tag.id());
        }
        return modifier.map(Tag::id).map(id -> switch (id) {
            case "too", "less", "without" -> lexicon.opposite(tag.id());
            case "not-too" -> lexicon.ratherThanTooMuch(tag.id());
            default -> Optional.of(tag.id());
        }).orElse(Optional.of(tag.id()));
    }

    private List<String> circumstances() {
        var circumstances = new LinkedHashSet<String>();
        for (var tag : wanted(Kind.CIRCUMSTANCE)) {
            tag.ids().forEach(id -> {
                understand(tag.first(), tag.end(), "circumstance", id, lexicon.circumstanceName(id));
                circumstances.add(id);
            });
        }
        return List.copyOf(circumstances);
    }

    // limits

    private void limits() {
        sentence.tags(Kind.LIMIT).forEach(tag -> {
            var words = lexicon.limit(tag.id());
            understand(tag.first(), tag.end(), "limit", words.id(), words.name());
            tighten(words.sets());
        });
        amounts("mics").stream()
                .filter(amount -> amount.value() >= 1 && amount.value() <= Limits.MOST_CHANNELS
                        && amount.value() == Math.rint(amount.value()))
                .forEach(amount -> {
                    measured(amount, Integer.toString((int) amount.value()));
                    tighten(channels((int) amount.value()));
                });
        amounts("preampGainDb").stream().filter(amount -> amount.value() <= Limits.MOST_GAIN_DB).forEach(amount -> {
            measured(amount, String.valueOf(Math.round(amount.value())));
            tighten(new Limits(null, null, amount.value(), null, null, null, null, null));
        });
        choices();
    }

    private void measured(Amount amount, String value) {
        understand(amount.first(), amount.end(), "limit", amount.id(), lexicon.quantity(amount.id()).name() + ": " + value);
    }

    private static Limits channels(int mics) {
        return new Limits(mics, null, null, null, null, null, null, null);
    }

    /** "No condensers", "only ribbons and dynamics", "ribbons only". */
    private void choices() {
        Tag before = null;
        String choice = null;
        for (var tag : sentence.tags()) {
            boolean isFamily = tag.kind() == Kind.FAMILY;
            boolean isType = tag.kind() == Kind.MIC_TYPE
                    && sentence.tags(Kind.FAMILY).noneMatch(family -> family.covers(tag));
            if (!isFamily && !isType) {
                continue;
            }
            var modifier = sentence.modifierBefore(tag).filter(found -> found.ids().contains("only")
                    || found.ids().contains("without"))
                    .or(() -> sentence.onlyAfter(tag));
            boolean isJoined = before != null && sentence.isJoined(before, tag);
            choice = modifier.map(found -> found.ids().contains("only") ? "only" : "without").orElse(isJoined ? choice : null);
            before = tag;
            if (choice != null) {
                choose(tag, modifier, choice.equals("only"));
            }
        }
    }

    private void choose(Tag tag, Optional<Tag> modifier, boolean only) {
        int first = Math.min(tag.first(), modifier.map(Tag::first).orElse(tag.first()));
        int end = Math.max(tag.end(), modifier.map(Tag::end).orElse(tag.end()));
        var id = (only ? "only-" : "without-") + tag.id();
        var prefix = only ? "Only: " : "Without: ";
        if (tag.kind() == Kind.FAMILY) {
            var family = lexicon.family(tag.id());
            understand(first, end, "limit", id, prefix + family.name());
            tighten(only ? new Limits(null, null, null, null, family.families(), null, null, null)
                    : new Limits(null, null, null, null, null, family.families(), null, null));
        } else {
            understand(first, end, "limit", id, prefix + lexicon.micTypeName(tag.id()));
            tighten(only ? new Limits(null, null, null, null, null, null, tag.ids(), null)
                    : new Limits(null, null, null, null, null, null, null, tag.ids()));
        }
        sentence.tags(Kind.NUMBER).filter(number -> only && first < number.first() && number.end() <= tag.first()).findFirst()
                .ifPresent(number -> tighten(channels((int) Double.parseDouble(number.id()))));
    }

    /** Of two limits on the same thing the tighter one counts. */
    private void tighten(Limits more) {
        limits = new Limits(
                least(limits.mics(), more.mics()),
                limits.phantom() == null ? more.phantom() : more.phantom() == null ? limits.phantom()
                        : Boolean.valueOf(limits.phantom() && more.phantom()),
                least(limits.preampGainDb(), more.preampGainDb()),
                least(negative(limits.preampNoiseDbu()), negative(more.preampNoiseDbu())) == null ? null
                        : negative(least(negative(limits.preampNoiseDbu()), negative(more.preampNoiseDbu()))),
                joined(limits.onlyFamilies(), more.onlyFamilies()),
                joined(limits.withoutFamilies(), more.withoutFamilies()),
                joined(limits.onlyMicTypes(), more.onlyMicTypes()),
                joined(limits.withoutMicTypes(), more.withoutMicTypes()));
    }

    private static <T extends Comparable<T>> T least(T one, T other) {
        return one == null || other != null && other.compareTo(one) < 0 ? other : one;
    }

    private static Double negative(Double value) {
        return value == null ? null : Double.valueOf(-value);
    }

    private static <T> List<T> joined(List<T> one, List<T> other) {
        var both = new LinkedHashSet<>(one);
        both.addAll(other);
        return List.copyOf(both);
    }

    // what is told

    private void understand(int first, int end, String as, String id, String name) {
        say(first, end);
        understood.add(new Said(first, new Reading(sentence.words(first, end), as, id, name)));
    }

    private void say(int first, int end) {
        said.set(first, end);
    }

    private void alsoReads(String words, String as, String id, String name) {
        if (others.stream().noneMatch(reading -> reading.as().equals(as) && reading.id().equals(id))) {
            others.add(new Reading(words, as, id, name));
        }
    }

    /** The words that said nothing, as they stand; a phrase that found no use is told whole. */
    private List<String> notUnderstood() {
        var words = new LinkedHashSet<String>();
        int at = 0;
        while (at < sentence.tokens().size()) {
            if (said.get(at) || sentence.isSmall(at, at + 1)) {
                at++;
                continue;
            }
            int end = endOfUnused(at);
            words.add(sentence.words(startOfDenial(at), end));
            at = end;
        }
        return List.copyOf(words);
    }

    /** The end of the phrase that starts here, and of those that reach on from inside it: "30 metres" and "metres away". */
    private int endOfUnused(int at) {
        int end = at + 1;
        for (int longer = reach(at, end); longer > end; longer = reach(at, end)) {
            end = longer;
        }
        int next = said.nextSetBit(at);
        return next < 0 ? end : Math.min(end, next);
    }

    private int reach(int from, int end) {
        int amount = amounts.stream().filter(found -> from <= found.first()
                && found.first() < end).mapToInt(Amount::end).max().orElse(end);
        return sentence.tags().stream().filter(tag -> from <= tag.first() && tag.first() < end && tag.kind() != Kind.IGNORED)
                .mapToInt(Tag::end).reduce(Math.max(end, amount), Math::max);
    }

    private int startOfDenial(int at) {
        return sentence.modifierBefore(at)
                .filter(found -> found.ids().contains("without")).map(Tag::first).orElse(at);
    }
}
