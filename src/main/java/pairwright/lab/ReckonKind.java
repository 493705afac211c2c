package pairwright.lab;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pairwright.numbers.Numbers;
import pairwright.numbers.Worked;

/** Numbers to work out by hand. */
final class ReckonKind implements Kind {
    private static final KindInfo INFO = new KindInfo("reckon", "Work it out",
            "Work out by hand what distance, delay, level, gain and power come to, closely enough to decide by.",
            "When a number matters. It does not say whether 3 ms are too many; the other exercises do.",
            List.of("Level, delay and current", "Nulls and headroom", "Gain, noise and mid/side", "Closeness, rooms and stands", "Ripple, stereo and doses"),
            List.of(15, 15, 20, 20, 25), false);
    private static final int PROBLEMS = 3;
    private static final int POINTS = 4;

    @Override
    public KindInfo info() {
        return INFO;
    }

    @Override
    public Optional<Case> draw(Draw draw, int level, Lab lab) {
        List<ReckonProblem> problems = new ArrayList<>(draw.some(PROBLEMS, ReckonProblems.ALL.stream().filter(problem -> problem.level() == level).toList()));
        if (problems.size() < PROBLEMS) {
            problems.addAll(draw.some(PROBLEMS - problems.size(), ReckonProblems.ALL.stream().filter(problem -> problem.level() == level - 1).toList()));
        }
        Case drawn = Case.empty().with("problems", problems.stream().map(ReckonProblem::id).toList());
        for (ReckonProblem problem : problems) {
            for (var input : problem.inputs().entrySet()) {
                drawn = drawn.with(problem.id() + "." + input.getKey(), input.getValue().draw(draw));
            }
        }
        Case all = drawn;
        return problems.stream().allMatch(problem -> sensible(problem, all, lab.numbers())) ? Optional.of(all) : Optional.empty();
    }

    /** Whether the result is one that a sensible person could write down, and the usual mistake leads to another. */
    private static boolean sensible(ReckonProblem problem, Case drawn, Numbers numbers) {
        Worked worked = problem.worked(drawn, numbers);
        return worked.result().stream().filter(value -> value.name().equals(problem.result())).anyMatch(value -> value.value() >= problem.least() && value.value() <= problem.most()
                && Math.abs(problem.slip().applyAsDouble(value.value()) - value.value()) > 3 * problem.within(value.value()));
    }

    @Override
    public Exercise of(Case drawn, int level, Lab lab) {
        return new Reckon(drawn, lab.numbers());
    }

    /** One of them, with what it asks and what came out. */
    private record Asked(ReckonProblem problem, String says, Worked worked, double right) {
        static Asked of(String id, Case drawn, Numbers numbers) {
            ReckonProblem problem = ReckonProblems.ALL.stream().filter(one -> one.id().equals(id)).findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("There is no problem \"" + id + "\" any more"));
            Worked worked = problem.worked(drawn, numbers);
            return new Asked(problem, problem.asked(drawn), worked, problem.right(worked));
        }

        private static final Pattern DECIMAL = Pattern.compile("\\d+[.]\\d+");

        String item() {
            return problem.id();
        }

        String written() {
            return written(right);
        }

        /** The formula, and of the steps the one that comes to what was asked, with those whose numbers it takes or that are worked with its own; all where none comes to it. */
        List<String> way() {
            List<String> steps = worked.steps();
            int last = IntStream.range(0, steps.size()).filter(i -> result(steps.get(i)).startsWith(figure())).findFirst().orElse(-1);
            int tried = IntStream.range(0, Math.max(0, last)).filter(i -> triedWith(steps.get(i), steps.get(last))).findFirst().orElse(last);
            List<String> way = new ArrayList<>(last < 0 ? steps : steps.subList(tried, last + 1));
            for (int i = tried - 1; i >= 0; i--) {
                String step = steps.get(i);
                if (way.stream().anyMatch(later -> has(later, result(step).split(" ")[0]))) {
                    way.add(0, step);
                }
            }
            way.add(0, worked.formula());
            return way;
        }

        /** Whether a step names a number before its colon that another takes, as where an angle was found by trying; from there on every step is needed. */
        private static boolean triedWith(String step, String later) {
            return DECIMAL.matcher(step.substring(0, step.indexOf(':') + 1)).results().anyMatch(number -> has(later, number.group()));
        }

        private static boolean has(String step, String number) {
            return step.matches("(?s).*(?<![\\d.])" + Pattern.quote(number) + "(?![\\d.]).*");
        }

        private static String result(String step) {
            return step.substring(step.lastIndexOf('=') + 1).strip();
        }

        /** As the steps have it: four digits, or two decimals if those are more. */
        private String figure() {
            java.math.BigDecimal exact = java.math.BigDecimal.valueOf(right);
            return exact.setScale(Math.max(2, 4 - (exact.precision() - exact.scale())), java.math.RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
        }

        private String written(double value) {
            int digits = Math.abs(value) >= 100 ? 0 : Math.abs(value) >= 10 ? 1 : 2;
            return String.format(Locale.ROOT, "%." + digits + "f", value) + (problem.unit().equals("1") ? "" : " " + problem.unit());
        }
    }

    /** Some problems, each marked by itself. */
    private static final class Reckon implements Exercise {
        private final List<Asked> asked;

        Reckon(Case drawn, Numbers numbers) {
            this.asked = drawn.all("problems").stream().map(id -> Asked.of(id, drawn, numbers)).toList();
        }

        @Override
        public Handout handout() {
            return new Handout("Work it out", List.of(), List.of("Take 343 m/s for the speed of sound. Write the number with its unit."), List.of(),
                    asked.stream().map(one -> (Item) new Item.Amount(one.item(), one.says(), one.problem().unit(), one.problem().least(), one.problem().most())).toList());
        }

        @Override
        public Key key() {
            Answer best = Answer.NOTHING;
            for (Asked one : asked) {
                best = best.with(one.item(), one.right());
            }
            return new Key(best, asked.stream().map(one -> new Key.Entry(one.item(), one.written(), List.of(), one.way(), List.of(one.problem().calculation()))).toList(),
                    List.of());
        }

        @Override
        public Mark mark(Answer answer) {
            Mark.Sum sum = new Mark.Sum();
            asked.forEach(one -> check(one, answer, sum));
            return sum.mark();
        }

        private static void check(Asked one, Answer answer, Mark.Sum sum) {
            ReckonProblem problem = one.problem();
            OptionalDouble given = Reckoned.in(problem.unit(), answer, one.item());
            double share = 0;
            String says;
            if (given.isEmpty()) {
                says = answer.all(one.item()).isEmpty() ? "No number." : "\"" + String.join(" ", answer.all(one.item())) + "\" is no number in " + problem.unit() + ".";
            } else {
                double off = Math.abs(given.getAsDouble() - one.right());
                double within = problem.within(one.right());
                boolean slipped = Math.abs(given.getAsDouble() - problem.slip().applyAsDouble(one.right())) <= within;
                share = off <= within * (1 + 1e-9) ? 1 : off <= 2 * within ? 0.75 : slipped ? 0.25 : 0;
                says = share == 1 ? "Right: " + one.written() + "." : share > 0.5 ? "Near: it is " + one.written() + "." : "It is " + one.written() + ". " + (slipped ? problem.slipSays()
                        : Math.abs(given.getAsDouble() + one.right()) <= within ? "The sign is the other way." : one.worked().formula());
            }
            sum.add(problem.calculation(), share, POINTS, says, problem.calculation());
        }

        @Override
        public Answer usual() {
            Answer usual = Answer.NOTHING.with(asked.get(0).item(), asked.get(0).right());
            for (Asked one : asked.subList(1, asked.size())) {
                usual = usual.with(one.item(), one.problem().slip().applyAsDouble(one.right()));
            }
            return usual;
        }

        @Override
        public List<Need> kit() {
            return List.of();
        }

        @Override
        public Set<String> restsOn() {
            return asked.stream().map(one -> one.problem().calculation()).collect(Collectors.toCollection(LinkedHashSet::new));
        }
    }
}
