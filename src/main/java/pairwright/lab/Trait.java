package pairwright.lab;

import java.util.Optional;
import pairwright.advice.OfferedMic;
import pairwright.model.Predicted;

/** Something by which two sounds are told apart, and the predicted number of it. */
enum Trait {
    LOW("low", "low end, 63 to 250 Hz", "the weight of the lowest notes"),
    PRESENCE("presence", "presence, 2 to 4 kHz", "how near consonants, bows and sticks come"),
    AIR("air", "air, 8 to 16 kHz", "breath and shimmer over all else"),
    ROOM("room", "room", "what is left when a note stops");

    /** What of two is told for certain once levels are matched, and what nobody tells. */
    private static final double TOLD_DB = 2;
    private static final double UNTOLD_DB = 0.5;
    /** More is heard at once. */
    static final double PLAIN_DB = 5;

    /** Which of two has more of it. */
    enum Which {
        FIRST, SECOND, NEITHER
    }

    private final String id;
    private final String name;
    private final String listen;

    Trait(String id, String name, String listen) {
        this.id = id;
        this.name = name;
        this.listen = listen;
    }

    static Trait of(String id) {
        return java.util.Arrays.stream(values()).filter(trait -> trait.id.equals(id)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The exercise asks for \"" + id + "\", of which nothing is known"));
    }

    String id() {
        return id;
    }

    /** As it is asked for. */
    String asWords() {
        return name;
    }

    /** What to listen for. */
    String listen() {
        return listen;
    }

    /** How much more of it the second has, dB; 0 where no number tells. */
    double moreDb(OfferedMic first, OfferedMic second) {
        return of(second.predicted()) - of(first.predicted());
    }

    private double of(Predicted predicted) {
        return switch (this) {
            case LOW -> predicted.lowDb();
            case PRESENCE -> predicted.presenceDb();
            case AIR -> predicted.airDb();
            case ROOM -> predicted.directToReverbDb() == null ? 0 : -predicted.directToReverbDb();
        };
    }

    /** Empty where one could argue. */
    Optional<Which> which(OfferedMic first, OfferedMic second) {
        double moreDb = moreDb(first, second);
        return Math.abs(moreDb) <= UNTOLD_DB ? Optional.of(Which.NEITHER) : Math.abs(moreDb) < TOLD_DB ? Optional.empty() : Optional.of(moreDb > 0 ? Which.SECOND : Which.FIRST);
    }
}
