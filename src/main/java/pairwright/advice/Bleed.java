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
    /** What a turn for the sake of tone may let in of the neighbours: it takes about as much of the source itself. */
    private static final double HARDLY_DB = 0.6;

    /** Octave levels of the source against its overall level, as powers, A-weighted. */
    private final double[] ownPower;
    private final boolean seated;
    private final Reaching loudest;
    private final double loudestDbSpl;
    private final List<Arriving> neighbours;
    private final double[] allViaRoom = new double[Octaves.COUNT];
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
            for (int band = 0; band < Octaves.COUNT; band++) {
                allViaRoom[band] += neighbour.viaRoom()[band];
            }
        }
    }

    /** A neighbour as powers, A-weighted: what comes straight and what the room adds, 0 in the open air. */
    private record Arriving(Reaching who, boolean inPlane, double alongShare, double[] straight, double[] viaRoom) {
        static Arriving of(Reaching who) {
            return new Arriving(who, who.inPlane(), Math.cos(Math.toRadians(who.angleDegrees())), powers(who.directOctavesDbSpl()),
                    who.reverberantOctavesDbSpl() == null ? new double[Octaves.COUNT] : powers(who.reverberantOctavesDbSpl()));
        }

        /** The cosine of the angle off the axis of a turned microphone. */
        double cosine(double aimDegrees, double aimCosine, double aimSine) {
            return inPlane ? FirstOrder.response(FirstOrder.FIGURE_EIGHT, Scene.foldedDegrees(who.angleDegrees() + aimDegrees))
                    : Math.max(-1, Math.min(1, alongShare * aimCosine + who.acrossShare() * aimSine));
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
        Turn best = straight;
        int step = seated ? WIDE_STEP_DEGREES : STEP_DEGREES;
        for (int turn = step; turn <= mostDegrees; turn += step) {
            best = better(facing, turn, best);
            best = better(facing, -turn, best);
        }
        double about = best.degrees();
        for (int off = STEP_DEGREES; off < step; off += STEP_DEGREES) {
            best = about + off <= mostDegrees ? better(facing, about + off, best) : best;
            best = about - off >= -mostDegrees ? better(facing, about - off, best) : best;
        }
        return best.overBleedDb() - straight.overBleedDb() < WORTH_TURNING_DB ? 0 : best.degrees();
    }

    private record Turn(double degrees, double overBleedDb) {
    }

    private Turn better(Facing facing, double degrees, Turn best) {
        double db = share(facing, degrees).overBleedDb();
        return db > best.overBleedDb() ? new Turn(degrees, db) : best;
    }

    private Share share(PatternData pattern, double aimDegrees) {
        return shares.computeIfAbsent(new Turned(pattern, aimDegrees), turned -> share(new Facing(pattern), aimDegrees));
    }

    private Share share(Facing facing, double aimDegrees) {
        double own = 0;
        for (int band = 0; band < Octaves.COUNT; band++) {
            own += ownPower[band] * Pickup.power(facing.pattern, band, aimDegrees);
        }
        return new Share(db(own), db(facing.turned(aimDegrees).all()));
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
    private static double[] powers(OctaveCurve octavesDb) {
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
