package pairwright.catalogue;

import java.nio.file.Path;

/**
 * Something wrong in a file.
 *
 * @param file the file
 * @param line from 1
 * @param column from 1
 * @param says what is wrong, with the value, and then what to do
 */
public record FileFault(Path file, int line, int column, String says) {
    @Override
    public String toString() {
        return file + ":" + line + ":" + column + ": " + says;
    }
}
