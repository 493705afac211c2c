package pairwright.locker;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import pairwright.model.Nearest;

/**
 * The cells of a CSV file of units, as they are written.
 *
 * @param columns those it has
 * @param decimalComma whether semicolons part its cells, and so commas may stand in its numbers
 * @param rows without the empty ones
 */
record TableFile(Set<UnitColumn> columns, boolean decimalComma, List<Row> rows) {
    static final int MOST_ROWS = 10_000;
    static final int MOST_CHARACTERS = 8_000_000;

    /**
     * @param line of the file in which it begins, from 1
     * @param cells of every column the file has
     */
    record Row(int line, Map<UnitColumn, String> cells) {
    }

    /** Reads a file as far as it can be read, and adds every fault of its form. */
    static TableFile read(String text, TableFaults faults) {
        TableFile nothing = new TableFile(Set.of(), false, List.of());
        if (text.length() > MOST_CHARACTERS) {
            faults.add(new TableFault(1, null, "", "the file has " + text.length() + " characters, more than the " + MOST_CHARACTERS
                    + " that are read at once. Split it"));
            return nothing;
        }
        String bare = text.startsWith("\uFEFF") ? text.substring(1) : text;
        char separator = separator(bare);
        List<Row> rows = new ArrayList<>();
        Reading reading = new Reading(bare, faults);
        List<Optional<UnitColumn>> header = null;
        try (CSVParser parser = CSVParser.parse(new StringReader(bare), format(separator))) {
            for (Iterator<CSVRecord> records = parser.iterator(); records.hasNext(); ) {
                CSVRecord record = records.next();
                int line = reading.lineAt(record.getCharacterPosition());
                if (record.stream().allMatch(String::isBlank)) {
                    continue;
                }
                if (header == null) {
                    header = reading.header(line, record);
                } else if (rows.size() == MOST_ROWS) {
                    faults.add(new TableFault(line, null, "", "the file has more than the " + MOST_ROWS + " rows that are read at once. Split it"));
                    break;
                } else {
                    rows.add(reading.row(line, record, header));
                }
            }
        } catch (UncheckedIOException | IOException broken) {
            reading.broken();
        }
        if (header == null && faults.none()) {
            faults.add(new TableFault(1, null, "", "there is nothing in the file. Begin it with a line of column names, such as id,micType,label"));
        }
        Set<UnitColumn> columns = new HashSet<>();
        (header == null ? List.<Optional<UnitColumn>>of() : header).forEach(column -> column.ifPresent(columns::add));
        return new TableFile(columns, separator == ';', rows);
    }

    static CSVFormat format(char separator) {
        return CSVFormat.RFC4180.builder().setDelimiter(separator).setRecordSeparator("\r\n").setIgnoreEmptyLines(false).get();
    }

    /** Whichever sign parts the first line into more names that are known; a comma if neither does better. */
    private static char separator(String text) {
        String first = text.stripLeading().lines().findFirst().orElse("");
        return known(first, ";") > known(first, ",") ? ';' : ',';
    }

    private static long known(String line, String separator) {
        return List.of(line.split(separator)).stream().filter(name -> UnitColumn.named(name.replace("\"", "")).isPresent()).count();
    }

    /** What is kept while a file is read from its top to its end. */
    private static final class Reading {
        private final String text;
        private final TableFaults faults;
        private int line = 1;
        private int at;

        Reading(String text, TableFaults faults) {
            this.text = text;
            this.faults = faults;
        }

        /** The line a place of the text is in; places are asked for from the first to the last. */
        int lineAt(long place) {
            for (; at < place && at < text.length(); at++) {
                boolean half = text.charAt(at) == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n';
                line += !half && (text.charAt(at) == '\n' || text.charAt(at) == '\r') ? 1 : 0;
            }
            return line;
        }

        List<Optional<UnitColumn>> header(int line, CSVRecord record) {
            List<Optional<UnitColumn>> columns = new ArrayList<>();
            Set<UnitColumn> seen = new HashSet<>();
            for (String name : record) {
                Optional<UnitColumn> column = UnitColumn.named(name);
                columns.add(column);
                String shown = CellText.shown(name.strip());
                if (column.isEmpty() && name.isBlank()) {
                    faults.add(new TableFault(line, null, "", "column " + columns.size() + " has no name. Name it, or take it out"));
                } else if (column.isEmpty()) {
                    faults.add(new TableFault(line, shown, "", "there is no such column. " + Nearest.remedy(shown, UnitColumn.titles())));
                } else if (!seen.add(column.get())) {
                    faults.add(new TableFault(line, shown, "", "the column is there twice. Keep one of the two"));
                }
            }
            return columns;
        }

        Row row(int line, CSVRecord record, List<Optional<UnitColumn>> header) {
            Map<UnitColumn, String> cells = new EnumMap<>(UnitColumn.class);
            for (int i = 0; i < header.size(); i++) {
                String cell = i < record.size() ? record.get(i) : "";
                header.get(i).ifPresent(column -> cells.put(column, cell));
            }
            for (int i = header.size(); i < record.size(); i++) {
                if (!record.get(i).isBlank()) {
                    faults.add(new TableFault(line, null, CellText.shown(record.get(i)), "stands in cell " + (i + 1) + " and there are only "
                            + header.size() + " columns. Put a cell that holds the separator between double quotes"));
                }
            }
            return new Row(line, cells);
        }

        /** The reader of CSV gave up: nearly always a quote that is nowhere closed, or one in the middle of a cell. */
        void broken() {
            faults.add(new TableFault(line, null, "", "from this line on the quotes do not match up. Put double quotes around the whole cell, write a "
                    + "double quote within it twice, and close each"));
        }
    }
}
