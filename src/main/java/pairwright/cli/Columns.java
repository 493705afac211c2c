package pairwright.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A table that fits a terminal of 80 columns: what is too wide goes on in the next line of its column. */
final class Columns {
    private static final int BETWEEN = 2;
    private static final int NARROWEST = 8;
    private static final String BELOW = "    ";

    private Columns() {
    }

    /** Rows under their titles; every row has as many cells as there are titles, and a cell may be null. */
    static String of(List<String> titles, List<List<String>> rows) {
        return of(titles, rows, List.of());
    }

    /** The same with a text below each row, over the whole width; none where there are no texts. */
    static String of(List<String> titles, List<List<String>> rows, List<String> below) {
        List<List<String>> all = new ArrayList<>(List.of(titles));
        rows.forEach(row -> all.add(row.stream().map(cell -> cell == null ? "" : AnswerText.harmless(cell).strip()).toList()));
        int[] widths = widths(all, titles.size());
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < all.size(); i++) {
            write(all.get(i), widths, text);
            if (i > 0 && !below.isEmpty()) {
                AnswerText.wrapped(BELOW, BELOW, AnswerText.harmless(below.get(i - 1)), AnswerText.WIDTH).forEach(line -> text.append(line).append('\n'));
            }
        }
        return text.toString();
    }

    private static int[] widths(List<List<String>> rows, int columns) {
        int[] widths = new int[columns];
        rows.forEach(row -> {
            for (int i = 0; i < columns; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        });
        while (Arrays.stream(widths).sum() + BETWEEN * (columns - 1) > AnswerText.WIDTH) {
            int widest = 0;
            for (int i = 1; i < columns; i++) {
                widest = widths[i] >= widths[widest] ? i : widest;
            }
            if (widths[widest] <= NARROWEST) {
                break;
            }
            widths[widest]--;
        }
        return widths;
    }

    private static void write(List<String> row, int[] widths, StringBuilder text) {
        List<List<String>> cells = new ArrayList<>();
        for (int i = 0; i < widths.length; i++) {
            cells.add(row.get(i).isEmpty() ? List.of() : AnswerText.wrapped("", "", row.get(i), widths[i]));
        }
        int lines = cells.stream().mapToInt(List::size).max().orElse(0);
        for (int line = 0; line < lines; line++) {
            StringBuilder one = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                String piece = line < cells.get(i).size() ? cells.get(i).get(line) : "";
                one.append(piece).append(" ".repeat(Math.max(0, widths[i] - piece.length()) + BETWEEN));
            }
            text.append(one.toString().stripTrailing()).append('\n');
        }
    }
}
