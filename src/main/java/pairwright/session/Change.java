package pairwright.session;

import java.util.List;

/**
 * What is to be done to get from one plan to another.
 *
 * @param plan the new one
 * @param steps in the order they are to be done
 * @param timeS how long they take, for one assistant, as the tasks of the catalogue have it
 * @param kept ids of seats of which nothing is touched
 * @param costPoints what the new plan has less than one from scratch would have: the price of leaving things as they stand
 * @param bestScore what a plan from scratch would have
 */
public record Change(Plan plan, List<Step> steps, double timeS, List<String> kept, double costPoints, double bestScore) {
    public Change {
        steps = List.copyOf(steps);
        kept = List.copyOf(kept);
    }

    /**
     * One thing to do.
     *
     * @param kind id of a task of the catalogue
     * @param seat id; null for none
     * @param says in a sentence: what, where from, where to
     * @param timeS how long it takes
     */
    public record Step(String kind, String seat, String says, double timeS) {
    }
}
