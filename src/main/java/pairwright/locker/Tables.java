package pairwright.locker;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Rows from one database into another with the same tables. */
final class Tables {
    /** So many are in memory at a time. */
    private static final int ROWS = 1_000;

    private Tables() {
    }

    /**
     * Takes everything out and puts in what the other holds.
     *
     * @param tables none of which refers to a later one
     */
    static void replace(Sql from, Sql to, List<String> tables) throws SQLException {
        List<String> backwards = new ArrayList<>(tables);
        Collections.reverse(backwards);
        for (String table : backwards) {
            to.run("DELETE FROM " + table);
        }
        for (String table : tables) {
            copy(from, to, table);
        }
    }

    private static void copy(Sql from, Sql to, String table) throws SQLException {
        List<Object[]> rows = new ArrayList<>();
        List<String> columns = from.columns(table);
        String insert = "INSERT INTO " + table + " (" + String.join(", ", columns) + ") VALUES (" + String.join(", ", Collections.nCopies(columns.size(), "?")) + ")";
        from.each("SELECT " + String.join(", ", columns) + " FROM " + table, row -> {
            Object[] values = new Object[columns.size()];
            for (int column = 0; column < values.length; column++) {
                values[column] = row.getObject(column + 1);
            }
            rows.add(values);
            if (rows.size() == ROWS) {
                to.runAll(insert, rows);
                rows.clear();
            }
        });
        to.runAll(insert, rows);
    }
}
