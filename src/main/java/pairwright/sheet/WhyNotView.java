package pairwright.sheet;

import java.util.List;

/**
 * Why a type is not the first answer, as its page shows it.
 *
 * @param heading the question
 * @param asked what was asked, in one line
 * @param answerHref the answer it is about
 * @param micHref page of the type
 * @param says how it stands
 * @param place its best place; null where it fits nowhere
 * @param placeHref that place set up; null with it
 * @param score there; null with it
 * @param firstScore of the first answer; null where nothing fits
 * @param firstTitle of the first answer; null with it
 * @param cautions gravest first
 * @param losses rule by rule
 * @param difference of the scores; empty without losses
 * @param ruledOut what rules it out
 * @param limits which leave it out
 * @param inPair the best pair it is in; empty for none
 * @param tried how many changes were asked
 * @param changes those that help
 * @param isFirst whether it is the first answer
 */
public record WhyNotView(
        String heading,
        String asked,
        String answerHref,
        String micHref,
        String says,
        String place,
        String placeHref,
        String score,
        String firstScore,
        String firstTitle,
        List<OptionView.CautionView> cautions,
        List<Loss> losses,
        String difference,
        List<AnswerView.Out> ruledOut,
        List<AnswerView.Link> limits,
        String inPair,
        int tried,
        List<AnswerView.Link> changes,
        boolean isFirst) {

    /** What one rule gives there, here, and here less there, each with its sign. */
    public record Loss(String rule, String title, String href, String there, String here, String difference) {
    }
}
