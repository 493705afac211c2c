package pairwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pairwright.model.Coverage.Help;
import pairwright.model.Coverage.Raised;
import pairwright.model.Coverage.Verdict;
import pairwright.model.MicType;

/** Which types, brought in alone, would raise the most sources. */
final class Helps {
    private Helps() {
    }

    /** One type, and how many of it. */
    private record Added(MicType mic, int units) {
    }

    /** The one that raises most sources first, then what gains most points. A pair is listed where it raises more than one unit does. */
    static List<Help> of(List<ServedFinder.Result> results) {
        Map<Added, List<Raised>> raised = new LinkedHashMap<>();
        Map<Added, Long> gained = new LinkedHashMap<>();
        for (ServedFinder.Result result : results) {
            for (ServedFinder.More more : result.more()) {
                add(new Added(more.mic(), more.units()), result, more, raised, gained);
                // a pair brings at least what one of it brings
                if (more.units() == 1 && result.more().stream().noneMatch(other -> other.mic() == more.mic() && other.units() == 2)) {
                    add(new Added(more.mic(), 2), result, more, raised, gained);
                }
            }
        }
        List<Help> helps = new ArrayList<>();
        raised.forEach((added, sources) -> {
            boolean noBetterThanOne = added.units() == 2 && raised.getOrDefault(new Added(added.mic(), 1), List.of()).size() >= sources.size();
            if (!noBetterThanOne) {
                helps.add(new Help(added.mic().id(), added.mic().name(), added.units(), sources, gained.get(added) / 100.0));
            }
        });
        helps.sort(Comparator.comparingInt((Help help) -> -help.raises().size()).thenComparingDouble(help -> -help.gainPoints())
                .thenComparingInt(Help::units).thenComparing(Help::micType));
        return List.copyOf(helps);
    }

    private static void add(Added added, ServedFinder.Result result, ServedFinder.More more, Map<Added, List<Raised>> raised, Map<Added, Long> gained) {
        Verdict before = result.found().verdict();
        long gain = more.with().gain(result.found());
        gained.merge(added, gain, Long::sum);
        if (more.with().verdict().above(before)) {
            raised.computeIfAbsent(added, any -> new ArrayList<>())
                    .add(new Raised(result.served().source(), result.served().name(), before, more.with().verdict(), gain / 100.0));
        }
    }
}
