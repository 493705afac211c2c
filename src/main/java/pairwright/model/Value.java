package pairwright.model;

/**
 * A number a rule used, or one that was worked out.
 *
 * @param name as in the answer or the catalogue entry it comes from
 * @param value the number
 * @param unit as in docs/units.md
 */
public record Value(String name, double value, String unit) {
}
