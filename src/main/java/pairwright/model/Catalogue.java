package pairwright.model;

import java.util.Collections;
import java.util.LinkedHashMap;
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
        Map<String, Task> tasks,
        Map<String, Custom> customs,
        Map<String, Lead> leads,
        Map<String, Lesson> lessons,
        Vocabulary words,
        String version) {

    /** The same with another entry of a source, in its place where there is one of that id. */
    public Catalogue with(Source other) {
        return new Catalogue(mics, replaced(sources, other.id(), other), rooms, characters, techniques, complaints, grades, tasks, customs, leads, lessons, words, version);
    }

    /** The same with another entry of a room. */
    public Catalogue with(Room other) {
        return new Catalogue(mics, sources, replaced(rooms, other.id(), other), characters, techniques, complaints, grades, tasks, customs, leads, lessons, words, version);
    }

    /**
     * A number of the trade that plans go by.
     *
     * @throws IllegalStateException where the catalogue has none of that id
     */
    public double custom(String id) {
        Custom custom = customs.get(id);
        if (custom == null) {
            throw new IllegalStateException("the catalogue has no custom " + id + ". Add catalogue/customs/" + id + ".yaml");
        }
        return custom.value();
    }

    private static <T> Map<String, T> replaced(Map<String, T> all, String id, T other) {
        Map<String, T> copy = new LinkedHashMap<>(all);
        copy.put(id, other);
        return Collections.unmodifiableMap(copy);
    }
}
