package pairwright.listen;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;

/**
 * What one microphone hears of a neighbour, by two recordings of it at the same gain: one while only its own source plays, one while only the neighbour does.
 *
 * @param own what the one recording is called
 * @param neighbour what the other is called
 * @param separationDb own source over neighbour, A-weighted
 * @param octavesDb the same octave by octave
 * @param worstBand the octave in which the neighbour is nearest, from 0
 * @param expectedOctavesDb what was reckoned for them; null where nothing was
 * @param says what that means, in sentences
 */
public record BleedHeard(String own, String neighbour, double separationDb, OctaveCurve octavesDb, int worstBand, OctaveCurve expectedOctavesDb, List<String> says) {
    /** Players, places and rooms differ by as much from what is reckoned with. */
    private static final double AS_RECKONED_DB = 4;
    /** Where the source itself has less against its strongest octave, what is heard is mostly noise. */
    private static final double SOUNDS_DB = -25;

    public BleedHeard {
        says = List.copyOf(says);
    }

    /**
     * Of two recordings.
     *
     * @param expectedOctavesDb own over neighbour as it was reckoned, octave by octave; null for no such figures
     */
    public static BleedHeard of(Measured own, Measured neighbour, OctaveCurve expectedOctavesDb) {
        OctaveCurve octaves = TakesCompared.absolute(own).minus(TakesCompared.absolute(neighbour));
        double separationDb = TakesCompared.weightedDbfs(own) - TakesCompared.weightedDbfs(neighbour);
        OctaveCurve ownOctaves = own.octavesDb();
        int worst = ownOctaves.highestBand();
        for (int band = 0; band < Octaves.COUNT; band++) {
            // where the source itself has nothing, the neighbour is filtered away or does no harm
            worst = ownOctaves.at(band) > SOUNDS_DB && octaves.at(band) < octaves.at(worst) ? band : worst;
        }
        List<String> says = new ArrayList<>(TakesCompared.doubts(own, neighbour));
        says.add("The neighbour is " + Words.number(Math.abs(separationDb), 1) + " dB " + (separationDb >= 0 ? "under" : "over") + " its own source, nearest at " + Words.octave(worst) + " with "
                + Words.db(octaves.at(worst)) + ".");
        if (expectedOctavesDb != null) {
            String softer = Words.octaves(band -> ownOctaves.at(band) > SOUNDS_DB && octaves.at(band) - expectedOctavesDb.at(band) >= AS_RECKONED_DB);
            String louder = Words.octaves(band -> ownOctaves.at(band) > SOUNDS_DB && octaves.at(band) - expectedOctavesDb.at(band) <= -AS_RECKONED_DB);
            OctaveCurve louderDb = expectedOctavesDb.minus(octaves);
            double mostDb = IntStream.range(0, Octaves.COUNT).filter(band -> ownOctaves.at(band) > SOUNDS_DB).mapToDouble(louderDb::at).max().orElseThrow();
            says.add(softer.isEmpty() && louder.isEmpty() ? "That is as reckoned, to " + Words.db(AS_RECKONED_DB) + " in every octave."
                    : "The neighbour is" + (louder.isEmpty() ? "" : " louder than reckoned at " + louder + ", by up to " + Words.db(mostDb)) + (louder.isEmpty() || softer.isEmpty() ? "" : ", and")
                            + (softer.isEmpty() ? "" : " softer than reckoned at " + softer)
                            + (louder.isEmpty() ? ". Nothing needs doing." : ". Look whether the microphone and the neighbour stand where the plan has them, whether its null, if it has one, points at the neighbour, and what between or behind them throws sound back."));
        }
        return new BleedHeard(own.recording(), neighbour.recording(), separationDb, octaves, worst, expectedOctavesDb, says);
    }
}
