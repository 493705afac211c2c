package pairwright.listen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The power of a recording by frequency, all of it together; and what stands out of it whatever is played. For both channels at once. */
final class LongSpectrum {
    /** What is softer than the loudest stretch by more says nothing of a resonance. */
    private static final double HEARD_SHARE = 1e-3;
    private static final int PER_OCTAVE = 24;
    private static final double LOWEST_HZ = 80;
    private static final double HIGHEST_HZ = 8000;
    private static final double STANDS_OUT_DB = 7;
    private static final int LEAST_STRETCHES = 40;
    private static final int MOST_TOLD = 5;

    private final double binHz;
    private final Fourier fourier;
    private final int hop;
    private final double[] first;
    private final double[] second;
    private final double[] power;
    private final double[] edgesHz;
    /** Sums of levels, band by band; a band that is loud now and then counts little here. */
    private final double[] levels;
    private final Rings rings = new Rings();
    private double loudest;
    private int told;
    private int filled;

    /**
     * Of a recording.
     *
     * @param seconds how long about; of a long one every stretch is looked at once, of a short one twice
     */
    LongSpectrum(double rateHz, double seconds) {
        int size = rateHz > 100_000 ? 1 << 15 : rateHz > 50_000 ? 1 << 14 : 1 << 13;
        this.binHz = rateHz / size;
        this.fourier = Fourier.faded(size, size);
        this.hop = seconds > 600 ? size : size / 2;
        this.first = new double[size];
        this.second = new double[size];
        this.power = new double[size / 2 + 1];
        this.edgesHz = new double[(int) (PER_OCTAVE * Math.log(HIGHEST_HZ / LOWEST_HZ) / Math.log(2)) + 1];
        Arrays.setAll(edgesHz, i -> LOWEST_HZ * Math.pow(2, (i - 0.5) / PER_OCTAVE));
        this.levels = new double[edgesHz.length - 1];
    }

    void add(double[][] channels, int frames) {
        double[] other = channels[channels.length - 1];
        for (int from = 0; from < frames;) {
            int count = Math.min(frames - from, first.length - filled);
            System.arraycopy(channels[0], from, first, filled, count);
            System.arraycopy(other, from, second, filled, count);
            filled += count;
            from += count;
            if (filled == first.length) {
                look(channels.length);
                System.arraycopy(first, hop, first, 0, first.length - hop);
                System.arraycopy(second, hop, second, 0, second.length - hop);
                filled -= hop;
            }
        }
    }

    private void look(int channels) {
        fourier.of(first, 0, second, 0, first.length);
        double[] now = new double[power.length];
        double all = 0;
        for (int bin = 0; bin < now.length; bin++) {
            double one = fourier.firstRe[bin] * fourier.firstRe[bin] + fourier.firstIm[bin] * fourier.firstIm[bin];
            double two = channels == 1 ? one : fourier.secondRe[bin] * fourier.secondRe[bin] + fourier.secondIm[bin] * fourier.secondIm[bin];
            now[bin] = (one + two) / 2;
            power[bin] += now[bin];
            all += now[bin];
        }
        loudest = Math.max(loudest, all);
        if (all > HEARD_SHARE * loudest && all > 0) {
            told++;
            rings.look(now, binHz, all);
            for (int band = 0; band < levels.length; band++) {
                levels[band] += Bands.db(Bands.between(now, binHz, edgesHz[band], edgesHz[band + 1]) / all);
            }
        }
    }

    /** Octave by octave, as shares of all the power between the lowest and the highest. */
    double[] octaveShares() {
        double[] octaves = Bands.sums(power, binHz);
        double all = Arrays.stream(octaves).sum();
        return Arrays.stream(octaves).map(octave -> all <= 0 ? 0 : octave / all).toArray();
    }

    /** What stands out whatever is played, the most first: of notes by their harmonics, of noise by the mean of all levels. */
    List<Measured.Resonance> resonances() {
        return rings.ofNotes() ? rings.found() : overTheMean();
    }

    /** Whether something sounds on under what is played. */
    boolean overADrone() {
        return rings.ofNotes() && rings.overADrone();
    }

    /** Over half an octave to either side. */
    List<Measured.Resonance> overTheMean() {
        List<Measured.Resonance> found = new ArrayList<>();
        if (told < LEAST_STRETCHES) {
            return found;
        }
        int reach = PER_OCTAVE / 2;
        for (int band = 1; band < levels.length - 1; band++) {
            if (levels[band] < levels[band - 1] || levels[band] <= levels[band + 1]) {
                continue;
            }
            double[] about = Arrays.copyOfRange(levels, Math.max(0, band - reach), Math.min(levels.length, band + reach + 1));
            Arrays.sort(about);
            double overDb = (levels[band] - about[about.length / 2]) / told;
            if (overDb >= STANDS_OUT_DB) {
                found.add(new Measured.Resonance(Math.sqrt(edgesHz[band] * edgesHz[band + 1]), overDb));
            }
        }
        found.sort((one, other) -> Double.compare(other.overDb(), one.overDb()));
        return List.copyOf(found.subList(0, Math.min(MOST_TOLD, found.size())));
    }
}
