package pairwright.sheet;

import java.util.List;
import pairwright.sheet.ReadingParts.Link;

/** The exercises that were made for classes, the newest first. */
public final class ExerciseSetsPage {
    private static final int MOST = 100;

    private ExerciseSetsPage() {
    }

    /** A set in the list; when the class is may be empty. */
    public record Row(Link set, int benches, String time, String keys, String made) {
    }

    /** What the page shows; where to make one is null for whoever may not. How many there are beyond those shown. */
    public record Content(List<Row> rows, long older, Link make, String zone) {
    }

    public static Page of(AtLab lab) {
        List<Row> rows = lab.desk().sets(MOST).stream().map(set -> new Row(lab.link(set, "", lab.name(set)), set.benches().size(), lab.time(set), lab.keys(set),
                lab.at().moments().moment(set.at()))).toList();
        LabFrame frame = LabFrame.below(lab.at().html(), lab.at().visit(), "Exercises of classes", List.of(), "removed".equals(lab.at().visit().first("done")) ? "They are removed." : "");
        return lab.page(200, "sets", frame, new Content(rows, lab.desk().count() - rows.size(), lab.teaches() ? lab.at().at().link(AtLab.SETS + "/new", "Make exercises for a class") : null, lab.at().moments().zone()));
    }
}
