package pairwright.lab;

/**
 * One thing that was looked at.
 *
 * @param name in a few words
 * @param points it earns, in tenths
 * @param of so many
 * @param says why, in a sentence
 * @param rests id of the rule or calculation behind it; null for none
 */
public record Check(String name, double points, double of, String says, String rests) {
    public Check {
        says = Signs.minus(says);
    }
}
