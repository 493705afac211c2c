package pairwright.lab;

import java.util.List;

/**
 * Exercises drawn for a class, from which those for its benches are taken once it is certain what is free.
 *
 * @param wanted as it was checked, with its seed
 * @param variants in the order they were drawn
 */
public record Candidates(Wanted wanted, List<Variant> variants) {
    public Candidates {
        variants = List.copyOf(variants);
    }
}
