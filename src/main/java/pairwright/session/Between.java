package pairwright.session;

import pairwright.model.Word;

/**
 * What is between a microphone and its channel, boosters aside, and how the two fit.
 *
 * @param box the line box; null for none
 * @param instrument whether the line goes straight into the instrument input of its channel, with no box
 * @param pad id of the pad in the line; null for none
 * @param padLabel what is written on it; null for none
 * @param padLossDb what that takes away; 0 for none
 * @param ownPadDb the pad of the microphone itself that is in; 0 for none
 * @param overDb by how much its loudest peak is still over what the channel takes at its lowest gain with 6 dB in hand; 0 where it fits, null where the
 *     one or the other is not known
 */
public record Between(Box box, boolean instrument, String pad, String padLabel, double padLossDb, double ownPadDb, Double overDb) {
    /** A cable and nothing else. */
    public static final Between NOTHING = new Between(null, false, null, null, 0, 0, null);

    /** All that pads take away, in the microphone and in the line. */
    public double allPadsDb() {
        return padLossDb + ownPadDb;
    }

    /** Whether there is a box of its own behind what hears, which is none itself. */
    public boolean boxed() {
        return box != null && !box.itself();
    }

    /**
     * A line box.
     *
     * @param unit id; null where units are not counted
     * @param label what is written on it; null where units are not counted
     * @param storedAt where it lies; null for unknown
     * @param micType id of its type
     * @param name of its type
     * @param power what it runs on
     * @param itself whether it is what the line is planned with, at the end of an instrument's lead; else it is behind a pickup or a microphone
     */
    public record Box(String unit, String label, String storedAt, String micType, String name, BoxPower power, boolean itself) {
        /** What people call this one. */
        public String called() {
            return label == null ? name : label;
        }
    }

    /** What a line box runs on. */
    public enum BoxPower implements Word {
        /** Phantom power of its channel. */
        PHANTOM("phantom"),
        /** A cell inside. */
        BATTERY("battery"),
        /** Nothing: it is a transformer. */
        NONE("none");

        private final String id;

        BoxPower(String id) {
            this.id = id;
        }

        @Override
        public String id() {
            return id;
        }
    }
}
