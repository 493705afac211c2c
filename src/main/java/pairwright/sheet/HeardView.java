package pairwright.sheet;

import java.util.List;
import pairwright.drawing.Drawing;

/**
 * What was heard, as a page shows it: words first.
 *
 * @param title of the page
 * @param back address of the form
 * @param leaves one to each thing that was measured
 */
public record HeardView(String title, String back, List<Leaf> leaves) {
    /**
     * One thing that was measured.
     *
     * @param name what it is
     * @param serious why nothing should rest on it
     * @param minds what to mind
     * @param says what was heard, the weightiest first
     * @param drawings pictures of it
     * @param tables its figures
     * @param heard lines for a line-up; empty for none
     * @param ask address of the question what to put on it; null for none
     */
    public record Leaf(String name, List<String> serious, List<String> minds, List<String> says, List<Drawing> drawings, List<Table> tables, String heard, String ask) {
        /** Of what no question can be asked. */
        public Leaf(String name, List<String> serious, List<String> minds, List<String> says, List<Drawing> drawings, List<Table> tables, String heard) {
            this(name, serious, minds, says, drawings, tables, heard, null);
        }
    }

    /** Figures; the first cell of each row says of what. */
    public record Table(String caption, List<String> heads, List<List<String>> rows) {
    }
}
