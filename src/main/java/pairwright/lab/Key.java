package pairwright.lab;

import java.util.List;
import pairwright.model.MicFamily;
import pairwright.model.Pattern;

/**
 * What is right.
 *
 * @param best an answer that earns everything
 * @param items the same item by item
 * @param lesson what to say when the sheets come back, in sentences
 * @param spots what is right of places on a picture, to be drawn into it; empty where none is asked for
 */
public record Key(Answer best, List<Entry> items, List<String> lesson, List<Spots> spots) {
    public Key {
        items = List.copyOf(items);
        spots = List.copyOf(spots);
        lesson = lesson.stream().map(Signs::minus).toList();
    }

    /** One in which no place is asked for. */
    public Key(Answer best, List<Entry> items, List<String> lesson) {
        this(best, items, lesson, List.of());
    }

    /**
     * Where the microphone of an item may stand.
     *
     * @param item id; the best is that of the best answer
     * @param source what it is there for, as people call it
     * @param family what it is
     * @param pattern as it is set
     * @param nullDegrees off its axis; null where it has none
     * @param asGood places that were tried and count as much if it is turned well; others may too
     * @param sideM how far apart they were tried
     */
    public record Spots(String item, String source, MicFamily family, Pattern pattern, Double nullDegrees, List<At> asGood, double sideM) {
        public Spots {
            asGood = List.copyOf(asGood);
        }
    }

    /** A place on a picture, metres. */
    public record At(double xM, double yM) {
    }

    /**
     * What is right of one item.
     *
     * @param item id
     * @param right in words
     * @param accepted ids of every option that earns as much, where one of some is asked; else empty
     * @param why the reason, with the way there where it is a number
     * @param rests ids of the rules and calculations behind it
     */
    public record Entry(String item, String right, List<String> accepted, List<String> why, List<String> rests) {
        public Entry {
            right = Signs.minus(right);
            accepted = List.copyOf(accepted);
            why = why.stream().map(Signs::minus).toList();
            rests = List.copyOf(rests);
        }
    }
}
