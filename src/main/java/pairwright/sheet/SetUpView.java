package pairwright.sheet;

import java.util.List;

/**
 * A sheet to hang up.
 *
 * @param heading the question in one line
 * @param words as they were said; empty for none
 * @param date of today, as the reader writes it
 * @param option what is set up
 * @param fetch what to carry in and what to switch
 * @param care what player and instrument need
 * @param answerHref the answer it is from
 * @param href the sheet itself
 */
public record SetUpView(String heading, String words, String date, OptionView option, List<String> fetch, List<String> care, String answerHref,
        String href) {
}
