package pairwright.lab;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import pairwright.advice.Knowledge;
import pairwright.locker.Act;
import pairwright.locker.Changes;
import pairwright.locker.ExerciseSet;
import pairwright.locker.HandedIn;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import pairwright.locker.Role;
import pairwright.model.Fault;
import pairwright.model.Stock;

/**
 * The exercises of a class: made, handed out, handed in, marked, and given back. What a set holds is kept in the locker as it was drawn, and its exercises are
 * made anew of that each time, by the knowledge of the moment. Keys, marks and seeds are for an instructor; the keys are for everybody once their time has
 * come. Safe to share between threads.
 */
public final class LabDesk {
    private final Locker locker;
    private final Supplier<Knowledge> knowledge;
    private final Kinds kinds;

    public LabDesk(Locker locker, Supplier<Knowledge> knowledge) {
        this(locker, knowledge, new Kinds());
    }

    LabDesk(Locker locker, Supplier<Knowledge> knowledge, Kinds kinds) {
        this.locker = locker;
        this.knowledge = knowledge;
        this.kinds = kinds;
    }

    /** What can be made. */
    public List<KindInfo> kinds() {
        return kinds.all().stream().map(Kind::info).toList();
    }

    /**
     * Draws exercises for a class, of what is free in its time. Nothing is kept yet.
     *
     * @throws LockerFault.Unusable with every fault
     */
    public Candidates draw(Wanted asked) {
        Wanted wanted = new WantedCheck(kinds).sound(asked, locker.now());
        Stock stock = locker.stock(MadeSet.span(wanted, locker.now()));
        if (stock != null && !stock.reachable()) {
            throw new LockerFault.Unreachable("The locker does not answer just now. Try again in a moment");
        }
        return Knowledge.answered(knowledge, now -> new MadeSet(kind(wanted.kind()), now).drawn(wanted, stock));
    }

    /**
     * Keeps exercises for as many benches as were wanted, equally hard as far as can be, and where the class has a time the booking of their kit with them.
     *
     * @param by who answers for the booking
     * @throws DoesNotFit where what is free by now is too little
     */
    public ExerciseSet make(Changes changes, Candidates drawn, String by) {
        return Knowledge.answered(knowledge, now -> new MadeSet(kind(drawn.wanted().kind()), now).make(changes, drawn, locker.now(), by));
    }

    /** Both in one. */
    public ExerciseSet make(Wanted wanted, String by) {
        Candidates drawn = draw(wanted);
        return locker.exercises().of(locker.change(Act.by(by), changes -> make(changes, drawn, by).id()).text()).orElseThrow();
    }

    /** What can be had where something could not: for fewer benches, at another level, of another kind. */
    public List<Fits> instead(DoesNotFit refused) {
        return new Instead(kinds, locker, knowledge).of(refused);
    }

    /** Sets, the newest first. */
    public List<ExerciseSet> sets(int most) {
        return locker.exercises().all(most);
    }

    /** How many sets there are. */
    public long count() {
        return locker.exercises().count();
    }

    /**
     * A set by its id. It holds the seed and what was drawn, which are for an instructor alone.
     *
     * @throws LockerFault.NotThere where there is none
     */
    public ExerciseSet set(String id) {
        return locker.exercises().of(id).orElseThrow(() -> new LockerFault.NotThere("There are no exercises \"" + pairwright.catalogue.Shown.of(id)
                + "\". Look at the list of exercises"));
    }

    /**
     * What a bench gets.
     *
     * @throws OutOfDate where the exercise cannot be made any more
     */
    public Handout handout(ExerciseSet set, int bench) {
        return made(set, exercises -> exercises.apply(bench(set, bench)).handout());
    }

    /** Whether somebody may see the keys by now. */
    public boolean open(ExerciseSet set, Role role) {
        return role.covers(Role.INSTRUCTOR) || set.open(locker.now());
    }

    /**
     * What is right, bench by bench.
     *
     * @throws KeysShut where that is not to be seen, or not yet
     */
    public List<BenchKey> key(ExerciseSet set, Role role) {
        seen(set, role);
        return made(set, exercises -> set.benches().stream().map(bench -> new BenchKey(bench.number(), exercises.apply(bench).key())).toList());
    }

    /** The same of one bench. @throws KeysShut where that is not to be seen, or not yet */
    public Key key(ExerciseSet set, int bench, Role role) {
        seen(set, role);
        return made(set, exercises -> exercises.apply(bench(set, bench)).key());
    }

    private void seen(ExerciseSet set, Role role) {
        if (!open(set, role)) {
            throw new KeysShut("The key of these exercises is shut" + (set.opensAt() == null ? ". Whoever teaches has it" : " until " + set.opensAt() + ". Ask again then"));
        }
    }

    /**
     * Looks through what a bench answers.
     *
     * @throws LockerFault.Unusable with every slip of the pen
     */
    public Handing handing(ExerciseSet set, int bench, Answer answer, Role role) {
        return handings(set, Map.of(bench, answer), role).get(0);
    }

    /** The same of several benches; faults are those of all of them. */
    public List<Handing> handings(ExerciseSet set, Map<Integer, Answer> answers, Role role) {
        boolean seen = open(set, role);
        boolean late = seen && !role.covers(Role.INSTRUCTOR);
        return made(set, exercises -> {
            List<Fault> faults = new ArrayList<>();
            List<Handing> handings = new ArrayList<>();
            answers.forEach((number, answer) -> {
                ExerciseSet.Bench bench = set.benches().stream().filter(one -> one.number() == number).findFirst().orElse(null);
                if (bench == null) {
                    faults.add(noBench(set, number));
                    return;
                }
                Exercise exercise = exercises.apply(bench);
                new AnswerCheck(exercise.handout()).faults(answer).forEach(fault -> faults.add(new Fault("/answer/" + fault.at().replace("~", "~0").replace("/", "~1"),
                        (answers.size() > 1 ? "bench " + number + ": " : "") + fault.says())));
                // what may not be seen yet is not even worked out: how long it takes would tell something
                handings.add(new Handing(set.id(), number, answer, seen && faults.isEmpty() ? exercise.mark(answer) : null, late));
            });
            if (!faults.isEmpty()) {
                throw new LockerFault.Unusable(faults);
            }
            return handings;
        });
    }

    /**
     * The answers of a whole class as a table: bench, item, answer.
     *
     * @throws LockerFault.Unusable with every fault and its line
     */
    public Map<Integer, Answer> answers(ExerciseSet set, String csv) {
        return made(set, exercises -> AnswerSheet.read(csv, set, number -> exercises.apply(bench(set, number)).handout()));
    }

    /** Keeps what was looked through. */
    public HandedIn handIn(Changes changes, Handing one) {
        return changes.handIn(one.set(), one.bench(), Written.of(one.answer()), one.mark() == null ? null : one.mark().mark(),
                one.mark() == null ? null : one.mark().of(), one.late());
    }

    /** What a bench answered, as it was handed in. */
    public static Answer answer(HandedIn one) {
        return Written.answer(one.answer());
    }

    /** Says from when on everybody may see the keys; null for never. */
    public ExerciseSet openKeys(Changes changes, String id, Instant opensAt, Long version) {
        return changes.openKeys(id, opensAt, version);
    }

    /**
     * What every bench earned, also those that handed in nothing.
     *
     * @throws KeysShut for anybody but an instructor
     */
    public List<BenchMark> marks(ExerciseSet set, Role role) {
        instructor(role);
        return made(set, exercises -> marks(set, exercises));
    }

    private List<BenchMark> marks(ExerciseSet set, Function<ExerciseSet.Bench, Exercise> exercises) {
        Map<Integer, List<HandedIn>> all = locker.exercises().handedIn(set.id()).stream().collect(Collectors.groupingBy(HandedIn::bench, LinkedHashMap::new, Collectors.toList()));
        return set.benches().stream().map(bench -> {
            HandedIn counts = counts(all.getOrDefault(bench.number(), List.of()));
            if (counts == null) {
                return new BenchMark(bench.number(), null, null, null, null);
            }
            Answer answer = Written.answer(counts.answer());
            Mark mark = exercises.apply(bench).mark(answer);
            return new BenchMark(bench.number(), counts, answer, mark, counts.points() == null || counts.points() == mark.mark() ? null : counts.points());
        }).toList();
    }

    /** The last that is not late; of late ones alone the last. */
    private static HandedIn counts(List<HandedIn> all) {
        return all.stream().filter(one -> !one.late()).reduce((one, next) -> next).or(() -> all.stream().reduce((one, next) -> next)).orElse(null);
    }

    /** What goes back to a bench. @throws KeysShut for anybody but an instructor */
    public Feedback feedback(ExerciseSet set, int bench, Role role) {
        instructor(role);
        return made(set, exercises -> {
            Exercise exercise = exercises.apply(bench(set, bench));
            return new Feedback(marks(set, exercises).get(bench - 1), exercise.handout(), exercise.key());
        });
    }

    /** What the class as a whole got right and missed. @throws KeysShut for anybody but an instructor */
    public Summary summary(ExerciseSet set, Role role) {
        instructor(role);
        return made(set, (lab, exercises) -> Summary.of(marks(set, exercises), bench -> exercises.apply(bench(set, bench)), lab));
    }

    private static void instructor(Role role) {
        if (!role.covers(Role.INSTRUCTOR)) {
            throw new KeysShut("Marks are for whoever teaches");
        }
    }

    private static ExerciseSet.Bench bench(ExerciseSet set, int number) {
        return set.benches().stream().filter(bench -> bench.number() == number).findFirst().orElseThrow(() -> new LockerFault.Unusable(List.of(noBench(set, number))));
    }

    private static Fault noBench(ExerciseSet set, int number) {
        return new Fault("/bench", "there is no bench " + number + ". Give one from 1 to " + set.benches().size());
    }

    /** Does something with exercises of a set, each made once, by one and the same knowledge. */
    private <T> T made(ExerciseSet set, Function<Function<ExerciseSet.Bench, Exercise>, T> work) {
        return made(set, (lab, exercises) -> work.apply(exercises));
    }

    private <T> T made(ExerciseSet set, BiFunction<Lab, Function<ExerciseSet.Bench, Exercise>, T> work) {
        Kind kind = kinds.kind(set.kind()).orElseThrow(() -> new OutOfDate("These exercises cannot be made any more: this program knows no kind \"" + set.kind()
                + "\". Make new exercises; what was handed in is kept", null));
        return Knowledge.answered(knowledge, known -> {
            Lab lab = new Lab(known, null);
            Map<Integer, Exercise> made = new LinkedHashMap<>();
            return work.apply(lab, bench -> made.computeIfAbsent(bench.number(), number -> Remade.of(kind, bench.drawn(), set.level(), lab)));
        });
    }

    private Kind kind(String id) {
        return kinds.kind(id).orElseThrow();
    }
}
