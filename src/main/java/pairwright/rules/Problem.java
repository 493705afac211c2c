package pairwright.rules;

/**
 * One thing wrong with a rule file, in words a person can act on.
 *
 * @param file as the author knows it
 * @param line from 1; below 1 where it is not known
 * @param rule which rule; null for the file as a whole
 * @param what is wrong, and then what to do
 */
public record Problem(String file, int line, String rule, String what) {

    @Override
    public String toString() {
        return file + (line > 0 ? ":" + line : "") + (rule == null ? "" : ": rule \"" + rule + "\"") + ": " + what;
    }
}
