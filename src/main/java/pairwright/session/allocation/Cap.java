package pairwright.session.allocation;

/**
 * Something there is a limited number of: units of a type, matched pairs of a type, one particular unit, stands of a kind, boosters.
 *
 * @param name unlike that of any other
 * @param there how many, 0 or more
 * @param price what one more costs as a way out, in whole prices of the caller's choosing, 1 or more; 0 where no more are to be had
 */
public record Cap(String name, int there, int price) {
    /** @throws IllegalArgumentException for a number below 0 */
    public Cap {
        if (there < 0 || price < 0) {
            throw new IllegalArgumentException("Of " + name + " there are " + there + " at a price of " + price + ". Give 0 or more");
        }
    }
}
