package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import pairwright.model.Complaint;
import pairwright.model.Technique;
import pairwright.numbers.CalculationInfo;
import pairwright.rules.RuleInfo;

/**
 * What a class got right and missed, all of it counted.
 *
 * @param benches how many there are
 * @param handedIn how many handed in
 * @param meanShare of the mark, over those that handed in; null for none
 * @param missed what was missed most, the most first; what everybody had right is left out
 * @param items item by item
 */
public record Summary(int benches, int handedIn, Double meanShare, List<Missed> missed, List<ItemCount> items) {
    public Summary {
        missed = List.copyOf(missed);
        items = List.copyOf(items);
    }

    /**
     * What a check rests on, or where it names nothing, the check itself.
     *
     * @param rule id of the rule, calculation, complaint or technique; null for none
     * @param name its title or name, or what was looked at
     * @param benches how many were asked about it
     * @param losing how many of them lost something there
     * @param lostShare of the points that were to be had there
     */
    public record Missed(String rule, String name, int benches, int losing, double lostShare) {
    }

    /**
     * One item, over the benches that had it and handed in. Each bench has an exercise of its own, so what is counted is how such an item was answered.
     *
     * @param item id
     * @param asked how many were asked
     * @param answered how many wrote something
     * @param rightShare of those asked, who answered so that nothing is lost by it if all else is as the key has it
     * @param discriminationRatio how far those who had it right earned more of the whole mark (this item included): the point-biserial correlation, -1 to 1.
     *     Null where all or none had it right, or all earned the same
     * @param discriminationOf of so many benches
     * @param options what was chosen, where options are offered
     */
    public record ItemCount(String item, int asked, int answered, double rightShare, Double discriminationRatio, int discriminationOf, List<OptionCount> options) {
        public ItemCount {
            options = List.copyOf(options);
        }
    }

    /**
     * One option, since each bench has them in an order of its own known by the rule it states, which each bench has in words of its own, or by its words.
     *
     * @param rule id of the rule it states; null for an option that states none
     * @param says the title of the rule, or the words
     * @param offered to so many benches
     * @param chosen by so many of them
     * @param chosenShare of those it was offered to
     * @param right of how many of those it was offered to it is in the key
     */
    public record OptionCount(String rule, String says, int offered, int chosen, double chosenShare, int right) {
    }

    /** One item as one bench answered it; which option states which rule. */
    private record Answered(Item item, Map<String, String> claims, List<String> given, List<String> key, boolean right, double markShare) {
    }

    /** One option as one bench had it. */
    private record Chosen(String rule, String says, boolean chosen, boolean right) {
    }

    static Summary of(List<BenchMark> marks, IntFunction<Exercise> exercises, Lab lab) {
        List<BenchMark> in = marks.stream().filter(bench -> bench.mark() != null).toList();
        Map<String, List<Answered>> items = new LinkedHashMap<>();
        for (BenchMark bench : in) {
            Exercise exercise = exercises.apply(bench.bench());
            Key key = exercise.key();
            for (Item item : exercise.handout().items()) {
                List<String> given = bench.answer().all(item.id());
                Mark alone = exercise.mark(key.best().with(item.id(), given));
                List<String> accepted = key.items().stream().filter(entry -> entry.item().equals(item.id())).flatMap(entry -> entry.accepted().stream()).toList();
                items.computeIfAbsent(item.id(), id -> new ArrayList<>()).add(new Answered(item, exercise.claims(item.id()), given, accepted.isEmpty() ? key.best().all(item.id()) : accepted,
                        alone.mark() >= alone.of() - 1e-9 && (!given.isEmpty() || key.best().all(item.id()).isEmpty()), bench.mark().share()));
            }
        }
        return new Summary(marks.size(), in.size(), in.isEmpty() ? null : in.stream().mapToDouble(bench -> bench.mark().share()).average().orElseThrow(),
                missed(in, lab), items.entrySet().stream().map(item -> count(item.getKey(), item.getValue(), lab)).toList());
    }

    private static List<Missed> missed(List<BenchMark> in, Lab lab) {
        Map<String, List<Map.Entry<Integer, Check>>> about = new TreeMap<>();
        in.forEach(bench -> bench.mark().checks().forEach(check ->
                about.computeIfAbsent(check.rests() == null ? "check " + check.name() : check.rests(), one -> new ArrayList<>()).add(Map.entry(bench.bench(), check))));
        return about.values().stream().map(checks -> {
            Check first = checks.get(0).getValue();
            double ofPoints = checks.stream().mapToDouble(check -> check.getValue().of()).sum();
            double points = checks.stream().mapToDouble(check -> check.getValue().points()).sum();
            return new Missed(first.rests(), name(first, lab), (int) checks.stream().map(Map.Entry::getKey).distinct().count(),
                    (int) checks.stream().filter(check -> check.getValue().points() < check.getValue().of()).map(Map.Entry::getKey).distinct().count(),
                    ofPoints == 0 ? 0 : 1 - points / ofPoints);
        }).filter(one -> one.losing() > 0).sorted(Comparator.comparingDouble(Missed::lostShare).reversed().thenComparing(Missed::name)).toList();
    }

    private static String name(Check check, Lab lab) {
        if (check.rests() == null) {
            return check.name();
        }
        RuleInfo rule = lab.rules().rule(check.rests());
        return Stream.of(Optional.ofNullable(rule).map(RuleInfo::title), lab.numbers().info(check.rests()).map(CalculationInfo::name),
                        Optional.ofNullable(lab.catalogue().complaints().get(check.rests())).map(Complaint::name),
                        Optional.ofNullable(lab.catalogue().techniques().get(check.rests())).map(Technique::name))
                .flatMap(Optional::stream).findFirst().orElse(check.name());
    }

    private static ItemCount count(String item, List<Answered> answered, Lab lab) {
        long right = answered.stream().filter(Answered::right).count();
        return new ItemCount(item, answered.size(), (int) answered.stream().filter(one -> !one.given().isEmpty()).count(), (double) right / answered.size(),
                pointBiserial(answered), answered.size(), options(answered, lab));
    }

    /** (mean of those who had it right - mean of those who had not) / standard deviation of all * root of the two shares' product. */
    private static Double pointBiserial(List<Answered> answered) {
        double share = answered.stream().filter(Answered::right).count() / (double) answered.size();
        double mean = answered.stream().mapToDouble(Answered::markShare).average().orElseThrow();
        double variance = answered.stream().mapToDouble(one -> (one.markShare() - mean) * (one.markShare() - mean)).average().orElseThrow();
        if (share == 0 || share == 1 || variance < 1e-12) {
            return null;
        }
        double had = answered.stream().filter(Answered::right).mapToDouble(Answered::markShare).average().orElseThrow();
        double hadNot = answered.stream().filter(one -> !one.right()).mapToDouble(Answered::markShare).average().orElseThrow();
        return (had - hadNot) / Math.sqrt(variance) * Math.sqrt(share * (1 - share));
    }

    private static List<OptionCount> options(List<Answered> answered, Lab lab) {
        Map<String, List<Chosen>> options = new LinkedHashMap<>();
        for (Answered one : answered) {
            // of an order every option is chosen: that counts nothing
            Stream<Item.Opt> offered = one.item() instanceof Item.OneOf of ? of.options().stream() : one.item() instanceof Item.SomeOf of ? of.options().stream() : Stream.empty();
            offered.map(option -> new Chosen(one.claims().get(option.id()), option.says(), one.given().contains(option.id()), one.key().contains(option.id())))
                    .forEach(option -> options.computeIfAbsent(option.rule() == null ? "says " + option.says() : option.rule(), known -> new ArrayList<>()).add(option));
        }
        return options.values().stream().map(of -> {
            String rule = of.get(0).rule();
            int chosen = (int) of.stream().filter(Chosen::chosen).count();
            return new OptionCount(rule, rule == null ? of.get(0).says() : lab.rules().rule(rule).title(), of.size(), chosen, chosen / (double) of.size(),
                    (int) of.stream().filter(Chosen::right).count());
        }).toList();
    }
}
