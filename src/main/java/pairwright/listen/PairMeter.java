package pairwright.listen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleConsumer;
import pairwright.acoustics.Delay;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.acoustics.Weighting;

/** Measures how two tracks of one performance fit together. */
public final class PairMeter {
    /** So much later or earlier is looked for: 17 m of air. */
    static final double MOST_LATER_S = 0.05;
    /** Only where it fits better by so much than the contrary is a polarity told. */
    static final double SURE_DB = 10;
    private static final double LEAST_S = 0.5;
    private static final double SILENT = 1e-8;
    /** More of them make nothing surer. */
    private static final int MOST_WINDOWS = 1500;
    private static final int PER_OCTAVE = 24;
    private static final double LOWEST_HZ = 50;
    private static final double HIGHEST_HZ = 16_000;
    private static final double LEAST_DB = -90;

    private PairMeter() {
    }

    /**
     * Reads both from one end to the other, twice.
     *
     * @param progress is told which share is done
     * @throws UnusableRecording where they cannot be laid over one another, are too short, or one is silent
     */
    public static PairHeard measure(Track first, Track second, DoubleConsumer progress) {
        double rateHz = first.recording().rateHz();
        if (rateHz != second.recording().rateHz()) {
            throw new UnusableRecording(second.name(), String.format(Locale.ROOT, "It has %.0f samples a second, %s has %.0f. Export both at the same rate", second.recording().rateHz(), first.name(), rateHz));
        }
        TwoTracks both = new TwoTracks(first, second);
        Alignment alignment = new Alignment(rateHz);
        long promised = Math.min(first.recording().promisedFrames(), second.recording().promisedFrames());
        long every = Math.max(1, promised / Alignment.WINDOW / MOST_WINDOWS);
        double[] squares = new double[2];
        long some = both.read(0, Alignment.WINDOW, every, (one, two, count) -> {
            for (int i = 0; i < count; i++) {
                squares[0] += one[i] * one[i];
                squares[1] += two[i] * two[i];
            }
            alignment.add(one, two, count);
        }, share -> progress.accept(share / 2));
        check(first, second, some, squares, rateHz);
        Alignment.Found found = alignment.found((int) Math.round(MOST_LATER_S * rateHz));
        CrossSpectrum spectrum = new CrossSpectrum(rateHz, promised / rateHz);
        long frames = both.read(found.laterFrames(), Alignment.WINDOW, 1, spectrum::add, share -> progress.accept(0.5 + share / 2)) + Math.abs(found.laterFrames());
        return heard(first, second, frames / rateHz, rateHz, found, spectrum);
    }

    private static void check(Track first, Track second, long frames, double[] squares, double rateHz) {
        if (frames < LEAST_S * rateHz) {
            throw new UnusableRecording(frames < first.recording().promisedFrames() ? second.name() : first.name(),
                    String.format(Locale.ROOT, "Both together last %.2f s. Give two tracks of the same half second at least, better of 10 s of playing", frames / rateHz));
        }
        for (int i = 0; i < 2; i++) {
            if (squares[i] / frames < SILENT / 2) {
                throw new UnusableRecording((i == 0 ? first : second).name(), "It is silent as long as both last. Look whether the right track was exported, and that it was not muted");
            }
        }
    }

    private static PairHeard heard(Track first, Track second, double durationS, double rateHz, Alignment.Found found, CrossSpectrum spectrum) {
        double restFrames = spectrum.restFrames(found.inverted());
        double laterFrames = found.laterFrames() + restFrames;
        double[] apart = Bands.sums(spectrum.apart(), spectrum.binHz());
        double[] one = Bands.sums(spectrum.one(), spectrum.binHz());
        double[] two = Bands.sums(spectrum.two(), spectrum.binHz());
        double[] common = Bands.sums(spectrum.common(), spectrum.binHz());
        double[] straight = spectrum.sum(found.laterFrames(), 1);
        double[] flipped = spectrum.sum(found.laterFrames(), -1);
        double[] aligned = spectrum.sum(-restFrames, found.inverted() ? -1 : 1);
        double[] coherence = new double[Octaves.COUNT];
        double[] difference = new double[Octaves.COUNT];
        for (int band = 0; band < Octaves.COUNT; band++) {
            coherence[band] = apart[band] <= 0 ? 0 : Math.min(1, 2 * common[band] / apart[band]);
            difference[band] = ratioDb(two[band], one[band]);
        }
        double oneAll = Arrays.stream(one).sum();
        double twoAll = Arrays.stream(two).sum();
        double[] product = Bands.sums(spectrum.product(found.laterFrames()), spectrum.binHz());
        double[] correlation = new double[Octaves.COUNT];
        Arrays.setAll(correlation, band -> correlation(product[band], one[band], two[band]));
        double laterMs = laterFrames / rateHz * 1000;
        return new PairHeard(first.name(), second.name(), first.recording() == second.recording(), durationS, rateHz, laterFrames, laterMs, laterMs / 1000 * Delay.SPEED_OF_SOUND_M_PER_S,
                found.rivalFrames() == null ? null : Double.valueOf(found.rivalFrames()), found.marginDb() >= SURE_DB ? Boolean.valueOf(found.inverted()) : null, found.marginDb(), 2 * Arrays.stream(common).sum() / Arrays.stream(apart).sum(),
                OctaveCurve.of(coherence), ratioDb(twoAll, oneAll), OctaveCurve.of(difference), over(straight, apart, spectrum), over(flipped, apart, spectrum),
                over(aligned, apart, spectrum), gainDb(aligned, straight, spectrum), Holes.of(straight, spectrum),
                correlation(Arrays.stream(product).sum(), oneAll, twoAll), OctaveCurve.of(correlation), curve(straight, flipped, spectrum));
    }

    private static OctaveCurve over(double[] sum, double[] apart, CrossSpectrum spectrum) {
        double[] sums = Bands.sums(sum, spectrum.binHz());
        double[] over = new double[sums.length];
        for (int band = 0; band < over.length; band++) {
            over[band] = ratioDb(sums[band], apart[band]);
        }
        return OctaveCurve.of(over);
    }

    private static double correlation(double product, double one, double two) {
        return one <= 0 || two <= 0 ? 0 : Math.max(-1, Math.min(1, product / Math.sqrt(one * two)));
    }

    private static double gainDb(double[] aligned, double[] straight, CrossSpectrum spectrum) {
        return ratioDb(weighted(Bands.sums(aligned, spectrum.binHz())), weighted(Bands.sums(straight, spectrum.binHz())));
    }

    private static double weighted(double[] octaves) {
        double sum = 0;
        for (int band = 0; band < octaves.length; band++) {
            sum += octaves[band] * Math.pow(10, Weighting.octaveWeightingDb().at(band) / 10);
        }
        return sum;
    }

    /** 0 where there is nothing to compare with. */
    static double ratioDb(double power, double reference) {
        return reference <= 0 ? 0 : Math.max(LEAST_DB, Math.min(-LEAST_DB, Bands.db(power / reference)));
    }

    private static List<PairHeard.Point> curve(double[] straight, double[] flipped, CrossSpectrum spectrum) {
        int points = (int) (PER_OCTAVE * Math.log(HIGHEST_HZ / LOWEST_HZ) / Math.log(2));
        double[][] levels = new double[4][points];
        double loudest = 0;
        double[][] spectra = {spectrum.one(), spectrum.two(), straight, flipped};
        double half = Math.pow(2, 0.5 / PER_OCTAVE);
        for (int point = 0; point < points; point++) {
            double hz = frequencyHz(point);
            double reach = Math.max(hz * (half - 1), spectrum.binHz() / 2);
            for (int of = 0; of < spectra.length; of++) {
                // by width, so that a flat sound gives a line that rises with the octaves as bands do
                levels[of][point] = Bands.between(spectra[of], spectrum.binHz(), hz - reach, hz + reach) / (2 * reach) * hz;
                loudest = of < 2 ? Math.max(loudest, levels[of][point]) : loudest;
            }
        }
        List<PairHeard.Point> curve = new ArrayList<>();
        for (int point = 0; point < points; point++) {
            curve.add(new PairHeard.Point(frequencyHz(point), ratioDb(levels[0][point], loudest), ratioDb(levels[1][point], loudest), ratioDb(levels[2][point], loudest),
                    ratioDb(levels[3][point], loudest)));
        }
        return curve;
    }

    private static double frequencyHz(int point) {
        return LOWEST_HZ * Math.pow(2, (double) point / PER_OCTAVE);
    }
}
