package pairwright.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import pairwright.session.allocation.Allocator;
import pairwright.session.allocation.Shortage;

/** How short the time to set up is, and the ways out: more hands, or to begin earlier. Work is in seconds of one pair of hands, all of it counted. */
final class TimeOut {
    private static final int MINUTE_S = 60;
    /** To begin earlier has a price for each of those that are begun. */
    private static final int QUARTER_MINUTES = 15;

    private final Layout layout;
    private final SetUpWork work;
    private final Allocator allocator;

    TimeOut(Layout layout, Allocator allocator) {
        this.layout = layout;
        this.work = layout.work();
        this.allocator = allocator;
    }

    /** The work for which there has to be time, so that everybody who must be served can be; empty where time alone does not help. */
    OptionalInt neededS(Shortage shortage) {
        if (work.time() == null) {
            return OptionalInt.empty();
        }
        if (shortage.canServe() == shortage.must()) {
            // as it seems there is time; what else has to be patched then takes longer, by how much nobody knows
            return OptionalInt.of(work.time().workS() + MINUTE_S);
        }
        return shortage.lacks().stream().filter(lack -> SetUpWork.isCap(lack.name())).mapToInt(lack -> (int) lack.needed() + work.heldS()).findFirst();
    }

    /** In whole minutes of one pair of hands. */
    Planned.Short shortOf(int neededS) {
        return new Planned.Short("minutes of set-up work for one pair of hands", SetUpTime.minutes(neededS), work.time().workS() / MINUTE_S, List.of());
    }

    /** The ways out where there is no plan. */
    List<Planned.WayOut> waysOut(int neededS) {
        List<Planned.WayOut> ways = new ArrayList<>();
        hands(neededS).forEach(hands -> points(work.time().minutes() * hands * MINUTE_S).ifPresent(points -> ways.add(hands(hands, points))));
        points(neededS).ifPresent(points -> ways.add(earlier(neededS, points)));
        return ways;
    }

    /**
     * The ways out where there could be a better plan.
     *
     * @param neededS what that takes
     * @param better it is
     */
    List<Planned.WayOut> waysOut(int neededS, BestPlan better) {
        List<Planned.WayOut> ways = new ArrayList<>();
        long most = better.solution().centipoints();
        for (int hands : hands(neededS)) {
            int workS = work.time().minutes() * hands * MINUTE_S;
            (workS >= neededS ? Optional.of(most) : points(workS)).ifPresent(points -> ways.add(hands(hands, points)));
        }
        ways.add(earlier(neededS, most));
        return ways;
    }

    /** One more pair, and as many as make it all possible. */
    private TreeSet<Integer> hands(int neededS) {
        SetUpTime time = work.time();
        TreeSet<Integer> hands = new TreeSet<>();
        if (time.minutes() > 0) {
            hands.add(time.hands() + 1);
            hands.add((int) Math.ceil((double) neededS / MINUTE_S / time.minutes()));
        }
        hands.removeIf(count -> count <= time.hands() || count > SetUpTime.MOST_HANDS);
        return hands;
    }

    private Optional<Long> points(int workS) {
        return BestPlan.of(layout, problem -> allocator.best(work.within(problem, workS)), 0).map(plan -> plan.solution().centipoints());
    }

    private Planned.WayOut hands(int hands, long centipoints) {
        int more = hands - work.time().hands();
        return new Planned.WayOut("borrow", "Have " + (more == 1 ? "one more pair" : more + " more pairs") + " of hands, so that " + hands + " set up.", more * layout.resources().handsPrice(),
                centipoints / 100.0);
    }

    private Planned.WayOut earlier(int neededS, long centipoints) {
        int earlier = work.time().clockMinutes(neededS) - work.time().minutes();
        int quarters = (earlier + QUARTER_MINUTES - 1) / QUARTER_MINUTES;
        return new Planned.WayOut("borrow", "Begin " + earlier + " min earlier.", quarters * layout.resources().earlierPrice(), centipoints / 100.0);
    }
}
