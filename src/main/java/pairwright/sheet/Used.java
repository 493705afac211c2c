package pairwright.sheet;

import java.util.function.Supplier;
import pairwright.advice.Knowledge;

/** Remembers by what an answer was given, so that a page names the entries and rules of that answer. For one request. */
final class Used implements Supplier<Knowledge> {
    private final Supplier<Knowledge> known;
    private Knowledge last;

    Used(Supplier<Knowledge> known) {
        this.known = known;
        this.last = known.get();
    }

    @Override
    public Knowledge get() {
        last = known.get();
        return last;
    }

    Knowledge last() {
        return last;
    }
}
