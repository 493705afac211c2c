package pairwright.listen;

import java.util.ArrayList;
import java.util.List;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.acoustics.Weighting;
import pairwright.model.Attack;
import pairwright.model.HeardBefore;
import pairwright.model.Naming;
import pairwright.model.Range;
import pairwright.model.Source;

/**
 * What a recording says of a player that the catalogue does not: to be noted of a source in a line-up. Null where it says nothing.
 *
 * @param source id of the entry it is held against
 * @param typicalDbSpl running level at one metre; only with a reading of a meter
 * @param peakDbSpl highest peak at one metre; likewise
 * @param toneDb against the average of the source, octave by octave
 * @param lowestHz lowest fundamental, where it is lower than the entry's or by a third higher
 * @param highestHz highest fundamental, likewise
 * @param crestDb how far peaks stand over one note, where that is unlike the entry's: within it would say more than a recording can
 * @param attack how fast notes start, where that is unlike the entry's
 * @param says what is unlike the entry, in sentences
 * @param restsOn what to mind, in sentences
 */
public record Traits(String source, Double typicalDbSpl, Double peakDbSpl, OctaveCurve toneDb, Double lowestHz, Double highestHz, Double crestDb, Attack attack, List<String> says, List<String> restsOn) {
    /** What differs less is within what players of one instrument differ by. */
    private static final double WORTH_SAYING_DB = 3;
    private static final double WORTH_SAYING_CREST_DB = 2;
    private static final double MOST_TONE_DB = 12;
    /** An octave that is softer than the strongest by more tells of noise and room. */
    private static final double HEARD_DB = -45;
    private static final double ANOTHER_RANGE = 1.26;
    private static final double RUMBLE_DB = -20;
    private static final double RUMBLE_DB_OVER = 12;
    /** An estimate: about as far as the softest and the loudest playing lie from the usual. */
    private static final double DOUBTFUL_DB = 18;

    public Traits {
        says = List.copyOf(says);
        restsOn = List.copyOf(restsOn);
    }

    /** What a question or a seat takes of it. */
    public HeardBefore heard() {
        return new HeardBefore(typicalDbSpl, peakDbSpl, toneDb, lowestHz, highestHz, crestDb, attack, null);
    }

    /** Of a recording that can be used, of a source that sounds or of a lead. */
    public static Traits of(Measured measured, Source source) {
        Measured.Fundamentals notes = measured.fundamentals();
        int lowest = lowestBand(notes, source);
        OctaveCurve toneDb = tone(measured.octavesDb(), source.spectrumDb(), lowest);
        String usual = "the usual " + Naming.small(source.name());
        Double lowestHz = notes == null || !differs(notes.lowHz(), source.fundamentalHz().low(), false) ? null : Double.valueOf(notes.lowHz());
        Double highestHz = notes == null || !differs(notes.highHz(), source.fundamentalHz().high(), true) ? null : Double.valueOf(notes.highHz());
        Measured.Calibrated level = source.level() == null ? null : measured.calibrated();
        List<String> says = new ArrayList<>();
        tone(toneDb, usual, says);
        Double crestDb = isOfTheKind(measured.crestDb(), source.crestDb()) ? null : Double.valueOf(Math.rint(measured.crestDb() * 10) / 10);
        if (crestDb != null) {
            says.add("Peaks stand " + Words.db(measured.crestDb()) + " over the note, those of " + usual + " " + Words.number(source.crestDb().low(), 0) + " to " + Words.db(source.crestDb().high()) + ".");
        }
        Attack attack = measured.attack() == source.attack() ? null : measured.attack();
        if (attack != null) {
            says.add("Notes start in " + Words.number(measured.riseMs(), measured.riseMs() < 10 ? 1 : 0) + " ms, " + measured.attack().id() + "; those of " + usual + " are " + source.attack().id() + ".");
        }
        if (level != null && Math.abs(level.typicalDbSpl() - source.level().typicalDbSpl()) >= WORTH_SAYING_DB) {
            double moreDb = level.typicalDbSpl() - source.level().typicalDbSpl();
            says.add((moreDb > 0 ? "Louder by " : "Softer by ") + Words.db(Math.abs(moreDb)) + ": " + Words.db(level.typicalDbSpl()) + " SPL at one metre, " + usual + " " + Words.db(source.level().typicalDbSpl()) + ".");
        }
        if (lowestHz != null || highestHz != null) {
            says.add("The notes lie between " + Words.hz(notes.lowHz()) + " and " + Words.hz(notes.highHz()) + "; those of " + usual + " from " + Words.hz(source.fundamentalHz().low()) + " to "
                    + Words.hz(source.fundamentalHz().high()) + ".");
        }
        if (says.isEmpty()) {
            says.add("It sounds like " + usual + ": nothing of it needs another choice.");
        }
        return new Traits(source.id(), level == null ? null : Double.valueOf(level.typicalDbSpl()), level == null ? null : Double.valueOf(Math.max(level.typicalDbSpl(), level.peakDbSpl())), toneDb,
                lowestHz, highestHz, crestDb, attack, says, rests(measured, source, lowest));
    }

    /** What lies wholly below the lowest note is not the player's: from this octave on it counts. */
    private static int lowestBand(Measured.Fundamentals notes, Source source) {
        double lowestHz = Math.min(source.fundamentalHz().low(), notes == null ? source.fundamentalHz().low() : notes.lowHz());
        int band = 0;
        while (band < Octaves.COUNT - 1 && Bands.highestHz(band) < lowestHz) {
            band++;
        }
        return band;
    }

    private static List<String> rests(Measured measured, Source source, int lowest) {
        List<String> rests = new ArrayList<>();
        String rumble = Words.octaves(band -> band < lowest && measured.octavesDb().at(band) > RUMBLE_DB && measured.octavesDb().at(band) - source.spectrumDb().at(band) > RUMBLE_DB_OVER);
        if (!rumble.isEmpty()) {
            rests.add("At " + rumble + ", below its lowest note, there is more than it gives: the floor, traffic, a lead or a stand that is touched. It is left out of what is told of the player; find it before the take, or filter it.");
        }
        Measured.Calibrated calibrated = source.level() == null ? null : measured.calibrated();
        if (calibrated != null && calibrated.reading().distanceM() != 1) {
            rests.add("The meter showed " + Words.number(calibrated.reading().averageDb(), 0) + " dB(" + calibrated.reading().weighting() + ") at " + Words.way(calibrated.reading().distanceM()) + ". Reckoned to one metre that is "
                    + Words.db(calibrated.typicalDbSpl()) + " SPL, unweighted" + (calibrated.reading().distanceM() > 1 ? "; a room adds to what is read from far, so read it at one metre if you can."
                    : source.level().centreOffsetM() > 0 ? ": so near, the level falls less with distance than from a point, as the source is not one." : "."));
        }
        if (calibrated != null && Math.abs(calibrated.typicalDbSpl() - source.level().typicalDbSpl()) > DOUBTFUL_DB) {
            rests.add("A level " + Words.db(Math.abs(calibrated.typicalDbSpl() - source.level().typicalDbSpl())) + " from what is usual is more than loud or soft playing makes: look whether the reading, its distance and its weighting are right before you rely on it.");
        }
        rests.add("The microphone that recorded it, its place and the room are in these figures: a plain omni at a metre or more tells the source best.");
        if (source.level() != null && measured.calibrated() == null) {
            rests.add("How loud it is in the room a recording does not tell. Read a sound level meter while they play, and give what it shows and how far away it was.");
        }
        return rests;
    }

    private static boolean isOfTheKind(double heardDb, Range usualDb) {
        return usualDb == null || heardDb <= usualDb.high() + WORTH_SAYING_CREST_DB && heardDb >= usualDb.low() - WORTH_SAYING_CREST_DB;
    }

    /** A range is told wider at once, and narrower only where a good part of it was not heard, which may be the tune. */
    private static boolean differs(double heardHz, double knownHz, boolean high) {
        return high ? heardHz > knownHz * Math.sqrt(ANOTHER_RANGE) : heardHz < knownHz / Math.sqrt(ANOTHER_RANGE);
    }

    /** Laid over one another so that what is heard most agrees on the whole. */
    private static OctaveCurve tone(OctaveCurve heardDb, OctaveCurve knownDb, int lowest) {
        double[] loud = new double[Octaves.COUNT];
        for (int band = 0; band < loud.length; band++) {
            loud[band] = band < lowest ? 0 : Math.pow(10, (knownDb.at(band) + Weighting.octaveWeightingDb().at(band)) / 20);
        }
        OctaveCurve more = heardDb.minus(knownDb);
        double shiftDb = more.weightedMean(OctaveCurve.of(loud));
        double[] tone = new double[Octaves.COUNT];
        for (int band = 0; band < tone.length; band++) {
            boolean heard = band >= lowest && (heardDb.at(band) > HEARD_DB || knownDb.at(band) > HEARD_DB);
            tone[band] = heard ? Math.rint(Math.max(-MOST_TONE_DB, Math.min(MOST_TONE_DB, more.at(band) - shiftDb)) * 10) / 10 : 0;
        }
        return OctaveCurve.of(tone);
    }

    private static void tone(OctaveCurve toneDb, String usual, List<String> says) {
        List<String> parts = new ArrayList<>();
        for (int band = 0; band < Octaves.COUNT; band++) {
            if (Math.abs(toneDb.at(band)) >= WORTH_SAYING_DB) {
                parts.add(Words.db(Math.abs(toneDb.at(band))) + (toneDb.at(band) > 0 ? " more" : " less") + " at " + Words.octave(band));
            }
        }
        if (!parts.isEmpty()) {
            says.add("Against " + usual + " it has " + Words.list(parts) + ".");
        }
    }
}
