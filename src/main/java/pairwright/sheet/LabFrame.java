package pairwright.sheet;

import java.util.List;
import pairwright.sheet.ReadingParts.Link;

/**
 * What stands around a page of the lab.
 *
 * @param shell what is around every page
 * @param title of the page, which may be shorter than that of the window
 * @param trail where it lies, outermost first, without itself
 * @param done what was just done, in a sentence; empty for nothing
 */
public record LabFrame(Shell shell, String title, List<Link> trail, String done) {
    public LabFrame {
        trail = List.copyOf(trail);
    }

    /** Around the lab's first page. */
    static LabFrame first(Html html, Visit visit) {
        return new LabFrame(html.shell("Lab", "lab", visit), "Lab", List.of(), "");
    }

    /** Around a page below it. */
    static LabFrame below(Html html, Visit visit, String title, List<Link> trail, String done) {
        List<Link> whole = new java.util.ArrayList<>(List.of(new Addresses(visit).link("/lab", "Lab")));
        whole.addAll(trail);
        return new LabFrame(html.shell(title, "lab", visit), title, whole, done);
    }
}
