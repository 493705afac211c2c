package pairwright.listen;

import java.util.Arrays;

/** Level and peak of every eighth of a second, all channels together; some kilobytes a minute are all that is kept of a recording. */
final class Loudness {
    static final double WINDOW_S = 0.125;
    /** Who plays is heard within so much of the loudest; what is softer is a rest, or the room. */
    private static final double PLAYING_DB = 30;
    private static final double OVER_NOISE_DB = 8;
    /** A note and what rings after it. */
    private static final int NOTE_WINDOWS = 16;

    private final int windowFrames;
    private float[] meanSquares = new float[1024];
    private float[] peaks = new float[1024];
    private int count;
    private double sum;
    private double peak;
    private int filled;

    Loudness(double rateHz) {
        this.windowFrames = (int) Math.round(rateHz * WINDOW_S);
    }

    void add(double[][] channels, int frames) {
        for (int i = 0; i < frames; i++) {
            double square = 0;
            for (double[] channel : channels) {
                double value = channel[i];
                square += value * value;
                peak = Math.max(peak, Math.abs(value));
            }
            sum += square / channels.length;
            if (++filled == windowFrames) {
                keep();
            }
        }
    }

    private void keep() {
        if (count == meanSquares.length) {
            meanSquares = Arrays.copyOf(meanSquares, 2 * count);
            peaks = Arrays.copyOf(peaks, 2 * count);
        }
        meanSquares[count] = (float) (sum / windowFrames);
        peaks[count++] = (float) peak;
        sum = 0;
        peak = 0;
        filled = 0;
    }

    int windows() {
        return count;
    }

    /** Of a mean square, against a sine of full scale. */
    static double dbfs(double meanSquare) {
        return Bands.db(2 * meanSquare);
    }

    double peakDbfs() {
        double most = peak;
        for (int i = 0; i < count; i++) {
            most = Math.max(most, peaks[i]);
        }
        return Bands.db(most * most);
    }

    /** The level that a share of all windows stays under. */
    double percentileDbfs(double share) {
        float[] sorted = Arrays.copyOf(meanSquares, count);
        Arrays.sort(sorted);
        return dbfs(sorted[(int) Math.round(share * (count - 1))]);
    }

    /** Of the softest windows; null where it is always playing, so that nobody can tell. */
    Double noiseDbfs() {
        double softest = percentileDbfs(0.02);
        return percentileDbfs(0.95) - softest < PLAYING_DB - OVER_NOISE_DB ? null : Double.valueOf(softest);
    }

    private double gate() {
        double loud = percentileDbfs(0.95);
        Double noise = noiseDbfs();
        double gateDbfs = Math.max(loud - PLAYING_DB, noise == null ? Double.NEGATIVE_INFINITY : Math.min(noise + OVER_NOISE_DB, loud - 3));
        return Math.pow(10, gateDbfs / 10) / 2;
    }

    /** How much of the recording somebody plays. */
    double playingShare() {
        return (double) playing() / count;
    }

    private int playing() {
        double gate = gate();
        int playing = 0;
        for (int i = 0; i < count; i++) {
            playing += meanSquares[i] >= gate ? 1 : 0;
        }
        return playing;
    }

    /** While somebody plays. */
    double runningDbfs() {
        double gate = gate();
        double all = 0;
        for (int i = 0; i < count; i++) {
            all += meanSquares[i] >= gate ? meanSquares[i] : 0;
        }
        return dbfs(all / Math.max(1, playing()));
    }

    /** Peak over the loudest eighth of a second, note by note, the middle one of all. */
    double crestDb() {
        double gate = gate();
        double[] crests = new double[count / NOTE_WINDOWS + 1];
        int found = 0;
        for (int from = 0; from < count; from += NOTE_WINDOWS) {
            double loudest = 0;
            double highest = 0;
            for (int i = from; i < Math.min(count, from + NOTE_WINDOWS); i++) {
                loudest = Math.max(loudest, meanSquares[i]);
                highest = Math.max(highest, peaks[i]);
            }
            if (loudest >= gate && loudest > 0) {
                crests[found++] = Bands.db(highest * highest) - Bands.db(loudest);
            }
        }
        double[] all = Arrays.copyOf(crests, found);
        Arrays.sort(all);
        return found == 0 ? 0 : all[found / 2];
    }

    /**
     * A stretch of some seconds that is as loud as a share of all such stretches while somebody plays.
     *
     * @return where it starts, seconds, and its level; null where the recording is shorter
     */
    Measured.Passage passage(double share, double stretchS) {
        int length = (int) Math.round(stretchS / WINDOW_S);
        int stretches = count / length;
        double gate = gate();
        double[] levels = new double[stretches];
        int found = 0;
        for (int stretch = 0; stretch < stretches; stretch++) {
            double mean = mean(stretch * length, length);
            if (mean >= gate) {
                levels[found++] = mean;
            }
        }
        if (found == 0) {
            return null;
        }
        double[] sorted = Arrays.copyOf(levels, found);
        Arrays.sort(sorted);
        double wanted = sorted[(int) Math.round(share * (found - 1))];
        for (int stretch = 0; stretch < stretches; stretch++) {
            if (mean(stretch * length, length) == wanted) {
                return new Measured.Passage(stretch * length * WINDOW_S, stretchS, dbfs(wanted));
            }
        }
        throw new IllegalStateException("a stretch that was measured is gone");
    }

    private double mean(int from, int length) {
        double all = 0;
        for (int i = from; i < from + length; i++) {
            all += meanSquares[i];
        }
        return all / length;
    }
}
