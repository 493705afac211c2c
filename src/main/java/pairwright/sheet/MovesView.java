package pairwright.sheet;

import java.util.List;

/**
 * A set-up and its moves, as their page shows them.
 *
 * @param heading what it is about
 * @param asked the question in one line
 * @param answerHref the answer to it
 * @param says what is heard and where it comes from; empty for nothing
 * @param hasHeard whether something was said to be heard
 * @param moves in the order they are tried
 * @param notes what to know beside them
 * @param option the set-up as it stands
 * @param ruledOut what rules it out as it stands
 * @param complaints what can be heard
 * @param href this set-up
 */
public record MovesView(
        String heading,
        String asked,
        String answerHref,
        String says,
        boolean hasHeard,
        List<Move> moves,
        List<String> notes,
        OptionView option,
        List<AnswerView.Out> ruledOut,
        List<Choice> complaints,
        String href) {

    /**
     * One move.
     *
     * @param by what is moved
     * @param who of which microphone; empty for both or none
     * @param says what to do
     * @param why its reason
     * @param change from and to; empty where nothing of the set-up changes
     * @param effect what that does; empty where no number shows it
     * @param points what it does to the score, with its sign; empty where the set-up stays
     * @param costs whether that is less
     * @param newCautions what must be minded then
     * @param href the set-up after it; null where it stays as it is
     */
    public record Move(String by, String who, String says, String why, String change, String effect, String points, boolean costs,
            List<OptionView.CautionView> newCautions, String href) {
    }
}
