package pairwright.model;

/**
 * What some words were taken for.
 *
 * @param words as they stand in the sentence; may be empty where an explicit field said it
 * @param as source, way, dynamic, room, character, limit, neighbour, circumstance, technique
 * @param id the entry
 * @param name its name
 */
public record Reading(String words, String as, String id, String name) {
}
