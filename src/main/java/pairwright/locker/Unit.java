package pairwright.locker;

import java.util.List;

/**
 * One physical microphone, box or stand.
 *
 * @param id never changes
 * @param kind what it is
 * @param micType id of the catalogue, for a mic; else null. The catalogue may have lost it since
 * @param label what is written on it
 * @param serial number of its maker; null for unknown
 * @param tag what a scanner reads; null for none
 * @param pairMate id of the unit it was matched with; null for none
 * @param condition how it is
 * @param note what to know; null for nothing
 * @param storedAt where it lies when nobody has it; null for unknown
 * @param channel for a channel; else null
 * @param stand for a stand; else null
 * @param pad for a pad; else null
 * @param booster for a booster; else null
 * @param response measured of this unit; empty for none
 * @param version rises with every change, from 1
 */
public record Unit(
        String id,
        UnitKind kind,
        String micType,
        String label,
        String serial,
        String tag,
        String pairMate,
        Condition condition,
        String note,
        String storedAt,
        ChannelData channel,
        StandData stand,
        PadData pad,
        BoosterData booster,
        List<ResponsePoint> response,
        long version) {

    public Unit {
        response = List.copyOf(response);
    }

    /** What is said of it, to be altered. */
    public UnitDraft draft() {
        return new UnitDraft(id, kind, micType, label, serial, tag, pairMate, condition, note, storedAt, channel, stand, pad, booster, response);
    }
}
