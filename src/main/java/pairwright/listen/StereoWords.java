package pairwright.listen;

import java.util.List;

/** What the two channels of a stereo recording make of width and of mono. */
final class StereoWords {
    private static final double WORTH_DB = 1;
    /** Where they are not known to be the same way up; of a low source a delay alone may do that. */
    private static final double AGAINST = -0.5;
    private static final double CLOSE_TO_MONO_DB = -15;
    private static final double NARROW_DB = -8;
    private static final double HOLLOW_DB = 0;
    private static final double TOGETHER_MS = 0.15;
    private static final double ALIKE = 0.25;
    private static final int HZ_2000 = 5;
    private static final int HZ_8000 = 7;

    private StereoWords() {
    }

    static void add(PairHeard pair, List<String> says) {
        if (pair.correlationShare() < AGAINST && !Boolean.FALSE.equals(pair.inverted())) {
            says.add("Correlation is " + Words.number(pair.correlationShare(), 2) + ": in mono they cancel, by up to " + Words.db(deepestDb(pair))
                    + ", and over two loudspeakers there is no middle. Mend that first and measure again; till then nothing can be said of width.");
            return;
        }
        double sideDb = pair.sideDb();
        String alike = Words.octaves(band -> pair.heard(band) && pair.correlationOctavesShare().at(band) > 0.8);
        String against = Words.octaves(band -> pair.heard(band) && pair.correlationOctavesShare().at(band) < -0.2);
        says.add("Correlation is " + Words.number(pair.correlationShare(), 2) + " on the whole" + (alike.isEmpty() ? "" : ", above 0.8 at " + alike) + (against.isEmpty() ? "" : ", below \u22120.2 at " + against) + ".");
        says.add("What differs between left and right is " + (Math.abs(sideDb) < WORTH_DB ? "as strong as" : Words.db(Math.abs(sideDb)) + (sideDb < 0 ? " under" : " over")) + " what they share: " + width(sideDb)
                + ". How wide that sounds depends on the loudspeakers and on where each player stands; a single one to one side gives the same figures.");
        String lost = Words.octaves(band -> pair.heard(band) && pair.sumDb().at(band) <= -WORTH_DB);
        says.add(lost.isEmpty() ? "Summed to mono no octave comes out " + Words.db(WORTH_DB) + " under the power of both." : "Summed to mono they lose against the power of both, by " + Words.db(deepestDb(pair)) + " at most: at " + lost + ".");
        says.add(sort(pair));
    }

    private static String width(double sideDb) {
        return sideDb < CLOSE_TO_MONO_DB ? "close to mono, all of it in the middle" : sideDb < NARROW_DB ? "narrow, most of it near the middle" : sideDb < HOLLOW_DB ? "wide, spread from side to side" : "very wide, with a weak middle";
    }

    private static double deepestDb(PairHeard pair) {
        double deepest = 0;
        for (int band = 0; band < pair.sumDb().toArray().length; band++) {
            deepest = pair.heard(band) ? Math.max(deepest, -pair.sumDb().at(band)) : deepest;
        }
        return deepest;
    }

    /** By what the high octaves have in common: between capsules at one place it does not fall with frequency. */
    private static String sort(PairHeard pair) {
        double alike = 0;
        for (int band = HZ_2000; band <= HZ_8000; band++) {
            alike += Math.abs(pair.correlationOctavesShare().at(band)) / (HZ_8000 - HZ_2000 + 1);
        }
        return Math.abs(pair.laterMs()) < TOGETHER_MS && alike >= ALIKE
                ? "These figures are as usual for a coincident pair: no delay, and much the same correlation from low to high. A spaced pair before one source in its middle looks alike."
                : "These figures are as usual for a spaced pair: in common at the lowest octaves, next to nothing at the high ones, and some tenths of a millisecond or more between them. Of a coincident pair they would be a fault: "
                        + "look whether both capsules stand above one another, and whether one lead is wrongly wired.";
    }
}
