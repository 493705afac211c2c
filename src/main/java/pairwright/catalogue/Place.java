package pairwright.catalogue;

import org.yaml.snakeyaml.error.Mark;

/** A place in a file; line and column from 1. */
public record Place(int line, int column) {
    static final Place START = new Place(1, 1);

    static Place of(Mark mark) {
        return mark == null ? START : new Place(mark.getLine() + 1, mark.getColumn() + 1);
    }
}
