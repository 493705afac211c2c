package pairwright.model;

/** A figure as the facts give it: a low and a high that cover most of the class, and the one to use when nothing more is known. */
public record Range(double low, double typical, double high) {
    /** The same range with its typical figure moved: -1 to the low end, 1 to the high end, 0 not at all. */
    public Range moved(double toward) {
        return toward == 0 ? this : new Range(low, typical + toward * (toward < 0 ? typical - low : high - typical), high);
    }
}
