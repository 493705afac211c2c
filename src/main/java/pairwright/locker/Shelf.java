package pairwright.locker;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import pairwright.acoustics.MeasuredResponse;
import pairwright.acoustics.OctaveCurve;

/**
 * All units as they were at one revision, and what follows from them alone.
 *
 * @param revision of the units
 * @param units in the order of their labels
 * @param byId the same by id
 * @param mates of every unit that has one, by id
 * @param ownResponsesDb measured ones as octaves, by id
 */
record Shelf(long revision, List<Unit> units, Map<String, Unit> byId, Map<String, String> mates, Map<String, OctaveCurve> ownResponsesDb) {
    static final Comparator<Unit> BY_LABEL = Comparator.comparing(Unit::label, Said.AS_PEOPLE_COUNT).thenComparing(Unit::id);

    static Shelf of(long revision, List<Unit> units) {
        List<Unit> sorted = units.stream().sorted(BY_LABEL).toList();
        Map<String, Unit> byId = new LinkedHashMap<>();
        sorted.forEach(unit -> byId.put(unit.id(), unit));
        Map<String, OctaveCurve> own = new HashMap<>();
        sorted.stream().filter(unit -> unit.response().size() > 1).forEach(unit -> own.put(unit.id(), MeasuredResponse.octavesDb(
                unit.response().stream().mapToDouble(ResponsePoint::frequencyHz).toArray(),
                unit.response().stream().mapToDouble(ResponsePoint::levelDb).toArray())));
        return new Shelf(revision, sorted, byId, mates(sorted, byId), own);
    }

    /** Those that name each other first; then those where one names another that names nobody, each once. */
    private static Map<String, String> mates(List<Unit> units, Map<String, Unit> byId) {
        Map<String, String> mates = new HashMap<>();
        for (boolean mutual : new boolean[] {true, false}) {
            for (Unit unit : units) {
                Unit other = unit.pairMate() == null ? null : byId.get(unit.pairMate());
                boolean matched = other != null && unit.kind() == UnitKind.MIC && unit.micType().equals(other.micType())
                        && (mutual ? unit.id().equals(other.pairMate()) : other.pairMate() == null);
                if (matched && !mates.containsKey(unit.id()) && !mates.containsKey(other.id())) {
                    mates.put(unit.id(), other.id());
                    mates.put(other.id(), unit.id());
                }
            }
        }
        return Map.copyOf(mates);
    }

    /** What was typed or scanned: a tag is one unit, so is an id; else a serial or a label, which may be several. */
    List<Unit> scanned(String text) {
        String wanted = text == null ? "" : text.strip().toLowerCase(Locale.ROOT);
        if (wanted.isEmpty()) {
            return List.of();
        }
        List<Predicate<Unit>> ways = List.of(unit -> is(unit.tag(), wanted), unit -> is(unit.id(), wanted), unit -> is(unit.serial(), wanted) || is(unit.label(), wanted));
        return ways.stream().map(way -> units.stream().filter(way).collect(Collectors.toList())).filter(found -> !found.isEmpty()).findFirst().orElse(List.of());
    }

    private static boolean is(String word, String wanted) {
        return word != null && word.toLowerCase(Locale.ROOT).equals(wanted);
    }
}
