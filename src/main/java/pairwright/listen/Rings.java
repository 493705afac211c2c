package pairwright.listen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What rings whatever is played. Only the tops of each look are weighed, each against the others about it in the same look: so a note that is played often is
 * not higher for that, and one that is played louder lifts all its harmonics alike, while what rings lifts whichever harmonic comes near it.
 */
final class Rings {
    private static final int PER_OCTAVE = 48;
    private static final double LOWEST_HZ = 80;
    private static final double HIGHEST_HZ = 8000;
    /** A note's first harmonic still has its third within reach. */
    private static final double REACH_OCTAVES = 1.6;
    /** What is weaker than the strongest about it by more is noise between the notes. */
    private static final double AMONG_SHARE = Math.pow(10, -2.5);
    private static final double AMONG_OCTAVES = 0.5;
    private static final int NARROW_BINS = 4;
    private static final double NARROW_SHARE = Math.pow(10, -1.5);
    private static final double NOTES_SHARE = 0.3;
    private static final int LEAST_OTHERS = 2;
    private static final int LEAST_LOOKS = 40;
    /** So many tops make the mean of a place. */
    private static final double LEAST_TOPS = 6;
    private static final double STANDS_OUT_DB = 7;
    /** A place takes its neighbours in, less and less up to two semitones: notes leave gaps. */
    private static final double BLUR_STEPS = 2;
    private static final int BLUR_REACH = 8;
    private static final int SIDE_FROM = 6;
    private static final int SIDE_TO = 24;
    private static final int MOST_TOLD = 5;
    private static final double DRONE_SHARE = 0.85;
    /** Two and a half cents. */
    private static final int EXACT_PER_OCTAVE = 480;
    private static final int DRONE_REACH = 1;

    private final double[] overDb = new double[(int) (PER_OCTAVE * octaves(HIGHEST_HZ, LOWEST_HZ)) + 1];
    private final double[] tops = new double[overDb.length];
    private final int[] exact = new int[(int) (EXACT_PER_OCTAVE * octaves(HIGHEST_HZ, LOWEST_HZ)) + 1];
    private double topsShare;
    private int looks;

    private static double octaves(double hz, double fromHz) {
        return Math.log(hz / fromHz) / Math.log(2);
    }

    /** One look: power by frequency, and the sum of it. */
    void look(double[] power, double binHz, double all) {
        looks++;
        double inTops = 0;
        double[] octave = new double[power.length];
        double[] db = new double[power.length];
        int count = 0;
        for (int bin = Math.max(2, (int) (LOWEST_HZ / binHz)); bin < Math.min(power.length - 1, HIGHEST_HZ / binHz); bin++) {
            if (power[bin] > power[bin - 1] && power[bin] >= power[bin + 1] && narrow(power, bin)) {
                inTops += power[bin - 1] + power[bin] + power[bin + 1];
                double part = Pitch.top(Bands.db(power[bin - 1]), Bands.db(power[bin]), Bands.db(power[bin + 1]));
                octave[count] = octaves((bin + part) * binHz, LOWEST_HZ);
                db[count++] = Bands.db(power[bin]);
            }
        }
        topsShare += inTops / all;
        weigh(octave, db, strong(octave, db, count));
    }

    /** As a harmonic that lasts, and as little of noise is. */
    private static boolean narrow(double[] power, int bin) {
        double most = power[bin] * NARROW_SHARE;
        return power[Math.max(0, bin - NARROW_BINS)] < most && power[Math.min(power.length - 1, bin + NARROW_BINS)] < most;
    }

    /** Whether harmonics make up most of the sound. */
    boolean ofNotes() {
        return topsShare > NOTES_SHARE * looks;
    }

    /** Whether something sounds in nearly every look at one place, far more exactly than anybody plays a note again: what lasts by itself cannot be told from what rings. */
    boolean overADrone() {
        for (int place = DRONE_REACH; place < exact.length - DRONE_REACH; place++) {
            int there = 0;
            for (int near = place - DRONE_REACH; near <= place + DRONE_REACH; near++) {
                there += exact[near];
            }
            if (there > DRONE_SHARE * looks) {
                return true;
            }
        }
        return false;
    }

    /** Moves those that are no noise to the front. */
    private static int strong(double[] octave, double[] db, int count) {
        boolean[] stays = new boolean[count];
        for (int one = 0; one < count; one++) {
            double most = db[one];
            for (int other = one - 1; other >= 0 && octave[one] - octave[other] < AMONG_OCTAVES; other--) {
                most = Math.max(most, db[other]);
            }
            for (int other = one + 1; other < count && octave[other] - octave[one] < AMONG_OCTAVES; other++) {
                most = Math.max(most, db[other]);
            }
            stays[one] = db[one] >= most + Bands.db(AMONG_SHARE);
        }
        int kept = 0;
        for (int one = 0; one < count; one++) {
            if (stays[one]) {
                octave[kept] = octave[one];
                db[kept++] = db[one];
            }
        }
        return kept;
    }

    private void weigh(double[] octave, double[] db, int count) {
        int from = 0;
        int to = 0;
        for (int one = 0; one < count; one++) {
            while (octave[one] - octave[from] > REACH_OCTAVES) {
                from++;
            }
            while (to < count && octave[to] - octave[one] <= REACH_OCTAVES) {
                to++;
            }
            // the middle one of thousands needs no sorting of all: of many every so-manieth will do
            int each = 1 + (to - from) / 60;
            double[] about = new double[(to - from) / each + 1];
            int taken = 0;
            for (int other = from; other < to; other += each) {
                if (other != one) {
                    about[taken++] = db[other];
                }
            }
            int place = (int) Math.round(octave[one] * PER_OCTAVE);
            int exactly = (int) Math.round(octave[one] * EXACT_PER_OCTAVE);
            if (exactly >= 0 && exactly < exact.length) {
                exact[exactly]++;
            }
            if (taken >= LEAST_OTHERS && place >= 0 && place < tops.length) {
                overDb[place] += db[one] - middle(Arrays.copyOf(about, taken));
                tops[place]++;
            }
        }
    }

    private static double middle(double[] values) {
        Arrays.sort(values);
        return (values[(values.length - 1) / 2] + values[values.length / 2]) / 2;
    }

    /** What stands out over both its sides, the most first; over one side alone is where the next harmonic begins. */
    List<Measured.Resonance> found() {
        List<Measured.Resonance> found = new ArrayList<>();
        double[] level = levels();
        for (int place = 1; looks >= LEAST_LOOKS && place < level.length - 1; place++) {
            double sideDb = Math.max(side(level, place, -1), side(level, place, 1));
            if (highest(level, place) && level[place] - sideDb >= STANDS_OUT_DB) {
                found.add(new Measured.Resonance(LOWEST_HZ * Math.pow(2, centre(level, place, sideDb) / PER_OCTAVE), level[place] - sideDb));
            }
        }
        found.sort((one, other) -> Double.compare(other.overDb(), one.overDb()));
        return List.copyOf(found.subList(0, Math.min(MOST_TOLD, found.size())));
    }

    /** Mean of the tops at each place and near it; no number where there are too few. */
    private double[] levels() {
        double[] level = new double[tops.length];
        for (int place = 0; place < level.length; place++) {
            double sum = 0;
            double weight = 0;
            for (int other = Math.max(0, place - BLUR_REACH); other <= Math.min(level.length - 1, place + BLUR_REACH); other++) {
                double counts = Math.exp(-0.5 * Math.pow((other - place) / BLUR_STEPS, 2));
                sum += counts * overDb[other];
                weight += counts * tops[other];
            }
            level[place] = weight < LEAST_TOPS ? Double.NaN : sum / weight;
        }
        return level;
    }

    private static boolean highest(double[] level, int place) {
        for (int other = Math.max(0, place - SIDE_FROM); other <= Math.min(level.length - 1, place + SIDE_FROM); other++) {
            if (level[other] > level[place] || other < place && level[other] == level[place]) {
                return false;
            }
        }
        return !Double.isNaN(level[place]);
    }

    /** Notes lie a semitone apart, so that the highest place is that of a note: what rings lies in the middle of all that is lifted. */
    private static double centre(double[] level, int place, double sideDb) {
        double sum = 0;
        double weight = 0;
        for (int other = Math.max(0, place - SIDE_FROM); other <= Math.min(level.length - 1, place + SIDE_FROM); other++) {
            double lifted = Double.isNaN(level[other]) ? 0 : Math.max(0, level[other] - (level[place] + sideDb) / 2);
            sum += lifted * other;
            weight += lifted;
        }
        return sum / weight;
    }

    /** No number, and so nothing stands out, where a side is not known. */
    private static double side(double[] level, int place, int way) {
        double[] known = new double[SIDE_TO];
        int count = 0;
        for (int step = SIDE_FROM; step <= SIDE_TO; step++) {
            int other = place + way * step;
            if (other >= 0 && other < level.length && !Double.isNaN(level[other])) {
                known[count++] = level[other];
            }
        }
        return count < SIDE_FROM ? Double.NaN : middle(Arrays.copyOf(known, count));
    }
}
