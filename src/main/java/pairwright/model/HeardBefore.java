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
 * @param crestDb how far peaks stand over the running level of one note
 * @param attack how fast notes start
 * @param habits what to mind of how this player plays, in sentences
 */
public record HeardBefore(Double typicalDbSpl, Double peakDbSpl, OctaveCurve toneDb, Double lowestHz, Double highestHz, Double crestDb, Attack attack, List<String> habits) {
    /** Nothing noted. */
    public static final HeardBefore NOTHING = new HeardBefore(null, null, null, null, null, null);

    private static final double LEAST_DB_SPL = 20;
    private static final double MOST_DB_SPL = 160;
    private static final double MOST_TONE_DB = 40;
    private static final double LEAST_HZ = 8;
    private static final double MOST_HZ = 20_000;
    private static final double MOST_CREST_DB = 60;

    public HeardBefore {
        habits = habits == null ? List.of() : List.copyOf(habits);
    }

    /** With the peaks over the note and the attack of its kind. */
    public HeardBefore(Double typicalDbSpl, Double peakDbSpl, OctaveCurve toneDb, Double lowestHz, Double highestHz, List<String> habits) {
        this(typicalDbSpl, peakDbSpl, toneDb, lowestHz, highestHz, null, null, habits);
    }

    /** Whether nothing of it changes a figure. */
    public boolean changesNoFigure() {
        return typicalDbSpl == null && peakDbSpl == null && toneDb == null && lowestHz == null && highestHz == null && crestDb == null && attack == null;
    }

    /** The source as this player plays it; what was not noted is as it was. */
    public Source over(Source source) {
        return source.heard(level(source.level(), source.crestDb()), spectrum(source.spectrumDb()), fundamentals(source.fundamentalHz()), attack == null ? source.attack() : attack,
                crestDb == null ? source.crestDb() : new Range(crestDb, crestDb, crestDb));
    }

    /**
     * How much higher peaks are reckoned with, by how far they stand out of the note beyond what is usual of the kind; 0 where peaks were noted. Never lower: a room and a compressor take
     * peaks from a recording, which leaves them in the room.
     */
    public double higherPeaksDb(Range usualCrestDb) {
        return peakDbSpl != null || crestDb == null || usualCrestDb == null ? 0 : Math.max(0, crestDb - usualCrestDb.high());
    }

    /** Who plays louder has louder peaks, and so has who plays with more of a crest, unless those were noted as well. */
    private Level level(Level known, Range usualCrestDb) {
        if (known == null) {
            return null;
        }
        double typical = typicalDbSpl == null ? known.typicalDbSpl() : typicalDbSpl;
        double peak = peakDbSpl == null ? known.peakDbSpl() + typical - known.typicalDbSpl() + higherPeaksDb(usualCrestDb) : peakDbSpl;
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
        within(faults, at + "/crestDb", crestDb, 0, MOST_CREST_DB, "crestDb");
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
