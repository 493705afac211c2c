package pairwright.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import pairwright.advice.HouseMemory;
import pairwright.advice.Knowledge;
import pairwright.model.Stock;
import pairwright.session.allocation.Allocator;
import pairwright.session.allocation.NotDecided;
import pairwright.session.allocation.Problem;
import pairwright.session.allocation.Solution;

/** Plans sessions. Safe to share between threads; every plan uses one catalogue and one rule base throughout. */
public final class Planner {
    /** So often a change is looked for again that turns out to take longer than there is. */
    private static final int MOST_TRIES = 30;
    private final Supplier<Knowledge> knowledge;
    private final Judging judging;
    private final Allocator allocator = new Allocator();

    /**
     * A planner on what is known at the moment of each plan.
     *
     * @param knowledge asked once a plan
     * @param memory what was kept in this house before
     */
    public Planner(Supplier<Knowledge> knowledge, HouseMemory memory) {
        this.knowledge = knowledge;
        this.judging = new Judging(memory);
    }

    /**
     * The best plans of a line-up.
     *
     * @param lineUp without faults, see {@link LineUpCheck}
     * @param gear what there is
     * @param progress is told how far it is, from any thread
     * @return plans; or what is short, where not every seat that must be served can be
     * @throws pairwright.session.allocation.NoSolver where the solver cannot be loaded on this machine
     * @throws pairwright.session.allocation.NotDecided where neither a plan nor its impossibility was found in time
     */
    public Planned plan(LineUp lineUp, Gear gear, Consumer<Progress> progress) {
        return Knowledge.answered(knowledge, now -> new Planning(lineUp, counted(gear), Lost.NOTHING, now, Map.of(), fromNothing(lineUp, now), progress).planned());
    }

    /**
     * The full plan of what was picked before, on the units, channels and stands that are named; where one is not named or not there any more, on
     * another.
     *
     * @throws IllegalArgumentException where what was picked for a seat can no longer be had, with the seat and the reason
     */
    public Plan rebuilt(LineUp lineUp, Gear gear, Picks picks) {
        return Knowledge.answered(knowledge, now -> new Planning(lineUp, counted(gear), Lost.NOTHING, now, bySeat(picks), fromNothing(lineUp, now), step -> { }).rebuilt());
    }

    /**
     * What to do when something is lost: the plan that is worth most, when each seat of which something has to be touched costs a price.
     *
     * @param lineUp as it is now
     * @param gear as it was; what is lost is taken out here
     * @param before what is set up
     * @param lost since then
     * @param pricePoints how many points it must be worth to touch a seat that could stay as it is
     * @param progress is told how far it is, from any thread
     * @throws IllegalStateException where no plan is left; ask {@link #shortAgain} what is short
     */
    public Change again(LineUp lineUp, Gear gear, Picks before, Lost lost, double pricePoints, Consumer<Progress> progress) {
        return Knowledge.answered(knowledge, now -> planning(lineUp, gear, before, lost, now, progress).again(lineUp, before, pricePoints, labels(gear, now)));
    }

    /**
     * What is short where {@link #again} finds no plan.
     *
     * @return no plan, and why
     */
    public Planned shortAgain(LineUp lineUp, Gear gear, Picks before, Lost lost, Consumer<Progress> progress) {
        return Knowledge.answered(knowledge, now -> planning(lineUp, gear, before, lost, now, progress).none());
    }

    private Planning planning(LineUp lineUp, Gear gear, Picks before, Lost lost, Knowledge now, Consumer<Progress> progress) {
        LineUp left = lineUp.without(lost.seats());
        if (left.seats().isEmpty()) {
            throw new IllegalArgumentException("Nobody is left: everybody of the line-up is lost. Take out of what is lost who still comes, or plan another line-up");
        }
        Gear whole = counted(gear);
        return new Planning(left, whole, lost, now, bySeat(before), SetUpWork.since(left, now.catalogue().tasks(), whole.without(lost), before, lost), progress);
    }

    private static SetUpWork fromNothing(LineUp lineUp, Knowledge now) {
        return SetUpWork.fromNothing(lineUp.setUp(), now.catalogue().tasks());
    }

    /** What is written on things, lost ones as well. */
    private static Map<String, String> labels(Gear gear, Knowledge now) {
        Map<String, String> labels = new HashMap<>();
        now.catalogue().mics().values().forEach(mic -> labels.put(mic.id(), mic.name()));
        if (gear.stock() != null) {
            gear.stock().units().forEach(unit -> labels.put(unit.id(), unit.label()));
        }
        gear.pads().forEach(pad -> labels.put(pad.id(), pad.label()));
        if (gear.channels() != null) {
            gear.channels().forEach(channel -> labels.put(channel.id(), channel.label()));
        }
        return labels;
    }

    private static Map<String, Picks.AtSeat> bySeat(Picks picks) {
        Map<String, Picks.AtSeat> bySeat = new HashMap<>();
        picks.seats().forEach(seat -> bySeat.put(seat.seat(), seat));
        return bySeat;
    }

    /** A locker that is empty or does not answer is no locker: the whole catalogue is planned with. */
    private static Gear counted(Gear gear) {
        Stock stock = gear.stock();
        return stock == null || stock.reachable() && !stock.units().isEmpty() ? gear : new Gear(null, gear.channels(), gear.stands(), gear.boosters(), gear.pads());
    }

    /** One plan in the making. */
    private final class Planning {
        private final LineUp lineUp;
        private final Gear gear;
        /** With what was lost; null where units are not counted. */
        private final Stock whole;
        private final Lost lost;
        private final Knowledge now;
        private final Map<String, Picks.AtSeat> standing;
        private final Consumer<Progress> progress;
        private final PlanRules rules;
        private final Layout layout;

        /** @param whole with what is lost, since what can be put where is judged of all there was: so nothing is judged again for a loss */
        Planning(LineUp lineUp, Gear whole, Lost lost, Knowledge now, Map<String, Picks.AtSeat> standing, SetUpWork work, Consumer<Progress> progress) {
            this.lineUp = lineUp;
            this.gear = whole.without(lost);
            this.whole = whole.stock();
            this.lost = lost;
            this.now = now;
            this.standing = standing;
            this.progress = progress;
            this.rules = judging.rules(now);
            List<AtSeat> seats = judging.of(lineUp, now, whole.stock(), new ChannelPool(gear.channels(), Set.copyOf(lost.channels())), progress);
            this.layout = new Layout(lineUp, seats, gear, Set.copyOf(lost.channels()), now.catalogue(), rules, judging.ways(), standing, work);
        }

        Planned planned() {
            if (!layout.unserved().isEmpty()) {
                return none();
            }
            progress.accept(new Progress("Searching for the best plan", 0, 1));
            Optional<Found> best = best();
            if (best.isEmpty()) {
                return none();
            }
            List<Found> found = new ArrayList<>(List.of(best.get()));
            if (lineUp.plans() > 1) {
                progress.accept(new Progress("Searching for different plans", 0, 1));
                found.addAll(others(best.get()));
            }
            List<Plan> plans = new ArrayList<>();
            for (Found one : found) {
                plans.add(plan(plans.size() + 1, one, standing));
                progress.accept(new Progress("Writing the plans", plans.size(), found.size()));
            }
            progress.accept(new Progress("Looking for better seats", 0, 1));
            return new Planned(plans, List.of(), List.of(), SeatMoves.of(lineUp, now.catalogue()).of(plans.get(0).lines(), progress), assumed(), now.rules().version(),
                    now.catalogue().version(), TimeShort.of(lineUp, layout, allocator, best.get().plan()));
        }

        Planned none() {
            return new Shortfall(lineUp, layout, now, allocator, judging, whole, lost).planned();
        }

        /**
         * A plan and what is proven of it.
         *
         * @param boundCentipoints no plan can have more
         */
        private record Found(BestPlan plan, boolean proven, long boundCentipoints) {
            static Found of(BestPlan plan) {
                return new Found(plan, plan.solution().proven(), plan.solution().boundCentipoints());
            }

            /** Another plan, beside the best: nothing better is possible only where it is as good. */
            Found beside(BestPlan other) {
                return new Found(other, proven && points(other.solution()) == plan.solution().centipoints(), boundCentipoints);
            }

            Solution solution() {
                return plan.solution();
            }
        }

        /** What a plan is worth by itself, in hundredths of a point. */
        private static long points(Solution solution) {
            return solution.centipoints() - solution.keptCentipoints();
        }

        /** The best of all, from nothing. */
        private Optional<Found> best() {
            try {
                return BestPlan.of(layout, allocator).map(Found::of);
            } catch (NotDecided unknown) {
                return Optional.empty(); // who can be served is found anyhow
            }
        }

        /** The best of all from nothing, where one plan is known; that one where it takes too long. */
        private Found atLeast(BestPlan known) {
            long centipoints = points(known.solution());
            try {
                return Found.of(BestPlan.atLeast(layout, allocator, centipoints).orElseThrow());
            } catch (NotDecided tooLong) {
                return new Found(known, false, Math.max(centipoints, (long) new Narrowed(layout, 0).within(centipoints).boundCentipoints()));
            }
        }

        /** The best with another amount of work that can be done, in seconds. */
        private Optional<Found> best(int workS) {
            return BestPlan.of(layout, problem -> allocator.best(layout.work().within(problem, workS)), 0).map(Found::of);
        }

        /** The best where it is worth something to leave a seat as it is set up. */
        private Optional<Solution> kept(Problem problem, long keptCentipoints) {
            Layout.SetUp setUp = layout.setUp();
            return allocator.again(problem, setUp.problem(), setUp.plan(), keptCentipoints);
        }

        /** Plans that have other types or techniques than the best, and than each other, at a third of the seats or more: good ones, not proven to be the best of that kind. */
        private List<Found> others(Found best) {
            List<List<SeatChoices.Way>> kinds = best.plan().kinds(layout.kinds());
            List<Solution> different = allocator.different(layout.problem(kinds), lineUp.plans(), lineUp.leastDifferent());
            return different.stream().skip(1).map(solution -> best.beside(new BestPlan(kinds, kinds, solution))).toList();
        }

        private Plan plan(int rank, Found found, Map<String, Picks.AtSeat> set) {
            PlanMaker.Draft draft = new PlanMaker(lineUp, layout.seats(), layout.resources(), set).draft(found.plan().ways(), found.solution());
            return new PlanJudge(lineUp, gear, layout, rules, now).plan(rank, draft, found.solution(), found.proven(), found.boundCentipoints());
        }

        Plan rebuilt() {
            List<List<SeatChoices.Way>> only = new ArrayList<>();
            for (AtSeat at : layout.seats()) {
                List<SeatChoices.Way> same = layout.standing(at);
                if (same.isEmpty()) {
                    throw new IllegalArgumentException("What was picked for " + at.seat().id() + " cannot be set up with what there is now. Plan again");
                }
                only.add(same);
            }
            // what stands is told of, however long it took
            int most = layout.work().mostS(only);
            Solution solution = kept(layout.work().within(layout.problem(only), most), 1).orElseThrow(() -> new IllegalArgumentException(
                    "What was picked takes more than there is now. Plan again, or free what is missing"));
            BestPlan stands = new BestPlan(only, only, solution);
            Found best = layout.work().overS(most) > 0 ? best(most).orElseThrow() : atLeast(stands);
            return plan(1, best.beside(stands), standing);
        }

        /** @param whole the line-up with those who are not coming, who have names as well */
        Change again(LineUp whole, Picks before, double pricePoints, Map<String, String> labels) {
            // at no price at all, what stands is still preferred among equals
            long price = Math.max(1, Math.round(pricePoints * 100));
            InTime inTime = new InTime(layout.work());
            Found scratch = null;
            for (int tries = 0; tries < MOST_TRIES; tries++) {
                progress.accept(new Progress("Searching for what can stay", 0, 1));
                BestPlan kept = BestPlan.of(layout, problem -> kept(inTime.known(problem), price), price).orElseThrow(Planning::nothingLeft);
                if (scratch == null) {
                    progress.accept(new Progress("Searching for the best plan", 0, 1));
                    scratch = atLeast(kept);
                }
                progress.accept(new Progress("Writing the plan", 0, 1));
                Change change = Steps.change(before, lost, plan(1, scratch.beside(kept), standing), Math.max(points(scratch.solution()), points(kept.solution())) / 100.0, whole,
                        now.catalogue().tasks(), layout.work().time(), id -> labels.getOrDefault(id, id));
                if (inTime.holds(change, layout.seats(), kept.ways())) {
                    return change;
                }
            }
            throw nothingLeft();
        }

        private static IllegalStateException nothingLeft() {
            return new IllegalStateException("With what is left not every seat that must be served can be. Plan anew to see what is short");
        }

        private List<String> assumed() {
            Set<String> assumed = new LinkedHashSet<>();
            layout.seats().forEach(at -> assumed.addAll(at.offers().assumed()));
            if (gear.stock() == null) {
                assumed.add("No locker is used: any type of the catalogue may be taken, as often as it is wanted.");
            }
            if (gear.channels() == null) {
                assumed.add("Channels are not counted: as many as are wanted, each with its own switch for phantom power.");
            }
            if (gear.stands() == null) {
                assumed.add("Stands are not counted.");
            }
            if (lineUp.setUp() != null) {
                assumed.add("How long setting up takes is an estimate: what the tasks of the catalogue say of each line, shared out evenly among all hands.");
            }
            if (gear.boosters().stream().anyMatch(Gear.Booster::passesPhantom)) {
                assumed.add("Inline boosters that let phantom power through, or of which nobody noted that they do not, are left aside.");
            }
            assumed.addAll(Assumptions.ofPlayers(lineUp));
            assumed.addAll(Assumptions.ofPads(gear));
            return List.copyOf(assumed);
        }
    }
}
