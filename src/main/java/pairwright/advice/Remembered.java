package pairwright.advice;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pairwright.model.MicType;
import pairwright.model.Position;
import pairwright.model.Question;

/** What was kept before, as far as it concerns one question: for each type and place the narrowest there is. */
final class Remembered {
    private final HouseMemory memory;
    private final Map<Place, Kept> narrowest = new HashMap<>();

    private record Place(String micType, String position) {
    }

    private Remembered(HouseMemory memory, List<Kept> all) {
        this.memory = memory;
        all.stream().filter(kept -> kept.tried() > 0).forEach(kept -> narrowest.merge(new Place(kept.micType(), kept.position()), kept, Remembered::narrower));
    }

    static Remembered of(HouseMemory memory, Question question) {
        return new Remembered(memory, question.source() == null ? List.of() : memory.of(question.source(), question.room(), question.player()));
    }

    private static Kept narrower(Kept one, Kept other) {
        return narrow(one) > narrow(other) ? one : narrow(other) > narrow(one) ? other
                : new Kept(one.micType(), one.position(), one.kept() + other.kept(), one.tried() + other.tried(), one.room(), one.player());
    }

    private static int narrow(Kept kept) {
        return (kept.player() == null ? 0 : 2) + (kept.room() == null ? 0 : 1);
    }

    /** To be asked again for another question. */
    HouseMemory memory() {
        return memory;
    }

    /** Null where it never stood there. */
    Kept of(MicType mic, Position position) {
        return narrowest.isEmpty() ? null : narrowest.get(new Place(mic.id(), position.id()));
    }

    /** Whose sessions those were, in words that follow them. */
    static String where(Kept kept) {
        return kept.player() == null ? kept.room() == null ? "here" : "in this room"
                : "with this player" + (kept.room() == null ? "" : " in this room");
    }
}
