package pairwright.model;

import java.util.List;

/**
 * A lesson of the course.
 *
 * @param id kebab case
 * @param number its place in the course, from 1
 * @param name in a few words
 * @param aim what somebody can do afterwards
 * @param topics files of rules it is about, as concern/topic: all rules of them that are marked as teachable
 * @param rules single ones beside those, by id; a rule that is named here belongs to no topic of another lesson
 * @param exercises what is done in it
 * @param minutes how long it takes, exercises and talk
 * @param confidence how sure
 * @param basis what its order and its time rest on
 */
public record Lesson(String id, int number, String name, String aim, List<String> topics, List<String> rules, List<Drill> exercises, int minutes, Confidence confidence,
        List<Rests> basis) {
    /**
     * Exercises of one kind.
     *
     * @param kind id of the kind of exercise
     * @param levels at which it is done, 1 to 5
     */
    public record Drill(String kind, List<Integer> levels) {
    }
}
