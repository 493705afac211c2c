package pairwright.session.allocation;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One thing a seat can get.
 *
 * @param id unlike that of any other choice of its seat; the same set-up keeps it from plan to plan
 * @param use when it may be chosen
 * @param centipoints what it is worth, hundredths of a point; may be below 0
 * @param takes what it takes of each {@link Cap}, by name; 1 or more each
 * @param feeds the channels it takes, in an order the caller knows
 * @param anyOf for each thing that may come from one of several caps, such as a stand, the names of those caps; one unit is taken of one of them
 */
public record Choice(String id, Use use, long centipoints, Map<String, Integer> takes, List<Feed> feeds, List<Set<String>> anyOf) {
    static final long MOST_CENTIPOINTS = 1_000_000_000;

    /** When a choice may be chosen. */
    public enum Use {
        /** In every plan. */
        FULL,
        /** Less than was asked for, such as one microphone for two: only as a way out where there is no plan without it. */
        FEWER,
        /** The seat gets nothing: not where it must be served, except as a way out. It takes nothing. */
        OUT
    }

    /** @throws IllegalArgumentException for points beyond ten million, a count below 1, caps to choose from of which there are none, or a choice of nothing that takes something */
    public Choice {
        takes = Map.copyOf(takes);
        feeds = List.copyOf(feeds);
        anyOf = anyOf.stream().map(Set::copyOf).toList();
        if (Math.abs(centipoints) > MOST_CENTIPOINTS) {
            throw new IllegalArgumentException("Choice " + id + " is worth " + centipoints + " hundredths. Give at most " + MOST_CENTIPOINTS);
        }
        if (takes.values().stream().anyMatch(count -> count < 1) || anyOf.stream().anyMatch(Set::isEmpty)) {
            throw new IllegalArgumentException("Choice " + id + " takes less than one of something, or one of nothing. Leave that out");
        }
        if (use == Use.OUT && !(takes.isEmpty() && feeds.isEmpty() && anyOf.isEmpty())) {
            throw new IllegalArgumentException("Choice " + id + " leaves its seat out and yet takes something");
        }
    }

    /** Leaving the seat out. */
    public static Choice out(String id, long centipoints) {
        return new Choice(id, Use.OUT, centipoints, Map.of(), List.of(), List.of());
    }
}
