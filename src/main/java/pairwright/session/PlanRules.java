package pairwright.session;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.LongSummaryStatistics;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import pairwright.model.Catalogue;
import pairwright.rules.Finding;
import pairwright.rules.LeftOut;
import pairwright.rules.PlanFact;
import pairwright.rules.PlannedArrival;
import pairwright.rules.PlannedInput;
import pairwright.rules.PlannedTwo;
import pairwright.rules.RuleBase;

/**
 * What the rules say of plans: the points that the search weighs, asked before it, and the reasons and cautions of a plan that was found. Computes
 * what they read and has no opinion. Safe to share between threads.
 */
final class PlanRules {
    private static final double TENTHS = 10;
    /** No two options are further apart than the corners and slopes of microphones reach. */
    private static final double FARTHEST_DB = 60;

    private final RuleBase rules;
    private final double clearContrastDb;
    private final double noContrastDb;
    private final Map<Boolean, Long> leftOut = new ConcurrentHashMap<>();
    private final Map<Double, Long> tooStrong = new ConcurrentHashMap<>();
    private final Map<Pairing, Long> twos = new ConcurrentHashMap<>();
    private final Map<Boolean, LongSummaryStatistics> ranges = new ConcurrentHashMap<>();

    /** @param catalogue says what a difference in tone is */
    PlanRules(RuleBase rules, Catalogue catalogue) {
        this.rules = rules;
        this.clearContrastDb = catalogue.custom("clear-contrast");
        this.noContrastDb = catalogue.custom("no-contrast");
    }

    /** What it costs that a seat gets no microphone, below 0, in hundredths of a point. */
    long leftOutCentipoints(Seat seat) {
        return leftOut.computeIfAbsent(seat.must(), must -> sum(rules.plan(false, List.of(new LeftOut(SeatNames.of(seat), must)))));
    }

    /** What it costs that the peaks of a line are so much over what its channel takes, below 0, in hundredths of a point. */
    long tooStrongCentipoints(double overDb) {
        return tooStrong.computeIfAbsent(InputLevel.tenth(overDb), over -> sum(rules.plan(false, List.of(new PlannedInput("", "", "", "", over)))));
    }

    /**
     * Two seats of whom the line-up says how they shall sound beside each other.
     *
     * @param first id
     * @param second id
     * @param apart whether they shall be told apart; else they are one section
     */
    record Two(String first, String second, boolean apart) {
    }

    /** Whom the line-up wants apart, and each of a section with the one named before; so a section of five counts four times, not ten. */
    static List<Two> twos(LineUp lineUp) {
        List<Two> twos = new ArrayList<>();
        lineUp.contrast().forEach(two -> twos.add(new Two(two.get(0), two.get(1), true)));
        for (List<String> section : lineUp.keep()) {
            for (int i = 1; i < section.size(); i++) {
                twos.add(new Two(section.get(i - 1), section.get(i), false));
            }
        }
        return List.copyOf(twos);
    }

    /**
     * What each option of one seat is worth beside each of another, in hundredths of a point. The rules are asked once for each case that differs in
     * what they read, and never again.
     *
     * @param apart whether the two shall be told apart; else they are one section
     * @return by option of the first and option of the second
     */
    long[][] twoCentipoints(boolean apart, List<Voice> first, List<Voice> second) {
        Pairing[][] pairings = new Pairing[first.size()][second.size()];
        Map<Pairing, PlannedTwo> open = new LinkedHashMap<>();
        for (int i = 0; i < first.size(); i++) {
            for (int j = 0; j < second.size(); j++) {
                Pairing pairing = Pairing.of(apart, first.get(i), second.get(j));
                pairings[i][j] = pairing;
                if (!twos.containsKey(pairing)) {
                    open.computeIfAbsent(pairing, one -> fact(one, "", ""));
                }
            }
        }
        ask(open);
        long[][] points = new long[first.size()][second.size()];
        for (int i = 0; i < first.size(); i++) {
            for (int j = 0; j < second.size(); j++) {
                points[i][j] = twos.get(pairings[i][j]);
            }
        }
        return points;
    }

    /** The same for one option each. */
    long twoCentipoints(boolean apart, Voice first, Voice second) {
        return twoCentipoints(apart, List.of(first), List.of(second))[0][0];
    }

    /**
     * A plan with all that the rules say of it: beside each line what there is to mind of it and of what it hears, beside each arrival what to do about
     * it, of the whole what concerns no single line, and as reasons what moved its score beside its options.
     *
     * @param plan with everything but that
     * @param catalogue as it is, nothing of it altered for any seat
     */
    Plan judged(Plan plan, LineUp lineUp, Gear gear, Catalogue catalogue) {
        PlanFacts facts = new PlanFacts(plan, lineUp, gear, catalogue);
        PlanFindings warned = new PlanFindings();
        Map<Integer, List<PlanFact>> byLine = new HashMap<>();
        // the side of a mid-side pair is meant to hear what is beside its player, so how little it hears of that player says nothing
        Set<Integer> sideways = plan.lines().stream().filter(Line::side).map(Line::number).collect(Collectors.toSet());
        plan.lines().forEach(line -> byLine.computeIfAbsent(line.number(), any -> new ArrayList<>())
                .add(warned.add(facts.line(line), List.of(line.seat()), List.of(line.number()))));
        plan.bleed().stream().filter(hears -> !sideways.contains(hears.line())).forEach(hears -> byLine.get(hears.line())
                .add(warned.add(facts.hearing(hears), List.of(facts.seat(hears.line()), hears.seat()), List.of(hears.line()))));
        List<PlannedArrival> arrivals = plan.timing().stream()
                .map(arrival -> warned.add(facts.arrival(arrival), List.of(arrival.seat()), arrival.lines())).toList();
        List<PlanFact> whole = new ArrayList<>();
        whole.add(warned.add(facts.whole(), List.of(), List.of()));
        plan.supplies().forEach(supply -> whole.add(warned.add(facts.bank(supply), List.of(), facts.linesOn(supply))));
        warned.ask(rules, true);
        List<Arrival> timing = new ArrayList<>();
        for (int i = 0; i < arrivals.size(); i++) {
            timing.add(treated(plan.timing().get(i), warned.found(arrivals.get(i)), warned.said(rules, List.of(arrivals.get(i)))));
        }
        return new Plan(plan.rank(), plan.score(), plan.proven(), plan.bound(), plan.served(), plan.leftOut(),
                plan.lines().stream().map(line -> line.judged(warned.said(rules, byLine.get(line.number())))).toList(), plan.bleed(), timing, plan.supplies(),
                plan.counts(), plan.setUp(), plan.patch(), reasons(plan, lineUp, facts), warned.said(rules, whole));
    }

    /** What no rule knows better is treated as it was. */
    private static Arrival treated(Arrival arrival, List<Finding> findings, List<Said> says) {
        Arrival.Treat treat = findings.stream().map(finding -> finding.rule().treat()).filter(Objects::nonNull).map(PlanRules::treat).findFirst()
                .orElse(arrival.treat());
        return arrival.treated(treat, says);
    }

    private static Arrival.Treat treat(String id) {
        return Arrays.stream(Arrival.Treat.values()).filter(treat -> treat.id().equals(id)).findFirst().orElseThrow();
    }

    private List<Said> reasons(Plan plan, LineUp lineUp, PlanFacts facts) {
        PlanFindings weighed = new PlanFindings();
        List<PlanFact> all = new ArrayList<>();
        for (String seat : plan.leftOut()) {
            boolean must = lineUp.seat(seat).map(Seat::must).orElse(false);
            all.add(weighed.add(new LeftOut(facts.names().of(seat), must), List.of(seat), List.of()));
        }
        plan.lines().stream().filter(line -> line.between().overDb() != null && line.between().overDb() > 0)
                .forEach(line -> all.add(weighed.add(facts.input(line), List.of(line.seat()), List.of(line.number()))));
        Map<String, Voice> voices = new HashMap<>();
        plan.served().forEach(served -> voices.put(served.seat(), Voice.of(served.option())));
        for (Two two : twos(lineUp)) {
            if (voices.containsKey(two.first()) && voices.containsKey(two.second())) {
                PlannedTwo fact = fact(Pairing.of(two.apart(), voices.get(two.first()), voices.get(two.second())), facts.names().of(two.first()), facts.names().of(two.second()));
                all.add(weighed.add(fact, List.of(two.first(), two.second()), List.of()));
            }
        }
        weighed.ask(rules, false);
        return weighed.said(rules, all).stream().filter(said -> said.points() != 0).toList();
    }

    /** What two options can be worth together at the most, in hundredths of a point, whatever they are. */
    long mostTwoCentipoints(boolean apart) {
        return range(apart).getMax();
    }

    /** The same at the least. */
    long leastTwoCentipoints(boolean apart) {
        return range(apart).getMin();
    }

    private LongSummaryStatistics range(boolean apart) {
        return ranges.computeIfAbsent(apart, any -> {
            List<Pairing> all = new ArrayList<>();
            for (long tenths = 0; tenths <= FARTHEST_DB * TENTHS; tenths++) {
                for (boolean sameType : new boolean[] {false, true}) {
                    for (boolean sameTechnique : new boolean[] {false, true}) {
                        all.add(new Pairing(apart, sameType, sameTechnique, tenths));
                    }
                }
            }
            Map<Pairing, PlannedTwo> open = new LinkedHashMap<>();
            all.stream().filter(pairing -> !twos.containsKey(pairing)).forEach(pairing -> open.put(pairing, fact(pairing, "", "")));
            ask(open);
            return all.stream().mapToLong(twos::get).summaryStatistics();
        });
    }

    private void ask(Map<Pairing, PlannedTwo> open) {
        if (open.isEmpty()) {
            return;
        }
        Map<PlanFact, Long> points = new IdentityHashMap<>();
        rules.plan(false, List.copyOf(open.values())).forEach(finding -> points.merge((PlanFact) finding.subject(), finding.centipoints(), Long::sum));
        open.forEach((pairing, fact) -> twos.put(pairing, points.getOrDefault(fact, 0L)));
    }

    private PlannedTwo fact(Pairing of, String first, String second) {
        double contrastDb = of.contrastTenths / TENTHS;
        return new PlannedTwo(first, second, of.apart, of.sameType, of.sameTechnique, contrastDb, Math.min(1, contrastDb / clearContrastDb), Math.max(0, 1 - contrastDb / noContrastDb));
    }

    private static long sum(List<Finding> findings) {
        return findings.stream().mapToLong(Finding::centipoints).sum();
    }

    /** What the rules read of two options; the contrast to a tenth, so that there are few different ones. */
    private record Pairing(boolean apart, boolean sameType, boolean sameTechnique, long contrastTenths) {
        static Pairing of(boolean apart, Voice first, Voice second) {
            double contrastDb = apart ? first.toneContrastDb(second) : first.colourContrastDb(second);
            return new Pairing(apart, first.sameType(second), first.sameTechnique(second), Math.round(contrastDb * TENTHS));
        }
    }
}
