package pairwright.sheet;

import java.util.List;

/**
 * One thing that can be chosen.
 *
 * @param value as the address says it
 * @param label as people say it
 * @param chosen whether it is
 */
public record Choice(String value, String label, boolean chosen) {
    /**
     * Choices that belong together.
     *
     * @param label of all of them; empty for none
     */
    public record Group(String label, List<Choice> choices) {
    }
}
