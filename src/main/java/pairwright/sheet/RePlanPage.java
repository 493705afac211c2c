package pairwright.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.catalogue.Shown;
import pairwright.session.Change;
import pairwright.session.Line;
import pairwright.session.LineUpCheck;
import pairwright.session.Lost;
import pairwright.session.Picks;
import pairwright.session.allocation.NotDecided;
import pairwright.sheet.ReadingParts.Fact;

/** What failed or who is not coming, and the least that has to be done about it. */
public final class RePlanPage {
    private static final double USUAL_PRICE = 5;
    private static final double MOST_PRICE = 1000;

    private RePlanPage() {
    }

    /** Plans anew from what stands. */
    @FunctionalInterface
    public interface Again {
        /**
         * @return null where it takes longer; asked again it has come on
         * @throws IllegalArgumentException says which pick no longer exists
         * @throws IllegalStateException says why there is no plan
         */
        Change of(Picks before, Lost lost, double pricePoints);
    }

    /**
     * What it shows.
     *
     * @param choices what may have failed, in groups of boxes
     * @param price what moving something costs, as it stands in its field
     * @param minutes lost of the time to set up; null where the line-up does not say how much there is
     * @param asked whether anything was asked
     * @param change what is to be done; null where nothing was asked, or nothing can be done
     * @param impossible why nothing can be done, in a sentence; empty for none
     */
    public record Content(List<Group> choices, FormField price, FormField minutes, boolean asked, Changed change, String impossible) {
    }

    /** Boxes of one kind: the name of their field, and what each stands for. */
    public record Group(String name, String heading, List<Box> boxes) {
    }

    /** One of them. */
    public record Box(String id, String value, String label, boolean ticked) {
    }

    /**
     * What is to be done.
     *
     * @param steps in the order they are to be done
     * @param time how long they take
     * @param kept whose set-up is not touched
     * @param figures what it costs
     * @param cautions of the new plan, gravest first
     * @param gets who gets what from now on, where that changed
     * @param crowded who has no room on the floor, in sentences
     * @param take takes it; null where this reader may not
     */
    public record Changed(List<Step> steps, String time, String kept, List<Fact> figures, List<OptionView.CautionView> cautions, List<Fact> gets, List<String> crowded, SendForm take) {
    }

    /** One thing to do, in a sentence, and how long it takes. */
    public record Step(String says, String time) {
    }

    /** A change that was asked for and can be taken. */
    public record Wanted(Lost lost, double pricePoints) {
        boolean anything() {
            return !lost.units().isEmpty() || !lost.channels().isEmpty() || !lost.seats().isEmpty() || lost.minutes() > 0;
        }
    }

    /** What the address asks for. */
    public static Page of(AtPlan at, Again again) {
        PlanChosen chosen = PlanChosen.of(at);
        List<String> faults = new ArrayList<>();
        Picks before = before(at, chosen);
        // a plan that no longer holds is just what is planned anew
        if (!chosen.fault().isEmpty() && !(chosen.taken() && before != null)) {
            faults.add(chosen.fault());
        }
        Wanted wanted = wanted(at.visit(), faults);
        LineUpCheck.lostMinutes(at.lineUp(), wanted.lost().minutes()).ifPresent(says -> faults.add(SendForm.sentence(says)));
        if (before != null) {
            unknown(at, before, wanted.lost(), faults);
        }
        PlanFrame frame = PlanFrame.of(at, "Re-plan", "replan", List.of(), chosen, faults);
        if (before == null) {
            return PlanSheets.without(at, frame, chosen);
        }
        Change change = null;
        String impossible = "";
        boolean asked = faults.isEmpty() && (wanted.anything() || at.visit().first("price") != null);
        if (asked) {
            try {
                change = again.of(before, wanted.lost(), wanted.pricePoints());
            } catch (IllegalArgumentException | IllegalStateException | NotDecided none) {
                impossible = SendForm.sentence(none.getMessage());
            }
        }
        if (asked && change == null && impossible.isEmpty()) {
            PlanChosen waits = new PlanChosen(chosen.plan(), chosen.taken(), null,
                    at.desk().far(at.lineUp(), at.gear(), before, wanted.lost(), wanted.pricePoints()), "");
            return PlanSheets.without(at, PlanFrame.of(at, "Re-plan", "replan", List.of(), waits, List.of()), waits);
        }
        return at.page(faults.isEmpty() ? 200 : 400, "replan", frame, new Content(groups(at, before, wanted), price(at, wanted), minutes(at, wanted), asked,
                change == null ? null : changed(at, change, wanted), impossible));
    }

    /** What stands: the plan the address names, else the one that was taken, else the best; null where there is none yet. */
    public static Picks before(AtPlan at) {
        return before(at, PlanChosen.of(at));
    }

    private static Picks before(AtPlan at, PlanChosen chosen) {
        return at.visit().first("plan") == null && at.taken() != null ? at.taken() : chosen.plan() == null ? null : Picks.of(chosen.plan());
    }

    /** What was lost and what moving costs, as a query or a form says it. */
    public static Wanted wanted(Visit visit, List<String> faults) {
        String text = visit.first("price");
        double pricePoints = USUAL_PRICE;
        if (text != null) {
            try {
                pricePoints = Double.parseDouble(text.replace(',', '.'));
            } catch (NumberFormatException none) {
                pricePoints = Double.NaN;
            }
            if (!(pricePoints >= 0 && pricePoints <= MOST_PRICE)) {
                faults.add("\u201c" + Shown.of(text) + "\u201d is no price for moving something. Give points from 0 to " + Math.round(MOST_PRICE) + ".");
                pricePoints = USUAL_PRICE;
            }
        }
        return new Wanted(new Lost(visit.all("unit"), visit.all("channel"), visit.all("seat"), minutes(visit, faults)), pricePoints);
    }

    private static int minutes(Visit visit, List<String> faults) {
        String text = visit.first("minutes");
        if (text == null || text.matches("\\d{1,9}")) {
            return text == null ? 0 : Integer.parseInt(text);
        }
        faults.add("\u201c" + Shown.of(text) + "\u201d is not a number of minutes. Give the minutes that are gone, or 0.");
        return 0;
    }

    /** What is neither in the plan nor in the locker cannot have failed; an address may name what was there once. */
    private static void unknown(AtPlan at, Picks before, Lost lost, List<String> faults) {
        Set<String> there = before.seats().stream().flatMap(seat -> seat.mics().stream())
                .flatMap(mic -> Stream.of(mic.unit(), mic.stand(), mic.booster(), mic.box(), mic.pad(), mic.channel())).filter(Objects::nonNull).collect(Collectors.toSet());
        Stream.concat(lost.units().stream(), lost.channels().stream()).filter(id -> at.at().locker() != null && !there.contains(id) && at.unit(id) == null)
                .forEach(id -> faults.add("There is no \u201c" + Shown.of(id) + "\u201d in this plan or in the locker. Tick below what failed."));
        lost.seats().stream().filter(id -> at.lineUp().seat(id).isEmpty()).forEach(id -> faults.add("There is nobody called \u201c" + Shown.of(id) + "\u201d in the line-up. Tick below who is not coming."));
    }

    private static FormField minutes(AtPlan at, Wanted wanted) {
        return at.lineUp().setUp() == null ? null : FormField.line("minutes", "Minutes lost of " + at.lineUp().setUp().minutes() + " to set up")
                .value(Integer.toString(wanted.lost().minutes())).hint("What stands takes no time as long as it stays; what is changed has to be done in what is left.");
    }

    private static List<Group> groups(AtPlan at, Picks before, Wanted wanted) {
        Map<String, String> units = new LinkedHashMap<>();
        Map<String, String> channels = new LinkedHashMap<>();
        for (Picks.AtSeat seat : before.seats()) {
            for (Picks.Mic mic : seat.mics()) {
                add(at, units, mic.unit(), seat.seat());
                add(at, units, mic.stand(), seat.seat());
                Stream.of(mic.booster(), mic.box(), mic.pad()).forEach(id -> add(at, units, id, seat.seat()));
                add(at, channels, mic.channel(), seat.seat());
            }
        }
        Map<String, String> seats = new LinkedHashMap<>();
        at.lineUp().seats().forEach(seat -> seats.put(seat.id(), at.seatName(seat)));
        List<Group> groups = new ArrayList<>();
        group(at, groups, "unit", "Microphones, stands and what is in a line that failed or are gone", units, wanted.lost().units());
        group(at, groups, "channel", "Channels that failed", channels, wanted.lost().channels());
        group(at, groups, "seat", "Who is not coming", seats, wanted.lost().seats());
        return groups;
    }

    private static void add(AtPlan at, Map<String, String> all, String id, String seat) {
        if (id != null) {
            var unit = at.unit(id);
            all.merge(id, (unit == null ? id : unit.label()) + ", at " + at.inSentence(seat), (one, other) -> one.endsWith(at.inSentence(seat)) ? one : one + " and " + at.inSentence(seat));
        }
    }

    private static void group(AtPlan at, List<Group> groups, String name, String heading, Map<String, String> all, List<String> ticked) {
        List<Box> boxes = new ArrayList<>();
        all.forEach((id, label) -> boxes.add(new Box(name + "-" + id, id, label, ticked.contains(id))));
        // what was named and is not in the plan is kept in sight
        ticked.stream().filter(id -> !all.containsKey(id)).forEach(id -> boxes.add(new Box(name + "-" + id, id, at.unit(id) == null ? Shown.of(id) : at.unit(id).label(), true)));
        if (!boxes.isEmpty()) {
            groups.add(new Group(name, heading, boxes));
        }
    }

    private static FormField price(AtPlan at, Wanted wanted) {
        return FormField.line("price", "What moving one thing must be worth, in points").value(at.measures().number(wanted.pricePoints(), 2))
                .hint("At 0 the best plan is made, whatever has to be moved for it. At 5 what stands is touched only where that gains more than one clear advantage, such as a better"
                        + " place. At 50 nothing is touched that need not be.");
    }

    private static Changed changed(AtPlan at, Change change, Wanted wanted) {
        PlanWords words = new PlanWords(at, change.plan());
        List<Step> steps = change.steps().stream().map(step -> new Step(at.reader().sentence(step.says()), time(step.timeS()))).toList();
        List<Fact> figures = new ArrayList<>();
        if (change.setUp() != null) {
            figures.add(new Fact("Time to set up", change.setUp().words(), ""));
        }
        Collections.addAll(figures, new Fact("This plan", Points.score(change.plan().score(), at.reader()), ""),
                new Fact("The best that could be reached", Points.score(change.bestScore(), at.reader()), ""),
                new Fact("Given up for what stays", Points.score(change.costPoints(), at.reader()), ""));
        List<Fact> gets = change.plan().served().stream().filter(served -> !change.kept().contains(served.seat())).map(served -> new Fact(at.seatName(served.seat()),
                at.lineUp().seat(served.seat()).map(seat -> words.title(seat, served.option())).orElse(""), change.plan().linesOf(served.seat()).stream()
                        .map(line -> line.unit() == null ? "line " + line.number() : line.unit().label() + " on line " + line.number()).collect(Collectors.joining(", ")))).toList();
        return new Changed(steps, time(change.timeS()), change.kept().stream().map(at::seatName).collect(Collectors.joining(", ")), figures, words.grave(), gets,
                Crowding.of(at.lineUp().without(wanted.lost().seats()), at.catalogue()).stream().map(at.reader()::sentence).toList(), steps.isEmpty() && at.taken() != null ? null : take(at, wanted));
    }

    private static SendForm take(AtPlan at, Wanted wanted) {
        if (!at.at().mayWrite()) {
            return null;
        }
        SendForm form = SendForm.to(at.visit(), at.path("replan") + (at.visit().first("plan") == null ? "" : "?plan=" + Visit.escaped(at.visit().first("plan"))), "take-change", List.of())
                .hiding("price", Param.number(wanted.pricePoints()));
        for (String unit : wanted.lost().units()) {
            form = form.hiding("unit", unit);
        }
        for (String channel : wanted.lost().channels()) {
            form = form.hiding("channel", channel);
        }
        for (String seat : wanted.lost().seats()) {
            form = form.hiding("seat", seat);
        }
        return wanted.lost().minutes() == 0 ? form : form.hiding("minutes", Integer.toString(wanted.lost().minutes()));
    }

    /** Where that is asked for that a form asked, to see what it comes to. */
    public static String address(AtPlan at, Visit asked) {
        List<Param> params = new ArrayList<>();
        Stream.of("plan", "price", "unit", "channel", "seat", "minutes").forEach(name -> asked.all(name).forEach(value -> params.add(new Param(name, value))));
        return Param.address(at.path("replan"), params);
    }

    /** "4 min", "under a minute". */
    static String time(double timeS) {
        long minutes = Math.round(timeS / 60);
        if (timeS > 60 && timeS < 120) {
            return Math.round(timeS) + " s"; // so that steps add up to what is said of all
        }
        return timeS <= 0 ? "" : minutes < 1 ? "under a minute" : minutes < 90 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
    }
}
