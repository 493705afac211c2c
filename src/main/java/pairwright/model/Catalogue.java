package pairwright.model;

import java.util.Map;

/**
 * Everything the program knows, by id, in a stable order.
 *
 * @param version changes whenever any entry changes
 */
public record Catalogue(
        Map<String, MicType> mics,
        Map<String, Source> sources,
        Map<String, Room> rooms,
        Map<String, Character> characters,
        Map<String, Technique> techniques,
        Map<String, Complaint> complaints,
        Map<String, Grade> grades,
        Vocabulary words,
        String version) {
}
