package pairwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.advice.Knowledge;
import pairwright.catalogue.Shown;
import pairwright.model.Catalogue;
import pairwright.model.Character;
import pairwright.model.Limits;
import pairwright.model.Naming;
import pairwright.model.Question;
import pairwright.model.Reading;
import pairwright.model.Source;
import pairwright.model.Vocabulary;
import pairwright.session.Seat;

/** What is said of a seat in words: what is played, how, and the sound that is wanted. Names are taken as they are; whatever else is read as a question is. */
final class SeatWords {
    private static final int NEAREST = 3;
    private static final String PART = "\\s*[,;]\\s*";

    private final Knowledge known;
    private final Catalogue catalogue;
    private final Vocabulary vocabulary;

    /**
     * What was understood.
     *
     * @param source id; null for none
     * @param fault what was not understood and what to do; null for nothing
     */
    record Meant(String source, List<String> ways, List<String> dynamics, List<String> character, List<String> circumstances, Limits limits, String fault) {
        static final Meant NOTHING = new Meant(null, List.of(), List.of(), List.of(), List.of(), Limits.NONE, null);

        Meant wrong(String says) {
            return new Meant(source, ways, dynamics, character, circumstances, limits, says);
        }

        /** Both; the source, the limits and the fault are those of this one where it has any. */
        Meant and(Meant other) {
            return new Meant(source == null ? other.source : source, joined(ways, other.ways), joined(dynamics, other.dynamics), joined(character, other.character),
                    joined(circumstances, other.circumstances), limits.equals(Limits.NONE) ? other.limits : limits, fault == null ? other.fault : fault);
        }

        private static List<String> joined(List<String> some, List<String> more) {
            Set<String> all = new LinkedHashSet<>(some);
            all.addAll(more);
            return List.copyOf(all);
        }
    }

    SeatWords(Knowledge known) {
        this.known = known;
        this.catalogue = known.catalogue();
        this.vocabulary = catalogue.words();
    }

    /** What is played: a source, or a sentence as one asks it, such as "brushed snare, dark". */
    Meant what(String text) {
        for (Source source : catalogue.sources().values()) {
            if (isCalled(text, source.id(), source.name())) {
                return new Meant(source.id(), List.of(), List.of(), List.of(), List.of(), Limits.NONE, null);
            }
        }
        var meaning = known.reader().read(text);
        Question question = meaning.question();
        Meant meant = meant(question);
        if (question.source() == null) {
            List<String> near = known.reader().nearest(text, NEAREST * 4).stream().filter(one -> catalogue.sources().containsKey(one.id())).map(Reading::name).distinct()
                    .limit(NEAREST).toList();
            return meant.wrong("\u201c" + Shown.of(text) + "\u201d is no source" + (near.isEmpty() ? ". Write it as you would ask for it, such as tenor saxophone"
                    : ". Maybe " + near.stream().map(Naming::small).collect(Collectors.joining(" or "))));
        }
        return meaning.notUnderstood().isEmpty() ? meant : meant.wrong(catalogue.sources().get(question.source()).name() + " was understood, but not \u201c"
                + Shown.of(String.join(" ", meaning.notUnderstood())) + "\u201d. Take it out, or write it among the notes");
    }

    private static Meant meant(Question question) {
        return new Meant(question.source(), question.ways(), question.dynamics(), question.character(), question.circumstances(), question.limits(), null);
    }

    /** How it is played: ways, how loud, circumstances, apart by commas. */
    Meant how(String source, String text) {
        return parts(source, text, part -> {
            List<String> ways = source == null ? List.of() : catalogue.sources().get(source).ways().stream().map(way -> way.id())
                    .filter(id -> isCalled(part, id, PartsOf.wayName(vocabulary, id))).toList();
            return new Meant(null, ways, named(part, vocabulary.dynamics(), Vocabulary.Dynamic::id, Vocabulary.Dynamic::name), List.of(),
                    named(part, vocabulary.circumstances(), Vocabulary.Circumstance::id, Vocabulary.Circumstance::name), Limits.NONE, null);
        }, "is no way to play it that is known" + waysOf(source));
    }

    private String waysOf(String source) {
        List<String> names = source == null ? List.of() : catalogue.sources().get(source).ways().stream().map(way -> Naming.small(PartsOf.wayName(vocabulary, way.id()))).toList();
        return names.isEmpty() ? ". Take it out, or write it among the notes" : ". Known are: " + String.join(", ", names);
    }

    /** The sound that is wanted, apart by commas. */
    Meant character(String source, String text) {
        return parts(source, text, part -> new Meant(null, List.of(), List.of(), named(part, catalogue.characters().values(), Character::id, Character::name), List.of(),
                Limits.NONE, null), "is no character that is known. All of them are at /characters");
    }

    private Meant parts(String source, String text, Function<String, Meant> byName, String unknown) {
        Meant all = Meant.NOTHING;
        List<String> not = new ArrayList<>();
        for (String part : text.strip().split(PART)) {
            Meant one = part.isEmpty() ? Meant.NOTHING : byName.apply(part);
            if (one.equals(Meant.NOTHING) && !part.isEmpty()) {
                one = asked(source, part);
            }
            if (one.equals(Meant.NOTHING) && !part.isEmpty()) {
                not.add("\u201c" + Shown.of(part) + "\u201d");
            }
            all = all.and(one);
        }
        return not.isEmpty() ? all : all.wrong(String.join(", ", not) + " " + unknown);
    }

    /** The same in other words, as they stand in a question; nothing where a word of it says nothing. */
    private Meant asked(String source, String part) {
        String named = source == null ? "voice" : catalogue.sources().get(source).name();
        var meaning = known.reader().read(named + ", " + part);
        Meant meant = meant(meaning.question());
        return !meaning.notUnderstood().isEmpty() || meant.ways().isEmpty() && meant.dynamics().isEmpty() && meant.character().isEmpty() && meant.circumstances().isEmpty() ? Meant.NOTHING
                : new Meant(null, meant.ways(), meant.dynamics(), meant.character(), meant.circumstances(), Limits.NONE, null);
    }

    private static <T> List<String> named(String text, Iterable<T> entries, Function<T, String> id, Function<T, String> name) {
        List<String> found = new ArrayList<>();
        entries.forEach(entry -> {
            if (isCalled(text, id.apply(entry), name.apply(entry))) {
                found.add(id.apply(entry));
            }
        });
        return found;
    }

    private static boolean isCalled(String text, String id, String name) {
        return text.equalsIgnoreCase(id) || text.toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT));
    }

    /** What a seat plays, by name. */
    String whatOf(Seat seat) {
        return seat.source() == null ? "" : catalogue.sources().containsKey(seat.source()) ? catalogue.sources().get(seat.source()).name() : seat.source();
    }

    String howOf(Seat seat) {
        return Stream.of(seat.ways().stream().map(id -> PartsOf.wayName(vocabulary, id)),
                names(seat.dynamics(), vocabulary.dynamics().stream().collect(Collectors.toMap(Vocabulary.Dynamic::id, Vocabulary.Dynamic::name))::get),
                names(seat.circumstances(), vocabulary.circumstances().stream().collect(Collectors.toMap(Vocabulary.Circumstance::id, Vocabulary.Circumstance::name))::get))
                .flatMap(names -> names).map(Naming::small).collect(Collectors.joining(", "));
    }

    String characterOf(Seat seat) {
        return names(seat.character(), id -> catalogue.characters().containsKey(id) ? catalogue.characters().get(id).name() : null).map(Naming::small).collect(Collectors.joining(", "));
    }

    private static Stream<String> names(List<String> ids, Function<String, String> name) {
        return ids.stream().map(id -> Objects.requireNonNullElse(name.apply(id), id));
    }
}
