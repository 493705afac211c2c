package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import pairwright.model.Catalogue;
import pairwright.rules.Figure;

/**
 * Whom to seat elsewhere, or turn, so that the lines of a plan hear less of what they should not. Tried are places on a grid and a few ways to
 * face, first with every microphone as it is planned; the best are then looked at closer, with every microphone turned as is best there.
 * What is told of a move is what the lines then have over what they have now, both with the best aims, computed as everything else is. Each
 * is for itself: two together do something else again. Told is only what a band would agree to ({@link MoveTerms}).
 */
public final class SeatMoves {
    public static final int MOST = 3;
    /** A line whose separation changes by less is not touched. */
    public static final double TOUCHED_DB = 0.5;

    /** How often a line may be heard anew, over all: well under a second of it. */
    private static final int EFFORT = 30_000;
    private static final int LEAST_TRIED = 20;
    private static final double FINEST_STEP_M = 0.5;
    private static final int LOOKED_AT = 2;
    private static final int SEATS_LOOKED_AT = MOST + 1;
    private static final int ROUNDS = 3;
    /** From less than this, summed up over all lines, no closer look makes a move of it. */
    private static final double WORTH_A_LOOK_DB = 0.5;
    private static final int[] TURNS_DEGREES = {45, -45, 90, -90, 180};
    private static final int[] FACINGS_DEGREES = {0, 90, -90, 180};
    /** Of moves that gain nearly as much, the shortest is told: so much of the most is nearly as much. */
    private static final double NEARLY_SHARE = 0.8;

    private final LineUp lineUp;
    private final Hearing hearing;
    private final FloorSpace space;
    private final MoveTerms terms;
    private final SeatNames names;

    private SeatMoves(LineUp lineUp, Catalogue catalogue) {
        this.lineUp = lineUp;
        this.hearing = Hearing.of(lineUp, catalogue);
        this.space = new FloorSpace(lineUp, catalogue);
        this.terms = new MoveTerms(lineUp, hearing.players(), catalogue);
        this.names = SeatNames.of(lineUp);
    }

    /** @param catalogue as it is, nothing of it altered for any seat */
    public static SeatMoves of(LineUp lineUp, Catalogue catalogue) {
        return new SeatMoves(lineUp, catalogue);
    }

    /** A seat elsewhere, and how much more all lines have then, summed up. */
    private record Tried(Seat seat, double gainDb) {
    }

    /** A seat as it is, and where else it may be better. */
    private record Rough(Seat seat, List<Tried> best) {
        double mostDb() {
            return best.stream().mapToDouble(Tried::gainDb).max().orElse(0);
        }
    }

    /** A move, and what all lines that it touches gain, summed up. */
    private record Found(double sumDb, Planned.Move move) {
    }

    /**
     * The lines as everybody sits now, and what all of them have over the others, summed up.
     *
     * @param asAimedDb with the aims of the plan
     * @param bestDb with the best aims
     */
    private record Now(List<Listening> lines, List<Shares> shares, double asAimedDb, double bestDb) {
        static Now of(List<Listening> lines) {
            List<Shares> shares = lines.stream().map(Shares::new).toList();
            return new Now(lines, shares, shares.stream().mapToDouble(Shares::separationDb).sum(),
                    lines.stream().mapToDouble(Listening::bestDb).sum());
        }

        double asAimedDb(Seat moved) {
            return shares.stream().mapToDouble(one -> one.separationDb(moved)).sum();
        }

        double bestDb(Seat moved) {
            return lines.stream().mapToDouble(one -> one.after(moved).bestDb()).sum();
        }
    }

    /**
     * Those first that gain most over all lines, each of another seat.
     *
     * @param lines of a plan
     * @param progress is told of every seat; what it throws ends the search
     */
    public List<Planned.Move> of(List<Line> lines, Consumer<Progress> progress) {
        Now now = Now.of(hearing.listening(lines));
        List<Seat> movable = now.lines().isEmpty() ? List.of() : lineUp.seats().stream().filter(this::movable).toList();
        List<Rough> rough = new ArrayList<>();
        for (Seat seat : movable) {
            progress.accept(new Progress("Looking for a better seat for " + names.of(seat.id()), rough.size(), movable.size()));
            rough.add(rough(seat, now, movable.size()));
        }
        progress.accept(new Progress("Looking closer at the best of them", movable.size(), movable.size()));
        return rough.stream().sorted(Comparator.comparingDouble(Rough::mostDb).reversed()).limit(SEATS_LOOKED_AT).map(one -> closer(one, now))
                .filter(Objects::nonNull).sorted(Comparator.comparingDouble(Found::sumDb).reversed()).limit(MOST).map(Found::move).toList();
    }

    private boolean movable(Seat seat) {
        Players.Player player = hearing.players().at(seat);
        return !seat.fixed() && player.plays() && !space.together(seat);
    }

    /** With every microphone as it is planned: the best places of a seat, and the shortest way that gains nearly as much. */
    private Rough rough(Seat seat, Now now, int seats) {
        int most = Math.max(LEAST_TRIED, EFFORT / now.lines().size() / seats);
        List<Tried> tried = candidates(seat, now.lines(), most).stream().map(moved -> new Tried(moved, now.asAimedDb(moved) - now.asAimedDb()))
                .sorted(Comparator.comparingDouble(Tried::gainDb).reversed()).toList();
        return new Rough(seat, Stream.concat(tried.stream().limit(LOOKED_AT), nearly(seat, tried).stream()).distinct().toList());
    }

    private Found closer(Rough rough, Now now) {
        List<Tried> closer = rough.best().stream().map(one -> new Tried(one.seat(), now.bestDb(one.seat()) - now.bestDb()))
                .map(one -> one.gainDb() < WORTH_A_LOOK_DB ? one : closer(one, now)).toList();
        double mostDb = closer.stream().mapToDouble(Tried::gainDb).max().orElse(0);
        List<Tried> worth = closer.stream().filter(one -> one.gainDb() > 0)
                .sorted(Comparator.comparing((Tried one) -> one.gainDb() < NEARLY_SHARE * mostDb).thenComparing(one -> wayM(rough.seat(), one.seat()))).toList();
        return worth.stream().map(one -> told(rough.seat(), one.seat(), now.lines())).filter(Objects::nonNull).findFirst().orElse(null);
    }

    /** The shortest that gains nearly as much as the first; the earliest of equals. */
    private static Optional<Tried> nearly(Seat seat, List<Tried> tried) {
        return tried.stream().filter(one -> one.gainDb() >= NEARLY_SHARE * tried.get(0).gainDb())
                .min(Comparator.comparingDouble(one -> wayM(seat, one.seat())));
    }

    /** Turned where it is, and elsewhere, as many as may be tried; in a fixed order. */
    private List<Seat> candidates(Seat seat, List<Listening> now, int most) {
        List<Seat> candidates = new ArrayList<>();
        for (int turn : TURNS_DEGREES) {
            candidates.add(seat.at(seat.xM(), seat.yM(), InRoom.turned(seat.facingDegrees() + turn)));
        }
        Floor floor = lineUp.floor();
        double stepM = Math.max(FINEST_STEP_M, Math.sqrt(floor.widthM() * floor.depthM() * FACINGS_DEGREES.length / most));
        for (double yM = space.fromWallsM(); yM <= floor.depthM() - space.fromWallsM(); yM += stepM) {
            for (double xM = space.fromWallsM(); xM <= floor.widthM() - space.fromWallsM(); xM += stepM) {
                for (int facing : FACINGS_DEGREES) {
                    candidates.add(seat.at(xM, yM, InRoom.turned(seat.facingDegrees() + facing)));
                }
            }
        }
        return candidates.stream().filter(moved -> fits(moved, now)).toList();
    }

    private boolean fits(Seat moved, List<Listening> now) {
        return terms.agreeable(moved) && space.fits(moved, now.stream().filter(one -> one.line().seat().equals(moved.id()))
                .map(one -> one.around().seated(moved).spot(one.position(), one.line().placement().distanceM(), one.aimDegrees())).toList());
    }

    /** A little to every side and a little turned, by less each time, as long as it gains. */
    private Tried closer(Tried from, Now now) {
        Tried best = from;
        double stepM = FINEST_STEP_M;
        double turnDegrees = 30;
        for (int round = 0; round < ROUNDS; round++) {
            Tried before = best;
            Seat seat = best.seat();
            for (Seat moved : List.of(seat.at(seat.xM() + stepM, seat.yM(), seat.facingDegrees()), seat.at(seat.xM() - stepM, seat.yM(), seat.facingDegrees()),
                    seat.at(seat.xM(), seat.yM() + stepM, seat.facingDegrees()), seat.at(seat.xM(), seat.yM() - stepM, seat.facingDegrees()),
                    seat.at(seat.xM(), seat.yM(), InRoom.turned(seat.facingDegrees() + turnDegrees)), seat.at(seat.xM(), seat.yM(), InRoom.turned(seat.facingDegrees() - turnDegrees)))) {
                if (fits(moved, now.lines())) {
                    double gainDb = now.bestDb(moved) - now.bestDb();
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

    /** As it can be marked on a floor, to the decimetre and five degrees, and what it gains there; null where that is too little. */
    private Found told(Seat before, Seat best, List<Listening> now) {
        boolean turned = wayM(before, best) == 0;
        Seat marked = best.at(turned ? before.xM() : Math.rint(best.xM() * 10) / 10, turned ? before.yM() : Math.rint(best.yM() * 10) / 10,
                best.facingDegrees() == before.facingDegrees() ? before.facingDegrees() : InRoom.turned(Math.rint(best.facingDegrees() / 5) * 5));
        Seat after = fits(marked, now) ? marked : best;
        double sumDb = 0;
        int touched = 0;
        Line most = null;
        double mostDb = Double.NEGATIVE_INFINITY;
        for (Listening one : now) {
            double db = one.after(after).bestDb() - one.bestDb();
            if (Math.abs(db) >= TOUCHED_DB) {
                sumDb += db;
                touched++;
            }
            if (db > mostDb) {
                mostDb = db;
                most = one.line();
            }
        }
        double gainDb = touched == 0 ? 0 : sumDb / touched;
        return gainDb < terms.leastGainDb(wayM(before, after)) ? null : new Found(sumDb, new Planned.Move(before.id(), after.xM(), after.yM(), after.facingDegrees(), gainDb,
                most.number(), mostDb, says(before, after, gainDb, touched, most, mostDb)));
    }

    private String says(Seat before, Seat after, double gainDb, int touched, Line most, double mostDb) {
        double wayM = wayM(before, after);
        double turn = InRoom.turned(after.facingDegrees() - before.facingDegrees());
        String turned = turn == 0 ? "" : "turned " + Math.round(Math.min(turn, 360 - turn)) + " degrees to the " + (turn <= 180 ? "right" : "left");
        String moved = wayM == 0 ? "" : "moved " + Figure.forPeople(wayM, "m") + " " + toward(before, after);
        String both = moved.isEmpty() ? turned : turned.isEmpty() ? moved : moved + " and " + turned;
        String gains = HearingWords.decibels(mostDb) + " more of its own over the others";
        return HearingWords.sentence(names.of(before.id()) + " " + both + ": line " + most.number() + " (" + most.name() + ") has " + gains
                + (touched == 1 ? "" : "; the " + touched + " lines that it touches have " + HearingWords.decibels(gainDb) + " more on average") + ".");
    }

    /** As seen on the plan. */
    private static String toward(Seat before, Seat after) {
        double heading = InRoom.turned(Math.toDegrees(Math.atan2(after.xM() - before.xM(), after.yM() - before.yM())));
        return List.of("up the plan", "up and to the right", "to the right", "down and to the right", "down the plan", "down and to the left", "to the left",
                "up and to the left").get((int) Math.round(heading / 45) % 8);
    }

    private static double wayM(Seat before, Seat after) {
        return Math.hypot(after.xM() - before.xM(), after.yM() - before.yM());
    }
}
