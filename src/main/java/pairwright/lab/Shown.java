package pairwright.lab;

import java.util.List;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Option;
import pairwright.session.LineUp;

/** Something to look at, as what it shows; whoever shows it draws it. */
public sealed interface Shown {
    /** What it is, in a few words. */
    String caption();

    /** A table. */
    record Table(String caption, List<String> columns, List<List<String>> rows) implements Shown {
        public Table {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /** Tones over frequency, octave by octave. */
    record Curves(String caption, List<Curve> curves) implements Shown {
        public Curves {
            curves = List.copyOf(curves);
        }
    }

    /**
     * One of them.
     *
     * @param name as it is called in the items
     * @param db level, octave by octave
     */
    record Curve(String name, OctaveCurve db) {
    }

    /**
     * Microphones at a source.
     *
     * @param source id
     * @param option how they stand
     */
    record AtSource(String caption, String source, Option option) implements Shown {
    }

    /** A room from above. */
    record FromAbove(String caption, LineUp lineUp) implements Shown {
    }
}
