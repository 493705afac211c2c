package pairwright.locker;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Every value of every table, the same whatever database keeps them. */
final class Contents {
    private Contents() {
    }

    /** Names of the tables and their columns. */
    static Map<String, List<String>> columns(Database database) {
        String names = database.dialect().equals("sqlite")
                ? "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite%'"
                : "SELECT table_name FROM information_schema.tables WHERE table_schema = current_schema()";
        return database.read(sql -> {
            Map<String, List<String>> columns = new TreeMap<>();
            for (String table : sql.all(names, row -> row.getString(1))) {
                columns.put(table, sql.columns(table));
            }
            return columns;
        });
    }

    static Map<String, List<String>> of(Database database, Map<String, List<String>> columns) {
        return database.read(sql -> {
            Map<String, List<String>> contents = new TreeMap<>();
            for (Map.Entry<String, List<String>> table : columns.entrySet()) {
                contents.put(table.getKey(), sql.all("SELECT " + String.join(", ", table.getValue()) + " FROM " + table.getKey(),
                        row -> values(row, table.getValue())).stream().sorted().toList());
            }
            return contents;
        });
    }

    static Map<String, List<String>> of(Database database) {
        return of(database, columns(database));
    }

    /** But for when its tables and backups were made, the two revisions, and that it was restored, which differ by design. */
    static Map<String, List<String>> restored(Database database) {
        Map<String, List<String>> columns = columns(database);
        columns.remove("locker_version");
        columns.put("state", columns.get("state").stream().filter(column -> !column.endsWith("revision") && !column.equals("backed_up_ts")).toList());
        Map<String, List<String>> contents = of(database, columns);
        contents.replaceAll((table, rows) -> rows.stream().filter(row -> !row.contains("what=restored") && !row.contains("id=locker,")).toList());
        return contents;
    }

    private static String values(ResultSet row, List<String> columns) throws SQLException {
        List<String> values = new ArrayList<>();
        for (int column = 1; column <= columns.size(); column++) {
            Object value = row.getObject(column);
            values.add(columns.get(column - 1) + "=" + (value instanceof Number number && !(value instanceof Double) ? number.longValue() : value));
        }
        return values.toString();
    }
}
