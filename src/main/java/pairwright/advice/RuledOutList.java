package pairwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import pairwright.model.Effect;
import pairwright.model.Habit;
import pairwright.model.HabitRank;
import pairwright.model.MicType;
import pairwright.model.RuledOut;
import pairwright.rules.Finding;
import pairwright.rules.RuleBase;

/** What a reader might have expected and does not get, with the reason: the trade's picks first, then what scored well otherwise. */
final class RuledOutList {
    private static final int MOST = 6;
    private static final String LIMIT = "limit";

    private RuledOutList() {
    }

    static List<RuledOut> of(Scene scene, List<Judged> judged, RuleBase rules) {
        List<RuledOut> list = new ArrayList<>();
        for (Habit habit : Placements.habits(scene)) {
            MicType mic = scene.catalogue().mics().get(habit.micType());
            if (habit.rank() == HabitRank.FIRST && scene.supply().atHand().has(mic.id()) && list.size() < MOST / 2 && list.stream().noneMatch(one -> one.micType().equals(mic.id()))
                    && !(Placements.within(scene.question().limits(), mic) && mic.channels() <= scene.setting().channels())) {
                list.add(new RuledOut(mic.id(), mic.patterns().get(0).pattern(), habit.positions().isEmpty() ? null : habit.positions().get(0),
                        LIMIT, "A usual first choice here, left out by the limits of the question.", List.of()));
            }
        }
        Set<String> standing = judged.stream().filter(one -> !one.ruledOut()).map(Judged::place).collect(Collectors.toSet());
        List<Judged> out = judged.stream().filter(one -> one.ruledOut() && !standing.contains(one.place())
                        && scene.supply().atHand().useful(one.placed().mic()))
                .sorted(Comparator.comparingInt(RuledOutList::expected)
                        .thenComparing(Comparator.comparingLong(Judged::centipoints).reversed())
                        .thenComparing(one -> one.placed().index())).toList();
        for (Judged one : out) {
            String type = one.placed().mic().id();
            if (list.size() == MOST) {
                break;
            }
            if (list.stream().anyMatch(shown -> shown.micType().equals(type))) {
                continue;
            }
            Finding finding = one.findings().stream().filter(f -> f.rule().effect() == Effect.RULES_OUT).findFirst().orElseThrow();
            list.add(new RuledOut(type, one.placed().pattern(), one.placed().position().id(), finding.rule().id(),
                    rules.says(finding, scene.setting()), finding.values()));
        }
        return List.copyOf(list);
    }

    /** First choices and what the trade warns of are looked for, then the usual alternatives, then what nobody names. */
    private static int expected(Judged judged) {
        HabitRank habit = judged.placed().habit();
        return habit == null ? 2 : habit == HabitRank.SECOND ? 1 : 0;
    }
}
