package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pairwright.advice.AtHand;
import pairwright.catalogue.Shown;
import pairwright.drawing.Drawing;
import pairwright.drawing.FunctionDrawing;
import pairwright.drawing.FunctionDrawing.Axis;
import pairwright.drawing.FunctionDrawing.Mark;
import pairwright.drawing.FunctionDrawing.Series;
import pairwright.locker.Span;
import pairwright.session.GearOf;
import pairwright.session.PurchaseDesk;
import pairwright.session.Purchased;
import pairwright.session.Purchases;
import pairwright.session.Purchases.Wish;
import pairwright.sheet.ReadingParts.Link;

/** What to buy next for the stored sessions. */
public final class PurchasePage {
    private static final int MOST_MARKS = 3;

    private PurchasePage() {
    }

    /**
     * What it shows.
     *
     * @param fields how much may be spent, and on how dear a type
     * @param faults what is wrong with what was asked for
     * @param sessions how many are planned for; with none there is nothing more
     * @param again this very page
     * @param doing what is being done; empty once it is ready, and then the rest is there
     * @param done steps of that
     * @param of so many; 0 where nobody knows
     * @param lead what comes of it, in a sentence
     * @param picture value over spend; null where nothing is bought
     * @param steps what to buy, in this order
     * @param served each session before and after
     * @param idle what no plan takes
     * @param notes what to know of it
     */
    public record Content(List<FormField> fields, List<String> faults, int sessions, String again, String doing, int done, int of, String lead, Drawing picture,
            List<Row> steps, List<Served> served, List<Idle> idle, List<String> notes) {
    }

    /** A purchase: what it is for, what, its price, spent with it, what it gains, which sessions it raises. */
    public record Row(String phase, Link type, String how, String price, String spent, String gain, List<Link> raises) {
    }

    /** A session; a dash where it has no plan, and why in the end. */
    public record Served(Link session, String before, String after, String why) {
    }

    /** A type that is not used up. */
    public record Idle(Link type, String says) {
    }

    /**
     * What the query asks for, as far as it is worked out.
     *
     * @param sessions stored ones that fit the catalogue
     */
    public static Page of(AtLocker at, List<Purchases.Session> sessions, PurchaseDesk desk) {
        List<String> faults = new ArrayList<>();
        int budget = whole(at, "budget", 0, Wish.MOST_BUDGET, Wish.USUAL_BUDGET, "The budget", faults);
        int mostTier = whole(at, "tier", 1, Wish.DEAREST, Wish.DEAREST, "The price class", faults);
        List<FormField> fields = fields(budget, mostTier);
        PurchaseDesk.State state = sessions.isEmpty() ? null : desk.state(new Wish(sessions, GearOf.owned(at.locker(), new Span(at.locker().now(), at.locker().now().plus(AtHand.USUAL_LENGTH))), budget, mostTier));
        String again = at.visit().same(at.visit().reader().imperial());
        Content content = state == null ? new Content(fields, faults, 0, again, "", 0, 0, "", null, List.of(), List.of(), List.of(), List.of())
                : state.purchased() == null ? new Content(fields, faults, sessions.size(), again, state.progress().doing(), state.progress().done(), state.progress().of(), "",
                        null, List.of(), List.of(), List.of(), List.of())
                : content(at, fields, faults, sessions.size(), again, state.purchased());
        LockerFrame frame = at.frame("What to buy next", "coverage", List.of(at.at().link("/locker/coverage", "Coverage")), "").withoutTimes();
        return at.page(faults.isEmpty() ? 200 : 400, "buy", frame, "content", content);
    }

    private static Content content(AtLocker at, List<FormField> fields, List<String> faults, int sessions, String again, Purchased found) {
        List<Row> rows = found.steps().stream().map(step -> row(at, step)).toList();
        List<Served> served = IntStream.range(0, found.before().size()).mapToObj(i -> served(at, found, i)).toList();
        List<Idle> idle = found.idle().stream().map(one -> new Idle(at.at().link("/mics/" + one.micType(), one.name()), says(at, one))).toList();
        return new Content(fields, faults, sessions, again, "", 0, 0, lead(at, found), found.steps().isEmpty() ? null : picture(at, found), rows, served, idle, notes(found));
    }

    private static String lead(AtLocker at, Purchased found) {
        if (found.steps().isEmpty()) {
            return found.budget() == 0 ? "With nothing to spend nothing is bought; below is how the sessions are served, and what is never needed."
                    : "Nothing of these price classes and within this budget makes any plan better.";
        }
        Purchased.Step last = found.steps().get(found.steps().size() - 1);
        long serving = found.steps().stream().filter(step -> step.phase() == Purchased.Phase.SERVE).count();
        return purchases(found.steps().size()) + " for " + last.spent() + " of " + found.budget() + (serving == 0 ? "" : ": " + purchases((int) serving).toLowerCase(Locale.ROOT)
                + " so that every source that must be served is" + (serving < found.steps().size() ? ", then for better plans" : "")) + ". All plans together come to "
                + points(at, last.points()) + " points.";
    }

    private static String purchases(int count) {
        return count == 1 ? "One purchase" : count + " purchases";
    }

    private static List<String> notes(Purchased found) {
        List<String> notes = new ArrayList<>();
        notes.add("A price is that of the type\u2019s price class, 1 to " + Wish.DEAREST + ", and of two of them the double: an order of magnitude as the trade has it, of no product and no shop. "
                + "Look at what things really cost before you buy.");
        notes.add("Each line is worth what it says after all lines above it; bought, it comes true to the digit. The next is always the one that gains most for its price, which is not always the best "
                + "that could be had for all of the budget together.");
        notes.add("The sessions are taken to be at different times, each with all that is owned and in order.");
        if (!found.cheapest()) {
            notes.add("That every session is served may be had for less: this is the cheapest that was found, and each unit of it is needed.");
        }
        if (!found.proven()) {
            notes.add("Not every plan that was compared is proven to be the best there is.");
        }
        return notes;
    }

    /** The sum over what was spent: from one purchase to the next it stays, and then rises. */
    private static Drawing picture(AtLocker at, Purchased found) {
        List<double[]> points = new ArrayList<>();
        double before = found.before().stream().filter(one -> one.points() != null).mapToLong(one -> Math.round(one.points() * 100)).sum() / 100.0;
        points.add(new double[] {0, before});
        for (Purchased.Step step : found.steps()) {
            points.add(new double[] {step.spent(), before});
            points.add(new double[] {step.spent(), step.points()});
            before = step.points();
        }
        List<Mark> marks = found.steps().stream().sorted((one, other) -> Double.compare(other.gainPoints(), one.gainPoints())).limit(MOST_MARKS)
                .map(step -> new Mark(step.spent(), step.name())).toList();
        return FunctionDrawing.of("Points of all plans over what is spent", Axis.linear("Spent, in prices of the cheapest class", ""), Axis.linear("Points", ""),
                List.of(new Series("", points.stream().mapToDouble(point -> point[0]).toArray(), points.stream().mapToDouble(point -> point[1]).toArray())), null, marks, "buy",
                at.visit().reader());
    }

    private static Row row(AtLocker at, Purchased.Step step) {
        return new Row(step.phase() == Purchased.Phase.SERVE ? "so that all are served" : "for better plans", at.at().link("/mics/" + step.micType(), step.name()),
                step.units() == 2 ? "a matched pair" : "one", Integer.toString(step.price()), Integer.toString(step.spent()),
                step.gainPoints() == 0 ? "\u2013" : "+" + points(at, step.gainPoints()),
                step.raises().stream().map(raised -> session(at, raised.session(), raised.name())).toList());
    }

    private static Served served(AtLocker at, Purchased found, int i) {
        Purchased.Served before = found.before().get(i);
        return new Served(session(at, before.session(), before.name()), points(at, before.points()), points(at, found.after().get(i).points()),
                found.unserved().stream().filter(one -> one.session().equals(before.session())).map(Purchased.Unserved::why).collect(Collectors.joining(" ")));
    }

    private static Link session(AtLocker at, String id, String name) {
        return at.at().link("/sessions/" + id, name);
    }

    private static String says(AtLocker at, Purchased.Idle idle) {
        return idle.used() > 0 ? idle.used() + " of " + idle.owned() + " are used at most" : idle.owned() == 1 ? "the only one is never used: " + idle.labels().get(0)
                : "none of " + idle.owned() + " is used: " + String.join(", ", idle.labels());
    }

    private static String points(AtLocker at, Double points) {
        return points == null ? "\u2013" : at.measures().number(points, 1);
    }

    private static int whole(AtLocker at, String name, int least, int most, int usual, String what, List<String> faults) {
        String text = at.visit().first(name);
        if (text == null || text.isBlank()) {
            return usual;
        }
        if (text.strip().matches("\\d{1,4}") && Integer.parseInt(text.strip()) >= least && Integer.parseInt(text.strip()) <= most) {
            return Integer.parseInt(text.strip());
        }
        faults.add(what + " must be a whole number from " + least + " to " + most + ", but was \u201c" + Shown.of(text) + "\u201d. " + usual + " is taken.");
        return usual;
    }

    private static List<FormField> fields(int budget, int mostTier) {
        List<Choice> tiers = IntStream.rangeClosed(1, Wish.DEAREST).mapToObj(tier -> new Choice(Integer.toString(tier),
                tier == Wish.DEAREST ? "Any" : tier == 1 ? "Only the cheapest class" : "Up to class " + tier, false)).toList();
        return List.of(FormField.line("budget", "May be spent, in prices of the cheapest class").value(Integer.toString(budget)),
                FormField.choice("tier", "Price class", tiers).value(Integer.toString(mostTier)));
    }
}
