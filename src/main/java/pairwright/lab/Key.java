package pairwright.lab;

import java.util.List;

/**
 * What is right.
 *
 * @param best an answer that earns everything
 * @param items the same item by item
 * @param lesson what to say when the sheets come back, in sentences
 */
public record Key(Answer best, List<Entry> items, List<String> lesson) {
    public Key {
        items = List.copyOf(items);
        lesson = lesson.stream().map(Signs::minus).toList();
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
