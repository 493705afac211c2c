package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pairwright.catalogue.Shown;
import pairwright.model.Fault;

/** What an address of the ask page says that no field is for: an unknown name is told, a known one with a value it cannot have is a fault. */
final class Strange {
    private static final int MOST_TOLD = 5;
    private static final Set<String> UNITS = Set.of("metric", "imperial");
    private static final Set<String> PARTS = Set.of("answer", "sure");

    private Strange() {
    }

    /** Names that mean nothing, in a sentence; empty where there are none. */
    static Optional<String> names(Visit visit) {
        List<String> unknown = visit.query().keySet().stream().filter(name -> !AskQuery.FIELDS.containsKey(name) && !name.equals("units") && !name.equals("part"))
                .toList();
        if (unknown.isEmpty()) {
            return Optional.empty();
        }
        List<String> said = new ArrayList<>();
        unknown.stream().limit(MOST_TOLD).forEach(name -> said.add(Shown.of(name + "=" + String.join(",", visit.query().get(name)))));
        if (unknown.size() > MOST_TOLD) {
            said.add((unknown.size() - MOST_TOLD) + " more");
        }
        return Optional.of("The address says " + String.join(" and ", said) + ", which means nothing here, so the answer does without it. Names it may use: "
                + String.join(", ", AskQuery.FIELDS.keySet()) + ", units.");
    }

    /** Values that measures and parts of the page cannot have. */
    static List<Fault> values(Visit visit) {
        List<Fault> faults = new ArrayList<>();
        visit.all("units").stream().filter(value -> !UNITS.contains(value)).findFirst()
                .ifPresent(value -> faults.add(new Fault("units", "\"" + Shown.of(value) + "\" is no set of measures. Use metric or imperial")));
        visit.all("part").stream().filter(value -> !PARTS.contains(value)).findFirst()
                .ifPresent(value -> faults.add(new Fault("part", "there is no part \"" + Shown.of(value) + "\" of this page. Leave it out for all of it")));
        return faults;
    }
}
