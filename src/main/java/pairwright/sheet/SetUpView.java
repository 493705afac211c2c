package pairwright.sheet;

import java.util.List;

/**
 * A sheet to hang up.
 *
 * @param heading the question in one line
 * @param words as they were said; empty for none
 * @param date of today, as the reader writes it
 * @param when it is needed, and what of the locker was ranked; empty without a locker and where nothing was said
 * @param away what to know where the locker does not answer; empty where it does
 * @param option what is set up
 * @param carry what to carry in, unit by unit; empty without a locker
 * @param fetch what to carry in and what to switch; with a locker only what to switch
 * @param missed better types that are out
 * @param care what player and instrument need
 * @param answerHref the answer it is from
 * @param href the sheet itself
 */
public record SetUpView(String heading, String words, String date, String when, String away, OptionView option, List<Thing> carry, List<String> fetch,
        List<StockView.Missed> missed, List<String> care, String answerHref, String href) {
    /**
     * Something to carry in.
     *
     * @param label of a unit; empty for anything else
     * @param href of the unit; null for none
     * @param says the rest
     */
    public record Thing(String label, String href, String says) {
    }
}
