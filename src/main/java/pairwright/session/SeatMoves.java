package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import pairwright.model.Catalogue;
import pairwright.model.SourceFamily;
import pairwright.rules.Figure;

/**
 * Whom to seat elsewhere, or turn, so that the lines of a plan hear less of what they should not. Tried are places on a grid and a few ways to
 * face, first with every microphone as it is planned; the best are then looked at closer, with every microphone turned as is best there.
 * What is told of a move is what the lines then have over what they have now, both with the best aims, computed as everything else is. Each
 * is for itself: two together do something else again.
 */
public final class SeatMoves {
    public static final int MOST = 3;
    /** Nobody is asked to move for less. */
    public static final double LEAST_GAIN_DB = 1;

    /** What it may cost: one microphone hearing one other seat once. Some seconds of it for any line-up, about one for twelve seats. */
    private static final int EFFORT = 450_000;
    private static final double FINEST_STEP_M = 0.5;
    private static final int LOOKED_AT = 3;
    private static final int ROUNDS = 4;
    private static final int[] TURNS_DEGREES = {45, -45, 90, -90, 180};
    private static final int[] FACINGS_DEGREES = {0, 90, -90, 180};
    /** Of moves that gain as good as the same, the shortest is told. */
    private static final double AS_GOOD_DB = 0.5;

    private final LineUp lineUp;
    private final Hearing hearing;
    private final FloorSpace space;
    private final SeatNames names;

    private SeatMoves(LineUp lineUp, Catalogue catalogue) {
        this.lineUp = lineUp;
        this.hearing = Hearing.of(lineUp, catalogue);
        this.space = new FloorSpace(lineUp);
        this.names = SeatNames.of(lineUp);
    }

    /** @param catalogue as it is, nothing of it altered for any seat */
    public static SeatMoves of(LineUp lineUp, Catalogue catalogue) {
        return new SeatMoves(lineUp, catalogue);
    }

    /** A seat elsewhere, and how much more its lines have then, on average. */
    private record Tried(Seat seat, double gainDb) {
    }

    /**
     * Best first, each of another seat.
     *
     * @param lines of a plan
     * @param progress is told of every seat; what it throws ends the search
     */
    public List<Planned.Move> of(List<Line> lines, Consumer<Progress> progress) {
        List<Listening> now = hearing.listening(lines);
        List<Seat> movable = now.isEmpty() ? List.of() : lineUp.seats().stream().filter(this::movable).toList();
        List<Planned.Move> moves = new ArrayList<>();
        for (int i = 0; i < movable.size(); i++) {
            progress.accept(new Progress("Looking for a better seat for " + names.of(movable.get(i).id()), i, movable.size()));
            Planned.Move move = move(movable.get(i), now, movable.size());
            if (move != null) {
                moves.add(move);
            }
        }
        return moves.stream().sorted(Comparator.comparingDouble(Planned.Move::gainDb).reversed()).limit(MOST).toList();
    }

    private boolean movable(Seat seat) {
        Players.Player player = hearing.players().at(seat);
        return !seat.fixed() && player.sounds() && player.played().source().family() != SourceFamily.AMBIENCE;
    }

    private Planned.Move move(Seat seat, List<Listening> now, int seats) {
        double plainDb = now.stream().mapToDouble(one -> one.all().separationDb(one.aimDegrees())).average().orElseThrow();
        double bestDb = now.stream().mapToDouble(Listening::bestDb).average().orElseThrow();
        List<Tried> tried = candidates(seat, now, Math.max(16, EFFORT / now.size() / Math.max(1, now.get(0).others().size()) / seats)).stream()
                .map(moved -> new Tried(moved, meanDb(moved, now, false) - plainDb))
                .sorted(Comparator.comparingDouble(Tried::gainDb).reversed()).limit(LOOKED_AT).toList();
        List<Tried> closer = tried.stream().map(one -> closer(new Tried(one.seat(), meanDb(one.seat(), now, true) - bestDb), now, bestDb)).toList();
        double mostDb = closer.stream().mapToDouble(Tried::gainDb).max().orElse(0);
        return closer.stream().filter(one -> one.gainDb() >= LEAST_GAIN_DB && one.gainDb() >= mostDb - AS_GOOD_DB)
                .min(Comparator.comparingDouble(one -> wayM(seat, one.seat()))).map(one -> told(seat, one, now)).orElse(null);
    }

    /** Turned where it is, and elsewhere, as many as may be tried; in a fixed order. */
    private List<Seat> candidates(Seat seat, List<Listening> now, int most) {
        List<Seat> candidates = new ArrayList<>();
        for (int turn : TURNS_DEGREES) {
            candidates.add(seat.at(seat.xM(), seat.yM(), folded(seat.facingDegrees() + turn)));
        }
        Floor floor = lineUp.floor();
        double stepM = Math.max(FINEST_STEP_M, Math.sqrt(floor.widthM() * floor.depthM() * FACINGS_DEGREES.length / most));
        for (double yM = FloorSpace.FROM_WALLS_M; yM <= floor.depthM() - FloorSpace.FROM_WALLS_M; yM += stepM) {
            for (double xM = FloorSpace.FROM_WALLS_M; xM <= floor.widthM() - FloorSpace.FROM_WALLS_M; xM += stepM) {
                for (int facing : FACINGS_DEGREES) {
                    candidates.add(seat.at(xM, yM, folded(seat.facingDegrees() + facing)));
                }
            }
        }
        return candidates.stream().filter(moved -> fits(moved, now)).toList();
    }

    private boolean fits(Seat moved, List<Listening> now) {
        return space.fits(moved, now.stream().filter(one -> one.line().seat().equals(moved.id()))
                .map(one -> one.around().seated(moved).spot(one.position(), one.line().placement().distanceM(), one.aimDegrees())).toList());
    }

    private static double meanDb(Seat moved, List<Listening> now, boolean turned) {
        double sumDb = 0;
        for (Listening one : now) {
            Listening after = one.after(moved);
            sumDb += turned ? after.bestDb() : after.all().separationDb(after.aimDegrees());
        }
        return sumDb / now.size();
    }

    /** A little to every side and a little turned, by less each time, as long as it gains. */
    private Tried closer(Tried from, List<Listening> now, double bestDb) {
        Tried best = from;
        double stepM = FINEST_STEP_M;
        double turnDegrees = 30;
        for (int round = 0; round < ROUNDS; round++) {
            Tried before = best;
            Seat seat = best.seat();
            for (Seat moved : List.of(seat.at(seat.xM() + stepM, seat.yM(), seat.facingDegrees()), seat.at(seat.xM() - stepM, seat.yM(), seat.facingDegrees()),
                    seat.at(seat.xM(), seat.yM() + stepM, seat.facingDegrees()), seat.at(seat.xM(), seat.yM() - stepM, seat.facingDegrees()),
                    seat.at(seat.xM(), seat.yM(), folded(seat.facingDegrees() + turnDegrees)), seat.at(seat.xM(), seat.yM(), folded(seat.facingDegrees() - turnDegrees)))) {
                if (fits(moved, now)) {
                    double gainDb = meanDb(moved, now, true) - bestDb;
                    best = gainDb > best.gainDb() ? new Tried(moved, gainDb) : best;
                }
            }
            if (best == before) {
                stepM /= 2;
                turnDegrees /= 2;
            }
        }
        return best;
    }

    /** As it can be marked on a floor, to the decimetre and five degrees, and what it gains there. */
    private Planned.Move told(Seat before, Tried best, List<Listening> now) {
        Seat marked = best.seat().at(wayM(before, best.seat()) == 0 ? before.xM() : Math.rint(best.seat().xM() * 10) / 10,
                wayM(before, best.seat()) == 0 ? before.yM() : Math.rint(best.seat().yM() * 10) / 10,
                best.seat().facingDegrees() == before.facingDegrees() ? before.facingDegrees() : folded(Math.rint(best.seat().facingDegrees() / 5) * 5));
        Seat after = fits(marked, now) ? marked : best.seat();
        double gainDb = 0;
        Line most = null;
        double mostDb = Double.NEGATIVE_INFINITY;
        for (Listening one : now) {
            double db = one.after(after).bestDb() - one.bestDb();
            gainDb += db / now.size();
            if (db > mostDb) {
                mostDb = db;
                most = one.line();
            }
        }
        return gainDb < LEAST_GAIN_DB ? null : new Planned.Move(before.id(), after.xM(), after.yM(), after.facingDegrees(), gainDb, most.number(), mostDb,
                says(before, after, gainDb, most, mostDb));
    }

    private String says(Seat before, Seat after, double gainDb, Line most, double mostDb) {
        double wayM = wayM(before, after);
        double turn = folded(after.facingDegrees() - before.facingDegrees());
        String turned = turn == 0 ? "" : "turned " + Math.round(Math.min(turn, 360 - turn)) + " degrees to the " + (turn <= 180 ? "right" : "left");
        String moved = wayM == 0 ? "" : "moved " + Figure.forPeople(wayM, "m") + " " + toward(before, after);
        String both = moved.isEmpty() ? turned : turned.isEmpty() ? moved : moved + " and " + turned;
        return HearingWords.sentence(names.of(before.id()) + " " + both + ": the lines have " + HearingWords.decibels(gainDb)
                + " more of their own over the others on average, line " + most.number() + " (" + most.name() + ") " + HearingWords.decibels(mostDb)
                + " more.");
    }

    /** As seen on the plan. */
    private static String toward(Seat before, Seat after) {
        double heading = folded(Math.toDegrees(Math.atan2(after.xM() - before.xM(), after.yM() - before.yM())));
        return List.of("up the plan", "up and to the right", "to the right", "down and to the right", "down the plan", "down and to the left", "to the left",
                "up and to the left").get((int) Math.round(heading / 45) % 8);
    }

    private static double wayM(Seat before, Seat after) {
        return Math.hypot(after.xM() - before.xM(), after.yM() - before.yM());
    }

    private static double folded(double degrees) {
        double turned = degrees % 360;
        return turned < 0 ? turned + 360 : turned;
    }
}
