package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.model.Catalogue;
import pairwright.model.Character;
import pairwright.model.Complaint;
import pairwright.model.Habit;
import pairwright.model.HabitRank;
import pairwright.model.MicType;
import pairwright.model.Naming;
import pairwright.model.PairRecipe;
import pairwright.model.Position;
import pairwright.model.Remedy;
import pairwright.model.Source;
import pairwright.model.Technique;
import pairwright.model.Vocabulary;
import pairwright.sheet.ReadingParts.Mention;

/** Where an entry is named by others. */
final class References {
    private final Desk desk;
    private final Catalogue catalogue;

    References(Desk desk) {
        this.desk = desk;
        this.catalogue = desk.catalogue();
    }

    /** Sources at which the trade ranks a type so. */
    List<Mention> habits(MicType mic, HabitRank rank) {
        return catalogue.sources().values().stream().flatMap(source -> source.habits().stream()
                .filter(habit -> habit.rank() == rank && habit.micType().equals(mic.id()))
                .map(habit -> new Mention(desk.at().source(source), "", when(source, habit), desk.measures().sentence(habit.why())))).toList();
    }

    /** Pairs at sources that name a type. */
    List<Mention> pairs(MicType mic) {
        List<Mention> found = new ArrayList<>();
        for (Source source : catalogue.sources().values()) {
            for (PairRecipe pair : source.pairs()) {
                boolean isFirst = pair.first().micTypes().contains(mic.id());
                boolean isSecond = pair.second().micTypes().contains(mic.id());
                if (isFirst || isSecond) {
                    found.add(new Mention(desk.at().source(source), techniqueName(pair) + ", " + (isFirst && isSecond ? "either" : isFirst ? "first" : "second"),
                            place(source, (isFirst ? pair.first() : pair.second()).position()), desk.measures().sentence(pair.why())));
                }
            }
        }
        return found;
    }

    /** Sources whose pairs use a technique. */
    List<Mention> pairs(Technique technique) {
        return catalogue.sources().values().stream().flatMap(source -> source.pairs().stream()
                .filter(pair -> pair.technique().equals(technique.id()))
                .map(pair -> new Mention(desk.at().source(source), pair.seldom() ? "seldom" : "",
                        place(source, pair.first().position()) + "; " + place(source, pair.second().position()), desk.measures().sentence(pair.why())))).toList();
    }

    /** Complaints with a move that is only for such microphones. */
    List<Mention> complaints(MicType mic) {
        return complaints(remedy -> remedy.micFamilies().contains(mic.family()));
    }

    /** Complaints with a move that is only for such a source. */
    List<Mention> complaints(Source source) {
        return complaints(remedy -> remedy.sources().contains(source.id()) || remedy.sourceFamilies().contains(source.family()));
    }

    /** Words that may mean a source, and what else they may mean. */
    List<Mention> ambiguities(Source source) {
        return catalogue.words().ambiguities().stream().filter(one -> one.readings().contains(source.id()))
                .flatMap(one -> one.readings().stream().filter(reading -> !reading.equals(source.id())).map(catalogue.sources()::get)
                        .filter(other -> other != null)
                        .map(other -> new Mention(desk.at().source(other), "\u201c" + one.words().get(0) + "\u201d", "", desk.measures().sentence(one.says()))))
                .toList();
    }

    /** Characters that contradict one, whichever of the two says so. */
    List<Mention> against(Character character) {
        return catalogue.characters().values().stream()
                .filter(other -> !other.id().equals(character.id()) && (character.against().contains(other.id()) || other.against().contains(character.id())))
                .map(other -> new Mention(desk.at().character(other), "", "", desk.measures().sentence(other.says()))).toList();
    }

    /** What is wanted instead where there is too much of a character, and what too much of is mended by it. */
    List<Mention> opposites(Character character) {
        List<Mention> found = new ArrayList<>();
        for (Vocabulary.Opposite opposite : catalogue.words().opposites()) {
            Character much = catalogue.characters().get(opposite.character());
            Character wanted = catalogue.characters().get(opposite.wants());
            if (much != null && wanted != null && much != wanted && much.id().equals(character.id())) {
                found.add(new Mention(desk.at().character(wanted), "wanted where it is too " + character.name().toLowerCase(Locale.ROOT), "", ""));
            } else if (much != null && wanted != null && much != wanted && wanted.id().equals(character.id())) {
                found.add(new Mention(desk.at().character(much), "too much of it asks for this", "", ""));
            }
        }
        return found;
    }

    private List<Mention> complaints(Predicate<Remedy> names) {
        List<Mention> found = new ArrayList<>();
        for (Complaint complaint : catalogue.complaints().values()) {
            complaint.moves().stream().filter(names).forEach(move -> found.add(new Mention(desk.at().complaint(complaint),
                    ReadingWords.move(move.by()), desk.measures().sentence(move.says()), desk.measures().sentence(move.why()))));
        }
        return found;
    }

    /** The circumstances of a habit, apart by semicolons. */
    String when(Source source, Habit habit) {
        Stream<String> all = Stream.of(
                habit.positions().stream().map(position -> place(source, position)).collect(Collectors.joining(" or ")),
                habit.patterns().stream().map(ReadingWords::pattern).collect(Collectors.joining(" or ")),
                habit.onlyWays().isEmpty() ? "" : "played " + habit.onlyWays().stream().map(this::way).collect(Collectors.joining(" or ")),
                habit.withinM() == null ? "" : "within " + desk.visit().reader().distance(habit.withinM()),
                habit.beyondM() == null ? "" : "beyond " + desk.visit().reader().distance(habit.beyondM()),
                habit.unlessPadded() ? "without a pad" : "");
        return all.filter(one -> !one.isEmpty()).collect(Collectors.joining("; "));
    }

    String way(String id) {
        return catalogue.words().ways().stream().filter(way -> way.id().equals(id)).map(way -> Naming.small(way.name()))
                .findFirst().orElse(id.replace('-', ' '));
    }

    private String techniqueName(PairRecipe pair) {
        Technique technique = catalogue.techniques().get(pair.technique());
        return technique == null ? pair.technique() : technique.name();
    }

    static String place(Source source, String position) {
        return source.positions().stream().filter(one -> one.id().equals(position)).map(Position::name).map(Naming::small)
                .findFirst().orElse(position);
    }
}
