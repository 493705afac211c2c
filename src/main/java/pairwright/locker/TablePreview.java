package pairwright.locker;

import java.util.List;
import pairwright.model.Word;

/**
 * What a table of units would do to a locker.
 *
 * @param rows in the order of the file; those with a fault are left out
 * @param faults in the order of the file; nothing can be brought in while there is one
 * @param more how many more faults there are than those
 */
public record TablePreview(List<Row> rows, List<TableFault> faults, int more) {
    public TablePreview {
        rows = List.copyOf(rows);
        faults = List.copyOf(faults);
    }

    /** What would happen to a unit. */
    public enum Effect implements Word {
        NEW("new"),
        CHANGED("changed"),
        SAME("same");

        private final String id;

        Effect(String id) {
            this.id = id;
        }

        @Override
        public String id() {
            return id;
        }
    }

    /**
     * One unit.
     *
     * @param line of the file in which it begins, from 1
     * @param effect what would happen
     * @param unit as it would be; its id and label may be null where they are yet to be made
     * @param changes what would change; empty for a unit that is new or the same
     */
    public record Row(int line, Effect effect, UnitDraft unit, List<Change> changes) {
        public Row {
            changes = List.copyOf(changes);
        }
    }

    /**
     * @param column name of the column
     * @param from as it is now, written as in a file; empty for nothing
     * @param to as it would be
     */
    public record Change(String column, String from, String to) {
    }

    /** Whether it can be brought in. */
    public boolean usable() {
        return faults.isEmpty();
    }

    /** How many units it would do this to. */
    public long count(Effect effect) {
        return rows.stream().filter(row -> row.effect() == effect).count();
    }

    /** In a few words, such as {@code 3 new, 1 changed, 36 the same}. */
    public String sum() {
        return count(Effect.NEW) + " new, " + count(Effect.CHANGED) + " changed, " + count(Effect.SAME) + " the same";
    }
}
