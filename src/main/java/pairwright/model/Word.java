package pairwright.model;

/** A constant that goes by one word in files, rules, pages and JSON. */
public interface Word {
    /** The word, in kebab case. */
    String id();
}
