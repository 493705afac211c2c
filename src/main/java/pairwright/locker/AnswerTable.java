package pairwright.locker;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The answers of a class as a CSV file: one row for each item of a bench, in columns that are named in the first line. Semicolons may part the cells as well.
 *
 * @param rows in the order of the file
 * @param faults of its form, in the order of the file
 */
public record AnswerTable(List<Row> rows, List<TableFault> faults) {
    public static final List<String> COLUMNS = List.of("bench", "item", "answer");
    private static final int MOST_ROWS = 10_000;
    private static final int MOST_CHARACTERS = 2_000_000;

    public AnswerTable {
        rows = List.copyOf(rows);
        faults = List.copyOf(faults);
    }

    /**
     * One item of one bench, as it stands there.
     *
     * @param line of the file in which it begins, from 1
     */
    public record Row(int line, String bench, String item, String answer) {
    }

    /** Reads a file as far as it can be read. */
    public static AnswerTable read(String text) {
        List<Row> rows = new ArrayList<>();
        List<TableFault> faults = new ArrayList<>();
        if (text.length() > MOST_CHARACTERS) {
            faults.add(new TableFault(1, null, "", "the file has " + text.length() + " characters, more than the " + MOST_CHARACTERS + " that are read at once. Split it"));
            return new AnswerTable(rows, faults);
        }
        String bare = text.startsWith("\uFEFF") ? text.substring(1) : text;
        long last = 0;
        List<String> header = null;
        try (CSVParser parser = CSVParser.parse(new StringReader(bare), TableFile.format(separator(bare)))) {
            for (CSVRecord record : parser) {
                int line = (int) last + 1;
                last = parser.getCurrentLineNumber();
                if (record.stream().allMatch(String::isBlank)) {
                    continue;
                }
                if (header == null) {
                    header = header(record, line, faults);
                } else if (rows.size() == MOST_ROWS) {
                    faults.add(new TableFault(line, null, "", "the file has more than the " + MOST_ROWS + " rows that are read at once. Split it"));
                    break;
                } else {
                    rows.add(row(record, line, header, faults));
                }
            }
        } catch (UncheckedIOException | IOException broken) {
            faults.add(new TableFault((int) last + 1, null, "", "from this line on the quotes do not match up. Put double quotes around the whole cell, write a double quote "
                    + "within it twice, and close each"));
        }
        if (header == null && faults.isEmpty()) {
            faults.add(new TableFault(1, null, "", "there is nothing in the file. Begin it with the line " + String.join(",", COLUMNS)));
        }
        return new AnswerTable(faults.stream().anyMatch(fault -> fault.line() == 1) ? List.of() : rows, faults);
    }

    private static char separator(String text) {
        return text.stripLeading().lines().findFirst().orElse("").contains(";") ? ';' : ',';
    }

    private static List<String> header(CSVRecord record, int line, List<TableFault> faults) {
        List<String> names = record.stream().map(name -> name.strip().toLowerCase(Locale.ROOT)).toList();
        Stream.concat(names.stream(), COLUMNS.stream()).distinct().forEach(name -> {
            long there = names.stream().filter(name::equals).count();
            if (!COLUMNS.contains(name)) {
                faults.add(new TableFault(line, null, CellText.shown(name), "there is no such column. Name the columns " + String.join(", ", COLUMNS)));
            } else if (there != 1) {
                faults.add(new TableFault(line, name, "", there == 0 ? "the column is missing. Name the columns " + String.join(", ", COLUMNS) : "the column is there twice. Keep one of the two"));
            }
        });
        return names;
    }

    private static Row row(CSVRecord record, int line, List<String> header, List<TableFault> faults) {
        for (int i = header.size(); i < record.size(); i++) {
            if (!record.get(i).isBlank()) {
                faults.add(new TableFault(line, null, CellText.shown(record.get(i)), "stands in cell " + (i + 1) + " and there are only " + header.size()
                        + " columns. Put a cell that holds the separator between double quotes"));
            }
        }
        List<String> cells = COLUMNS.stream().map(column -> {
            int at = header.indexOf(column);
            return at >= 0 && at < record.size() ? CellText.unguarded(record.get(at)).strip() : "";
        }).toList();
        return new Row(line, cells.get(0), cells.get(1), cells.get(2));
    }
}
