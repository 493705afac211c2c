package pairwright.locker;

import java.util.List;

/**
 * What somebody says of a unit, before it is checked. Anything may be null for not said.
 *
 * @param id kebab case; null for one made from the label
 * @param kind what it is; null for a mic if a mic type is named
 * @param micType id of the catalogue, for a mic
 * @param label what is written on it; null for one made from its type and a number
 * @param serial number of its maker
 * @param tag what a scanner reads; no two units share one
 * @param pairMate id of the unit it was matched with; may be one that is not there yet
 * @param condition null for good
 * @param note what to know, in one line or several; needed for a limited unit
 * @param storedAt where it lies when nobody has it
 * @param channel for a channel
 * @param stand for a stand
 * @param pad for a pad
 * @param booster for a booster
 * @param response measured of this unit, rising frequencies, for a mic; null or empty for none
 */
public record UnitDraft(
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
        List<ResponsePoint> response) {

    public UnitDraft {
        response = response == null ? List.of() : List.copyOf(response);
    }

    /** A microphone of a type, all else unsaid. */
    public static UnitDraft mic(String id, String micType, String label) {
        return new UnitDraft(id, UnitKind.MIC, micType, label, null, null, null, null, null, null, null, null, null, null, null);
    }

    /** The same with a mate. */
    public UnitDraft matchedWith(String mate) {
        return new UnitDraft(id, kind, micType, label, serial, tag, mate, condition, note, storedAt, channel, stand, pad, booster, response);
    }

    /** The same with another tag. */
    public UnitDraft tagged(String other) {
        return new UnitDraft(id, kind, micType, label, serial, other, pairMate, condition, note, storedAt, channel, stand, pad, booster, response);
    }

    /** The same in another condition. */
    public UnitDraft in(Condition other, String why) {
        return new UnitDraft(id, kind, micType, label, serial, tag, pairMate, other, why, storedAt, channel, stand, pad, booster, response);
    }
}
