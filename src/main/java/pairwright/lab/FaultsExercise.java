package pairwright.lab;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.model.MicType;
import pairwright.model.Naming;
import pairwright.model.Placement;
import pairwright.session.Line;

/** A plan with faults: of each set-up what is wrong with it, if anything, and which of them endanger somebody. */
final class FaultsExercise implements Exercise {
    private static final String NOTHING = "Nothing.";
    private static final String DANGER = "danger";
    /** Whoever passes what endangers somebody does not pass; whoever passes what is forbidden hardly. */
    private static final double DANGER_SHARE = 0.4;
    private static final double FORBIDDEN_SHARE = 0.6;
    private static final double FAULT_POINTS = 3;
    private static final double SOUND_POINTS = 2;
    private static final double DANGER_POINTS = 2;

    private final Lab lab;
    private final Case drawn;
    private final FaultsPlan plan;
    private final List<FaultsPlan.At> stood;
    private final FaultsDelays delays;

    FaultsExercise(Case drawn, Planted planted, Lab lab) {
        this.lab = lab;
        this.drawn = drawn;
        this.plan = planted.plan();
        this.stood = planted.stood();
        this.delays = new FaultsDelays(stood, drawn.all("delays"), lab);
    }

    /** A plan as it stands, and what is wrong with each of its set-ups. */
    record Planted(FaultsPlan plan, List<FaultsPlan.At> stood) {
        /**
         * As a case has it.
         *
         * @throws IllegalArgumentException where a set-up of it cannot be any more
         */
        static Planted of(Case drawn, int level, Lab lab) {
            FaultsPlan plan = new FaultsPlan(drawn, level, lab);
            List<String> names = drawn.all("setUps");
            return new Planted(plan, plan.stood(IntStream.range(0, names.size()).mapToObj(seat -> trial(plan, seat, names.get(seat), lab)).toList()));
        }

        private static SeatTrials.Trial trial(FaultsPlan plan, int seat, String name, Lab lab) {
            List<MicType> types = Stream.of(name.split(" ")).filter(lab.catalogue().mics()::containsKey).distinct().map(lab::type).toList();
            return plan.trials(seat, types, name.contains("+")).stream().filter(trial -> trial.name().equals(name)).findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("The set-up \"" + name + "\" of the exercise cannot be tried any more"));
        }
    }

    private int seats() {
        return drawn.all("sources").size();
    }

    private static String item(int seat) {
        return "set-up-" + (seat + 1);
    }

    private String called(int seat) {
        return "set-up " + (seat + 1) + " (" + Naming.small(plan.source(seat).name()) + ")";
    }

    /** Rules that are offered of a seat, then that nothing is wrong. */
    private List<String> rules(int seat) {
        return drawn.all("rules-" + (seat + 1));
    }

    private List<Item.Opt> options(int seat) {
        return Item.Opt.lettered(Stream.concat(rules(seat).stream().map(rule -> plan.claim(seat).says(lab.rules().rule(rule))), Stream.of(NOTHING)).toList());
    }

    private boolean anyDanger() {
        return stood.stream().anyMatch(FaultsPlan.At::dangerous);
    }

    private List<Item.Opt> all() {
        return Item.Opt.lettered(IntStream.range(0, seats()).mapToObj(this::called).toList());
    }

    @Override
    public Handout handout() {
        List<String> situation = List.of(RoundFloor.says(lab.room(drawn.one("room"))),
                "Somebody has written down who gets what. Every microphone looks straight at its source. Nobody wrote down which stands there are: take them for ordinary light ones, the arm between two legs.",
                "A fault is what the rules forbid, what they warn of as a danger or as something that gear or recording suffers from, and what they hold "
                        + (plan.leastAgainstPoints() < 3 ? "" : "strongly ") + "against it. What comes with a source and a type wherever it stands is none.",
                "A stand is to hold 2 times what tips it. A ribbon wants an input of 5 times its impedance. The gain that is wanted is counted to the recorder, and a channel that cannot go so low clips.");
        List<Item> items = new ArrayList<>();
        for (int seat = 0; seat < seats(); seat++) {
            items.add(new Item.OneOf(item(seat), "What is wrong with " + called(seat) + "?", options(seat)));
        }
        if (anyDanger()) {
            items.add(new Item.SomeOf(DANGER, "Which endanger somebody by the way they are set up?", all(), null));
        }
        items.addAll(delays.items());
        return new Handout("Find the faults", List.of(), situation, shown(), items);
    }

    private List<Shown> shown() {
        List<Shown> shown = new ArrayList<>(List.of(new Shown.FromAbove("Who plays where", plan.lineUp()), table(), plan.channelTable(stood)));
        shown.addAll(new FaultsFigures(plan, stood).tables());
        return shown;
    }

    private Shown.Table table() {
        List<List<String>> rows = new ArrayList<>();
        for (int seat = 0; seat < seats(); seat++) {
            for (Line line : stood.get(seat).lines()) {
                Placement mic = line.placement();
                rows.add(List.of(String.valueOf(seat + 1), plan.source(seat).name(), wanted(seat), Naming.type(mic.name()), mic.pattern().id().replace('-', ' ').replace("figure 8", "figure-8"), mic.positionName(), ChooseExercise.far(mic.distanceM()),
                        String.valueOf(FaultsPlan.number(line))));
            }
        }
        return new Shown.Table("The set-ups", List.of("Set-up", "Source", "Wanted", "Microphone", "Pattern", "Place", "Distance", "Channel"), rows);
    }

    private String wanted(int seat) {
        String character = drawn.all("characters").get(seat);
        return character.equals(RoundFloor.AS_IT_IS) ? "as it is" : lab.catalogue().characters().get(character).name();
    }

    /** The option that is right. */
    private String right(int seat) {
        FaultsPlan.At at = stood.get(seat);
        List<String> rules = rules(seat);
        int found = IntStream.range(0, rules.size()).filter(i -> at.faults().stream().anyMatch(fault -> fault.rule().equals(rules.get(i)))).findFirst().orElse(rules.size());
        return options(seat).get(found).id();
    }

    private List<String> dangerous() {
        return IntStream.range(0, seats()).filter(seat -> stood.get(seat).dangerous()).mapToObj(seat -> all().get(seat).id()).toList();
    }

    @Override
    public Key key() {
        Answer best = Answer.NOTHING;
        List<Key.Entry> entries = new ArrayList<>();
        for (int seat = 0; seat < seats(); seat++) {
            String right = right(seat);
            best = best.with(item(seat), right);
            List<SetUpFault> faults = stood.get(seat).faults();
            entries.add(new Key.Entry(item(seat), options(seat).stream().filter(option -> option.id().equals(right)).findFirst().orElseThrow().says(), List.of(right),
                    faults.isEmpty() ? List.of(sound(seat)) : faults.stream().map(SetUpFault::says).toList(), faults.isEmpty() ? rules(seat) : faults.stream().map(SetUpFault::rule).toList()));
        }
        if (anyDanger()) {
            best = best.with(DANGER, dangerous());
            List<SetUpFault> dangers = dangers();
            entries.add(new Key.Entry(DANGER, String.join("; ", dangerous().stream().map(this::says).toList()), List.of(), dangers.stream().map(SetUpFault::says).toList(),
                    dangers.stream().map(SetUpFault::rule).distinct().toList()));
        }
        return new Key(delays.key(best, entries), entries, List.of());
    }

    private List<SetUpFault> dangers() {
        return stood.stream().flatMap(at -> at.faults().stream()).filter(fault -> fault.grade() == SetUpFault.Grade.DANGER).toList();
    }

    private String says(String letter) {
        return all().stream().filter(option -> option.id().equals(letter)).findFirst().orElseThrow().says();
    }

    /** Why it may stay as it is. */
    private String sound(int seat) {
        return "No rule forbids it, warns of it or holds much against it. " + best(seat);
    }

    /** What speaks most for it. */
    private String best(int seat) {
        return StrongestReason.of(stood.get(seat).trial().offer()).map(StrongestReason::says).orElse("");
    }

    @Override
    public Mark mark(Answer answer) {
        Mark.Sum sum = new Mark.Sum();
        for (int seat = 0; seat < seats(); seat++) {
            FaultsPlan.At at = stood.get(seat);
            String given = answer.one(item(seat));
            boolean hit = right(seat).equals(given);
            boolean passed = given == null || given.equals(options(seat).get(rules(seat).size()).id());
            SetUpFault fault = at.faulty() ? at.faults().get(0) : null;
            String says = at.faulty() ? (hit ? "Yes: " : passed ? "This was passed: " : "Not that, but: ") + fault.says() : hit ? sound(seat) : given == null ? "Nothing was said of it, and it is sound."
                    : "A false alarm. " + sound(seat);
            sum.add("Set-up " + (seat + 1), hit ? 1 : 0, at.faulty() ? FAULT_POINTS : SOUND_POINTS, says, at.faulty() ? fault.rule() : null);
            missed(seat, passed, answer, sum);
        }
        if (anyDanger()) {
            List<String> right = dangerous();
            Set<String> given = new LinkedHashSet<>(answer.all(DANGER));
            double hits = given.stream().filter(right::contains).count();
            double alarms = given.size() - hits;
            sum.add("The dangers", hits / right.size() - alarms / Math.max(1, seats() - right.size()), DANGER_POINTS, "Dangerous as they are set up: "
                    + String.join("; ", right.stream().map(this::says).toList()) + ".", dangers().get(0).rule());
        }
        delays.mark(answer, sum);
        return sum.mark();
    }

    private void missed(int seat, boolean passed, Answer answer, Mark.Sum sum) {
        FaultsPlan.At at = stood.get(seat);
        if (passed && at.dangerous() && !answer.all(DANGER).contains(all().get(seat).id())) {
            sum.cap(DANGER_SHARE, at.of(SetUpFault.Grade.DANGER).orElseThrow().says());
        } else if (passed) {
            at.of(SetUpFault.Grade.FORBIDDEN).ifPresent(fault -> sum.cap(FORBIDDEN_SHARE, fault.says()));
        }
    }

    /** Sees nothing wrong with anything. */
    @Override
    public Answer usual() {
        Answer usual = Answer.NOTHING;
        for (int seat = 0; seat < seats(); seat++) {
            usual = usual.with(item(seat), options(seat).get(rules(seat).size()).id());
        }
        return delays.usual(usual);
    }

    @Override
    public List<Need> kit() {
        return List.of();
    }

    @Override
    public Map<String, String> claims(String item) {
        return IntStream.range(0, seats()).filter(seat -> item(seat).equals(item)).mapToObj(seat -> Item.Opt.behind(rules(seat))).findFirst().orElse(Map.of());
    }

    @Override
    public Set<String> restsOn() {
        Set<String> rests = new LinkedHashSet<>();
        stood.forEach(at -> at.faults().forEach(fault -> rests.add(fault.rule())));
        IntStream.range(0, seats()).forEach(seat -> rests.addAll(rules(seat)));
        rests.addAll(delays.rules());
        return rests;
    }
}
