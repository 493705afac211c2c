package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pairwright.advice.Offer;
import pairwright.advice.Offers;
import pairwright.advice.Overheard;
import pairwright.advice.StoodAt;
import pairwright.model.Catalogue;
import pairwright.model.Limits;
import pairwright.model.MicType;
import pairwright.model.Pattern;
import pairwright.model.Point;
import pairwright.model.Position;
import pairwright.model.Question;
import pairwright.model.Setup;
import pairwright.model.Source;
import pairwright.model.Standpoint;
import pairwright.session.Altered;
import pairwright.session.Floor;
import pairwright.session.FloorSurroundings;
import pairwright.session.LineUp;
import pairwright.session.Line;
import pairwright.session.Seat;
import pairwright.session.SeatQuestion;

/** One microphone anywhere about a player on a floor with others: what it is worth there, by the rules and the arithmetic that plan a session. Not safe to share. */
final class OnFloor {
    /** The seat whose player is recorded. */
    static final String OWN = "own";
    /** Nothing is known of the sound farther round a source than that from the places of its entry. */
    private static final double MOST_ROUND_DEGREES = 40;
    /** Nor much nearer or farther than they are, as a ratio. */
    private static final double MOST_BEYOND_RATIO = 2;
    /** A ratio of distances that is as far off as half of that angle. */
    private static final double ROUND_FOR_A_RATIO_DEGREES = 30;
    private static final double LEAST_DISTANCE_M = 0.02;
    /** Where somebody sits or stands. */
    private static final double BODY_M = 0.35;
    private static final int EVERY_DEGREES = 5;

    private final Lab lab;
    private final LineUp lineUp;
    private final Seat own;
    private final Source source;
    private final MicType type;
    private final Pattern pattern;
    private final Catalogue catalogue;
    private final Question question;
    private final FloorSurroundings around;

    OnFloor(Lab lab, LineUp lineUp, MicType type, Pattern pattern) {
        this.lab = lab;
        this.lineUp = lineUp;
        this.own = lineUp.seat(OWN).orElseThrow();
        this.source = lab.source(own.source());
        this.type = type;
        this.pattern = pattern;
        this.catalogue = Altered.of(lab.catalogue(), lineUp, own);
        this.question = SeatQuestion.of(own, catalogue);
        this.around = FloorSurroundings.of(lineUp, own, lab.catalogue());
    }

    /** As a case has it: source, type, pattern; room, with its measures; facing, xM, yM; and of each of the others the same. */
    static OnFloor of(Case drawn, Lab lab) {
        List<Seat> seats = new ArrayList<>();
        List<String> sources = drawn.all("sources");
        MicType type = lab.type(drawn.one("types"));
        Limits one = new Limits(1, null, null, null, null, null, List.of(type.id()), null);
        for (int i = 0; i < sources.size(); i++) {
            seats.add(new Seat(i == 0 ? OWN : "other-" + i, null, lab.source(sources.get(i)).id(), number(drawn, "xM", i), number(drawn, "yM", i), number(drawn, "facing", i), null, null,
                    null, null, i == 0 ? one : null, true, null, false));
        }
        Floor floor = new Floor(null, drawn.number("widthM"), drawn.number("depthM"), drawn.number("heightM"), drawn.number("reverbTimeS"));
        LineUp lineUp = new LineUp(null, floor, seats, null, null, null, null, null, 1);
        Pattern pattern = java.util.Arrays.stream(Pattern.values()).filter(any -> any.id().equals(drawn.one("pattern"))).findFirst().orElseThrow();
        return new OnFloor(lab, lineUp, type, pattern);
    }

    private static double number(Case drawn, String name, int which) {
        return Double.parseDouble(drawn.all(name).get(which));
    }

    LineUp lineUp() {
        return lineUp;
    }

    Source source() {
        return source;
    }

    MicType type() {
        return type;
    }

    Pattern pattern() {
        return pattern;
    }

    /** Places from which something is known and to which one can point on a plan. */
    List<Position> places() {
        return OneMic.standing(source).stream().filter(place -> place.mount().onStand() && !place.overPeople()
                && (place.onlyFamilies().isEmpty() || place.onlyFamilies().contains(type.family())) && place.onlyWays().isEmpty()).toList();
    }

    /** What the planner of a session tries at this seat, best first. */
    List<Offer> tried() {
        List<Position> places = places();
        return Offers.of(question, catalogue, lab.rules(), null, around).all().stream()
                .filter(offer -> offer.mics().size() == 1 && OneMic.mic(offer).pattern() == pattern && places.contains(OneMic.mic(offer).position())).toList();
    }

    /** Where an offer stands on the floor. */
    Line.Spot spot(Offer offer) {
        return around.spot(OneMic.mic(offer).position(), OneMic.mic(offer).distanceM(), OneMic.mic(offer).aimDegrees());
    }

    /**
     * A place on the floor as seen from the source.
     *
     * @param position of its entry which is nearest to that direction
     * @param distanceM from what sounds there
     * @param surface in the player's own frame
     * @param place in the same
     * @param lineDegrees where a microphone there looks when it looks straight at the source, on the plan
     */
    record At(Position position, double distanceM, Point surface, Point place, double lineDegrees) {
    }

    /** Empty where nothing is known of the sound, in the bodies of the players, and outside the room. */
    Optional<At> at(double xM, double yM) {
        if (!lineUp.floor().holds(xM, yM) || lineUp.seats().stream().anyMatch(seat -> !seat.id().equals(OWN) && Math.hypot(seat.xM() - xM, seat.yM() - yM) < BODY_M)) {
            return Optional.empty();
        }
        double facing = Math.toRadians(own.facingDegrees());
        double right = xM - own.xM();
        double up = yM - own.yM();
        Point spot = new Point(right * Math.sin(facing) + up * Math.cos(facing), up * Math.sin(facing) - right * Math.cos(facing), 0);
        At nearest = null;
        double least = Double.MAX_VALUE;
        for (Position position : places()) {
            double flatM = Math.max(LEAST_DISTANCE_M, Math.hypot(spot.forwardM(), spot.leftM()));
            Standpoint stands = Standpoint.of(source.body(), position, flatM);
            Point place = spot.withUp(stands.place().upM());
            double distanceM = Math.max(LEAST_DISTANCE_M, place.minus(stands.surface()).lengthM());
            stands = Standpoint.of(source.body(), position, distanceM);
            place = spot.withUp(stands.place().upM());
            distanceM = Math.max(LEAST_DISTANCE_M, place.minus(stands.surface()).lengthM());
            double round = distanceM <= LEAST_DISTANCE_M ? 0 : place.minus(stands.surface()).apartDegrees(stands.place().minus(stands.surface()));
            if (stands.mayBeMirrored(position)) {
                Point other = stands.mirrored().place();
                round = Math.min(round, place.minus(stands.surface()).apartDegrees(other.minus(stands.surface())));
            }
            double within = Math.max(position.distanceM().low(), Math.min(position.distanceM().high(), distanceM));
            double beyond = Math.max(within / distanceM, distanceM / within);
            double off = round + ROUND_FOR_A_RATIO_DEGREES * Math.log(beyond);
            if (round <= MOST_ROUND_DEGREES && beyond <= MOST_BEYOND_RATIO && off < least) {
                least = off;
                nearest = new At(position, distanceM, stands.surface(), place, heading(stands.surface().minus(place)));
            }
        }
        return Optional.ofNullable(nearest);
    }

    /** On the plan, 0 up, 90 to the right; of a direction in the player's own frame. */
    private double heading(Point direction) {
        return own.facingDegrees() - direction.leftDegrees();
    }

    /** The same direction from -180 up to 180 degrees. */
    static double heading(double degrees) {
        return ((degrees + 180) % 360 + 360) % 360 - 180;
    }

    /** Turned to the left of the line to the source, -180 to 180 degrees, by where it looks on the plan. */
    static double aimDegrees(At at, double lookDegrees) {
        return heading(at.lineDegrees() - lookDegrees);
    }

    /** The same with the back of what hears alike to both sides for its front. */
    double turnedDegrees(At at, double lookDegrees) {
        double aim = aimDegrees(at, lookDegrees);
        return pattern == Pattern.FIGURE_8 && Math.abs(aim) > 90 ? heading(aim + 180) : aim;
    }

    /** A microphone there, turned as it may be, each judged. */
    List<StoodAt> judged(At at, List<Double> aimsDegrees) {
        return StoodAt.of(question, catalogue, lab.rules(), (position, distanceM) -> around.at(at.surface(), at.place()),
                aimsDegrees.stream().map(aim -> new Setup.Put(type.id(), pattern, at.position().id(), at.distanceM(), aim)).toList());
    }

    /** Turns in even steps as far as anybody would turn it, straight at the source first, each a whole degree on the plan, as one marks it. */
    static List<Double> turns(At at) {
        int most = (int) Overheard.mostTurnDegrees() / EVERY_DEGREES;
        return IntStream.rangeClosed(0, 2 * most).mapToObj(i -> aimDegrees(at, marked(at, (i % 2 == 0 ? i / 2 : -(i + 1) / 2) * EVERY_DEGREES))).toList();
    }

    /** Whether nobody would turn it so far: what it hears of its own source then is not what the rules were written for. */
    static boolean turnedAway(double aimDegrees) {
        return Math.abs(aimDegrees) > Overheard.mostTurnDegrees() + EVERY_DEGREES;
    }

    /** Where a microphone looks that is turned by so much, in whole degrees. */
    static double marked(At at, double aimDegrees) {
        return heading(Math.round(at.lineDegrees() - aimDegrees));
    }

    /** What may stand of these, best first: by the rules, and among what they hold alike by what is heard of the others. */
    static Optional<StoodAt> best(List<StoodAt> some) {
        return some.stream().filter(one -> one.ruledOut().isEmpty()).max(Comparator.comparingLong((StoodAt one) -> one.offer().centipoints()).thenComparingDouble(one -> separationDb(one.offer())));
    }

    /** The one that hears least of the others. */
    static Optional<StoodAt> quietest(List<StoodAt> some) {
        return some.stream().filter(one -> one.ruledOut().isEmpty()).max(Comparator.comparingDouble(one -> separationDb(one.offer())));
    }

    /** Its own source over all others, dB. */
    static double separationDb(Offer one) {
        Double separation = OneMic.mic(one).predicted().separationDb();
        return separation == null ? 0 : separation;
    }
}
