package pairwright.model;

/** A figure as the facts give it: a low and a high that cover most of the class, and the one to use when nothing more is known. */
public record Range(double low, double typical, double high) {
}
