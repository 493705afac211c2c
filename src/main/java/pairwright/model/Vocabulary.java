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
        List<String> ignored,
        List<SourceWords> names,
        List<Opposite> opposites,
        List<Combination> combinations,
        List<ModifierWords> modifiers,
        List<NumberWords> numbers,
        List<QuantityWords> quantities,
        List<String> players) {

    /** A list that is left out is empty. */
    public Vocabulary {
        names = names == null ? List.of() : List.copyOf(names);
        opposites = opposites == null ? List.of() : List.copyOf(opposites);
        combinations = combinations == null ? List.of() : List.copyOf(combinations);
        modifiers = modifiers == null ? List.of() : List.copyOf(modifiers);
        numbers = numbers == null ? List.of() : List.copyOf(numbers);
        quantities = quantities == null ? List.of() : List.copyOf(quantities);
        players = players == null ? List.of() : List.copyOf(players);
    }

    /** Without the finer words of a sentence. */
    public Vocabulary(List<WayWords> ways, List<Dynamic> dynamics, List<LimitWords> limits, List<NeighbourWords> neighbours,
            List<Ambiguity> ambiguities, List<Circumstance> circumstances, List<FamilyWords> families, List<String> ignored) {
        this(ways, dynamics, limits, neighbours, ambiguities, circumstances, families, ignored, null, null, null, null, null, null, null);
    }

    /** A way of playing and its words. */
    public record WayWords(String id, String name, List<String> words) {
    }

    /** How loud, in words; levelDb is added to the source's levels. */
    public record Dynamic(String id, String name, List<String> words, double levelDb) {
    }

    /** A limit in words, and the limits it sets. */
    public record LimitWords(String id, String name, List<String> words, Limits sets) {
    }

    /**
     * Words that make a source beside them a neighbour, and where it then stands.
     *
     * @param distanceM from the microphone, unless the sentence says
     * @param angleDegrees at the microphone, between what is recorded and the neighbour
     * @param follows true where the words come after the neighbour's name ("drums behind"), false where before ("next to the drums")
     */
    public record NeighbourWords(String id, String name, List<String> words, double distanceM, double angleDegrees,
            boolean follows) {
    }

    /**
     * Words that name more than one source: every reading is offered, the first is used unless something decides.
     *
     * @param says what they may mean, in a sentence
     * @param farApart true where an answer for the wrong reading would be of no use: then none is used unless something decides
     * @param clues words elsewhere in the sentence that point at a reading
     */
    public record Ambiguity(List<String> words, List<String> readings, String says, boolean farApart, List<Clue> clues) {

        public Ambiguity {
            clues = clues == null ? List.of() : List.copyOf(clues);
        }
    }

    /** Words that point at one reading of an ambiguous word: "jazz" at the double bass. */
    public record Clue(String reading, List<String> words) {
    }

    /** Something about the session that rules look at: stereo, mono, one-performer, children, live, shock. */
    public record Circumstance(String id, String name, List<String> words) {
    }

    /** What people call the families: "condensers", "ribbons". */
    public record FamilyWords(String id, String name, List<String> words, List<MicFamily> families) {
    }

    /** More names of a source: its players, turns of phrase, pictures. */
    public record SourceWords(String source, List<String> words) {
    }

    /**
     * What is wanted when there is too much of a character.
     *
     * @param character there is too much of
     * @param faults words that always complain of it
     * @param wants the character that is wanted instead
     * @param ratherThanTooMuch the character that is wanted where it should not be "too" much
     */
    public record Opposite(String character, List<String> faults, String wants, String ratherThanTooMuch) {
    }

    /**
     * Sources and something said of them that together name another source.
     *
     * @param of one source of each of these lists must be named
     * @param with the id of a way or a circumstance that must be said
     * @param source what is then meant
     */
    public record Combination(List<List<String>> of, String with, String source) {
    }

    /** Small words that change the next one: very, too, less, not-too, without, only, and. */
    public record ModifierWords(String id, List<String> words) {
    }

    /** A number in words. */
    public record NumberWords(double value, List<String> words) {
    }

    /**
     * What is counted or measured.
     *
     * @param sets mics, preampGainDb or distanceM
     * @param factor what one of it is worth there: 0.01 for a centimetre
     */
    public record QuantityWords(String id, String name, List<String> words, String sets, double factor) {
    }
}
