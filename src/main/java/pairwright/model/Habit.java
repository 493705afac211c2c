package pairwright.model;

import java.util.List;

/**
 * What the trade does at a source, with its reason: it starts the argument, physics and limits may end it otherwise.
 *
 * @param rank first, second or avoid
 * @param micType the type
 * @param positions where; empty for any
 * @param patterns in which patterns; empty for any
 * @param onlyWays only when played one of these ways; a source played a way that has habits of its own sets its general first and second
 *     choices aside; empty for any
 * @param withinM only at this distance or closer; null for any
 * @param beyondM only at this distance or farther; null for any
 * @param unlessPadded only while no pad is on
 * @param why the reason, in a sentence
 */
public record Habit(
        HabitRank rank,
        String micType,
        List<String> positions,
        List<Pattern> patterns,
        List<String> onlyWays,
        Double withinM,
        Double beyondM,
        boolean unlessPadded,
        String why) {
}
