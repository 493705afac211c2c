package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.model.Habit;
import pairwright.model.HabitRank;
import pairwright.model.MicType;
import pairwright.model.Room;
import pairwright.model.Severity;
import pairwright.model.Source;
import pairwright.rules.Claim;
import pairwright.rules.RuleInfo;

/** A plan in which some set-ups were changed for the worse: which, and what is wrong with each. */
final class FaultsKind implements Kind {
    private static final KindInfo INFO = new KindInfo("faults", "Find the faults",
            "Read a plan before anything is carried, and see what the rules forbid, warn of, or hold strongly against it.",
            "Everything that only shows in the room: a plan without a fault can still sound wrong.",
            List.of("Three players, one fault", "Three players, two faults", "Four players, two faults", "Four players close together, three faults", "Five players close together, three faults"),
            List.of(10, 12, 15, 20, 25), false);
    private static final int[] SEATS = {3, 3, 4, 4, 5};
    private static final int[] FAULTS = {1, 2, 2, 3, 3};
    private static final int[] RULES = {3, 4, 4, 5, 5};
    private static final int[] ODD_CHANNELS = {0, 1, 1, 2, 2};
    private static final int[] DELAYS = {0, 1, 1, 2, 2};
    private static final int CLOSE_FROM = 4;
    private static final double WIDE_M = 2.4;
    private static final double CLOSE_M = 1.5;
    private static final int TYPES = 2;
    private static final int USUAL_TYPES = 2;
    /** Below that a plan calls a seat a stopgap. */
    private static final long LEAST_SOUND_CENTIPOINTS = 200;
    /** Any of so many of the best is sound enough. */
    private static final int SOUND = 6;
    private static final double BY_CHANNEL_SHARE = 0.6;
    private static final int ATTEMPTS = 8;
    private static final int WISHES_FROM = 3;
    private static final int PAIRS_FROM = 3;
    private static final double PAIR_SHARE = 0.5;

    @Override
    public KindInfo info() {
        return INFO;
    }

    @Override
    public Optional<Case> draw(Draw draw, int level, Lab lab) {
        Case drawn = floor(draw, level, lab);
        FaultsPlan plan = new FaultsPlan(drawn, level, lab);
        List<List<SeatTrials.Trial>> trials = new ArrayList<>();
        for (int seat = 0; seat < SEATS[level - 1]; seat++) {
            trials.add(plan.trials(seat, types(draw, plan.source(seat), lab), level >= PAIRS_FROM));
        }
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            Optional<Case> found = planted(draw, level, drawn, plan, trials, lab);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Some set-ups for the worse and the others sound; none where the rules do not find as many faulty as there are to be. */
    private static Optional<Case> planted(Draw draw, int level, Case drawn, FaultsPlan plan, List<List<SeatTrials.Trial>> trials, Lab lab) {
        int seats = trials.size();
        // an odd channel may well be one of the faults
        int planted = FAULTS[level - 1] - (ODD_CHANNELS[level - 1] > 0 && draw.share() < BY_CHANNEL_SHARE ? 1 : 0);
        List<Integer> order = draw.shuffled(IntStream.range(0, seats).boxed().toList());
        List<SeatTrials.Trial> chosen = new ArrayList<>();
        for (int seat = 0; seat < seats; seat++) {
            Optional<SeatTrials.Trial> one = order.indexOf(seat) < planted ? faulty(draw, trials.get(seat)) : sound(draw, trials.get(seat), plan.on(seat));
            if (one.isEmpty()) {
                return Optional.empty();
            }
            chosen.add(one.get());
        }
        List<FaultsPlan.At> stood = plan.stood(chosen);
        if (stood.stream().anyMatch(FaultsPlan.At::vague) || stood.stream().filter(FaultsPlan.At::faulty).count() != FAULTS[level - 1]) {
            return Optional.empty();
        }
        Case with = drawn.with("setUps", chosen.stream().map(SeatTrials.Trial::name).toList());
        for (int seat = 0; seat < seats; seat++) {
            List<String> rules = rules(draw, stood.get(seat), trials.get(seat), RULES[level - 1], plan.claim(seat), lab);
            if (rules.size() < RULES[level - 1]) {
                return Optional.empty();
            }
            with = with.with("rules-" + (seat + 1), rules);
        }
        with = with.with("delays", FaultsDelays.some(draw, DELAYS[level - 1], stood, lab));
        lab.worked(with, new FaultsExercise.Planted(plan, stood));
        return Optional.of(with);
    }

    /** Who plays where, on what channel. */
    private static Case floor(Draw draw, int level, Lab lab) {
        int seats = SEATS[level - 1];
        Room room = draw.one(RoundFloor.rooms(lab));
        List<String> places = RoundFloor.places(draw, room, seats, level >= CLOSE_FROM ? CLOSE_M : WIDE_M);
        List<String> on = new ArrayList<>();
        List<FaultsPlan.On> odd = draw.shuffled(Stream.of(FaultsPlan.On.values()).filter(kind -> kind != FaultsPlan.On.USUAL).toList());
        for (int seat = 0; seat < seats; seat++) {
            on.add(seat < ODD_CHANNELS[level - 1] ? odd.get(seat).name() : FaultsPlan.On.USUAL.name());
        }
        return Case.empty().with("room", room.id()).with("sources", draw.some(seats, RoundFloor.sources(lab, room)).stream().map(Source::id).toList()).with("places", places)
                .with("characters", characters(draw, seats, level, lab)).with("channels", draw.shuffled(on));
    }

    /** From some level on of one seat something is wanted. */
    private static List<String> characters(Draw draw, int seats, int level, Lab lab) {
        int wishing = level < WISHES_FROM ? seats : draw.below(seats);
        String wanted = draw.one(List.copyOf(lab.catalogue().characters().keySet()));
        return IntStream.range(0, seats).mapToObj(seat -> seat == wishing ? wanted : RoundFloor.AS_IT_IS).toList();
    }

    /** Some that the trade reaches for there, and some others. */
    private static List<MicType> types(Draw draw, Source source, Lab lab) {
        List<MicType> all = RoundFloor.types(lab);
        List<String> usual = source.habits().stream().filter(habit -> habit.rank() != HabitRank.AVOID).map(Habit::micType).distinct().toList();
        return Stream.concat(draw.some(USUAL_TYPES, all.stream().filter(type -> usual.contains(type.id())).toList()).stream(), draw.some(TYPES, all).stream()).distinct().toList();
    }

    /** Any rule that finds something wrong is as likely; of the set-ups it finds wrong one with the fewest other faults. */
    private static Optional<SeatTrials.Trial> faulty(Draw draw, List<SeatTrials.Trial> trials) {
        List<String> rules = trials.stream().flatMap(trial -> trial.faults().stream()).map(SetUpFault::rule).distinct().toList();
        if (rules.isEmpty()) {
            return Optional.empty();
        }
        String rule = draw.one(rules);
        return draw.shuffled(trials).stream().filter(trial -> trial.faults().stream().anyMatch(fault -> fault.rule().equals(rule)))
                .min(Comparator.comparingInt(trial -> trial.faults().size()));
    }

    /** One of the best, a pair as often as not where one is sound, and of those one that its channel matters to. */
    private static Optional<SeatTrials.Trial> sound(Draw draw, List<SeatTrials.Trial> trials, FaultsPlan.On on) {
        List<SeatTrials.Trial> all = trials.stream().filter(trial -> trial.faults().isEmpty() && trial.offer().centipoints() >= LEAST_SOUND_CENTIPOINTS)
                .sorted(Comparator.comparingLong((SeatTrials.Trial trial) -> trial.offer().centipoints()).reversed()).toList();
        boolean pair = all.stream().anyMatch(SeatTrials.Trial::pair) && draw.share() < PAIR_SHARE;
        List<SeatTrials.Trial> best = draw.some(SOUND, all.stream().filter(trial -> trial.pair() == pair).limit(2 * SOUND).toList());
        return best.stream().max(Comparator.comparingDouble(trial -> matters(trial, on)));
    }

    private static double matters(SeatTrials.Trial trial, FaultsPlan.On on) {
        Double gainDb = trial.offer().mics().get(0).predicted().gainDb();
        return switch (on) {
            case USUAL -> 0;
            case WEAK -> gainDb == null ? 0 : gainDb;
            case HOT -> gainDb == null ? 0 : -gainDb;
            case LOADING, SHARED -> trial.ribbon() ? 1 : 0;
            case LIVE -> trial.ribbon() ? 2 : trial.offer().mics().get(0).phantom() ? 0 : 1;
            case WITHOUT -> trial.offer().mics().get(0).phantom() ? 0 : 1;
        };
    }

    /** What is offered of a seat: of all its faults one, and rules that find something wrong with as many microphones there but say nothing of these. */
    private static List<String> rules(Draw draw, FaultsPlan.At at, List<SeatTrials.Trial> trials, int many, Claim claim, Lab lab) {
        List<String> rules = new ArrayList<>();
        Set<String> said = new HashSet<>();
        at.faults().stream().limit(1).forEach(fault -> rules.add(fault.rule()));
        rules.forEach(rule -> said.add(claim.says(lab.rules().rule(rule))));
        Stream<String> others = draw.shuffled(trials.stream().filter(trial -> trial.pair() == at.trial().pair()).flatMap(trial -> trial.faults().stream()).map(SetUpFault::rule).distinct().toList()).stream();
        Stream<String> ofPlans = draw.some(2, lab.rules().rules().stream().filter(FaultsKind::ofALine).map(RuleInfo::id).toList()).stream();
        draw.shuffled(Stream.concat(others.limit(many), ofPlans).toList()).stream().filter(rule -> rules.size() < many && !at.speaking().contains(rule))
                .filter(rule -> said.add(claim.says(lab.rules().rule(rule)))).forEach(rules::add);
        return draw.shuffled(rules);
    }

    /** Whether a rule of plans warns of one line and of what is set there. */
    private static boolean ofALine(RuleInfo rule) {
        return rule.ofAPlan() && rule.severity() != null && rule.severity() != Severity.NOTE && (rule.teachable() || rule.topic().equals("gain"));
    }

    @Override
    public Exercise of(Case drawn, int level, Lab lab) {
        return new FaultsExercise(drawn, lab.worked(drawn, FaultsExercise.Planted.class, () -> FaultsExercise.Planted.of(drawn, level, lab)), lab);
    }
}
