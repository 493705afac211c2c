package pairwright.lab;

import java.util.List;

/**
 * What a kind of exercise says of itself.
 *
 * @param id its word
 * @param name its name
 * @param aim what somebody can do afterwards
 * @param notTaught what it does not teach
 * @param levels what each of its five levels asks, the easiest first
 * @param minutes how long a bench takes at each of them
 * @param handsOn whether it can be done with microphones in hand
 */
public record KindInfo(String id, String name, String aim, String notTaught, List<String> levels, List<Integer> minutes, boolean handsOn) {
    public static final int LEVELS = 5;

    public KindInfo {
        levels = List.copyOf(levels);
        minutes = List.copyOf(minutes);
        if (levels.size() != LEVELS || minutes.size() != LEVELS) {
            throw new IllegalArgumentException("The kind " + id + " has " + levels.size() + " levels and " + minutes.size() + " times, not " + LEVELS);
        }
    }
}
