package pairwright.model;

import java.util.List;
import pairwright.acoustics.OctaveCurve;

/**
 * What to do about something that is heard.
 *
 * @param question what was asked and how it was understood
 * @param heard id of the complaint
 * @param name of the complaint
 * @param says what it is and where it comes from
 * @param option the set-up as it stands, predicted and judged
 * @param ruledOut what rules out the set-up as it stands; empty for nothing
 * @param moves at most three, in the order they are tried
 * @param notes what to know beside them, in sentences
 * @param rulesVersion of the rules used
 * @param catalogueVersion of the catalogue used
 */
public record Moves(
        Answer.Asked question,
        String heard,
        String name,
        String says,
        Option option,
        List<RuledOut> ruledOut,
        List<Move> moves,
        List<String> notes,
        String rulesVersion,
        String catalogueVersion) {

    /**
     * One move.
     *
     * @param by what is moved or asked for
     * @param mic which microphone it moves, from 1; 0 for both or none
     * @param says what to do
     * @param why its reason
     * @param change what is changed, from and to, in words; empty where nothing of the set-up changes
     * @param effect what that does, in words; empty where no number shows it
     * @param changed the same in numbers, then less now; null where nothing could be computed
     * @param scorePoints score then less score now; null where the set-up stays
     * @param newCautions what must be minded then and need not be now
     * @param option the set-up after the move; null where the set-up stays
     */
    public record Move(
            MoveKind by,
            int mic,
            String says,
            String why,
            String change,
            String effect,
            Changed changed,
            Double scorePoints,
            List<Caution> newCautions,
            Option option) {
    }

    /**
     * What a move changes, then less now; a number that does not apply is null.
     *
     * @param colourDb octave by octave, level apart
     * @param typicalDbSpl running level at the capsule
     * @param proximityDb lift at 100 Hz from being close
     * @param directToReverbDb direct sound over the room's; below zero is more room
     * @param separationDb own level over the neighbours
     * @param signalToNoiseDb running level over the noise
     * @param headroomDb what is left to the limit
     * @param gainDb gain that is needed
     * @param rippleDb peak to dip of the sum of two
     * @param firstNullHz first cancellation of the two then, not a difference; null for none
     */
    public record Changed(
            OctaveCurve colourDb,
            Double typicalDbSpl,
            Double proximityDb,
            Double directToReverbDb,
            Double separationDb,
            Double signalToNoiseDb,
            Double headroomDb,
            Double gainDb,
            Double rippleDb,
            Double firstNullHz) {
    }
}
