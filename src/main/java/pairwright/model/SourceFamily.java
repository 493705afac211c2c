package pairwright.model;

/** Families of sources, for reading and for folders. */
public enum SourceFamily implements Word {
    DRUM_KIT("drum-kit"),
    HAND_PERCUSSION("hand-percussion"),
    ORCHESTRAL_PERCUSSION("orchestral-percussion"),
    SMALL_PERCUSSION("small-percussion"),
    TUNED_PERCUSSION("tuned-percussion"),
    BOWED_STRINGS("bowed-strings"),
    PLUCKED_STRINGS("plucked-strings"),
    STRUCK_STRINGS("struck-strings"),
    KEYBOARDS("keyboards"),
    FREE_REEDS("free-reeds"),
    WOODWINDS("woodwinds"),
    BRASS("brass"),
    VOICES("voices"),
    AMPLIFIERS("amplifiers"),
    DIRECT("direct"),
    ENSEMBLES("ensembles"),
    AMBIENCE("ambience");

    private final String id;

    SourceFamily(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
