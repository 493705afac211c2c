package pairwright.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/** Writes a table as CSV (RFC 4180): commas, decimals with a point, lines that end with CR LF. */
final class Csv {
    private static final String FORMULA = "=+-@";

    private Csv() {
    }

    static String of(List<String> columns, List<List<String>> rows) {
        StringBuilder all = new StringBuilder();
        line(all, columns);
        rows.forEach(row -> line(all, row));
        return all.toString();
    }

    /** A cell: numbers to a hundredth, texts so that no spreadsheet takes them for a formula; empty for null. */
    static String text(Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof Double number) {
            return BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString();
        }
        String text = value.toString();
        String bare = text.strip(); // some spreadsheets look past blanks
        return value instanceof Number || bare.isEmpty() || FORMULA.indexOf(bare.charAt(0)) < 0 ? text : "'" + text;
    }

    private static void line(StringBuilder all, List<String> cells) {
        all.append(cells.stream().map(Csv::quoted).collect(Collectors.joining(","))).append("\r\n");
    }

    private static String quoted(String cell) {
        return cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r') ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
