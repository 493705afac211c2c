package pairwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pairwright.model.Coverage.Missing;
import pairwright.model.Coverage.Needed;
import pairwright.model.Coverage.Served;
import pairwright.model.Coverage.Used;
import pairwright.model.FromLocker;
import pairwright.model.MicType;
import pairwright.model.Question;
import pairwright.model.Request;
import pairwright.model.Source;
import pairwright.model.Stock;

/** How one source is served, and what each type would change if there were one more of it, or a matched pair. */
final class ServedFinder {
    private static final List<String> BROKEN_OR_GONE = List.of("lost", "in-repair");

    private final Knowledge now;
    private final Stock stock;
    private final Stock few;
    private final FromLocker use;
    private final Grades grades;

    ServedFinder(Knowledge now, Stock stock, FromLocker use) {
        this.now = now;
        this.stock = stock;
        this.few = new Stock(true, FewUnits.of(stock.units(), unit -> counts(unit, use)));
        this.use = use;
        this.grades = new Grades(now.catalogue());
    }

    /**
     * What an addition does.
     *
     * @param units 1, or 2 for a matched pair
     * @param with it
     */
    record More(MicType mic, int units, Reach.Found with) {
    }

    /**
     * One source.
     *
     * @param found with what is there
     * @param more every addition that gains something
     */
    record Result(Served served, Reach.Found found, List<More> more) {
    }

    /** Whether a unit counts: it is free, or, where all that is owned may be used, not broken and not gone. */
    static boolean counts(Stock.Held unit, FromLocker use) {
        return unit.free() || use == FromLocker.OWNED && !BROKEN_OR_GONE.contains(unit.out().why());
    }

    /** Asks for a source and nothing more, as somebody does who types its name. */
    Result of(Source source) {
        Request request = new Request(null, source.id(), null, null, null, null, null, null, null, null, null, null, null, null);
        Question question = Questions.of(request, now.catalogue(), now.reader()).question();
        Reach reach = Reach.of(question, now, few, grades);
        Rack rack = reach.rack(unit -> counts(unit, use));
        Reach.Found found = reach.with(rack);
        List<More> more = new ArrayList<>();
        for (MicType mic : now.catalogue().mics().values()) {
            if (mic.captures() && reach.mayHelp(mic, found)) {
                Reach.Found before = found;
                for (int units = 1; units <= 2; units++) {
                    Reach.Found with = reach.with(Reach.more(rack, mic, units));
                    if (with.betterThan(before)) {
                        more.add(new More(mic, units, with));
                        before = with;
                    }
                }
            }
        }
        return new Result(served(source, reach, found, more), found, List.copyOf(more));
    }

    private Served served(Source source, Reach reach, Reach.Found found, List<More> more) {
        Candidate best = reach.best().orElse(null);
        List<String> against = found.first() == null ? List.of()
                : grades.deciding(found.first()).stream().map(finding -> now.rules().says(finding, reach.scene().setting())).distinct().toList();
        More most = more.stream().min(Comparator.comparing((More one) -> one.with().verdict())
                .thenComparing(one -> -one.with().centipoints()).thenComparing(More::units).thenComparing(one -> one.mic().id())).orElse(null);
        return new Served(source.id(), source.name(), source.family(), found.verdict(), score(found.first()), score(best), used(found.first()), used(best),
                against, most == null ? null : missing(most, found));
    }

    private static Double score(Candidate candidate) {
        return candidate == null ? null : Double.valueOf(candidate.centipoints() / 100.0);
    }

    private static Used used(Candidate candidate) {
        if (candidate == null) {
            return null;
        }
        Map<MicType, Integer> count = new LinkedHashMap<>();
        count.put(candidate.first().placed().mic(), 1);
        if (!candidate.isSingle()) {
            count.merge(candidate.second().placed().mic(), 1, Integer::sum);
        }
        return new Used(candidate.technique(), candidate.isSingle() ? "Single" : candidate.pair().technique().name(),
                count.entrySet().stream().map(of -> new Needed(of.getKey().id(), of.getKey().name(), of.getValue())).toList());
    }

    private Missing missing(More more, Reach.Found found) {
        long gain = more.with().gain(found);
        boolean there = stock.units().stream().anyMatch(unit -> unit.micType().equals(more.mic().id()) && counts(unit, use));
        String what = (more.units() == 2 ? "A matched pair of the " : there ? "One more " : "The ") + Nested.named(more.mic());
        String brings = found.first() == null ? " would have " + WhyNotCase.points(more.with().centipoints()) + " points"
                : gain > 0 ? " would bring " + WhyNotCase.points(gain) + " more" : " would do it without what decides against the rest";
        return new Missing(more.mic().id(), more.mic().name(), more.units(), more.with().first().centipoints() / 100.0, gain / 100.0, more.with().verdict(),
                what + brings + ". " + standing(more.mic()));
    }

    /** How many of a type there are, and what becomes of the rest. */
    private String standing(MicType mic) {
        List<Stock.Held> all = stock.units().stream().filter(unit -> unit.micType().equals(mic.id())).toList();
        long here = all.stream().filter(unit -> counts(unit, use)).count();
        List<Stock.Held> away = all.stream().filter(unit -> !counts(unit, use)).toList();
        String there = all.isEmpty() ? "There is none in the locker." : here == 0 ? "" : here == 1 ? "There is one." : "There are " + here + ", not enough or not matched.";
        return away.isEmpty() ? there : (there + " " + OutWords.says(away)).strip();
    }
}
