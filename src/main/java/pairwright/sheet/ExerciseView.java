package pairwright.sheet;

import java.util.List;
import pairwright.drawing.Drawing;
import pairwright.sheet.ReadingParts.Plot;

/**
 * An exercise as a page shows it, whatever its kind.
 *
 * @param cautions what to mind before anything is touched, in sentences
 * @param situation sentences
 * @param pictures what there is to look at
 * @param asked what is asked
 */
public record ExerciseView(List<String> cautions, List<String> situation, List<Picture> pictures, List<Asked> asked) {
    public ExerciseView {
        cautions = List.copyOf(cautions);
        situation = List.copyOf(situation);
        pictures = List.copyOf(pictures);
        asked = List.copyOf(asked);
    }

    /** Those of its questions of which something is wrong with the answer. */
    public List<Asked> wrong() {
        return asked.stream().filter(one -> one.fault() != null).toList();
    }

    /**
     * Something to look at: a table, curves, or drawings.
     *
     * @param id unlike any other on the page
     * @param table null for none
     * @param plot null for none
     * @param drawings empty for none
     * @param says the same in words, line by line
     */
    public record Picture(String id, String caption, Table table, Plot plot, List<Drawing> drawings, List<String> says) {
    }

    /** A table; the first column names its rows. */
    public record Table(List<String> columns, List<List<String>> rows) {
    }

    /** How something is answered. */
    public enum Way {
        /** One of some. */
        ONE,
        /** Some of some. */
        SOME,
        /** All of them, in an order. */
        ORDER,
        /** What is written into blanks. */
        BLANKS
    }

    /**
     * One thing that is asked.
     *
     * @param id unlike any other on the page
     * @param number from 1
     * @param asks the question
     * @param hint how it is answered; empty where that is plain
     * @param picks what can be chosen, or put in order
     * @param blanks what is filled in
     * @param picture the picture in which a place can be pressed; null for none
     * @param fault what is wrong with what was answered; null for nothing
     */
    public record Asked(String id, int number, String asks, String hint, Way way, List<Pick> picks, List<Blank> blanks, String picture, String fault) {
        private static final int SHORT = 12;

        /** Whether all that can be chosen stands side by side. */
        public boolean brief() {
            return picks.stream().allMatch(pick -> pick.says().length() <= SHORT);
        }

        /** What describes the controls to whoever cannot see where they stand; null for nothing. */
        public String describedBy() {
            String by = (hint.isEmpty() ? "" : id + "-hint ") + (fault == null ? "" : id + "-fault");
            return by.isBlank() ? null : by.strip();
        }
    }

    /**
     * One of what can be chosen.
     *
     * @param name of the field; that of the whole question, or of this one alone where each is given a place
     * @param value what is sent
     * @param mark by which it is told from the others on paper: a letter, or nothing
     * @param chosen whether it was chosen
     * @param place which place it was given; empty for none
     */
    public record Pick(String id, String name, String value, String mark, String says, boolean chosen, String place) {
    }

    /**
     * Something to fill in.
     *
     * @param unit what a bare number is in; empty for none
     * @param axis for a place in a picture: x, y or aim; null for anything else
     * @param fixed whether it is given and not asked, and so not seen
     */
    public record Blank(String id, String name, String label, String unit, String typed, String axis, boolean fixed) {
    }
}
