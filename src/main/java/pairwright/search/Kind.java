package pairwright.search;

/** What a phrase can be. Each kind is looked for on its own. */
enum Kind {
    SOURCE, WAY, DYNAMIC, ROOM, CHARACTER, FAULT, LIMIT, BEFORE_NEIGHBOUR, AFTER_NEIGHBOUR, CIRCUMSTANCE, FAMILY, MIC_TYPE,
    MODIFIER, NUMBER, QUANTITY, IGNORED;

    /** Whether a phrase of this kind keeps its meaning inside a longer phrase of that kind: the bass of a "slap bass". */
    boolean survivesInside(Kind longer) {
        return switch (this) {
            case SOURCE -> longer == WAY || longer == CIRCUMSTANCE;
            case ROOM -> longer == CIRCUMSTANCE;
            case CIRCUMSTANCE -> longer == SOURCE;
            case QUANTITY -> longer == BEFORE_NEIGHBOUR || longer == AFTER_NEIGHBOUR;
            default -> false;
        };
    }

    /** Whether a misspelt word may be read as one of these. */
    boolean isCorrected() {
        return switch (this) {
            case MODIFIER, NUMBER, QUANTITY, IGNORED -> false;
            default -> true;
        };
    }
}
