package pairwright.model;

import java.util.List;

/**
 * What some figures of an entry rest on.
 *
 * @param of the names of the fields it speaks of
 * @param on the kind of basis
 * @param note what exactly, in a sentence; may be empty
 */
public record Rests(List<String> of, Basis on, String note) {
}
