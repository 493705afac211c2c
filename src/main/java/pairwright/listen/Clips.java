package pairwright.listen;

/** Tops that are cut off: several samples alike at the height of the highest, reached and left in a leap, as no rounded top is. */
final class Clips {
    private static final int ALIKE = 3;
    private static final double LEAST_HEIGHT_SHARE = 0.1;
    private static final double LEAP_SHARE = 0.002;
    private static final double SAME_SHARE = 1e-6;

    private final double rateHz;
    private final Run[] runs;
    private double highest;
    private int count;
    private long first = -1;

    /** Where samples of one channel stay. */
    private static final class Run {
        private double value;
        private double before;
        private int length;
    }

    Clips(double rateHz, int channels) {
        this.rateHz = rateHz;
        this.runs = new Run[channels];
        for (int i = 0; i < channels; i++) {
            runs[i] = new Run();
        }
    }

    void add(double[][] channels, int frames, long from) {
        for (int channel = 0; channel < channels.length; channel++) {
            Run run = runs[channel];
            for (int i = 0; i < frames; i++) {
                double value = channels[channel][i];
                if (run.length > 0 && Math.abs(value - run.value) <= SAME_SHARE * Math.abs(run.value)) {
                    run.length++;
                } else {
                    end(run, value, from + i);
                    run.before = run.value;
                    run.value = value;
                    run.length = 1;
                }
            }
        }
    }

    private void end(Run run, double next, long frame) {
        double height = Math.abs(run.value);
        if (height > highest * (1 + SAME_SHARE)) {
            highest = height;
            count = 0;
            first = -1;
        }
        boolean leap = Math.abs(run.value - run.before) + Math.abs(run.value - next) > LEAP_SHARE * height;
        if (run.length >= ALIKE && height >= highest * (1 - SAME_SHARE) && height >= LEAST_HEIGHT_SHARE && leap) {
            count++;
            first = first < 0 ? frame - run.length : first;
        }
    }

    int count() {
        return count;
    }

    /** When it happens first; null for never. */
    Double firstS() {
        return first < 0 ? null : Double.valueOf(first / rateHz);
    }
}
