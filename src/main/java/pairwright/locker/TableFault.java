package pairwright.locker;

/**
 * Something wrong in a table.
 *
 * @param line of the file, counted from 1, in which the row begins
 * @param column name of the column; null where it is about the whole row or file
 * @param value what stands there, shortened; empty for nothing
 * @param says what is wrong, and then what to do
 */
public record TableFault(int line, String column, String value, String says) {
    /** All of it in one sentence, such as {@code line 3, column massKg, "heavy": is not a number. ...}. */
    public String sentence() {
        return "line " + line + (column == null ? "" : ", column " + column) + (value.isEmpty() ? "" : ", \"" + value + "\"") + ": " + says;
    }
}
