package pairwright.lab;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pairwright.session.allocation.Allocator;
import pairwright.session.allocation.Cap;
import pairwright.session.allocation.Choice;
import pairwright.session.allocation.Problem;
import pairwright.session.allocation.Seat;
import pairwright.session.allocation.Solution;

/**
 * Exercises for benches that work at one time: as many as what is free allows, and of those as equally hard as can be.
 *
 * @param chosen in the order they were drawn; fewer than were wanted where not more fit
 * @param missing where fewer fit: what one more bench would need beyond what is left, by type, at the least
 */
public record Benches(List<Variant> chosen, Map<String, Integer> missing) {
    private static final String BENCHES = "benches";
    /** One more bench counts for more than any difference in how hard they are. */
    private static final long BENCH_CENTIPOINTS = 1_000_000;
    private static final long HARDNESS_CENTIPOINTS = 10_000;

    public Benches {
        chosen = List.copyOf(chosen);
        missing = Map.copyOf(missing);
    }

    /**
     * Chooses.
     *
     * @param candidates different exercises
     * @param wanted how many benches
     * @param free how many units of each type can be had; null for as many as are wanted
     */
    public static Benches of(List<Variant> candidates, int wanted, Map<String, Integer> free) {
        List<Variant> alike = Variants.alike(candidates, wanted);
        if (free == null || fits(alike, free)) {
            return new Benches(alike, Map.of());
        }
        double middle = alike.stream().mapToDouble(Variant::hardnessShare).average().orElse(0);
        List<Variant> chosen = chosen(candidates, wanted, free, middle);
        return new Benches(chosen, chosen.size() < Math.min(wanted, candidates.size()) ? missing(candidates, chosen, free) : Map.of());
    }

    private static List<Variant> chosen(List<Variant> candidates, int wanted, Map<String, Integer> free, double middleShare) {
        List<Cap> caps = new ArrayList<>(List.of(new Cap(BENCHES, wanted, 0)));
        used(candidates).keySet().forEach(type -> caps.add(new Cap(type, free.getOrDefault(type, 0), 0)));
        List<Seat> seats = new ArrayList<>();
        for (int i = 0; i < candidates.size(); i++) {
            Map<String, Integer> takes = new HashMap<>(needs(candidates.get(i)));
            takes.put(BENCHES, 1);
            long worth = BENCH_CENTIPOINTS - Math.round(HARDNESS_CENTIPOINTS * Math.abs(candidates.get(i).hardnessShare() - middleShare));
            seats.add(new Seat("exercise " + i, false, List.of(new Choice("in", Choice.Use.FULL, worth, takes, List.of(), List.of()), Choice.out("out", 0))));
        }
        Optional<Solution> best = new Allocator().best(new Problem(seats, caps, List.of()));
        List<Variant> chosen = new ArrayList<>();
        for (int i = 0; best.isPresent() && i < candidates.size(); i++) {
            if (best.get().choices().get(i) == 0) {
                chosen.add(candidates.get(i));
            }
        }
        return chosen;
    }

    private static boolean fits(List<Variant> variants, Map<String, Integer> free) {
        return used(variants).entrySet().stream().allMatch(need -> need.getValue() <= free.getOrDefault(need.getKey(), 0));
    }

    private static Map<String, Integer> used(List<Variant> variants) {
        Map<String, Integer> used = new TreeMap<>();
        variants.forEach(variant -> needs(variant).forEach((type, units) -> used.merge(type, units, Integer::sum)));
        return used;
    }

    private static Map<String, Integer> needs(Variant variant) {
        Map<String, Integer> needs = new LinkedHashMap<>();
        variant.exercise().kit().forEach(need -> needs.merge(need.micType(), need.units(), Integer::sum));
        return needs;
    }

    /** Of the exercises that are not taken, what the one that comes nearest lacks. */
    private static Map<String, Integer> missing(List<Variant> candidates, List<Variant> chosen, Map<String, Integer> free) {
        Map<String, Integer> used = used(chosen);
        Map<String, Integer> least = null;
        for (Variant variant : candidates) {
            if (!chosen.contains(variant)) {
                Map<String, Integer> lacks = new TreeMap<>();
                needs(variant).forEach((type, units) -> {
                    int left = free.getOrDefault(type, 0) - used.getOrDefault(type, 0);
                    if (units > left) {
                        lacks.put(type, units - left);
                    }
                });
                if (least == null || total(lacks) < total(least)) {
                    least = lacks;
                }
            }
        }
        return least == null ? Map.of() : least;
    }

    private static int total(Map<String, Integer> units) {
        return units.values().stream().mapToInt(Integer::intValue).sum();
    }
}
