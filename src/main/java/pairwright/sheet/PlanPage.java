package pairwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.model.Severity;
import pairwright.rules.RuleInfo;
import pairwright.session.Booked;
import pairwright.session.Line;
import pairwright.session.Picks;
import pairwright.session.Plan;
import pairwright.session.Planned;
import pairwright.session.Seat;
import pairwright.sheet.ReadingParts.Fact;
import pairwright.sheet.ReadingParts.Link;

/** The plans of a session: up to three in short, and one of them in full. */
public final class PlanPage {
    private static final Map<String, String> DONE = Map.of("taken", "The plan is taken. Line check, sheets and re-plan go by it from now on.", "seated", "The line-up is changed.",
            "changed", "The change is taken.");

    private PlanPage() {
    }

    /**
     * What it shows.
     *
     * @param cards the plans in short; empty where none is possible
     * @param shown one of them; null where none is possible
     * @param shortOf what there is too little of
     * @param waysOut what would make a plan possible, cheapest first
     * @param noMorePlans why there are fewer plans than were asked for; empty where there are as many
     * @param moves whom to seat elsewhere
     * @param noMoves says that nobody would be better elsewhere; empty where somebody would
     * @param assumed what was not said and is taken as usual
     * @param time what the time to set up costs; null for nothing
     * @param versions of rules and catalogue, in words
     */
    public record Content(List<Card> cards, Shown shown, List<ShortOf> shortOf, List<WayOut> waysOut, String noMorePlans, List<Move> moves, String noMoves,
            List<String> assumed, TimeShort time, String versions) {
    }

    /** What the time to set up costs: in a sentence, who gets less for it, and what would help. */
    public record TimeShort(String says, List<String> without, List<WayOut> waysOut) {
    }

    /** A plan in short; differs is what is unlike the first. */
    public record Card(int rank, String href, boolean current, boolean taken, String score, String proven, List<Fact> differs, String cautions, String leftOut) {
    }

    /**
     * A plan in full.
     *
     * @param rank which
     * @param taken whether it is the one that was taken
     * @param cautions what must not be missed, gravest first
     * @param seats what each gets
     * @param leftOut who gets nothing, and why that is
     * @param reasons what moved the score beside the options
     * @param options what the options add up to
     * @param score of the plan
     * @param used what is used up
     * @param supplies phantom power by bank
     * @param take takes it; null where this reader may not, or it is taken
     * @param book books its units; null without a locker, or where this reader may not
     * @param bookSays what its button says
     * @param booking what was booked for the session; null for nothing
     */
    public record Shown(int rank, boolean taken, List<OptionView.CautionView> cautions, List<AtSeat> seats, List<String> leftOut,
            List<OptionView.ReasonView> reasons, String options, String score, List<Fact> used, List<Fact> supplies, SendForm take, SendForm book, String bookSays, Link booking) {
    }

    /** What one seat gets. */
    public record AtSeat(String id, String name, Link source, boolean must, String title, Link technique, List<Mic> mics, String score,
            List<OptionView.CautionView> notes, List<OptionView.ReasonView> reasons, String setUpHref) {
    }

    /** One line of it. */
    public record Mic(int number, String channel, Link type, String rest, String unit, String unitHref, String storedAt, String mind, String brings) {
    }

    public record ShortOf(String resource, int needed, int there, String who) {
    }

    public record WayOut(String kind, String says, String price, String score) {
    }

    /** Somebody who would be better elsewhere; form is null where this reader may not seat them. */
    public record Move(String says, SendForm seat) {
    }

    /** What the address asks for, as far as it is worked out. */
    public static Page of(AtPlan at) {
        return of(at, 200, List.of());
    }

    /**
     * The same after something that was to be done was refused.
     *
     * @param refused why, in sentences
     */
    public static Page of(AtPlan at, int status, List<String> refused) {
        PlanChosen chosen = PlanChosen.ofAll(at);
        List<String> faults = new ArrayList<>(refused);
        if (!chosen.fault().isEmpty()) {
            faults.add(chosen.fault());
        }
        PlanFrame frame = PlanFrame.of(at, "Plan", "plan", List.of(), chosen, faults).done(DONE.getOrDefault(Objects.requireNonNullElse(at.visit().first("done"), ""), ""));
        if (chosen.waits() || !chosen.fault().isEmpty()) {
            return new Page(faults.isEmpty() ? 200 : 400, at.at().html().fill("session/no-plan.jte", Map.of("frame", frame)));
        }
        return at.page(status, "plan", frame, content(at, chosen));
    }

    private static Content content(AtPlan at, PlanChosen chosen) {
        Planned planned = chosen.planned();
        List<Card> cards = planned.plans().stream().map(plan -> card(at, plan, planned.plans().get(0), plan == chosen.plan())).toList();
        return new Content(cards, chosen.plan() == null ? null : shown(at, chosen), planned.shortOf().stream().map(one -> shortOf(at, one)).toList(),
                planned.waysOut().stream().map(way -> wayOut(at, way)).toList(),
                Objects.requireNonNullElse(planned.noMorePlans(at.lineUp()), ""), planned.moves().stream().map(move -> move(at, move)).toList(), Objects.requireNonNullElse(planned.noMoves(), ""), planned.assumed().stream().map(at.reader()::sentence).toList(), timeShort(at, planned.timeShort()),
                "Rules " + planned.rulesVersion() + ", catalogue " + planned.catalogueVersion() + ".");
    }

    private static TimeShort timeShort(AtPlan at, Planned.TimeShort time) {
        return time == null ? null : new TimeShort("With " + time.neededMinutes() + " min to set up in place of " + time.minutes() + " the best plan would be worth "
                + Points.score(time.costPoints(), at.reader()) + " points more.", time.without().stream().map(at.reader()::sentence).toList(), time.waysOut().stream().map(way -> wayOut(at, way)).toList());
    }

    private static WayOut wayOut(AtPlan at, Planned.WayOut way) {
        return new WayOut(way.kind(), at.reader().sentence(way.says()), Points.score(way.pricePoints(), at.reader()), Points.score(way.score(), at.reader()));
    }

    private static ShortOf shortOf(AtPlan at, Planned.Short one) {
        return new ShortOf(Choices.capital(one.resource()), one.needed(), one.there(), one.seats().stream().map(at::seatName).collect(Collectors.joining(", ")));
    }

    private static Move move(AtPlan at, Planned.Move move) {
        SendForm form = !at.at().mayWrite() ? null : SendForm.to(at.visit(), at.path("plan/seat"), "move-" + move.seat(), List.of()).hiding("seat", move.seat())
                .hiding("xM", Param.number(move.xM())).hiding("yM", Param.number(move.yM())).hiding("facingDegrees", Param.number(move.facingDegrees()));
        return new Move(at.reader().sentence(move.says()), form);
    }

    private static Card card(AtPlan at, Plan plan, Plan first, boolean current) {
        PlanWords words = new PlanWords(at, plan);
        PlanWords firstWords = new PlanWords(at, first);
        Map<String, String> ofFirst = new HashMap<>();
        first.served().forEach(served -> ofFirst.put(served.seat(), title(at, firstWords, served)));
        List<Fact> differs = plan == first ? List.of() : plan.served().stream().filter(served -> !title(at, words, served).equals(ofFirst.get(served.seat())))
                .map(served -> new Fact(at.seatName(served.seat()), title(at, words, served), "")).toList();
        Map<String, Long> counts = words.grave().stream().collect(Collectors.groupingBy(OptionView.CautionView::severity, Collectors.counting()));
        String cautions = counted(counts.getOrDefault(Severity.DANGER.id(), 0L), "danger", "dangers") + ", "
                + counted(counts.getOrDefault(Severity.CARE.id(), 0L), "thing to take care of", "things to take care of");
        return new Card(plan.rank(), at.to("plan?plan=" + plan.rank()), current, Picks.of(plan).equals(at.taken()), Points.score(plan.score(), at.reader()),
                words.proven(first), differs, cautions, plan.leftOut().isEmpty() ? "" : "Without " + plan.leftOut().stream().map(at::inSentence).collect(Collectors.joining(", ")) + ".");
    }

    private static String counted(long count, String one, String several) {
        return count == 0 ? "no " + one : count + " " + (count == 1 ? one : several);
    }

    private static String title(AtPlan at, PlanWords words, Plan.Served served) {
        return at.lineUp().seat(served.seat()).map(seat -> words.title(seat, served.option())).orElse(served.option().techniqueName());
    }

    private static Shown shown(AtPlan at, PlanChosen chosen) {
        Plan plan = chosen.plan();
        PlanWords words = new PlanWords(at, plan);
        List<AtSeat> seats = new ArrayList<>();
        for (Plan.Served served : plan.served()) {
            at.lineUp().seat(served.seat()).ifPresent(seat -> seats.add(atSeat(at, words, plan, served, seat, chosen)));
        }
        double options = plan.served().stream().mapToDouble(served -> served.option().score()).sum();
        boolean mayTake = at.at().mayWrite() && !chosen.taken();
        SendForm take = !mayTake ? null : SendForm.to(at.visit(), at.path("plan/take"), "take", List.of()).hiding("plan", Integer.toString(plan.rank()));
        int units = Booked.units(Picks.of(plan)).size();
        return new Shown(plan.rank(), chosen.taken(), words.grave().stream().filter(caution -> !caution.isNote()).toList(), seats, leftOut(at, plan), words.reasons(), Points.score(options, at.reader()),
                Points.score(plan.score(), at.reader()), used(plan), supplies(at, plan), take, book(at, plan),
                (at.booking() == null ? "Book its " : "Book instead its ") + units + (units == 1 ? " unit" : " units"),
                at.booking() == null ? null : at.at().at().link("/locker/bookings/" + at.booking(), "What is booked for it"));
    }

    private static List<String> leftOut(AtPlan at, Plan plan) {
        return plan.leftOut().stream().map(seat -> at.seatName(seat) + (at.lineUp().seat(seat).map(Seat::must).orElse(false) ? "."
                : ": nice to have, and worth less than what the others would lose by it, or nothing is left that can be put there.")).toList();
    }

    private static List<Fact> used(Plan plan) {
        return Stream.concat(Stream.of(new Fact("Setting up takes about", plan.setUp().words(), "")),
                plan.counts().stream().map(count -> new Fact(Choices.capital(count.of()), count.used() + (count.there() == null ? "" : " of " + count.there()), ""))).toList();
    }

    private static List<Fact> supplies(AtPlan at, Plan plan) {
        return plan.supplies().stream().map(supply -> new Fact(supply.bank(), supply.used() + " of " + supply.channels() + (supply.channels() == 1 ? " channel" : " channels")
                + ", phantom power " + (supply.phantom() ? "on" : "off"), !supply.phantom() ? "" : at.measures().with(supply.drawnMa(), 1, "mA") + " drawn"
                + (supply.supplyMa() == null ? "" : " of " + at.measures().with(supply.supplyMa(), 1, "mA")))).toList();
    }

    /** Books every unit of the plan for the time of the session, or anew what was booked for it. */
    private static SendForm book(AtPlan at, Plan plan) {
        return !at.at().mayWrite() || Booked.units(Picks.of(plan)).isEmpty() ? null
                : SendForm.to(at.visit(), at.path("plan/book"), "book", List.of()).hiding("plan", Integer.toString(plan.rank()));
    }

    private static AtSeat atSeat(AtPlan at, PlanWords words, Plan plan, Plan.Served served, Seat seat, PlanChosen chosen) {
        boolean pair = served.option().mics().size() > 1;
        List<Mic> mics = plan.linesOf(seat.id()).stream().sorted(Comparator.comparingInt(Line::mic)).map(line -> mic(at, words, seat, served, line)).toList();
        List<OptionView.ReasonView> reasons = served.option().reasons().stream().map(reason -> {
            RuleInfo rule = at.at().known().rules().rule(reason.rule());
            return new OptionView.ReasonView(reason.points() > 0, Points.signed(reason.points(), at.reader()), at.reader().sentence(reason.says()),
                    pair && reason.mic() > 0 ? "mic " + reason.mic() : "", reason.rule(), rule == null ? reason.rule() : rule.title(),
                    at.visit().to("/rules/" + reason.rule()), List.of(), at.reader().sentence(reason.basis()));
        }).toList();
        return new AtSeat(seat.id(), at.seatName(seat), at.at().at().link("/sources/" + seat.source(), at.sourceName(seat.source())), seat.must(),
                words.title(seat, served.option()), pair ? at.at().at().link("/techniques/" + served.option().technique(), served.option().techniqueName()) : null, mics,
                Points.score(served.option().score(), at.reader()), words.cautions(served, Severity.NOTE), reasons,
                at.to("sheets/set-ups" + chosen.query()) + "#seat-" + seat.id());
    }

    private static Mic mic(AtPlan at, PlanWords words, Seat seat, Plan.Served served, Line line) {
        var unit = line.unit();
        return new Mic(line.number(), line.channelLabel() == null ? "" : line.channelLabel(), at.mic(line), words.line(seat, served.option(), line),
                unit == null ? "" : unit.label(), unit == null ? null : at.visit().to("/locker/units/" + unit.id()),
                unit == null || unit.storedAt() == null ? "" : unit.storedAt(), unit == null || unit.note() == null ? "" : unit.note(),
                at.reader().sentence(line.placement().brings()));
    }
}
