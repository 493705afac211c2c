package pairwright.search;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import pairwright.model.Catalogue;
import pairwright.model.MicFamily;
import pairwright.model.Source;
import pairwright.model.Technique;
import pairwright.model.Vocabulary;

/** The catalogue, ready to be asked by id while a sentence is weighed. */
final class Lexicon {

    private final Catalogue catalogue;
    private final Map<String, String> wayNames;
    private final Map<String, Vocabulary.LimitWords> limits;
    private final Map<String, Vocabulary.NeighbourWords> neighbours;
    private final Map<String, String> circumstanceNames;
    private final Map<String, Technique> techniques;
    private final Map<String, Vocabulary.FamilyWords> families;
    private final Map<String, Vocabulary.QuantityWords> quantities;
    private final Map<String, Vocabulary.Opposite> opposites;
    private final List<Vocabulary.Dynamic> dynamicsByLevel;

    Lexicon(Catalogue catalogue) {
        this.catalogue = catalogue;
        var words = catalogue.words();
        wayNames = byId(words.ways(), Vocabulary.WayWords::id, Vocabulary.WayWords::name);
        limits = byId(words.limits(), Vocabulary.LimitWords::id, Function.identity());
        neighbours = byId(words.neighbours(), Vocabulary.NeighbourWords::id, Function.identity());
        techniques = catalogue.techniques();
        circumstanceNames = byId(words.circumstances(), Vocabulary.Circumstance::id, Vocabulary.Circumstance::name);
        families = byId(words.families(), Vocabulary.FamilyWords::id, Function.identity());
        quantities = byId(words.quantities(), Vocabulary.QuantityWords::id, Function.identity());
        opposites = byId(words.opposites(), Vocabulary.Opposite::character, Function.identity());
        dynamicsByLevel = words.dynamics().stream().sorted(Comparator.comparingDouble(Vocabulary.Dynamic::levelDb)).toList();
    }

    /** The first entry of an id counts: two of the same id are a fault of the catalogue, told where it is read. */
    private static <T, V> Map<String, V> byId(List<T> entries, Function<T, String> id, Function<T, V> value) {
        return entries.stream().collect(Collectors.toMap(id, value, (first, second) -> first));
    }

    Source source(String id) {
        return catalogue.sources().get(id);
    }

    boolean knowsWay(String source, String way) {
        return source(source).ways() != null && source(source).ways().stream().anyMatch(known -> known.id().equals(way));
    }

    String wayName(String id) {
        return wayNames.get(id);
    }

    String roomName(String id) {
        return catalogue.rooms().get(id).name();
    }

    String characterName(String id) {
        return catalogue.characters().get(id).name();
    }

    String micTypeName(String id) {
        return catalogue.mics().get(id).name();
    }

    MicFamily micFamily(String type) {
        return catalogue.mics().get(type).family();
    }

    String circumstanceName(String id) {
        return circumstanceNames.get(id);
    }

    String techniqueName(String id) {
        return techniques.get(id).name();
    }

    Vocabulary.LimitWords limit(String id) {
        return limits.get(id);
    }

    Vocabulary.NeighbourWords neighbour(String id) {
        return neighbours.get(id);
    }

    Vocabulary.FamilyWords family(String id) {
        return families.get(id);
    }

    Vocabulary.QuantityWords quantity(String id) {
        return quantities.get(id);
    }

    List<Vocabulary.Combination> combinations() {
        return catalogue.words().combinations().stream()
                .filter(combination -> catalogue.sources().containsKey(combination.source())).toList();
    }

    /** What is wanted where there is too much of a character. */
    Optional<String> opposite(String character) {
        var opposite = opposites.get(character);
        return opposite != null ? existing(opposite.wants())
                : Optional.ofNullable(catalogue.characters().get(character)).flatMap(
                        entry -> entry.against() == null ? Optional.empty()
                                : entry.against().stream().findFirst()).flatMap(this::existing);
    }

    /** What is wanted where it should not become too much of a character. */
    Optional<String> ratherThanTooMuch(String character) {
        var opposite = opposites.get(character);
        return opposite == null || opposite.ratherThanTooMuch() == null ? opposite(character)
                : existing(opposite.ratherThanTooMuch());
    }

    private Optional<String> existing(String character) {
        return Optional.ofNullable(character).filter(catalogue.characters()::containsKey);
    }

    Vocabulary.Dynamic dynamic(String id) {
        return dynamicsByLevel.get(placeOf(id));
    }

    /** One step louder than loud, softer than soft. */
    Vocabulary.Dynamic stronger(String id) {
        return step(id, (int) Math.signum(dynamic(id).levelDb()));
    }

    /** One step toward the middle. */
    Vocabulary.Dynamic weaker(String id) {
        return step(id, -(int) Math.signum(dynamic(id).levelDb()));
    }

    private Vocabulary.Dynamic step(String id, int steps) {
        int place = Math.max(0, Math.min(dynamicsByLevel.size() - 1, placeOf(id) + steps));
        return dynamicsByLevel.get(place);
    }

    private int placeOf(String id) {
        int place = 0;
        while (!dynamicsByLevel.get(place).id().equals(id)) {
            place++;
        }
        return place;
    }
}
