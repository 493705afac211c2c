package pairwright.search;

/** What a phrase can be. Each kind is looked for on its own. */
enum Kind {
    SOURCE, WAY, DYNAMIC, ROOM, CHARACTER, TECHNIQUE, FAULT, LIMIT, BEFORE_NEIGHBOUR, AFTER_NEIGHBOUR, CIRCUMSTANCE, FAMILY, MIC_TYPE,
    MODIFIER, NUMBER, QUANTITY, PLAYER, IGNORED;

    /** Whether a phrase of this kind keeps its meaning inside a longer phrase of that kind: the bass of a "slap bass". */
    boolean survivesInside(Kind longer) {
        return switch (this) {
            case SOURCE -> longer == WAY || longer == CIRCUMSTANCE;
            case ROOM -> longer == CIRCUMSTANCE;
            case CIRCUMSTANCE -> longer == SOURCE;
            // "bass DI and amp" names the source and the technique
            case TECHNIQUE -> longer == SOURCE;
            case QUANTITY -> longer == BEFORE_NEIGHBOUR || longer == AFTER_NEIGHBOUR;
            default -> false;
        };
    }

    /**
     * Letters a word of this kind has at least, to be taken for what was meant: the common short words are too near
     * to each other.
     */
    int shortestCorrected() {
        return switch (this) {
            case SOURCE, ROOM, FAMILY, MIC_TYPE, LIMIT -> 4;
            case WAY -> 5;
            default -> 6;
        };
    }

    /** Whether a misspelt word may be read as one of these. */
    boolean isCorrected() {
        return switch (this) {
            case MODIFIER, NUMBER, QUANTITY, PLAYER, IGNORED -> false;
            default -> true;
        };
    }
}
