package pairwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.drawing.Drawing;
import pairwright.drawing.SetUpDrawing;
import pairwright.model.Caution;
import pairwright.model.Effect;
import pairwright.model.Neighbour;
import pairwright.model.Option;
import pairwright.model.Question;
import pairwright.model.Severity;
import pairwright.rules.RuleInfo;
import pairwright.session.Arrival;
import pairwright.session.Hears;
import pairwright.session.Line;
import pairwright.session.Plan;
import pairwright.session.Said;
import pairwright.session.Seat;
import pairwright.session.Telling;
import pairwright.session.Told;

/** A plan in words and pictures, seat by seat, for one reader. */
final class PlanWords {
    private static final Map<Severity, String> WORDS = Map.of(Severity.DANGER, "Danger", Severity.CARE, "Care", Severity.NOTE, "Note");
    /** More around a source than anybody can make out in a drawing. */
    private static final int MOST_BESIDE = 3;

    private final AtPlan at;
    private final Plan plan;
    private final Telling telling;

    PlanWords(AtPlan at, Plan plan) {
        this.at = at;
        this.plan = plan;
        this.telling = Telling.of(plan, at.lineUp(), at.at().known().rules().rules());
    }

    /** What a seat is asked with: its own wishes, and beside it whom its first microphone is nearest to. */
    Question question(Seat seat) {
        List<Line> lines = plan.linesOf(seat.id());
        List<Neighbour> beside = lines.isEmpty() ? List.of() : plan.bleed().stream().filter(hears -> hears.line() == lines.get(0).number())
                .sorted(Comparator.comparingDouble(Hears::distanceM)).limit(MOST_BESIDE)
                .map(hears -> new Neighbour(hears.source(), hears.distanceM(), hears.angleDegrees())).toList();
        return new Question("", seat.source(), seat.ways(), seat.dynamics(), at.lineUp().floor().room(), seat.character(), seat.limits(), beside,
                seat.circumstances(), List.of(), 1, at.lineUp().from(), at.lineUp().until(), List.of());
    }

    SetUpWords setUp(Seat seat) {
        return new SetUpWords(at.catalogue(), question(seat), at.reader()).on(new AimOnFloor(at.lineUp(), plan, at.catalogue()), plan.linesOf(seat.id()));
    }

    /** The types at a seat, and how they relate. */
    String title(Seat seat, Option option) {
        return setUp(seat).title(option);
    }

    /** How one microphone is set up, in one line. */
    String line(Seat seat, Option option, Line line) {
        return setUp(seat).line(option, line.mic() - 1);
    }

    /** From above, and from the side; the second is null for a lead. */
    List<Drawing> pictures(Seat seat, Option option, String key) {
        Question question = question(seat);
        Drawing above = SetUpDrawing.fromAbove(at.catalogue(), question, option, key + "-above", at.reader());
        Drawing side = SetUpDrawing.fromSide(at.catalogue(), question, option, key + "-side", at.reader());
        return side.says().equals(above.says()) ? List.of(above) : List.of(above, side);
    }

    /**
     * What must not be missed in all of the plan, once each, with whom it is about; gravest first, then in the order of the plan. What is only good to
     * know of one line stands beside that line, and would bury the rest.
     */
    List<OptionView.CautionView> grave() {
        List<OptionView.CautionView> views = new ArrayList<>(telling.grave().stream().map(told -> view(told, true)).toList());
        Gathered whole = new Gathered();
        plan.cautions().forEach(whole::add);
        views.addAll(whole.views(Severity.NOTE));
        return views;
    }

    /** Every danger, and what belongs to no line: where each line has its own beside it. */
    List<OptionView.CautionView> ofTheWhole() {
        Gathered gathered = new Gathered();
        plan.cautions().forEach(gathered::add);
        plan.served().forEach(served -> served.option().cautions().stream().filter(caution -> caution.severity() == Severity.DANGER && !telling.leavesOut(caution, served.seat()))
                .forEach(caution -> gathered.add(served.seat(), caution)));
        plan.lines().forEach(line -> line.cautions().stream().filter(said -> said.severity() == Severity.DANGER).forEach(gathered::add));
        return gathered.views(Severity.DANGER, Severity.CARE, Severity.NOTE);
    }

    /** Those that speak of one seat. */
    List<OptionView.CautionView> cautions(Plan.Served served, Severity... which) {
        List<Told> told = telling.ofSeat(served);
        return Stream.of(which).flatMap(severity -> told.stream().filter(one -> one.severity() == severity)).map(one -> view(one, false)).toList();
    }

    private OptionView.CautionView view(Told told, boolean who) {
        return new OptionView.CautionView(told.severity().id(), WORDS.get(told.severity()), at.reader().sentence(told.says()),
                who ? told.seats().stream().map(at::seatName).distinct().collect(Collectors.joining(", ")) : "", told.rule(), at.visit().to("/rules/" + told.rule()));
    }

    /** What the rules say of one line, but for dangers, which stand on top. */
    List<OptionView.CautionView> cautions(Line line) {
        Gathered gathered = new Gathered();
        line.cautions().forEach(gathered::addUnnamed);
        plan.served().stream().filter(served -> served.seat().equals(line.seat())).flatMap(served -> served.option().cautions().stream())
                .filter(caution -> (caution.mic() == 0 || caution.mic() == line.mic()) && !telling.settled(caution.rule(), line.seat())).forEach(caution -> gathered.add(null, caution));
        return gathered.views(Severity.CARE, Severity.NOTE);
    }

    List<OptionView.CautionView> cautions(Arrival arrival) {
        Gathered gathered = new Gathered();
        arrival.cautions().forEach(gathered::addUnnamed);
        return gathered.views(Severity.DANGER, Severity.CARE, Severity.NOTE);
    }

    /** What moved the score of the plan beside its options. */
    List<OptionView.ReasonView> reasons() {
        return plan.reasons().stream().map(said -> {
            RuleInfo rule = at.at().known().rules().rule(said.rule());
            return new OptionView.ReasonView(said.effect() == Effect.FOR, Points.signed(said.points(), at.reader()), at.reader().sentence(said.says()), who(said),
                    said.rule(), rule == null ? said.rule() : rule.title(), at.visit().to("/rules/" + said.rule()), List.of(), at.reader().sentence(said.basis()));
        }).toList();
    }

    private String who(Said said) {
        return said.seats().stream().map(at::seatName).distinct().collect(Collectors.joining(", "));
    }

    /**
     * "Nothing better is possible", or how much better at most; of another plan, how far it is behind.
     *
     * @param first the best there is
     */
    String proven(Plan first) {
        if (plan.rank() > 1) {
            double behind = first.score() - plan.score();
            return behind < 0.005 ? "As good as plan 1." : at.measures().number(behind, 2) + " points less than plan 1.";
        }
        return plan.proven() ? "Nothing better is possible." : "The best that was found: no other can be better by more than " + points(plan.bound() - plan.score()) + ".";
    }

    /** "1.2 points", never less than it is. */
    String points(double points) {
        double shown = Math.ceil(points * 10 - 1e-9) / 10;
        return at.measures().number(shown, 1) + (shown == 1 ? " point" : " points");
    }

    /** A name within the plan for a line: its number and what it is called. */
    String named(int number) {
        return plan.lines().stream().filter(line -> line.number() == number).findFirst().map(line -> number + " " + line.name()).orElse(Integer.toString(number));
    }

    /** Cautions that say the same are one, of several. */
    private final class Gathered {
        private record Key(String rule, Severity severity, String says) {
        }

        private final Map<Key, Set<String>> found = new LinkedHashMap<>();

        void add(Said said) {
            Set<String> who = whose(said);
            said.seats().forEach(seat -> who.add(at.seatName(seat)));
        }

        void addUnnamed(Said said) {
            whose(said);
        }

        private Set<String> whose(Said said) {
            return found.computeIfAbsent(new Key(said.rule(), said.severity() == null ? Severity.NOTE : said.severity(), said.says()), any -> new LinkedHashSet<>());
        }

        /** @param seat null where it is plain of whom it speaks */
        void add(String seat, Caution caution) {
            Set<String> who = found.computeIfAbsent(new Key(caution.rule(), caution.severity(), caution.says()), any -> new LinkedHashSet<>());
            if (seat != null) {
                who.add(at.seatName(seat));
            }
        }

        List<OptionView.CautionView> views(Severity... which) {
            List<OptionView.CautionView> views = new ArrayList<>();
            for (Severity severity : which) {
                found.forEach((key, who) -> {
                    if (key.severity() == severity) {
                        views.add(new OptionView.CautionView(severity.id(), WORDS.get(severity), at.reader().sentence(key.says()), String.join(", ", who), key.rule(),
                                at.visit().to("/rules/" + key.rule())));
                    }
                });
            }
            return List.copyOf(views);
        }
    }
}
