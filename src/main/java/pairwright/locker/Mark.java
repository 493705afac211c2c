package pairwright.locker;

import java.time.Instant;

/**
 * What became of one microphone of a session.
 *
 * @param session id of its line-up
 * @param seat id
 * @param mic which of the seat's, from 1
 * @param source id
 * @param room where it was; null for not named
 * @param player who played; null for not named
 * @param micType id, as it was planned
 * @param position id, as it was planned; null for not known
 * @param unit id; null for not known
 * @param kept whether it stayed as it was planned
 * @param changedTo what was done instead, in words; null for kept, or not said
 * @param toMicType id of what stood there in the end; null for the same type
 * @param toPosition id of where it stood in the end; null for the same position
 * @param why in words; null for not said
 * @param at when that was noted
 * @param by who noted it
 */
public record Mark(String session, String seat, int mic, String source, String room, String player, String micType, String position, String unit, boolean kept,
        String changedTo, String toMicType, String toPosition, String why, Instant at, String by) {

    /** What is said in it, to be altered. */
    public MarkDraft draft() {
        return new MarkDraft(seat, mic, source, room, player, micType, position, unit, kept, changedTo, toMicType, toPosition, why);
    }
}
