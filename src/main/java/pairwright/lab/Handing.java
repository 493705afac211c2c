package pairwright.lab;

/**
 * An answer that was looked through and is ready to be kept.
 *
 * @param set id
 * @param bench number
 * @param mark what it earns; null where whoever hands it in may not know yet
 * @param late whether everybody could see the key by now, and whoever hands it in is one of them
 */
public record Handing(String set, int bench, Answer answer, Mark mark, boolean late) {
}
