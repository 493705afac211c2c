package pairwright.model;

import java.time.OffsetDateTime;
import java.util.List;
import pairwright.acoustics.OctaveCurve;

/**
 * The microphones of a locker, and how each stands for a time.
 *
 * @param reachable false where the locker does not answer just now; then there are no units
 * @param units in the order they are to be handed out: good before limited, then by label
 */
public record Stock(boolean reachable, List<Held> units) {
    public Stock {
        units = List.copyOf(units);
    }

    /** A locker that does not answer. */
    public static final Stock OUT_OF_REACH = new Stock(false, List.of());

    /**
     * One microphone or line box.
     *
     * @param id of the unit
     * @param micType id of the catalogue
     * @param label what is written on it
     * @param tag what a scanner reads; null for none
     * @param storedAt where it lies; null for unknown
     * @param note what to know, as of a limited unit; null for nothing
     * @param pairMate id of the unit it was matched with, if that is there and of the same type; else null
     * @param ownResponseDb measured of this unit, re 1 kHz; null for as its type
     * @param out why it cannot be had for all of the time; null where it is free
     */
    public record Held(String id, String micType, String label, String tag, String storedAt, String note, String pairMate, OctaveCurve ownResponseDb, Out out) {
        /** Whether it can be had for all of the time. */
        public boolean free() {
            return out == null;
        }
    }

    /**
     * Why a unit cannot be had.
     *
     * @param why session, lab, loan, repair, in-repair, lost or overdue
     * @param forWhat what it is booked for; null for unknown
     * @param by who has it; null for unknown
     * @param freeFrom when it is free for as long; null for unknown
     */
    public record Out(String why, String forWhat, String by, OffsetDateTime freeFrom) {
    }
}
