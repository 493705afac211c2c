package pairwright.sheet;

import java.util.List;
import pairwright.advice.Knowledge;
import pairwright.model.Fault;
import pairwright.session.LineUp;

/** How a line-up is written down: in a document of the locker, in a file. Whoever serves these pages knows the formats; the pages do not. */
public interface SessionText {
    /** As it is kept. */
    String written(LineUp lineUp);

    /** What was kept, or what somebody brings along. */
    Read read(String text, Knowledge known);

    /** The line-up to try it with. */
    String demo();

    /**
     * What was read.
     *
     * @param lineUp null where there are faults
     * @param assumed what was not said and is taken as usual, in sentences
     * @param faults all of them, each with its place
     */
    record Read(LineUp lineUp, List<String> assumed, List<Fault> faults) {
    }
}
