package pairwright.locker;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The faults of a table as they are found; of a file that is wrong throughout, the first thousand are kept and the others counted. */
final class TableFaults {
    private static final int MOST = 1000;

    private final List<TableFault> kept = new ArrayList<>();
    private int more;

    void add(TableFault fault) {
        if (kept.size() < MOST) {
            kept.add(fault);
        } else {
            more++;
        }
    }

    boolean none() {
        return kept.isEmpty();
    }

    int count() {
        return kept.size() + more;
    }

    /** How many are not kept. */
    int more() {
        return more;
    }

    /** Those that are kept, from the top of the file to its end. */
    List<TableFault> list() {
        return kept.stream().sorted(Comparator.comparingInt(TableFault::line)).toList();
    }
}
