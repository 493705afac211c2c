package pairwright.sheet;

import java.util.List;
import pairwright.drawing.Drawing;
import pairwright.model.Severity;

/**
 * An option as a page shows it.
 *
 * @param key unlike that of any other option of the page, for ids
 * @param rank from 1
 * @param title the types, and how they relate
 * @param techniqueName name of the technique; null for one microphone
 * @param techniqueHref its page; null for one microphone
 * @param score the sum of the points
 * @param cautions what can harm a person, gear or a take, gravest first
 * @param notes what is good to know
 * @param mics one or two
 * @param both what the two do together; empty for one
 * @param above seen from above
 * @param side seen from the side; null for a lead, which looks the same from everywhere
 * @param points the reasons up to the score
 * @param level between noise and limit
 * @param tone against what is wanted
 * @param sum of two; null where nothing cancels
 * @param reasons strongest first
 * @param sure how sure its place is, in a sentence; empty where it was not drawn
 * @param setUpHref its sheet; null where it is the sheet
 * @param book where its units are booked; null where they cannot be, or not by this reader
 * @param hidden the question and the set-up, for forms
 */
public record OptionView(
        String key,
        int rank,
        String title,
        String techniqueName,
        String techniqueHref,
        String score,
        List<CautionView> cautions,
        List<CautionView> notes,
        List<Mic> mics,
        List<Figure> both,
        Drawing above,
        Drawing side,
        Drawing points,
        Drawing level,
        Drawing tone,
        Drawing sum,
        List<ReasonView> reasons,
        String sure,
        String setUpHref,
        AnswerView.Link book,
        List<Param> hidden) {

    /**
     * One microphone.
     *
     * @param label "Mic 1"; empty where there is one only
     * @param name of the type
     * @param href its page
     * @param rest how it is set up, in one line
     * @param take which unit of the locker to take; null without a locker
     * @param brings what is heard there
     * @param figures what to expect
     * @param neighbours what it hears of each, in sentences
     */
    public record Mic(String label, String name, String href, String rest, Take take, String brings, List<Figure> figures, List<String> neighbours) {
    }

    /**
     * A unit to take, or that there is none.
     *
     * @param before what stands before its label
     * @param label what is written on it; empty for none
     * @param href its page; null for none
     * @param after what stands behind: where it lies, and how many there are or when it is free again
     * @param mind what to know of it; empty for nothing
     * @param free whether it can be had
     */
    public record Take(String before, String label, String href, String after, String mind, boolean free) {
    }

    /** A number with its name. */
    public record Figure(String name, String text) {
    }

    /**
     * What must not be missed.
     *
     * @param severity danger, care or note
     * @param word the same for people
     * @param says the sentence
     * @param who of which microphone; empty for all
     * @param rule its id
     * @param href page of the rule
     */
    public record CautionView(String severity, String word, String says, String who, String rule, String href) {
        /** Whether it is only good to know. */
        public boolean isNote() {
            return severity.equals(Severity.NOTE.id());
        }
    }

    /**
     * Why it is better or worse.
     *
     * @param isFor whether it speaks for it
     * @param points with their sign
     * @param says the sentence
     * @param who of which microphone; empty for all
     * @param rule its id
     * @param title of the rule
     * @param href page of the rule
     * @param values the numbers it used
     * @param basis what the rule rests on
     */
    public record ReasonView(boolean isFor, String points, String says, String who, String rule, String title, String href, List<Figure> values,
            String basis) {
    }
}
