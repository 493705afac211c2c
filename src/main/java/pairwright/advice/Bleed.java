package pairwright.advice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
    /** A turn that gains less than this is not worth telling anybody. */
    private static final double WORTH_TURNING_DB = 1;

    /** Octave levels of the source against its overall level, as powers, A-weighted. */
    private final double[] ownPower;
    private final List<Arriving> neighbours;
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
    }

    Bleed(Scene scene) {
        this.ownPower = powers(Scene.octavesDbSpl(0, scene.spectrumDb()));
        this.neighbours = scene.beside().stream().map(beside -> new Arriving(beside, powers(beside.directOctavesDbSpl()),
                beside.reverberantOctavesDbSpl() == null ? new double[Octaves.COUNT] : powers(beside.reverberantOctavesDbSpl()))).toList();
    }

    /** A neighbour as powers, A-weighted: what comes straight and what the room adds, 0 in the open air. */
    private record Arriving(Scene.Beside beside, double[] straight, double[] viaRoom) {
        double power(PatternData pattern, int band, double aimDegrees) {
            return straight[band] * Pickup.power(pattern, band, beside.angleDegrees() + aimDegrees) + roomPower(pattern, band);
        }

        double roomPower(PatternData pattern, int band) {
            return viaRoom[band] * Pickup.diffusePower(pattern, band);
        }
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
            double fromFront = 0;
            double bleed = 0;
            for (int band = 0; band < Octaves.COUNT; band++) {
                for (Arriving neighbour : neighbours) {
                    fromFront += neighbour.straight()[band] + neighbour.roomPower(pattern, band);
                    bleed += neighbour.power(pattern, band, aimDegrees);
                }
            }
            return db(fromFront) - db(bleed);
        });
    }

    /** The turn that keeps most of the source over the neighbours, within limits either way; null where standing straight is as good. */
    Double bestTurnDegrees(PatternData pattern, double mostDegrees) {
        Double best = bestTurns.computeIfAbsent(new Turned(pattern, mostDegrees), limits -> findTurn(pattern, mostDegrees));
        return best == 0 ? null : best;
    }

    private double findTurn(PatternData pattern, double mostDegrees) {
        double straightDb = overBleedDb(pattern, 0);
        double bestDb = straightDb;
        double best = 0;
        for (int turn = STEP_DEGREES; turn <= mostDegrees; turn += STEP_DEGREES) {
            for (int degrees : new int[] {turn, -turn}) {
                double db = overBleedDb(pattern, degrees);
                if (db > bestDb) {
                    bestDb = db;
                    best = degrees;
                }
            }
        }
        return bestDb - straightDb < WORTH_TURNING_DB ? 0 : best;
    }

    private double overBleedDb(PatternData pattern, double aimDegrees) {
        Share share = compute(pattern, aimDegrees);
        return share.ownDb() - share.bleedDbSpl();
    }

    private Share share(PatternData pattern, double aimDegrees) {
        return shares.computeIfAbsent(new Turned(pattern, aimDegrees), turned -> compute(pattern, aimDegrees));
    }

    private Share compute(PatternData pattern, double aimDegrees) {
        double own = 0;
        double bleed = 0;
        for (int band = 0; band < Octaves.COUNT; band++) {
            own += ownPower[band] * Pickup.power(pattern, band, aimDegrees);
            for (Arriving neighbour : neighbours) {
                bleed += neighbour.power(pattern, band, aimDegrees);
            }
        }
        return new Share(db(own), db(bleed));
    }

    /** Neighbour by neighbour, for the few placements that are shown. */
    List<Heard> heard(PatternData pattern, double aimDegrees, double atCapsuleDbSpl) {
        List<Heard> heard = new ArrayList<>();
        for (Arriving arriving : neighbours) {
            double[] octaves = new double[Octaves.COUNT];
            double own = 0;
            double all = 0;
            double room = 0;
            double loudest = 0;
            int loudestBand = 0;
            for (int band = 0; band < Octaves.COUNT; band++) {
                double source = ownPower[band] * Pickup.power(pattern, band, aimDegrees);
                double neighbour = arriving.power(pattern, band, aimDegrees);
                octaves[band] = atCapsuleDbSpl + db(source) - db(neighbour);
                own += source;
                all += neighbour;
                room += arriving.roomPower(pattern, band);
                if (neighbour > loudest) {
                    loudest = neighbour;
                    loudestBand = band;
                }
            }
            Source neighbour = arriving.beside().source();
            heard.add(new Heard(neighbour.id(), neighbour.name(), atCapsuleDbSpl + db(own) - db(all), OctaveCurve.of(octaves),
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
