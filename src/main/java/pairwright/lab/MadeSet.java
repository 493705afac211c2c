package pairwright.lab;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pairwright.advice.Knowledge;
import pairwright.locker.BookingDraft;
import pairwright.locker.BookingKind;
import pairwright.locker.Changes;
import pairwright.locker.ExerciseSet;
import pairwright.locker.ExerciseSetDraft;
import pairwright.locker.Span;
import pairwright.model.Stock;

/** Draws exercises of what is there, and shares out what is free among their benches. */
final class MadeSet {
    /** So many times as many as are wanted are drawn, so that there is a choice of equally hard ones, but not more than so many beyond. */
    private static final int DRAWN_TIMES = 3;
    private static final int MOST_BEYOND = 40;

    private final Kind kind;
    private final Knowledge now;

    MadeSet(Kind kind, Knowledge now) {
        this.kind = kind;
        this.now = now;
    }

    /** The time of a class; without one an hour from now on, of which only counts what there is at all. */
    static Span span(Wanted wanted, Instant now) {
        return wanted.from() == null ? new Span(now, now.plus(Duration.ofHours(1))) : new Span(wanted.from(), wanted.until());
    }

    /** What can be had: of each type so many, and which, in the order they are to be handed out. Null for anything. */
    private record Free(Map<String, Deque<Stock.Held>> units) {
        Map<String, Integer> counts() {
            return units.entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey, type -> type.getValue().size(), (one, other) -> one, TreeMap::new));
        }
    }

    /**
     * What a class of that time may use: what is free for all of it. Without a time all that there is, but what is lost; without a locker anything.
     *
     * @param stock null for no locker
     */
    private static Free free(Wanted wanted, Stock stock) {
        boolean timed = wanted.from() != null;
        if (stock == null && !timed) {
            return null;
        }
        Map<String, Deque<Stock.Held>> units = new TreeMap<>();
        for (Stock.Held held : stock == null ? List.<Stock.Held>of() : stock.units()) {
            if (timed ? held.free() : held.free() || !held.out().why().equals("lost")) {
                units.computeIfAbsent(held.micType(), type -> new ArrayDeque<>()).add(held);
            }
        }
        return new Free(units);
    }

    /** More than are wanted. Where what is free runs out before there are enough, some more are drawn of what the best choice so far leaves over. */
    Candidates drawn(Wanted wanted, Stock stock) {
        // what is done on paper needs nothing in hand, so every type is good for it
        Free free = kind.info().handsOn() ? free(wanted, stock) : null;
        Map<String, Integer> counts = free == null ? null : free.counts();
        int many = wanted.benches() + Math.min(MOST_BEYOND, (DRAWN_TIMES - 1) * wanted.benches());
        List<Variant> drawn = new ArrayList<>(variants(wanted, wanted.seed(), counts).some(many));
        while (counts != null) {
            Benches benches = Benches.of(drawn, wanted.benches(), counts);
            int lacking = wanted.benches() - benches.chosen().size();
            Map<String, Integer> left = left(counts, benches.chosen());
            Set<Case> known = drawn.stream().map(Variant::drawn).collect(Collectors.toCollection(HashSet::new));
            List<Variant> more = lacking == 0 ? List.of() : variants(wanted, wanted.seed() + "/left " + benches.chosen().size(), left).some(lacking).stream()
                    .filter(variant -> known.add(variant.drawn())).toList();
            if (more.isEmpty()) {
                break;
            }
            drawn.addAll(more);
            if (Benches.of(drawn, wanted.benches(), counts).chosen().size() == benches.chosen().size()) {
                break;
            }
        }
        return new Candidates(wanted, drawn);
    }

    private Variants variants(Wanted wanted, String seed, Map<String, Integer> counts) {
        return new Variants(kind, Variants.Purpose.CLASS, seed, wanted.level(), new Lab(now, counts));
    }

    private static Map<String, Integer> left(Map<String, Integer> counts, List<Variant> chosen) {
        Map<String, Integer> left = new HashMap<>(counts);
        chosen.forEach(variant -> variant.exercise().kit().forEach(need -> left.merge(need.micType(), -need.units(), Integer::sum)));
        return left;
    }

    /** How many benches these would do for. */
    Benches benches(Candidates drawn, Stock stock) {
        Free free = kind.info().handsOn() ? free(drawn.wanted(), stock) : null;
        return Benches.of(drawn.variants(), drawn.wanted().benches(), free == null ? null : free.counts());
    }

    /**
     * Keeps them, with a booking of what they use.
     *
     * @param at what time it is
     * @throws DoesNotFit where there are not enough
     */
    ExerciseSet make(Changes changes, Candidates drawn, Instant at, String by) {
        Wanted wanted = drawn.wanted();
        Stock stock = changes.stock(span(wanted, at));
        Benches benches = benches(drawn, stock);
        if (benches.chosen().size() < wanted.benches()) {
            throw doesNotFit(wanted, benches, stock);
        }
        Free free = wanted.from() == null || !kind.info().handsOn() ? null : free(wanted, stock);
        List<ExerciseSet.Bench> kept = new ArrayList<>();
        Set<String> booked = new LinkedHashSet<>();
        for (Variant variant : benches.chosen()) {
            List<ExerciseSet.Kit> kit = kit(variant, free);
            kit.stream().filter(one -> one.unit() != null).forEach(one -> booked.add(one.unit()));
            kept.add(new ExerciseSet.Bench(kept.size() + 1, Written.of(variant.drawn()), variant.hardnessShare(), kit));
        }
        ExerciseSetDraft draft = new ExerciseSetDraft(wanted.kind(), wanted.level(), wanted.seed(), Variants.Purpose.CLASS.name(), wanted.from(), wanted.until(), wanted.opensAt(), kept);
        return changes.makeExercises(draft, booked.isEmpty() ? null : new BookingDraft(List.copyOf(booked), wanted.from(), wanted.until(), BookingKind.LAB,
                kind.info().name() + ", " + kept.size() + (kept.size() == 1 ? " bench" : " benches"), by, null));
    }

    /** What a bench takes, each unit once. */
    private static List<ExerciseSet.Kit> kit(Variant variant, Free free) {
        List<ExerciseSet.Kit> kit = new ArrayList<>();
        for (Need need : variant.exercise().kit()) {
            for (int i = 0; i < need.units(); i++) {
                Stock.Held unit = free == null ? null : free.units().get(need.micType()).removeFirst();
                kit.add(new ExerciseSet.Kit(need.micType(), unit == null ? null : unit.id(), unit == null ? null : unit.label()));
            }
        }
        return kit;
    }

    private DoesNotFit doesNotFit(Wanted wanted, Benches benches, Stock stock) {
        int fit = benches.chosen().size();
        Free free = kind.info().handsOn() ? free(wanted, stock) : null;
        List<DoesNotFit.Short> shortOf = free == null ? List.of() : new TreeMap<>(benches.missing()).entrySet().stream().map(lack -> {
            int there = free.counts().getOrDefault(lack.getKey(), 0);
            return new DoesNotFit.Short(lack.getKey(), now.catalogue().mics().get(lack.getKey()).name(), there + lack.getValue(), there);
        }).toList();
        String says = shortOf.isEmpty() ? noMore(wanted, benches, free) : doesFor(wanted, fit) + ". One bench more needs "
                + shortOf.stream().map(lack -> lack.needed() + " of " + lack.name() + " (" + lack.there() + " free)").collect(Collectors.joining(", "));
        return new DoesNotFit(says, wanted, fit, shortOf);
    }

    private String what(Wanted wanted) {
        return "\"" + kind.info().name() + "\" at level " + wanted.level();
    }

    private String doesFor(Wanted wanted, int fit) {
        return "What is free does for " + (fit == 0 ? "no bench" : fit + " of " + wanted.benches() + " benches") + " of " + what(wanted);
    }

    /** Where it is not a unit more of some type that is short. */
    private String noMore(Wanted wanted, Benches benches, Free free) {
        int fit = benches.chosen().size();
        if (free == null) {
            return "Only " + fit + " different exercises of " + what(wanted) + " come of this seed. Take another seed, or fewer benches";
        }
        Map<String, Integer> counts = free.counts();
        if (counts.isEmpty()) {
            return "No microphone is free, and every bench of " + what(wanted) + " needs some";
        }
        Map<String, Integer> left = left(counts, benches.chosen());
        left.values().removeIf(units -> units <= 0);
        return doesFor(wanted, fit) + ": " + (fit == 0 ? "no such exercise can be made of " + units(counts) : "what they leave over, " + units(left) + ", makes no other such exercise");
    }

    private static String units(Map<String, Integer> counts) {
        int units = counts.values().stream().mapToInt(Integer::intValue).sum();
        return units + (units == 1 ? " unit" : " units") + " of " + counts.size() + (counts.size() == 1 ? " type" : " types");
    }
}
