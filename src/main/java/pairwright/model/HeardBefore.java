package pairwright.model;

import java.util.ArrayList;
import java.util.List;
import pairwright.acoustics.OctaveCurve;

/**
 * What was noted of a player before the session; it stands above the figures of the catalogue. Null for what was not noted.
 *
 * @param typicalDbSpl running level at one metre
 * @param peakDbSpl true peak at one metre, loud
 * @param toneDb against the average of the source, octave by octave
 * @param lowestHz lowest fundamental this player goes to, as by another tuning
 * @param highestHz highest fundamental
 * @param habits what to mind of how this player plays, in sentences
 */
public record HeardBefore(Double typicalDbSpl, Double peakDbSpl, OctaveCurve toneDb, Double lowestHz, Double highestHz, List<String> habits) {
    private static final double LEAST_DB_SPL = 20;
    private static final double MOST_DB_SPL = 160;
    private static final double MOST_TONE_DB = 40;
    private static final double LEAST_HZ = 8;
    private static final double MOST_HZ = 20_000;

    public HeardBefore {
        habits = habits == null ? List.of() : List.copyOf(habits);
    }

    /** Whether nothing of it changes a figure. */
    public boolean changesNoFigure() {
        return typicalDbSpl == null && peakDbSpl == null && toneDb == null && lowestHz == null && highestHz == null;
    }

    /** The source as this player plays it; what was not noted is as it was. */
    public Source over(Source source) {
        return source.heard(level(source.level()), spectrum(source.spectrumDb()), fundamentals(source.fundamentalHz()));
    }

    /** Who plays louder has louder peaks, unless those were noted as well. */
    private Level level(Level known) {
        if (known == null) {
            return null;
        }
        double typical = typicalDbSpl == null ? known.typicalDbSpl() : typicalDbSpl;
        double peak = peakDbSpl == null ? known.peakDbSpl() + typical - known.typicalDbSpl() : peakDbSpl;
        return new Level(Math.min(typical, peak), peak, known.toleranceDb(), known.centreOffsetM());
    }

    private OctaveCurve spectrum(OctaveCurve known) {
        if (toneDb == null) {
            return known;
        }
        OctaveCurve heard = known.plus(toneDb);
        return heard.relativeToBand(heard.highestBand());
    }

    private Range fundamentals(Range known) {
        double low = lowestHz == null ? known.low() : lowestHz;
        double high = Math.max(low, highestHz == null ? known.high() : highestHz);
        return new Range(low, Math.max(low, Math.min(high, known.typical())), high);
    }

    /**
     * What no player can be; nothing of the habits.
     *
     * @param at where it stands, as a pointer
     */
    public List<Fault> faults(String at) {
        List<Fault> faults = new ArrayList<>();
        within(faults, at + "/typicalDbSpl", typicalDbSpl, LEAST_DB_SPL, MOST_DB_SPL, "typicalDbSpl");
        within(faults, at + "/peakDbSpl", peakDbSpl, LEAST_DB_SPL, MOST_DB_SPL, "peakDbSpl");
        if (typicalDbSpl != null && peakDbSpl != null && peakDbSpl < typicalDbSpl) {
            faults.add(new Fault(at + "/peakDbSpl", "the peak, " + plain(peakDbSpl) + " dB, is below the running level, " + plain(typicalDbSpl) + " dB. Swap them or correct one"));
        }
        if (toneDb != null) {
            double[] tone = toneDb.toArray();
            for (int band = 0; band < tone.length; band++) {
                within(faults, at + "/toneDb/" + band, tone[band], -MOST_TONE_DB, MOST_TONE_DB, "an octave of toneDb");
            }
        }
        within(faults, at + "/lowestHz", lowestHz, LEAST_HZ, MOST_HZ, "lowestHz");
        within(faults, at + "/highestHz", highestHz, LEAST_HZ, MOST_HZ, "highestHz");
        if (lowestHz != null && highestHz != null && highestHz <= lowestHz) {
            faults.add(new Fault(at + "/highestHz", "the highest note, " + plain(highestHz) + " Hz, is not above the lowest, " + plain(lowestHz) + " Hz. Swap them or correct one"));
        }
        return faults;
    }

    private static void within(List<Fault> faults, String at, Double value, double least, double most, String name) {
        if (value != null && !(value >= least && value <= most)) {
            faults.add(new Fault(at, name + " must be " + plain(least) + " to " + plain(most) + ", but was " + plain(value)));
        }
    }

    private static String plain(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e15 ? Long.toString((long) number) : Double.toString(number);
    }
}
