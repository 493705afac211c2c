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
import pairwright.session.allocation.Solution;

/** Plans sessions. Safe to share between threads; every plan uses one catalogue and one rule base throughout. */
public final class Planner {
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
        return Knowledge.answered(knowledge, now -> new Planning(lineUp, counted(gear), Set.of(), now, Map.of(), progress).planned());
    }

    /**
     * The full plan of what was picked before, on the units, channels and stands that are named; where one is not named or not there any more, on
     * another.
     *
     * @throws IllegalArgumentException where what was picked for a seat can no longer be had, with the seat and the reason
     */
    public Plan rebuilt(LineUp lineUp, Gear gear, Picks picks) {
        return Knowledge.answered(knowledge, now -> new Planning(lineUp, counted(gear), Set.of(), now, bySeat(picks), step -> { }).rebuilt());
    }

    /**
     * What to do when something is lost: the plan that is worth most, when each seat of which something has to be touched costs a price.
     *
     * @param lineUp as it is now
     * @param gear as it was; what is lost is taken out here
     * @param before what is set up
     * @param lost since then
     * @param pricePoints how many points it must be worth to touch a seat that could stay as it is
     * @throws IllegalStateException where no plan is left; ask {@link #plan} what is short
     */
    public Change again(LineUp lineUp, Gear gear, Picks before, Lost lost, double pricePoints) {
        LineUp left = lineUp.seated(lineUp.seats().stream().filter(seat -> !lost.seats().contains(seat.id())).toList());
        Gear rest = counted(gear).without(lost);
        return Knowledge.answered(knowledge, now -> new Planning(left, rest, Set.copyOf(lost.channels()), now, bySeat(before), step -> { }).again(before, lost, pricePoints, labels(gear, now)));
    }

    /** What is written on things, lost ones as well. */
    private static Map<String, String> labels(Gear gear, Knowledge now) {
        Map<String, String> labels = new HashMap<>();
        now.catalogue().mics().values().forEach(mic -> labels.put(mic.id(), mic.name()));
        if (gear.stock() != null) {
            gear.stock().units().forEach(unit -> labels.put(unit.id(), unit.label()));
        }
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
        /** So many ways of each seat are searched first; nearly always that is proven to be enough. */
        private static final int FIRST = 30;

        private final LineUp lineUp;
        private final Gear gear;
        private final Knowledge now;
        private final Map<String, Picks.AtSeat> standing;
        private final Consumer<Progress> progress;
        private final PlanRules rules;
        private final Layout layout;

        Planning(LineUp lineUp, Gear gear, Set<String> lostChannels, Knowledge now, Map<String, Picks.AtSeat> standing, Consumer<Progress> progress) {
            this.lineUp = lineUp;
            this.gear = gear;
            this.now = now;
            this.standing = standing;
            this.progress = progress;
            this.rules = new PlanRules(now.rules());
            List<AtSeat> seats = judging.of(lineUp, now, gear.stock(), new ChannelPool(gear.channels(), lostChannels), progress);
            this.layout = new Layout(lineUp, seats, gear, lostChannels, now.catalogue(), rules, standing);
        }

        Planned planned() {
            if (!layout.unserved().isEmpty()) {
                return new Shortfall(lineUp, layout, now, allocator).planned(judging);
            }
            progress.accept(new Progress("Searching for the best plan", 0, 1));
            Found best = best(0);
            if (best == null) {
                return new Shortfall(lineUp, layout, now, allocator).planned(judging);
            }
            List<Found> found = new ArrayList<>(List.of(best));
            if (lineUp.plans() > 1) {
                progress.accept(new Progress("Searching for different plans", 0, 1));
                found.addAll(others(best));
            }
            List<Plan> plans = new ArrayList<>();
            for (Found one : found) {
                plans.add(plan(plans.size() + 1, one, standing));
                progress.accept(new Progress("Writing the plans", plans.size(), found.size()));
            }
            progress.accept(new Progress("Looking for better seats", 0, 1));
            return new Planned(plans, List.of(), List.of(), SeatMoves.of(lineUp, now.catalogue()).of(plans.get(0).lines(), progress), assumed(), now.rules().version(),
                    now.catalogue().version());
        }

        /** What was found among some of the ways. */
        private record Found(List<List<SeatChoices.Way>> among, Solution solution, boolean proven, long boundCentipoints) {
            List<SeatChoices.Way> ways() {
                List<SeatChoices.Way> ways = new ArrayList<>();
                for (int seat = 0; seat < among.size(); seat++) {
                    ways.add(among.get(seat).get(solution.choices().get(seat)));
                }
                return ways;
            }
        }

        /** The best of all ways, searched among few first; null where there is none. */
        private Found best(long keptCentipoints) {
            List<List<SeatChoices.Way>> some = layout.first(FIRST);
            Optional<Solution> first = searched(some, keptCentipoints);
            List<List<SeatChoices.Way>> wanted = first.isEmpty() ? layout.ways() : layout.within(first.get().centipoints(), keptCentipoints);
            if (first.isPresent() && covers(some, wanted)) {
                return new Found(some, first.get(), first.get().proven(), first.get().boundCentipoints());
            }
            if (covers(some, wanted)) {
                return null;
            }
            List<List<SeatChoices.Way>> all = union(some, wanted);
            return searched(all, keptCentipoints).map(solution -> new Found(all, solution, solution.proven(), solution.boundCentipoints())).orElse(null);
        }

        private Optional<Solution> searched(List<List<SeatChoices.Way>> some, long keptCentipoints) {
            if (keptCentipoints == 0) {
                return allocator.best(layout.problem(some));
            }
            Layout.SetUp setUp = layout.setUp();
            return allocator.again(layout.problem(some), setUp.problem(), setUp.plan(), keptCentipoints);
        }

        private static boolean covers(List<List<SeatChoices.Way>> some, List<List<SeatChoices.Way>> wanted) {
            for (int seat = 0; seat < some.size(); seat++) {
                if (!some.get(seat).containsAll(wanted.get(seat))) {
                    return false;
                }
            }
            return true;
        }

        private static List<List<SeatChoices.Way>> union(List<List<SeatChoices.Way>> some, List<List<SeatChoices.Way>> more) {
            List<List<SeatChoices.Way>> union = new ArrayList<>();
            for (int seat = 0; seat < some.size(); seat++) {
                Set<SeatChoices.Way> both = new LinkedHashSet<>(some.get(seat));
                both.addAll(more.get(seat));
                union.add(List.copyOf(both));
            }
            return union;
        }

        /** Plans that differ from the best, and from each other, at a third of the seats or more. They are the best among the ways that were searched. */
        private List<Found> others(Found best) {
            int apart = Math.max(1, (int) Math.ceil(lineUp.seats().size() / 3.0));
            List<Solution> different = allocator.different(layout.problem(best.among()), lineUp.plans(), apart);
            List<Found> others = new ArrayList<>();
            for (Solution solution : different.subList(Math.min(1, different.size()), different.size())) {
                boolean enough = covers(best.among(), layout.within(solution.centipoints(), 0));
                others.add(new Found(best.among(), solution, solution.proven() && enough, enough ? solution.boundCentipoints() : best.boundCentipoints()));
            }
            return others;
        }

        private Plan plan(int rank, Found found, Map<String, Picks.AtSeat> set) {
            PlanMaker.Draft draft = new PlanMaker(layout.seats(), layout.resources(), set).draft(found.ways(), found.solution());
            return new PlanJudge(lineUp, gear, layout, rules, now).plan(rank, draft, found.solution(), found.proven(), found.boundCentipoints() - found.solution().keptCentipoints());
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
            Solution solution = searched(only, 1).orElseThrow(() -> new IllegalArgumentException(
                    "What was picked takes more than there is now. Plan again, or free what is missing"));
            Found found = new Found(only, solution, false, solution.boundCentipoints());
            return plan(1, found, standing);
        }

        Change again(Picks before, Lost lost, double pricePoints, Map<String, String> labels) {
            long price = Math.round(pricePoints * 100);
            boolean served = layout.unserved().isEmpty();
            Found scratch = served ? best(0) : null;
            Found kept = !served ? null : best(Math.max(1, price)); // at no price at all, what stands is still preferred among equals
            if (kept == null || scratch == null) {
                throw new IllegalStateException("With what is left not every seat that must be served can be. Plan anew to see what is short");
            }
            return Steps.change(before, lost, plan(1, kept, standing), scratch.solution().centipoints() / 100.0, lineUp, now.catalogue().tasks(), id -> labels.getOrDefault(id, id));
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
            return List.copyOf(assumed);
        }
    }
}
