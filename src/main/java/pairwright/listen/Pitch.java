package pairwright.listen;

import java.util.Arrays;

/**
 * The fundamentals that are played, by the shift after which a stretch is most like itself. A look at every third of a second; what is no clear note is
 * left aside.
 */
final class Pitch {
    static final double LEAST_HZ = 30;
    static final double MOST_HZ = 4200;
    private static final int WINDOW = 4096;
    private static final double LOOK_EACH_S = 0.33;
    /** So like itself is a note of one voice. */
    private static final double CLEAR = 0.9;
    /** The first of several shifts that are nearly as good is the period, the others are its multiples. */
    private static final double NEARLY = 0.93;
    private static final int PER_OCTAVE = 24;
    private static final int LEAST_LOOKS = 12;
    private static final double LEAST_SHARE_OF_LOOKS = 0.25;
    private static final double LEAST_SHARE_OF_NOTES = 0.05;

    private final int step;
    private final double rateHz;
    private final int pauseFrames;
    private final double[][] windows;
    private final double[] nothing = new double[WINDOW];
    private final Fourier fourier = Fourier.plain(2 * WINDOW);
    private final int[] histogram = new int[(int) (PER_OCTAVE * (Math.log(MOST_HZ / LEAST_HZ) / Math.log(2))) + 2];
    private final double[] parts;
    private int gathered;
    private int filled;
    private int pause;
    private double loudest;
    private int looks;
    private int clear;

    /** @param rateHz of the recording; half of it or a quarter is enough here */
    Pitch(double rateHz, int channels) {
        this.windows = new double[channels][WINDOW];
        this.parts = new double[channels];
        this.step = (int) Math.max(1, Math.round(rateHz / 24_000));
        this.rateHz = rateHz / step;
        this.pauseFrames = Math.max(0, (int) (LOOK_EACH_S * this.rateHz) - WINDOW);
    }

    /** The mean of some samples stands for them: that is filter enough below a few kilohertz. */
    void add(double[][] channels, int frames) {
        for (int i = 0; i < frames; i++) {
            for (int channel = 0; channel < parts.length; channel++) {
                parts[channel] += channels[channel][i];
            }
            if (++gathered == step) {
                take();
                Arrays.fill(parts, 0);
                gathered = 0;
            }
        }
    }

    private void take() {
        if (pause > 0) {
            pause--;
            return;
        }
        for (int channel = 0; channel < parts.length; channel++) {
            windows[channel][filled] = parts[channel] / step;
        }
        filled++;
        if (filled == WINDOW) {
            filled = 0;
            pause = pauseFrames;
            look();
        }
    }

    /** In the louder channel: a sum would lose what is the other way up in one of them. */
    private void look() {
        double[] window = windows[0];
        double energy = 0;
        for (double[] one : windows) {
            double has = Arrays.stream(one).map(value -> value * value).sum();
            window = has > energy ? one : window;
            energy = Math.max(energy, has);
        }
        loudest = Math.max(loudest, energy);
        if (energy <= loudest * 1e-3) {
            return;
        }
        looks++;
        double periodFrames = period(window);
        double hz = rateHz / periodFrames;
        if (periodFrames > 0 && hz >= LEAST_HZ && hz <= MOST_HZ) {
            clear++;
            histogram[(int) Math.round(PER_OCTAVE * Math.log(hz / LEAST_HZ) / Math.log(2))]++;
        }
    }

    /** 0 for none. The measure is twice the product of the two stretches over the sum of their squares, 1 for equal ones. */
    private double period(double[] window) {
        fourier.of(window, 0, nothing, 0, WINDOW);
        double[] power = new double[WINDOW + 1];
        for (int bin = 0; bin < power.length; bin++) {
            power[bin] = fourier.firstRe[bin] * fourier.firstRe[bin] + fourier.firstIm[bin] * fourier.firstIm[bin];
        }
        double[] product = Fourier.back(power, new double[power.length]);
        int longest = Math.min(WINDOW / 2, (int) Math.ceil(rateHz / LEAST_HZ) + 1);
        double[] like = new double[longest + 1];
        double squares = 2 * product[0];
        for (int shift = 0; shift <= longest; shift++) {
            like[shift] = squares <= 0 ? 0 : 2 * product[shift] / squares;
            squares -= window[shift] * window[shift] + window[WINDOW - 1 - shift] * window[WINDOW - 1 - shift];
        }
        int from = 1;
        while (from <= longest && like[from] > 0) {
            from++;
        }
        double best = 0;
        for (int shift = from; shift < longest; shift++) {
            best = like[shift] >= like[shift - 1] && like[shift] >= like[shift + 1] ? Math.max(best, like[shift]) : best;
        }
        for (int shift = from; best >= CLEAR && shift < longest; shift++) {
            if (like[shift] >= NEARLY * best && like[shift] >= like[shift - 1] && like[shift] >= like[shift + 1]) {
                return shift + top(like[shift - 1], like[shift], like[shift + 1]);
            }
        }
        return 0;
    }

    /** Where a parabola through three points is highest, from the middle one. */
    static double top(double before, double at, double after) {
        double bend = before - 2 * at + after;
        return bend == 0 ? 0 : Math.max(-0.5, Math.min(0.5, (before - after) / 2 / bend));
    }

    /** The range that nine tenths of all notes lie in; null where hardly any was clear. */
    Measured.Fundamentals fundamentals() {
        if (clear < LEAST_LOOKS || clear < LEAST_SHARE_OF_LOOKS * looks) {
            return null;
        }
        return new Measured.Fundamentals(percentile(0.05), percentile(0.5), percentile(0.95), (double) clear / looks);
    }

    /** How many different semitones were played more than by the way. */
    int differentNotes() {
        int notes = 0;
        int last = -PER_OCTAVE;
        for (int bin = 0; bin < histogram.length; bin++) {
            if (histogram[bin] >= Math.max(2, LEAST_SHARE_OF_NOTES * clear) && bin - last >= PER_OCTAVE / 12) {
                notes++;
                last = bin;
            }
        }
        return notes;
    }

    private double percentile(double share) {
        int wanted = (int) Math.round(share * (Arrays.stream(histogram).sum() - 1));
        int bin = 0;
        for (int seen = histogram[0]; seen <= wanted; seen += histogram[++bin]) {
            // further
        }
        return LEAST_HZ * Math.pow(2, (double) bin / PER_OCTAVE);
    }
}
