package pairwright.rules;

/**
 * One thing wrong with a rule file, in words a person can act on.
 *
 * @param file as the author knows it
 * @param line from 1; below 1 where it is not known
 * @param column from 1; below 1 where it is not known
 * @param rule which rule; null for the file as a whole
 * @param what is wrong, and then what to do
 */
public record Problem(String file, int line, int column, String rule, String what) {
    /** A place of which only the line is known, or not even that. */
    Problem(String file, int line, String rule, String what) {
        this(file, line, -1, rule, what);
    }

    @Override
    public String toString() {
        return file + (line > 0 ? ":" + line : "") + (line > 0 && column > 0 ? ":" + column : "") + (rule == null ? "" : ": rule \"" + rule + "\"") + ": " + what;
    }
}
