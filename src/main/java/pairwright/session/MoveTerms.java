package pairwright.session;

import java.util.List;
import pairwright.acoustics.Delay;
import pairwright.model.Catalogue;

/** What a band would agree to when one of them is asked to sit elsewhere or to turn. How much is too much is in the catalogue. */
final class MoveTerms {
    private static final double ROUNDING = 1e-9;

    private final LineUp lineUp;
    private final Players players;
    private final double leastGainDb;
    private final double priceDbPerM;
    private final double sightDegrees;
    private final double farthestM;
    private final double betweenM;

    /** @param catalogue says what a move must gain, and how far players may be from each other's eyes and ears */
    MoveTerms(LineUp lineUp, Players players, Catalogue catalogue) {
        this.lineUp = lineUp;
        this.players = players;
        this.leastGainDb = catalogue.custom("least-move-gain");
        this.priceDbPerM = catalogue.custom("move-price");
        this.sightDegrees = catalogue.custom("sight-line");
        this.farthestM = catalogue.custom("farthest-to-play") / 1000 * Delay.SPEED_OF_SOUND_M_PER_S;
        this.betweenM = catalogue.custom("between-players");
    }

    /** What a move that long must gain, on average of the lines that it touches; 0 m for a turn. */
    double leastGainDb(double wayM) {
        return leastGainDb + priceDbPerM * wayM;
    }

    /** Whether a player would still see and hear the others there, and sit with their section; whoever did not before need not fare better. */
    boolean agreeable(Seat moved) {
        Seat before = lineUp.seat(moved.id()).orElseThrow();
        List<Seat> others = lineUp.seats().stream().filter(other -> !other.id().equals(moved.id()) && players.at(other).plays()).toList();
        return others.isEmpty() || pastDegrees(moved, others) <= Math.max(sightDegrees, pastDegrees(before, others)) + ROUNDING
                && others.stream().allMatch(other -> noFarther(before, moved, other, section(moved.id(), other.id()) ? betweenM : farthestM));
    }

    private boolean section(String one, String other) {
        return lineUp.keep().stream().anyMatch(group -> group.contains(one) && group.contains(other));
    }

    private static boolean noFarther(Seat before, Seat moved, Seat other, double mostM) {
        return apartM(moved, other) <= Math.max(mostM, apartM(before, other)) + ROUNDING;
    }

    /** How far a player looks past the middle of the others, 0 to 180. */
    private static double pastDegrees(Seat seat, List<Seat> others) {
        double xM = others.stream().mapToDouble(Seat::xM).average().orElseThrow() - seat.xM();
        double yM = others.stream().mapToDouble(Seat::yM).average().orElseThrow() - seat.yM();
        double turn = InRoom.turned(Math.toDegrees(Math.atan2(xM, yM)) - seat.facingDegrees());
        return Math.min(turn, 360 - turn);
    }

    private static double apartM(Seat one, Seat other) {
        return Math.hypot(one.xM() - other.xM(), one.yM() - other.yM());
    }
}
