package pairwright.model;

import java.util.List;

/** The words of catalogue/words/: what people say beside the names of entries. */
public record Vocabulary(
        List<WayWords> ways,
        List<Dynamic> dynamics,
        List<LimitWords> limits,
        List<NeighbourWords> neighbours,
        List<Ambiguity> ambiguities,
        List<Circumstance> circumstances,
        List<FamilyWords> families,
        List<String> ignored) {

    /** A way of playing and its words. */
    public record WayWords(String id, String name, List<String> words) {
    }

    /** How loud, in words; levelDb is added to the source's levels. */
    public record Dynamic(String id, String name, List<String> words, double levelDb) {
    }

    /** A limit in words, and the limits it sets. */
    public record LimitWords(String id, String name, List<String> words, Limits sets) {
    }

    /** Words that make the source named after them a neighbour, and where it then stands. */
    public record NeighbourWords(String id, String name, List<String> words, double distanceM, double angleDegrees) {
    }

    /** A word that names more than one source: every reading is offered, the first is used. */
    public record Ambiguity(List<String> words, List<String> readings, String says) {
    }

    /** Something about the session that rules look at: stereo, mono, one-performer, children, live. */
    public record Circumstance(String id, String name, List<String> words) {
    }

    /** What people call the families: "condensers", "ribbons". */
    public record FamilyWords(String id, String name, List<String> words, List<MicFamily> families) {
    }
}
