package pairwright.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.catalogue.Shown;
import pairwright.locker.Locker;
import pairwright.locker.Unit;
import pairwright.locker.UnitDraft;
import pairwright.locker.UnitKind;
import pairwright.model.Fault;

/** The other unit of a matched pair as people name it: by label where that is enough, else by id. */
final class Mates {
    private static final int MOST_NAMED = 5;

    private final Locker locker;

    Mates(Locker locker) {
        this.locker = locker;
    }

    /** As it stands in a field, for the unit of an id; empty for none. */
    String shown(String id) {
        return id == null ? "" : locker.unit(id).map(this::named).orElse(id);
    }

    /** Units it may be matched with: those of its type; of any type where that is not said yet. */
    List<Choice> offers(UnitDraft unit) {
        List<Unit> units = locker.units();
        List<String> words = units.stream().flatMap(Mates::words).toList();
        var often = words.stream().collect(Collectors.groupingBy(word -> word, Collectors.counting()));
        return units.stream().filter(one -> one.kind() == UnitKind.MIC && !one.id().equals(unit.id()) && (unit.micType() == null || unit.micType().equals(one.micType())))
                .map(one -> new Choice(often.get(lower(one.label())) == 1 ? one.label() : one.id(), among(one), false)).toList();
    }

    /** All a unit goes by, each once. */
    private static Stream<String> words(Unit unit) {
        return Stream.of(unit.tag(), unit.id(), unit.serial(), unit.label()).filter(Objects::nonNull).map(Mates::lower).distinct();
    }

    private static String lower(String word) {
        return word.toLowerCase(Locale.ROOT);
    }

    private static String among(Unit unit) {
        return unit.tag() != null ? unit.label() + ", tag " + unit.tag() : unit.serial() != null ? unit.label() + ", serial " + unit.serial() : unit.label() + ", " + unit.id();
    }

    private String named(Unit unit) {
        List<Unit> found = locker.scanned(unit.label());
        return found.size() == 1 && found.get(0).id().equals(unit.id()) ? unit.label() : unit.id();
    }

    /** The id of what was typed; what is nobody's label, tag or id yet is left to be an id. */
    String read(String typed, List<Fault> faults) {
        List<Unit> found = typed == null ? List.of() : locker.scanned(typed);
        if (found.size() > 1) {
            faults.add(new Fault("/pairMate", found.size() + " units go by \u201c" + Shown.of(typed) + "\u201d. Name it by its id: "
                    + found.stream().limit(MOST_NAMED).map(Unit::id).collect(Collectors.joining(", "))));
            return null;
        }
        return found.isEmpty() ? typed : found.get(0).id();
    }
}
