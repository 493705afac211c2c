package pairwright.locker;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Statements within one transaction. What was read is read to its end and closed, so that nothing holds the transaction open. */
final class Sql {
    private static final int FETCH = 1_000;

    private final Connection connection;

    Sql(Connection connection) {
        this.connection = connection;
    }

    /** What is made of a row. */
    @FunctionalInterface
    interface Row<T> {
        T of(ResultSet row) throws SQLException;
    }

    /** Every row. Arguments are text, numbers or null. */
    <T> List<T> all(String query, Row<T> row, Object... with) throws SQLException {
        try (PreparedStatement statement = prepared(query, with); ResultSet result = statement.executeQuery()) {
            List<T> all = new ArrayList<>();
            while (result.next()) {
                all.add(row.of(result));
            }
            return all;
        }
    }

    /** What is done with a row. */
    @FunctionalInterface
    interface EachRow {
        void take(ResultSet row) throws SQLException;
    }

    /** One row after the other, for tables that need not fit into memory. */
    void each(String query, EachRow row) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(query)) {
            statement.setFetchSize(FETCH);
            try (ResultSet result = statement.executeQuery()) {
                while (result.next()) {
                    row.take(result);
                }
            }
        }
    }

    /** Names of the columns of a table, in their order. */
    List<String> columns(String table) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement("SELECT * FROM " + table + " WHERE 1 = 0"); ResultSet none = statement.executeQuery()) {
            List<String> names = new ArrayList<>();
            for (int column = 1; column <= none.getMetaData().getColumnCount(); column++) {
                names.add(none.getMetaData().getColumnName(column));
            }
            return names;
        }
    }

    /** The first row, if there is one. */
    <T> Optional<T> first(String query, Row<T> row, Object... with) throws SQLException {
        try (PreparedStatement statement = prepared(query, with); ResultSet result = statement.executeQuery()) {
            return result.next() ? Optional.of(row.of(result)) : Optional.empty();
        }
    }

    /** The one number a query is about. */
    long number(String query, Object... with) throws SQLException {
        return first(query, row -> row.getLong(1), with).orElseThrow(() -> new SQLException("no row for " + query));
    }

    /** Runs a statement that gives nothing back but how many rows it concerned. */
    int run(String statement, Object... with) throws SQLException {
        try (PreparedStatement prepared = prepared(statement, with)) {
            return prepared.executeUpdate();
        }
    }

    /** Runs one statement for many rows. */
    void runAll(String statement, List<Object[]> rows) throws SQLException {
        try (PreparedStatement prepared = connection.prepareStatement(statement)) {
            for (Object[] row : rows) {
                fill(prepared, row);
                prepared.addBatch();
            }
            prepared.executeBatch();
        }
    }

    /** A text as it can be kept: PostgreSQL has no room for the sign of number 0, and nothing that is looked for holds it. */
    static String kept(String text) {
        return text.replace('\0', '\ufffd');
    }

    /** A number that may be missing. */
    static Double numberOrNull(ResultSet row, String column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? null : value;
    }

    /** A whole number that may be missing. */
    static Long wholeOrNull(ResultSet row, String column) throws SQLException {
        long value = row.getLong(column);
        return row.wasNull() ? null : value;
    }

    private PreparedStatement prepared(String text, Object... with) throws SQLException {
        PreparedStatement statement = connection.prepareStatement(text);
        try {
            fill(statement, with);
        } catch (SQLException | RuntimeException fault) {
            statement.close();
            throw fault;
        }
        return statement;
    }

    private static void fill(PreparedStatement statement, Object... with) throws SQLException {
        for (int i = 0; i < with.length; i++) {
            if (with[i] == null) {
                statement.setNull(i + 1, Types.NULL);
            } else if (with[i] instanceof String text) {
                statement.setString(i + 1, kept(text));
            } else if (with[i] instanceof Double number) {
                statement.setDouble(i + 1, number);
            } else if (with[i] instanceof Number whole) {
                statement.setLong(i + 1, whole.longValue());
            } else {
                throw new IllegalArgumentException("not text, number or null: " + with[i].getClass());
            }
        }
    }
}
