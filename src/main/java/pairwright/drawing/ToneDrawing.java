package pairwright.drawing;

import java.util.ArrayList;
import java.util.List;
import pairwright.acoustics.Level;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.model.Catalogue;
import pairwright.model.Character;
import pairwright.model.Naming;
import pairwright.model.Option;
import pairwright.model.Predicted;
import pairwright.model.Question;
import pairwright.model.ToneWeights;

/**
 * What an option is predicted to sound like, octave by octave, against what is wanted. Each curve is set where it comes nearest to what is
 * wanted, as a fader would: only its shape is compared, each octave counted as it is in {@link Predicted#toneMissDb()}.
 */
public final class ToneDrawing {
    /** So far off on the whole, a tone neither fits nor misses: {@link Predicted#toneFit()} is 0 there. */
    private static final double TOLERANCE_DB = 3;

    private ToneDrawing() {
    }

    /** The colour of each microphone, of both where there are two, and of what is wanted. */
    public static Drawing of(Catalogue catalogue, Question question, Option option, String key, Reader reader) {
        Character character = Character.together(question.character().stream().map(catalogue.characters()::get).toList());
        OctaveCurve wantedDb = character == null ? OctaveCurve.ZERO : character.toneDb();
        OctaveCurve weights = weights(option.mics().get(0).predicted());
        List<OctaveDrawing.Series> series = new ArrayList<>();
        List<OctaveCurve> colours = option.mics().stream().map(mic -> fitted(mic.predicted().colourDb(), wantedDb, weights)).toList();
        boolean alike = colours.size() == 2 && colours.get(0).equals(colours.get(1));
        for (int i = 0; i < (alike ? 1 : colours.size()); i++) {
            series.add(new OctaveDrawing.Series(alike ? "both alike: " + Mics.name(option, i) : Mics.name(option, i), colours.get(i), i == 0 ? Look.ONE : Look.TWO));
        }
        if (colours.size() == 2 && !alike) {
            series.add(new OctaveDrawing.Series("both mixed", fitted(mixed(option), wantedDb, weights), Look.SUM));
        }
        series.add(new OctaveDrawing.Series("wanted: " + (character == null ? "as it is" : Naming.small(character.name())), wantedDb, Look.WANTED));
        OctaveDrawing.Band band = new OctaveDrawing.Band("within 3 dB of it", wantedDb.plus(-TOLERANCE_DB), wantedDb.plus(TOLERANCE_DB));
        return OctaveDrawing.draw("Tone against what is wanted", "dB against the source as it is", series, band, weights,
                says(series, wantedDb, weights, reader), key, reader);
    }

    private static String says(List<OctaveDrawing.Series> series, OctaveCurve wantedDb, OctaveCurve weights, Reader reader) {
        StringBuilder says = new StringBuilder();
        for (OctaveDrawing.Series one : series) {
            says.append(Words.sentence(one.name() + ": " + Words.octaves(one.curveDb(), "dB", reader))).append(' ');
            if (one.look() != Look.WANTED) {
                says.append(miss(one.curveDb().minus(wantedDb), weights, reader)).append(' ');
            }
        }
        says.append("Shaded: within 3 dB of what is wanted. Levels are left out, only the shape counts; bars along the bottom show how much each octave"
                + " counts with this source.");
        if (series.stream().anyMatch(one -> one.look() == Look.SUM)) {
            says.append(" Both mixed is the mean of their powers at equal level, without what a difference of path does.");
        }
        return says.toString();
    }

    private static String miss(OctaveCurve off, OctaveCurve weights, Reader reader) {
        int worst = -1;
        for (int octave = 0; octave < Octaves.COUNT; octave++) {
            if (worst < 0 || weighed(off, weights, octave) > weighed(off, weights, worst)) {
                worst = octave;
            }
        }
        double missDb = off.weightedRms(weights);
        String onTheWhole = "It misses by " + Words.number(missDb, 1, reader) + " dB on the whole";
        return Math.abs(off.at(worst)) < 0.5 ? onTheWhole + "."
                : onTheWhole + ", most at " + Words.octave(worst, reader) + ": " + Words.number(Math.abs(off.at(worst)), 1, reader) + " dB too "
                        + (off.at(worst) > 0 ? "much." : "little.");
    }

    /** What an octave adds to the whole. */
    private static double weighed(OctaveCurve off, OctaveCurve weights, int octave) {
        return weights.at(octave) * off.at(octave) * off.at(octave);
    }

    /** How much each octave of the source counts: what is recorded less the colour is the source itself. */
    private static OctaveCurve weights(Predicted predicted) {
        OctaveCurve source = predicted.toneDb().minus(predicted.colourDb());
        double loudest = source.at(0);
        for (int octave = 1; octave < Octaves.COUNT; octave++) {
            loudest = Math.max(loudest, source.at(octave));
        }
        return ToneWeights.of(source.plus(-loudest));
    }

    /** Moved up or down until it lies about what is wanted. */
    private static OctaveCurve fitted(OctaveCurve colourDb, OctaveCurve wantedDb, OctaveCurve weights) {
        return colourDb.plus(-colourDb.minus(wantedDb).weightedMean(weights));
    }

    private static OctaveCurve mixed(Option option) {
        double[] nine = new double[Octaves.COUNT];
        for (int octave = 0; octave < nine.length; octave++) {
            nine[octave] = Level.sumIncoherentDb(option.mics().get(0).predicted().colourDb().at(octave),
                    option.mics().get(1).predicted().colourDb().at(octave)) - Level.sumIncoherentDb(0, 0);
        }
        return OctaveCurve.of(nine);
    }
}
