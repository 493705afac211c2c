package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import pairwright.advice.StoodAt;
import pairwright.model.Caution;
import pairwright.model.Naming;
import pairwright.model.Option;
import pairwright.model.Position;
import pairwright.model.Reason;
import pairwright.model.Severity;
import pairwright.session.FloorSurroundings;
import pairwright.session.Line;
import pairwright.session.Seat;

/** One microphone to be put on a floor. What it earns is how near the result that is predicted there comes to that of the best spot found, wherever it is. */
final class PlaceExercise implements Exercise {
    private static final String SPOT = "spot";
    /** So far behind the best a place is none, a turn is none, and so is a spot for what it hears of the others. */
    private static final double MOST_SHORT_OF_PLACE_POINTS = 6;
    private static final double MOST_SHORT_OF_TURN_POINTS = 4;
    private static final double MOST_SHORT_DB = 6;
    private static final double MOST_SHORT_OF_TURN_DB = 4;
    /** Less than that nobody can tell. */
    private static final double NO_LESS_POINTS = 0.25;
    private static final double NO_LESS_DB = 1;
    /** How finely and how far round the best spot others are tried for the picture. */
    private static final double STEP_M = 0.15;
    private static final int STEPS = 2;
    private static final double DANGER_SHARE = 0.4;
    private static final double CARE_SHARE = 0.6;

    private final Case drawn;
    private final boolean turnOnly;
    private final OnFloor floor;
    private final Lab lab;
    private final Spotted best;
    private final Option bestOption;

    PlaceExercise(Case drawn, int level, OnFloor floor, Lab lab) {
        this.drawn = drawn;
        this.turnOnly = level == 1;
        this.floor = floor;
        this.lab = lab;
        this.best = Spotted.of(floor, drawn.number("spotXM"), drawn.number("spotYM"), drawn.number("looks"))
                .orElseThrow(() -> new IllegalArgumentException("Nothing is known any more of the sound at the best spot of the exercise"));
        this.bestOption = best.stood().offer().option();
    }

    @Override
    public Handout handout() {
        List<String> said = new ArrayList<>(List.of(floor.source().says()));
        Seat own = floor.lineUp().seat(OnFloor.OWN).orElseThrow();
        said.add(floor.source().name() + ": at " + at(own.xM(), own.yM()) + ". At the same time there sounds: "
                + String.join("; ", floor.lineUp().seats().stream().skip(1).map(seat -> lab.source(seat.source()).name() + ", at " + at(seat.xM(), seat.yM())).toList()) + ".");
        said.add("The room is " + metres(floor.lineUp().floor().widthM()) + " by " + metres(floor.lineUp().floor().depthM()) + " m and rings for " + floor.lineUp().floor().reverbTimeS() + " s.");
        said.add("The microphone: " + OneMic.called(floor.type(), floor.pattern()) + ". x counts from the left wall, y from the lower wall, in metres; "
                + "where it looks counts in degrees, 0 up the plan, 90 to the right, -90 to the left.");
        Item item = turnOnly
                ? new Item.Spot(SPOT, "It stands at " + at(best.xM(), best.yM()) + " and stays there. Where does it look, so that its own source is well heard and the other is not?", 1,
                        best.xM(), best.xM(), best.yM(), best.yM())
                : new Item.Spot(SPOT, "Where does it stand, and where does it look, so that its own source is well heard and the rest is not?", 1, 0, floor.lineUp().floor().widthM(), 0,
                        floor.lineUp().floor().depthM());
        return new Handout((turnOnly ? "Turn it: " : "Place it: ") + floor.source().name(), List.of(), said, List.of(new Shown.FromAbove("The room from above", floor.lineUp())), List.of(item));
    }

    private static String at(double xM, double yM) {
        return "x " + metres(xM) + ", y " + metres(yM);
    }

    private static String metres(double metres) {
        return String.format(Locale.ROOT, "%.2f", metres);
    }

    @Override
    public Key key() {
        List<String> why = new ArrayList<>(List.of(best.at().position().brings() + ", " + ChooseExercise.far(best.at().distanceM()) + " from what sounds; its own source is "
                + decibels(OnFloor.separationDb(best.stood().offer())) + " over the others. Any spot that comes out as well counts as much."));
        why.addAll(OneMic.why(bestOption));
        return new Key(marked(best.xM(), best.yM(), best.lookDegrees()),
                List.of(new Key.Entry(SPOT, at(best.xM(), best.yM()) + ", looks to " + Math.round(best.lookDegrees()) + "\u00b0", List.of(), why, List.copyOf(restsOn()))), List.of(),
                List.of(new Key.Spots(SPOT, floor.source().name(), floor.type().family(), floor.pattern(), OneMic.mic(best.stood().offer()).placed().nullDegrees(), turnOnly ? List.of() : asGood(), STEP_M)));
    }

    /** Round the best spot, where one of three turns that suit there is worth as much. */
    private List<Key.At> asGood() {
        double aimDegrees = OneMic.mic(best.stood().offer()).aimDegrees();
        List<Key.At> good = new ArrayList<>();
        for (int right = -STEPS; right <= STEPS; right++) {
            for (int up = -STEPS; up <= STEPS; up++) {
                double xM = best.xM() + right * STEP_M;
                double yM = best.yM() + up * STEP_M;
                boolean asGood = floor.at(xM, yM).flatMap(at -> OnFloor.best(floor.judged(at, List.of(aimDegrees, 0.0, aimDegrees / 2))))
                        .filter(stood -> share(best.points() - OneMic.points(stood.offer()), NO_LESS_POINTS, MOST_SHORT_OF_PLACE_POINTS) == 1).isPresent();
                if (asGood) {
                    good.add(new Key.At(xM, yM));
                }
            }
        }
        return good;
    }

    private static Answer marked(double xM, double yM, double lookDegrees) {
        return Answer.NOTHING.with(SPOT, List.of(metres(xM), metres(yM), Long.toString(Math.round(lookDegrees))));
    }

    @Override
    public Mark mark(Answer answer) {
        Mark.Sum sum = new Mark.Sum();
        OptionalDouble x = turnOnly ? OptionalDouble.of(best.xM()) : answer.number(SPOT, 0);
        OptionalDouble y = turnOnly ? OptionalDouble.of(best.yM()) : answer.number(SPOT, 1);
        OptionalDouble look = answer.number(SPOT, 2);
        if (x.isEmpty() || y.isEmpty() || look.isEmpty()) {
            return nothing(sum, "No spot that can be read: x, y and where it looks are needed.", null);
        }
        Optional<OnFloor.At> at = floor.at(x.getAsDouble(), y.getAsDouble());
        if (at.isEmpty()) {
            return nothing(sum, "No microphone stands there: it is out of the room, in the place of a player, or far from all places at which anything is known of the sound of "
                    + Naming.the(floor.source().name()) + ".", null);
        }
        double aim = floor.turnedDegrees(at.get(), look.getAsDouble());
        if (OnFloor.turnedAway(aim) && turnOnly) {
            return nothing(sum, turnedAway(aim), null);
        }
        List<StoodAt> turns = floor.judged(at.get(), Stream.concat(Stream.of(aim), turnOnly ? Stream.of() : OnFloor.turns(at.get()).stream()).toList());
        StoodAt stands = turns.get(0);
        if (!stands.ruledOut().isEmpty()) {
            return nothing(sum, stands.ruledOut().get(0).says(), stands.ruledOut().get(0).rule());
        }
        if (OnFloor.turnedAway(aim)) {
            place(sum, OnFloor.best(turns.subList(1, turns.size())).orElse(stands));
            return sum.add("Where it looks", 0, 3, turnedAway(aim), null).add("What it hears of the others", 0, 3, turnedAway(aim), null).mark();
        }
        double placeShare = turnOnly ? 1 : place(sum, OnFloor.best(turns).orElse(stands));
        turn(sum, stands, turnOnly ? best.stood() : OnFloor.best(turns).orElse(stands), placeShare);
        others(sum, stands, placeShare);
        dangers(sum, stands.offer().option());
        return sum.mark();
    }

    private static String turnedAway(double aimDegrees) {
        return "It looks " + Math.round(Math.abs(aimDegrees)) + "\u00b0 past its own source: nobody turns it so far.";
    }

    private Mark nothing(Mark.Sum sum, String says, String rule) {
        if (!turnOnly) {
            sum.add("Where it stands", 0, 4, says, rule);
        }
        return sum.add("Where it looks", 0, 3, says, rule).add("What it hears of the others", 0, 3, says, rule).mark();
    }

    private double place(Mark.Sum sum, StoodAt turned) {
        double missed = best.points() - OneMic.points(turned.offer());
        double share = share(missed, NO_LESS_POINTS, MOST_SHORT_OF_PLACE_POINTS);
        Position position = OneMic.mic(turned.offer()).position();
        Behind behind = share == 1 ? Behind.of(turned.offer().option()) : Behind.between(bestOption, turned.offer().option());
        sum.add("Where it stands", share, 4, share == 1 ? "No other place does more: " + position.brings() + "." : "Turned as well as can be, the best spot is worth " + points(missed)
                + " more. " + behind.says(), behind.rule());
        return share;
    }

    private void turn(Mark.Sum sum, StoodAt stands, StoodAt turned, double placeShare) {
        double missed = OneMic.points(turned.offer()) - OneMic.points(stands.offer());
        double share = share(missed, NO_LESS_POINTS, MOST_SHORT_OF_TURN_POINTS);
        Behind behind = share == 1 ? Behind.of(stands.offer().option()) : Behind.between(turned.offer().option(), stands.offer().option());
        sum.add("Where it looks", placeShare * share, 3, (share == 1 ? "No other turn does more there. " : "Turned better it is worth " + points(missed) + " more there. ") + behind.says(),
                behind.rule());
    }

    private void others(Mark.Sum sum, StoodAt stands, double placeShare) {
        double missed = OnFloor.separationDb(best.stood().offer()) - OnFloor.separationDb(stands.offer());
        double share = share(missed, NO_LESS_DB, turnOnly ? MOST_SHORT_OF_TURN_DB : MOST_SHORT_DB);
        sum.add("What it hears of the others", placeShare * share, 3, "Its own source is " + decibels(OnFloor.separationDb(stands.offer())) + " over the others"
                + (share == 1 ? "." : "; at the best spot it is " + decibels(OnFloor.separationDb(best.stood().offer())) + "."), "null-angles");
    }

    /** Everything where nobody could tell the difference, nothing from so much on. */
    private static double share(double missed, double none, double most) {
        return missed < none ? 1 : Math.max(0, 1 - missed / most);
    }

    /** Those that the best spot does not have. */
    private void dangers(Mark.Sum sum, Option option) {
        Set<String> known = new LinkedHashSet<>(OneMic.mind(bestOption));
        option.cautions().stream().filter(caution -> caution.severity() != Severity.NOTE && !known.contains(caution.rule()))
                .forEach(caution -> sum.cap(caution.severity() == Severity.DANGER ? DANGER_SHARE : CARE_SHARE, caution.says()));
    }

    private static String points(double points) {
        return String.format(Locale.ROOT, "%.1f points", points);
    }

    private static String decibels(double db) {
        return String.format(Locale.ROOT, "%.1f dB", db).replace('-', '\u2212');
    }

    /** At the nearest place, straight at the source. */
    @Override
    public Answer usual() {
        if (turnOnly) {
            return marked(best.xM(), best.yM(), best.at().lineDegrees());
        }
        Position nearest = floor.places().stream().min(Comparator.comparingDouble(position -> position.distanceM().typical())).orElseThrow();
        Line.Spot spot = FloorSurroundings.of(floor.lineUp(), floor.lineUp().seat(OnFloor.OWN).orElseThrow(), lab.catalogue()).spot(nearest, nearest.distanceM().typical(), 0);
        return marked(spot.xM(), spot.yM(), spot.headingDegrees());
    }

    @Override
    public List<Need> kit() {
        return List.of();
    }

    @Override
    public Set<String> restsOn() {
        Set<String> rests = new LinkedHashSet<>(List.of("null-angles", "level-at-distance"));
        bestOption.reasons().stream().map(Reason::rule).forEach(rests::add);
        bestOption.cautions().stream().map(Caution::rule).forEach(rests::add);
        return rests;
    }
}
