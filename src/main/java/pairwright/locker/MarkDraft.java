package pairwright.locker;

/** What somebody notes of one microphone after a session, before it is checked; as in {@link Mark}. */
public record MarkDraft(String seat, int mic, String source, String room, String player, String micType, String position, String unit, boolean kept,
        String changedTo, String toMicType, String toPosition, String why) {
    /** One that stayed as it was planned, all else unsaid. */
    public static MarkDraft kept(String seat, int mic, String source, String micType, String position) {
        return new MarkDraft(seat, mic, source, null, null, micType, position, null, true, null, null, null, null);
    }

    /** The same in a room and by a player. */
    public MarkDraft by(String otherPlayer, String otherRoom) {
        return new MarkDraft(seat, mic, source, otherRoom, otherPlayer, micType, position, unit, kept, changedTo, toMicType, toPosition, why);
    }

    /** The same as it was given up for something else; null for the same type or position. */
    public MarkDraft changed(String otherType, String otherPosition, String because) {
        return new MarkDraft(seat, mic, source, room, player, micType, position, unit, false, changedTo, otherType, otherPosition, because);
    }
}
