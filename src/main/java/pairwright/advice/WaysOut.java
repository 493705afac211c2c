package pairwright.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import pairwright.model.Answer;
import pairwright.model.FromLocker;
import pairwright.model.Option;
import pairwright.model.Question;

/** Where nothing fits: what would, with one thing that stands in the way left out. */
final class WaysOut {
    /** The field that says what of the locker may be used. */
    static final String LOCKER = "/locker";

    private WaysOut() {
    }

    /** Which limit stands in the way: the question is asked again with each limit lifted alone, and with more than the locker gives. */
    static List<Answer.Instead> of(Scene scene, Knowledge now) {
        Question question = scene.question();
        Supply supply = scene.supply();
        List<Answer.Instead> ways = new ArrayList<>();
        List<Limit> set = Arrays.stream(Limit.values()).filter(limit -> limit.isSet(question.limits())).toList();
        for (Limit limit : set) {
            Option best = best(Scene.of(Advisor.question(question, limit.lifted(question.limits())), now.catalogue(), supply, scene.remembered().memory()), now);
            if (best != null) {
                ways.add(new Answer.Instead(limit.pointer(question.limits()), limit.says(question.limits()) + " stands in the way. Without it: "
                        + Explainer.oneLine(best) + ".", null));
            }
        }
        if (supply.limits()) {
            ways.addAll(fromLocker(scene, now));
        }
        if (ways.isEmpty() && (set.size() > 1 || supply.limits() && !set.isEmpty())) {
            ways.add(new Answer.Instead("/limits", supply.limits() ? "Neither the locker nor a single limit is to blame alone: lift limits, or use more than is free."
                    : "No single limit is to blame: lift two or more of them.", null));
        }
        return List.copyOf(ways);
    }

    private static List<Answer.Instead> fromLocker(Scene scene, Knowledge now) {
        Supply supply = scene.supply();
        List<Answer.Instead> ways = new ArrayList<>();
        Option owned = supply.missesSomething() ? best(scene, now, FromLocker.OWNED) : null;
        if (owned != null) {
            ways.add(new Answer.Instead(LOCKER, "Nothing that is free for that time fits. With all that the locker owns: " + Explainer.oneLine(owned) + ".", FromLocker.OWNED.id()));
        }
        Option any = best(scene, now, FromLocker.ANY);
        if (any != null) {
            ways.add(new Answer.Instead(LOCKER, (owned == null ? "Nothing in the locker fits. " : "") + "With the whole catalogue: " + Explainer.oneLine(any) + ".", FromLocker.ANY.id()));
        }
        return ways;
    }

    private static Option best(Scene scene, Knowledge now, FromLocker use) {
        return best(Scene.of(scene.question(), now.catalogue(), scene.supply().as(use), scene.remembered().memory()), now);
    }

    /** Null where nothing fits there either. */
    private static Option best(Scene scene, Knowledge now) {
        List<Option> options = Advisor.judge(scene, now.rules()).options(now.rules(), 1);
        return options.isEmpty() ? null : options.get(0);
    }
}
