package pairwright.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pairwright.acoustics.FirstOrder;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.acoustics.Weighting;
import pairwright.model.Heard;
import pairwright.model.PatternData;
import pairwright.model.Source;

/**
 * What a microphone hears of the neighbours, octave by octave: straight, by their level, distance and angle; and by way of the room, by
 * their power and the absorption. Both as its pattern picks them up, and A-weighted where one number stands for all octaves.
 */
final class Bleed {
    private static final int STEP_DEGREES = 1;
    /** In a room with a floor each place has others about it, and every degree at every place would take longer than all else; no null is narrower. */
    private static final int WIDE_STEP_DEGREES = 5;
    /** A turn that gains less than this is not worth telling anybody. */
    private static final double WORTH_TURNING_DB = 1;
    /** What sums in another order may differ by, and more. */
    private static final double ROUNDING_DB = 1e-6;
    /** What a turn for the sake of tone may let in of the neighbours: it takes about as much of the source itself. */
    private static final double HARDLY_DB = 0.6;

    /** Octave levels of the source against its overall level, as powers, A-weighted. */
    private final double[] ownPower;
    private final boolean seated;
    private final Reaching loudest;
    private final double loudestDbSpl;
    private final List<Arriving> neighbours;
    private final double[] allViaRoom = new double[Octaves.COUNT];
    private final Around around = new Around();
    private final Map<Turned, Share> shares = new HashMap<>();
    private final Map<Turned, Double> bestTurns = new HashMap<>();
    private final Map<Turned, Double> turnGains = new HashMap<>();

    /** A pattern and how far it is turned, or may be turned. Patterns are compared as objects: each type has its own figures. */
    private record Turned(PatternData pattern, double degrees) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Turned turned && turned.pattern == pattern && turned.degrees == degrees;
        }

        @Override
        public int hashCode() {
            return System.identityHashCode(pattern) * 31 + Double.hashCode(degrees);
        }
    }

    /** What turning leaves: of the source, against its level at the capsule; and of all neighbours together, as a level. */
    private record Share(double ownDb, double bleedDbSpl) {
        double overBleedDb() {
            return ownDb - bleedDbSpl;
        }
    }

    /** @param who those who arrive at the place, one at least */
    Bleed(Scene scene, List<Reaching> who) {
        this(scene.spectrumDb(), scene.seated(), who);
    }

    Bleed(OctaveCurve spectrumDb, boolean seated, List<Reaching> who) {
        this.ownPower = powers(Scene.octavesDbSpl(0, spectrumDb));
        this.seated = seated;
        this.loudest = Scene.loudest(who);
        this.loudestDbSpl = loudest.directDbSpl();
        this.neighbours = who.stream().map(Arriving::of).toList();
        for (Arriving neighbour : neighbours) {
            around.add(neighbour);
            for (int band = 0; band < Octaves.COUNT; band++) {
                allViaRoom[band] += neighbour.viaRoom()[band];
            }
        }
    }

    /** A pattern that may be turned: what it takes up of each neighbour. */
    private final class Facing {
        private final PatternData pattern;
        /** By octave, where the cosine of an angle says what is taken up from there; null where it does not. */
        private final double[] coefficients;
        /** Of each neighbour the cosine of its angle off the axis, or that angle. */
        private final double[] toward = new double[neighbours.size()];
        /** Of all neighbours together by way of the room, which no turn changes. */
        private final double viaRoom;

        Facing(PatternData pattern) {
            this.pattern = pattern;
            this.coefficients = Pickup.byCosine(pattern) ? new double[Octaves.COUNT] : null;
            double viaRoom = 0;
            for (int band = 0; band < Octaves.COUNT; band++) {
                viaRoom += allViaRoom[band] * Pickup.diffusePower(pattern, band);
                if (coefficients != null) {
                    coefficients[band] = pattern.coefficient().at(band);
                }
            }
            this.viaRoom = viaRoom;
        }

        Facing turned(double aimDegrees) {
            double cosine = Math.cos(Math.toRadians(aimDegrees));
            double sine = Math.sin(Math.toRadians(aimDegrees));
            for (int i = 0; i < toward.length; i++) {
                toward[i] = coefficients != null ? neighbours.get(i).cosine(aimDegrees, cosine, sine) : neighbours.get(i).who().offAxisDegrees(aimDegrees);
            }
            return this;
        }

        double straight(int neighbour, int band) {
            return neighbours.get(neighbour).straight()[band]
                    * (coefficients != null ? Pickup.powerAt(toward[neighbour], coefficients[band]) : Pickup.power(pattern, band, toward[neighbour]));
        }

        /** Of the source itself, against its level at the capsule. */
        double own(double aimDegrees) {
            double cosine = FirstOrder.response(FirstOrder.FIGURE_EIGHT, Scene.foldedDegrees(aimDegrees));
            double own = 0;
            for (int band = 0; band < Octaves.COUNT; band++) {
                own += ownPower[band] * (coefficients != null ? Pickup.powerAt(cosine, coefficients[band]) : Pickup.power(pattern, band, aimDegrees));
            }
            return own;
        }

        /** More of the source over its neighbours than a turn can leave, as the floor of a null only adds to them; without end where that is not known so soon. */
        double mostOverBleedDb(double aimDegrees) {
            if (coefficients == null) {
                return Double.POSITIVE_INFINITY;
            }
            double aim = Math.toRadians(aimDegrees);
            double bleed = viaRoom + around.pickedUp(coefficients, Math.cos(aim), Math.sin(aim));
            return bleed <= 0 ? Double.POSITIVE_INFINITY : db(own(aimDegrees) / bleed) + ROUNDING_DB;
        }

        double all() {
            double all = viaRoom;
            for (int i = 0; i < toward.length; i++) {
                for (int band = 0; band < Octaves.COUNT; band++) {
                    all += straight(i, band);
                }
            }
            return all;
        }
    }

    /** Who comes straight the loudest. */
    Reaching loudest() {
        return loudest;
    }

    /** How loud that is, all octaves together. */
    double loudestDbSpl() {
        return loudestDbSpl;
    }

    /**
     * Own level over all neighbours together, A-weighted, as picked up.
     *
     * @param atCapsuleDbSpl running level of the source there
     */
    double separationDb(PatternData pattern, double aimDegrees, double atCapsuleDbSpl) {
        Share share = share(pattern, aimDegrees);
        return atCapsuleDbSpl + share.ownDb() - share.bleedDbSpl();
    }

    /**
     * How much lower all neighbours together are picked up than if what comes from them straight came from the front. What the room adds
     * comes from everywhere and stays, so where it is most of what is heard, no turn gains much.
     */
    double turnGainDb(PatternData pattern, double aimDegrees) {
        return turnGains.computeIfAbsent(new Turned(pattern, aimDegrees), turned -> {
            double fromFront = new Facing(pattern).viaRoom;
            for (Arriving neighbour : neighbours) {
                fromFront += Arrays.stream(neighbour.straight()).sum();
            }
            return db(fromFront) - share(pattern, aimDegrees).bleedDbSpl();
        });
    }

    /** Of a turn to one side and to the other the one that keeps the neighbours lower; null where either lets in more of them than straight does. */
    Double quieterSide(PatternData pattern, double degrees) {
        double one = share(pattern, degrees).overBleedDb();
        double other = share(pattern, -degrees).overBleedDb();
        return Math.max(one, other) < share(pattern, 0).overBleedDb() - HARDLY_DB ? null : Double.valueOf(other > one ? -degrees : degrees);
    }

    /** The turn that keeps most of the source over the neighbours, within limits either way; null where standing straight is as good. */
    Double bestTurnDegrees(PatternData pattern, double mostDegrees) {
        Double best = bestTurns.computeIfAbsent(new Turned(pattern, mostDegrees), limits -> findTurn(pattern, mostDegrees));
        return best == 0 ? null : best;
    }

    private double findTurn(PatternData pattern, double mostDegrees) {
        Facing facing = new Facing(pattern);
        Turn straight = new Turn(0, share(facing, 0).overBleedDb());
        int step = seated ? WIDE_STEP_DEGREES : STEP_DEGREES;
        Turn best = best(facing, bothWays(0, step, mostDegrees, mostDegrees), straight);
        best = best(facing, bothWays(best.degrees(), STEP_DEGREES, step - STEP_DEGREES, mostDegrees), best);
        return best.overBleedDb() - straight.overBleedDb() < WORTH_TURNING_DB ? 0 : best.degrees();
    }

    private record Turn(double degrees, double overBleedDb) {
    }

    /** Turns about another, step by step to either side. */
    private static double[] bothWays(double aboutDegrees, int step, double farthest, double mostDegrees) {
        double[] turns = new double[2 * (int) (farthest / step)];
        int count = 0;
        for (int off = step; off <= farthest; off += step) {
            for (double turn : new double[] {aboutDegrees + off, aboutDegrees - off}) {
                if (Math.abs(turn) <= mostDegrees) {
                    turns[count++] = turn;
                }
            }
        }
        return Arrays.copyOf(turns, count);
    }

    /** The first of the best turns. Those that cannot be as good as the most promising is are left aside, which is nearly all. */
    private Turn best(Facing facing, double[] turns, Turn known) {
        double[] most = new double[turns.length];
        int promising = -1;
        for (int i = 0; i < turns.length; i++) {
            most[i] = facing.mostOverBleedDb(turns[i]);
            promising = promising < 0 || most[i] > most[promising] ? i : promising;
        }
        double least = promising < 0 || most[promising] < known.overBleedDb() ? known.overBleedDb() : share(facing, turns[promising]).overBleedDb();
        Turn best = known;
        for (int i = 0; i < turns.length; i++) {
            if (most[i] >= least && most[i] > best.overBleedDb()) {
                double db = share(facing, turns[i]).overBleedDb();
                best = db > best.overBleedDb() ? new Turn(turns[i], db) : best;
            }
        }
        return best;
    }

    private Share share(PatternData pattern, double aimDegrees) {
        return shares.computeIfAbsent(new Turned(pattern, aimDegrees), turned -> share(new Facing(pattern), aimDegrees));
    }

    private Share share(Facing facing, double aimDegrees) {
        return new Share(db(facing.own(aimDegrees)), db(facing.turned(aimDegrees).all()));
    }

    /** Neighbour by neighbour, for the few placements that are shown. */
    List<Heard> heard(PatternData pattern, double aimDegrees, double atCapsuleDbSpl) {
        Facing facing = new Facing(pattern).turned(aimDegrees);
        List<Heard> heard = new ArrayList<>();
        for (int i = 0; i < neighbours.size(); i++) {
            double[] octaves = new double[Octaves.COUNT];
            double own = 0;
            double all = 0;
            double room = 0;
            double loudest = 0;
            int loudestBand = 0;
            for (int band = 0; band < Octaves.COUNT; band++) {
                double source = ownPower[band] * Pickup.power(pattern, band, aimDegrees);
                double viaRoom = neighbours.get(i).viaRoom()[band] * Pickup.diffusePower(pattern, band);
                double neighbour = facing.straight(i, band) + viaRoom;
                octaves[band] = atCapsuleDbSpl + db(source) - db(neighbour);
                own += source;
                all += neighbour;
                room += viaRoom;
                if (neighbour > loudest) {
                    loudest = neighbour;
                    loudestBand = band;
                }
            }
            Reaching who = neighbours.get(i).who();
            Source neighbour = who.source();
            heard.add(new Heard(seated ? who.seat() : null, neighbour.id(), neighbour.name(), atCapsuleDbSpl + db(own) - db(all), OctaveCurve.of(octaves),
                    Octaves.centreHz(loudestBand), room == 0 ? null : atCapsuleDbSpl + db(own) - db(room)));
        }
        return List.copyOf(heard);
    }

    /** Octave levels as powers, A-weighted, for adding up. */
    static double[] powers(OctaveCurve octavesDb) {
        double[] powers = new double[Octaves.COUNT];
        for (int band = 0; band < powers.length; band++) {
            powers[band] = Math.pow(10, (octavesDb.at(band) + Weighting.octaveWeightingDb().at(band)) / 10);
        }
        return powers;
    }

    private static double db(double power) {
        return 10 * Math.log10(power);
    }
}
