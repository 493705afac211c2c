package pairwright.session;

import java.util.List;

/**
 * What is to be done to get from one plan to another.
 *
 * @param plan the new one
 * @param steps in the order they are to be done
 * @param timeS how long they take, as the catalogue of plain work times says
 * @param kept ids of seats of which nothing is touched
 * @param costPoints what the new plan has less than the old one had
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
     * @param kind strike, set-up, swap, move, repatch, power
     * @param seat id; null for none
     * @param says in a sentence: what, where from, where to
     * @param timeS how long it takes
     */
    public record Step(String kind, String seat, String says, double timeS) {
    }
}
