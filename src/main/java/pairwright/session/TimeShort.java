package pairwright.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairwright.session.allocation.Allocator;

/** What the best plan loses since there is no more time to set up, by planning with as much as is wanted. */
final class TimeShort {
    private final Layout layout;
    private final SeatNames names;
    private final List<SeatChoices.Way> all;
    private final List<SeatChoices.Way> some;

    private TimeShort(LineUp lineUp, Layout layout, BestPlan all, BestPlan some) {
        this.layout = layout;
        this.names = SeatNames.of(lineUp);
        this.all = all.ways();
        this.some = some.ways();
    }

    /** Null where the best plan loses nothing, or there is no limit. */
    static Planned.TimeShort of(LineUp lineUp, Layout layout, Allocator allocator, BestPlan best) {
        SetUpWork work = layout.work();
        int mostS = work.mostS(layout.ways());
        if (work.overS(mostS) == 0) {
            return null;
        }
        Optional<BestPlan> all = BestPlan.of(layout, problem -> allocator.best(work.within(problem, mostS)), 0);
        long costs = all.map(plan -> plan.solution().centipoints() - best.solution().centipoints()).orElse(0L);
        if (costs <= 0) {
            return null;
        }
        int neededS = work.workS(all.get().ways());
        return new Planned.TimeShort(work.time().clockMinutes(neededS), work.time().minutes(), costs / 100.0, new TimeShort(lineUp, layout, all.get(), best).without(),
                new TimeOut(layout, allocator).waysOut(neededS, all.get()));
    }

    private List<String> without() {
        List<String> without = new ArrayList<>();
        for (int seat = 0; seat < all.size(); seat++) {
            int wanted = lines(all.get(seat));
            int has = lines(some.get(seat));
            if (has < wanted) {
                String name = names.of(layout.seats().get(seat).seat().id());
                without.add(has == 0 ? "Nothing stands for " + name + "." : "There " + (has == 1 ? "is one line" : "are " + has + " lines") + " for " + name + " in place of " + wanted + ".");
            }
        }
        return without;
    }

    private static int lines(SeatChoices.Way way) {
        return way.offer() == null ? 0 : way.offer().mics().stream().mapToInt(mic -> mic.micType().channels()).sum();
    }
}
