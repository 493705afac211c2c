package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import pairwright.model.Caution;
import pairwright.model.Severity;
import pairwright.rules.RuleInfo;

/**
 * What is to be minded of a plan, for people: gravest first, each rule once however many lines it speaks of, and without what was only to be asked as
 * long as there was no plan. A danger is told each time it differs, since whoever stands there looks for his own.
 */
public final class Telling {
    private final Plan plan;
    private final SeatNames names;
    private final Map<String, RuleInfo> rules = new HashMap<>();
    /** By id of a rule of a question, the rules of a plan that say it with its lines and numbers. */
    private final Map<String, Set<String>> saidBetter = new HashMap<>();
    /** By rule whose lines it speaks of; nobody in particular for the whole plan. */
    private final Map<String, Set<String>> spoken = new HashMap<>();
    private final boolean channels;

    private record One(String rule, Severity severity, String says, List<String> seats, List<Integer> lines, boolean named) {
    }

    private Telling(Plan plan, LineUp lineUp, List<RuleInfo> rules) {
        this.plan = plan;
        this.names = SeatNames.of(lineUp);
        for (RuleInfo rule : rules) {
            this.rules.put(rule.id(), rule);
            rule.inPlan().instead().forEach(less -> saidBetter.computeIfAbsent(less, any -> new HashSet<>()).add(rule.id()));
        }
        plan.lines().forEach(line -> line.cautions().forEach(said -> spoken.computeIfAbsent(said.rule(), any -> new HashSet<>()).add(line.seat())));
        plan.cautions().forEach(said -> spoken.put(said.rule(), Set.of()));
        this.channels = plan.lines().stream().allMatch(line -> line.channel() != null);
    }

    /** @param rules say of themselves how they are told once there is a plan */
    public static Telling of(Plan plan, LineUp lineUp, List<RuleInfo> rules) {
        return new Telling(plan, lineUp, rules);
    }

    /** Dangers and what needs care, wherever it was said. */
    public List<Told> grave() {
        return told(all -> {
            everything(all);
            plan.timing().forEach(arrival -> arrival.cautions().forEach(said -> all.accept(one(said))));
        }, Set.of(Severity.DANGER, Severity.CARE));
    }

    /** What is only good to know, but for arrivals, which say so themselves. */
    public List<Told> notes() {
        return told(this::everything, Set.of(Severity.NOTE));
    }

    /** All that speaks of one seat. */
    public List<Told> ofSeat(Plan.Served served) {
        return told(all -> {
            options(served, all);
            plan.linesOf(served.seat()).forEach(line -> line.cautions().forEach(said -> all.accept(one(said))));
            plan.cautions().stream().filter(said -> said.seats().equals(List.of(served.seat()))).forEach(said -> all.accept(one(said)));
        }, Set.of(Severity.values()));
    }

    /** Whether what a rule leaves to whoever plans is settled by this plan, or said there of the lines of that seat or of all. */
    public boolean settled(String rule, String seat) {
        return channels && in(rule).settled() || saidBetter(rule).stream().anyMatch(better -> speaksOf(better, seat));
    }

    private Set<String> saidBetter(String rule) {
        return saidBetter.getOrDefault(rule, Set.of());
    }

    private RuleInfo.InPlan in(String rule) {
        return rules.containsKey(rule) ? rules.get(rule).inPlan() : RuleInfo.InPlan.PLAIN;
    }

    private boolean speaksOf(String rule, String seat) {
        Set<String> seats = spoken.get(rule);
        return seats != null && (seats.isEmpty() || seats.contains(seat));
    }

    private void everything(Consumer<One> all) {
        plan.cautions().forEach(said -> all.accept(one(said)));
        plan.lines().forEach(line -> line.cautions().forEach(said -> all.accept(one(said))));
        plan.served().forEach(served -> options(served, all));
    }

    private void options(Plan.Served served, Consumer<One> all) {
        for (Caution caution : served.option().cautions()) {
            if (!leavesOut(caution, served.seat())) {
                all.accept(new One(caution.rule(), caution.severity(), caution.says(), List.of(served.seat()), List.of(), false));
            }
        }
    }

    /** Whether a caution of an option need not be told, as the plan says it better or has settled it. */
    public boolean leavesOut(Caution caution, String seat) {
        return caution.severity() == Severity.DANGER ? betterOfEachLine(caution, seat) : settled(caution.rule(), seat);
    }

    /** What can hurt somebody is left out only where another danger is told of the very line, or of every line of the seat. */
    private boolean betterOfEachLine(Caution caution, String seat) {
        List<Line> lines = plan.linesOf(seat).stream().filter(line -> caution.mic() == 0 || line.mic() == caution.mic()).toList();
        return !lines.isEmpty() && lines.stream().allMatch(line -> line.cautions().stream()
                .anyMatch(said -> said.severity() == Severity.DANGER && saidBetter(caution.rule()).contains(said.rule())));
    }

    private static One one(Said said) {
        return new One(said.rule(), said.severity() == null ? Severity.NOTE : said.severity(), said.says(), said.seats(), said.lines(), true);
    }

    private List<Told> told(Consumer<Consumer<One>> from, Set<Severity> which) {
        Map<String, List<One>> entries = new LinkedHashMap<>();
        from.accept(one -> {
            if (which.contains(one.severity())) {
                entries.computeIfAbsent(entry(one), any -> new ArrayList<>()).add(one);
            }
        });
        return entries.values().stream().map(this::together).sorted(Comparator.comparing(Told::severity).reversed()).toList();
    }

    /** Of one rule all are one entry, but for what differs and has to be read there. */
    private String entry(One one) {
        return one.severity() == Severity.DANGER || in(one.rule()).each() ? one.rule() + one.says() : one.rule();
    }

    private Told together(List<One> several) {
        One first = several.get(0);
        List<One> same = several.stream().filter(one -> one.says().equals(first.says())).toList();
        List<String> seats = same.stream().flatMap(one -> one.seats().stream()).distinct().toList();
        List<String> others = several.stream().filter(one -> !one.says().equals(first.says())).map(this::about)
                .filter(about -> !about.equals(about(first))).distinct().toList();
        return new Told(first.rule(), first.severity(), others.isEmpty() ? first.says() : first.says() + " The same goes for " + listed(others) + ".", seats, first.named());
    }

    private String about(One one) {
        if (one.lines().isEmpty()) {
            return listed(one.seats().stream().map(names::of).toList());
        }
        String lines = (one.lines().size() == 1 ? "line " : "lines ") + listed(one.lines().stream().map(String::valueOf).toList());
        return one.lines().size() == 1 && one.seats().size() == 2 ? lines + " with " + names.of(one.seats().get(1)) : lines;
    }

    private static String listed(List<String> several) {
        int last = several.size() - 1;
        return last < 1 ? String.join("", several) : String.join(", ", several.subList(0, last)) + " and " + several.get(last);
    }
}
