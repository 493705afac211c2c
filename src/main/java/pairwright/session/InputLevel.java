package pairwright.session;

import pairwright.acoustics.Headroom;
import pairwright.advice.OfferedMic;
import pairwright.advice.Usual;
import pairwright.model.Predicted;

/** How strong a microphone arrives at a channel, against what that takes at its lowest gain; computed, judged by nobody here. */
final class InputLevel {
    /** Peaks that differ by less are the same. */
    private static final double SAME_DB = 0.05;

    private InputLevel() {
    }

    /** The lowest gain of a channel; where nobody noted it, the usual one. */
    static double leastGainDb(Gear.Channel channel) {
        return channel.leastGainDb() == null ? Usual.LEAST_GAIN_DB : channel.leastGainDb();
    }

    /** By how much the loudest peak is over what a channel takes with all in hand that is kept in hand; 0 where it fits or is not known. */
    static double overDb(Predicted predicted, double leastGainDb) {
        if (predicted.outputPeakDbu() == null) {
            return 0;
        }
        double overDb = predicted.outputPeakDbu() + leastGainDb - Usual.FULL_SCALE_DBU - Usual.PEAK_DBFS;
        return overDb < SAME_DB ? 0 : overDb;
    }

    /** To a tenth of a decibel, and 0 for what is below: what rules read, so that a search asks them seldom. */
    static double tenth(double overDb) {
        return overDb < SAME_DB ? 0 : Math.round(overDb * 10) / 10.0;
    }

    /** The same with the largest pad of the microphone itself. */
    static double leftOverDb(OfferedMic mic, double leastGainDb) {
        double overDb = overDb(mic.predicted(), leastGainDb) - mostOwnDb(mic);
        return overDb < SAME_DB ? 0 : overDb;
    }

    private static double mostOwnDb(OfferedMic mic) {
        return mic.micType().padsDb().stream().mapToDouble(padDb -> padDb - mic.padDb()).max().stream().map(more -> Math.max(0, more)).findFirst().orElse(0);
    }

    /**
     * The pad of the microphone itself that is to be in: the one that is in for its own sake, or the smallest that makes it fit; where none does, the largest.
     *
     * @param overDb what is over with the one that is in for its own sake, a pad in the line taken off
     */
    static double ownPadDb(OfferedMic mic, double overDb) {
        if (overDb <= 0 || mostOwnDb(mic) <= 0) {
            return mic.padDb();
        }
        return mic.micType().padsDb().stream().mapToDouble(Double::doubleValue).filter(padDb -> padDb - mic.padDb() >= overDb - SAME_DB).min()
                .orElse(mic.padDb() + mostOwnDb(mic));
    }

    /** Gain for the running level or the peaks, when so much more is taken away before the channel; never below 0. Null where it is not known. */
    static Double gainDb(Predicted predicted, double lossDb) {
        if (predicted.gainDb() == null || lossDb == 0) {
            return predicted.gainDb();
        }
        if (predicted.gainDb() > 0 || predicted.outputPeakDbu() == null) {
            return predicted.gainDb() + lossDb;
        }
        // what is predicted ends at 0; how far below it would be follows from the peak and from how far below that the running level is
        double runningDbu = predicted.outputPeakDbu() - (Headroom.sineEquivalentDbSpl(predicted.peakDbSpl()) - predicted.typicalDbSpl());
        double forAverageDb = Usual.FULL_SCALE_DBU + Usual.TARGET_DBFS - runningDbu;
        double forPeakDb = Usual.FULL_SCALE_DBU + Usual.PEAK_DBFS - predicted.outputPeakDbu();
        return Math.max(0, Math.min(forAverageDb, forPeakDb) + lossDb);
    }
}
