package pairwright.listen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleConsumer;
import java.util.stream.Stream;
import pairwright.acoustics.Level;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.acoustics.Weighting;
import pairwright.model.Attack;

/** Measures what a recording shows of a source. */
public final class SourceMeter {
    private static final int BLOCK_FRAMES = 1 << 16;
    private static final double LEAST_S = 2;
    private static final double RATHER_S = 20;
    private static final double SILENT_DBFS = -80;
    private static final double SOFT_DBFS = -50;
    private static final double LEAST_OVER_NOISE_DB = 25;
    private static final double PASSAGE_S = 4;
    /** So many different notes must be played, lest one that several share as a harmonic be taken for a resonance. */
    static final int LEAST_NOTES = 8;
    /** Nothing is weaker: below is the noise of the recording. */
    private static final double LEAST_OCTAVE_DB = -80;

    private SourceMeter() {
    }

    /**
     * Reads a recording from one end to the other.
     *
     * @param reading of a sound level meter; null for none
     * @param centreOffsetM how far behind its surface the source seems to start, as the catalogue has it; 0 for not known
     * @param progress is told which share is done
     * @throws UnusableRecording where it breaks off at once, is silent, is too short, or holds what is no number
     */
    public static Measured measure(Recording recording, MeterReading reading, double centreOffsetM, DoubleConsumer progress) {
        double rateHz = recording.rateHz();
        double promisedS = recording.promisedFrames() / rateHz;
        Loudness loudness = new Loudness(rateHz);
        LongSpectrum spectrum = new LongSpectrum(rateHz, promisedS);
        Onsets onsets = new Onsets(rateHz);
        Pitch pitch = new Pitch(rateHz, recording.channels());
        Clips clips = new Clips(rateHz, recording.channels());
        double[][] block = new double[recording.channels()][BLOCK_FRAMES];
        long done = 0;
        try (Frames frames = recording.frames()) {
            for (int read = frames.read(block); read > 0; read = frames.read(block)) {
                int count = read;
                long from = done;
                // each has all it keeps for itself; the two that take longest are in different halves
                Stream.<Runnable>of(() -> spectrum.add(block, count), () -> loudness.add(block, count), () -> pitch.add(block, count), () -> onsets.add(block, count),
                        () -> clips.add(block, count, from)).parallel().forEach(Runnable::run);
                done += read;
                progress.accept(recording.promisedFrames() > 0 ? Math.min(1, (double) done / recording.promisedFrames()) : 0);
            }
        }
        check(recording, done, loudness);
        return measured(recording, done, loudness, spectrum, onsets, pitch, clips, reading, centreOffsetM);
    }

    private static void check(Recording recording, long done, Loudness loudness) {
        double lengthS = done / recording.rateHz();
        if (lengthS < LEAST_S || loudness.windows() == 0) {
            throw new UnusableRecording(recording.name(), "It is " + (done < recording.rateHz() / 10 ? done + (done == 1 ? " sample" : " samples") : String.format(Locale.ROOT, "%.1f s", lengthS))
                    + " long" + (done < recording.promisedFrames() ? ", though its head promises " + Clock.of(recording.promisedFrames(), recording.rateHz()) : "")
                    + ". Give 2 s of playing at least, better 20 s");
        }
        if (loudness.peakDbfs() < SILENT_DBFS) {
            throw new UnusableRecording(recording.name(), "It is silent: nothing in it comes above -80 dBFS. Look whether the right track was exported, and that it was not muted".replace('-', '\u2212'));
        }
    }

    private static Measured measured(Recording recording, long done, Loudness loudness, LongSpectrum spectrum, Onsets onsets, Pitch pitch, Clips clips, MeterReading reading,
            double centreOffsetM) {
        double runningDbfs = loudness.runningDbfs();
        double[] shares = spectrum.octaveShares();
        double[] octavesDb = new double[Octaves.COUNT];
        for (int band = 0; band < octavesDb.length; band++) {
            octavesDb[band] = Bands.db(shares[band]);
        }
        OctaveCurve octaves = OctaveCurve.of(octavesDb);
        OctaveCurve relative = octaves.relativeToBand(octaves.highestBand()).map(db -> Math.max(LEAST_OCTAVE_DB, db));
        Double riseMs = onsets.riseMs();
        Measured.Fundamentals fundamentals = pitch.fundamentals();
        return new Measured(recording.name(), done / recording.rateHz(), recording.rateHz(), recording.channels(), recording.bits(), runningDbfs, loudness.peakDbfs(),
                loudness.playingShare(), relative, loudness.crestDb(), loudness.peakDbfs() + SINE_CREST_DB - runningDbfs, riseMs,
                riseMs == null ? null : attack(riseMs), onsets.count(), loudness.noiseDbfs(), fundamentals, spectrum.resonances(),
                (fundamentals == null || pitch.differentNotes() >= LEAST_NOTES) && !spectrum.overADrone(),
                loudness.passage(1, PASSAGE_S), loudness.passage(0, PASSAGE_S), clips.count(),
                reading == null ? null : calibrated(reading, octaves, runningDbfs, loudness.peakDbfs(), centreOffsetM), flaws(recording, done, loudness, clips));
    }

    /** A sine of full scale reads 0 dBFS, and its peak is 3 dB above that. */
    private static final double SINE_CREST_DB = 10 * Math.log10(2);

    /** The meter shows what the recording holds, weighted; from that follows what full scale is worth. */
    private static Measured.Calibrated calibrated(MeterReading reading, OctaveCurve octaveSharesDb, double runningDbfs, double peakDbfs, double centreOffsetM) {
        double weightedDb = reading.weighting() == MeterReading.Weighting.Z ? 0 : Level.sumIncoherentDb(octaveSharesDb.plus(Weighting.octaveWeightingDb()).toArray());
        double thereDbSpl = reading.averageDb() - weightedDb;
        double nearerDb = Level.withCentreOffsetDbSpl(0, reading.distanceM(), centreOffsetM);
        double atOneMetreDbSpl = thereDbSpl - nearerDb;
        return new Measured.Calibrated(reading, atOneMetreDbSpl, atOneMetreDbSpl + peakDbfs + SINE_CREST_DB - runningDbfs);
    }

    private static Attack attack(double riseMs) {
        return riseMs > 100 ? Attack.SLOW : riseMs > 20 ? Attack.MEDIUM : riseMs >= 3 ? Attack.FAST : Attack.IMPULSIVE;
    }

    private static List<Measured.Flaw> flaws(Recording recording, long done, Loudness loudness, Clips clips) {
        List<Measured.Flaw> flaws = new ArrayList<>();
        if (done < recording.promisedFrames()) {
            flaws.add(new Measured.Flaw("It breaks off at " + Clock.of(done, recording.rateHz()) + ", though its head promises " + Clock.of(recording.promisedFrames(), recording.rateHz())
                    + ". What there is was measured; copy it again to have all of it", false));
        }
        if (clips.count() > 0) {
            flaws.add(new Measured.Flaw("Tops are cut off " + (clips.count() == 1 ? "once" : clips.count() + " times") + ", first at " + Clock.of(clips.firstS())
                    + ": peaks, crest and the highest octaves are not to be trusted. Record again with 10 dB less gain", clips.count() > 10));
        }
        if (done / recording.rateHz() < RATHER_S) {
            flaws.add(new Measured.Flaw(String.format(Locale.ROOT, "It is %.0f s long. Give 20 s of loud and soft playing, lest one note decide", done / recording.rateHz()), false));
        }
        if (loudness.runningDbfs() < SOFT_DBFS) {
            flaws.add(new Measured.Flaw(String.format(Locale.ROOT, "It is soft, \u2212%.0f dBFS while they play. Record with more gain, peaks at \u221212 to \u22126 dBFS", -loudness.runningDbfs()), false));
        }
        Double noiseDbfs = loudness.noiseDbfs();
        if (noiseDbfs != null && loudness.runningDbfs() - noiseDbfs < LEAST_OVER_NOISE_DB) {
            flaws.add(new Measured.Flaw(String.format(Locale.ROOT, "Between the notes it is only %.0f dB softer: a noise, or others who play, are in the figures. Go nearer, or ask the others to wait",
                    loudness.runningDbfs() - noiseDbfs), loudness.runningDbfs() - noiseDbfs < LEAST_OVER_NOISE_DB / 2));
        }
        return flaws;
    }
}
