package pairwright.model;

/**
 * One way to go on with an unfinished sentence.
 *
 * @param sentence the whole of it, once taken
 * @param text what is put in place of its unfinished end, or after it
 * @param as what it is then understood as: source, way, dynamic, room, character, limit, wish, neighbour, circumstance or technique
 * @param id the entry it is understood as
 * @param name of that entry
 * @param names where another word leads there, that word and what it stands for: "contrabass → double bass"; else null
 */
public record Suggestion(String sentence, String text, String as, String id, String name, String names) {
}
