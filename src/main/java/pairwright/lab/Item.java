package pairwright.lab;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** One thing that is asked. Ids are unique within an exercise, and those of options within an item. */
public sealed interface Item {
    String id();

    /** The question, in a sentence. */
    String asks();

    /**
     * One of what can be answered.
     *
     * @param id what is written down; tells nothing of being right
     * @param says what it means
     */
    record Opt(String id, String says) {
        private static final String LETTERS = "abcdefghijklmnopqrstuvwxyz";

        /** Options in the order given, lettered. */
        public static List<Opt> lettered(List<String> says) {
            return java.util.stream.IntStream.range(0, says.size()).mapToObj(i -> new Opt(LETTERS.substring(i, i + 1), says.get(i))).toList();
        }

        /** By the letter that each gets so, what is behind it. */
        static Map<String, String> behind(List<String> ids) {
            return lettered(ids).stream().collect(Collectors.toMap(Opt::id, Opt::says));
        }
    }

    /** One of some. */
    record OneOf(String id, String asks, List<Opt> options) implements Item {
        public OneOf {
            asks = Signs.minus(asks);
            options = List.copyOf(options);
        }
    }

    /**
     * Some of some.
     *
     * @param pick how many; null where that is part of the question
     */
    record SomeOf(String id, String asks, List<Opt> options, Integer pick) implements Item {
        public SomeOf {
            asks = Signs.minus(asks);
            options = List.copyOf(options);
        }
    }

    /** All of them, in an order. */
    record InOrder(String id, String asks, List<Opt> options) implements Item {
        public InOrder {
            asks = Signs.minus(asks);
            options = List.copyOf(options);
        }
    }

    /**
     * A number.
     *
     * @param unit it is asked in; "1" for none
     * @param least smaller than this no sensible person writes
     * @param most larger than this nobody writes
     */
    record Amount(String id, String asks, String unit, double least, double most) implements Item {
        public Amount {
            asks = Signs.minus(asks);
        }
    }

    /**
     * A place on a picture, and where a microphone looks from there.
     *
     * @param picture which of the pictures shown, from 1
     * @param leftM least x, metres
     * @param rightM most x
     * @param lowM least y
     * @param highM most y
     */
    record Spot(String id, String asks, int picture, double leftM, double rightM, double lowM, double highM) implements Item {
    }
}
