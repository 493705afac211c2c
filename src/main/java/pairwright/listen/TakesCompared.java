package pairwright.listen;

import java.util.ArrayList;
import java.util.List;
import pairwright.acoustics.Level;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Weighting;

/**
 * Two takes of one change, made equally loud before they are compared: whoever hears the louder one likes it better.
 *
 * @param before what the one is called
 * @param after what the other is called
 * @param louderDb level of the second over the first as recorded, A-weighted; taken out of all else
 * @param octavesDb of the second over the first, octave by octave
 * @param crestDb of the second over the first
 * @param noiseDb of the second over the first; null where either is never quiet
 * @param says what changed, in sentences
 */
public record TakesCompared(String before, String after, double louderDb, OctaveCurve octavesDb, double crestDb, Double noiseDb, List<String> says) {
    private static final double WORTH_SAYING_DB = 1.5;

    public TakesCompared {
        says = List.copyOf(says);
    }

    /** Of two recordings of the same music. */
    public static TakesCompared of(Measured before, Measured after) {
        double louderDb = weightedDbfs(after) - weightedDbfs(before);
        OctaveCurve octaves = absolute(after).minus(absolute(before)).plus(-louderDb);
        double crestDb = after.crestDb() - before.crestDb();
        Double noiseDb = before.noiseDbfs() == null || after.noiseDbfs() == null ? null : Double.valueOf(after.noiseDbfs() - before.noiseDbfs() - louderDb);
        List<String> says = new ArrayList<>(doubts(before, after));
        String more = Words.octaves(band -> octaves.at(band) >= WORTH_SAYING_DB);
        String less = Words.octaves(band -> octaves.at(band) <= -WORTH_SAYING_DB);
        says.add(more.isEmpty() && less.isEmpty() ? "At equal level no octave differs by " + Words.number(WORTH_SAYING_DB, 1) + " dB or more."
                : "At equal level " + after.recording() + " has " + (more.isEmpty() ? "" : "more at " + more) + (more.isEmpty() || less.isEmpty() ? "" : " and ") + (less.isEmpty() ? "" : "less at " + less) + ".");
        if (Math.abs(louderDb) >= 0.5) {
            says.add(after.recording() + " was " + Words.number(Math.abs(louderDb), 1) + " dB " + (louderDb > 0 ? "louder" : "softer") + ". Match that before you listen, lest the louder one win.");
        }
        if (Math.abs(crestDb) >= WORTH_SAYING_DB) {
            says.add("Peaks stand " + Words.number(Math.abs(crestDb), 1) + " dB " + (crestDb > 0 ? "further over the notes." : "less far over the notes."));
        }
        if (noiseDb != null && Math.abs(noiseDb) >= 3) {
            says.add("Between the notes it is " + Words.db(Math.abs(noiseDb)) + (noiseDb > 0 ? " noisier." : " quieter."));
        }
        return new TakesCompared(before.recording(), after.recording(), louderDb, octaves, crestDb, noiseDb, says);
    }

    /** What in the recordings themselves keeps a comparison from being trusted. */
    static List<String> doubts(Measured before, Measured after) {
        List<String> doubts = new ArrayList<>();
        for (Measured one : List.of(before, after)) {
            if (!one.usable()) {
                doubts.add(one.recording() + " should not be used: rest nothing on what follows, and record it again.");
            } else if (one.clips() > 0) {
                doubts.add("In " + one.recording() + " tops are cut off: what follows of peaks and of the highest octaves is not to be trusted.");
            }
        }
        return doubts;
    }

    /** Octave by octave in dBFS: together they are the running level. */
    static OctaveCurve absolute(Measured measured) {
        return measured.octavesDb().plus(measured.runningDbfs() - Level.sumIncoherentDb(measured.octavesDb().toArray()));
    }

    static double weightedDbfs(Measured measured) {
        return Level.sumIncoherentDb(absolute(measured).plus(Weighting.octaveWeightingDb()).toArray());
    }
}
