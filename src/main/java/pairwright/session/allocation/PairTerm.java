package pairwright.session.allocation;

import java.util.List;

/**
 * What two seats are worth together beyond what each is worth, such as that they do not sound alike.
 *
 * @param first index of a seat
 * @param second index of another
 * @param together the pairs of choices that are worth something; any other pair is worth nothing; a pair named twice counts twice
 */
public record PairTerm(int first, int second, List<Together> together) {
    /**
     * @param first index of a choice of the first seat
     * @param second index of a choice of the second seat
     * @param centipoints what the two are worth together, hundredths of a point; may be below 0
     */
    public record Together(int first, int second, long centipoints) {
    }

    /** @throws IllegalArgumentException for a seat with itself */
    public PairTerm {
        together = List.copyOf(together);
        if (first == second) {
            throw new IllegalArgumentException("Seat " + first + " is paired with itself");
        }
    }
}
