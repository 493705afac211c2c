package pairwright.session;

import java.util.List;

/**
 * What is to be done to get from one plan to another.
 *
 * @param plan the new one
 * @param steps in the order they are to be done
 * @param timeS how long they take, for one assistant, as the tasks of the catalogue have it
 * @param kept ids of seats of which nothing is touched
 * @param costPoints what the new plan has less than the best that could be reached: the price of leaving things as they stand
 * @param bestScore what the best plan would have, whatever had to be moved for it, in the time there is
 * @param setUp how long there is for the steps that cannot wait; null for as long as they take
 */
public record Change(Plan plan, List<Step> steps, double timeS, List<String> kept, double costPoints, double bestScore, SetUpTime setUp) {
    public Change {
        steps = List.copyOf(steps);
        kept = List.copyOf(kept);
    }

    /** How long those steps take that cannot wait, for one pair of hands: what is only taken away can, and for that alone no power is switched off. */
    public double pressingS() {
        boolean patched = steps.stream().anyMatch(step -> !step.kind().equals(Steps.STRIKE) && !step.kind().equals(Steps.MOVE) && !step.kind().equals(Steps.POWER_DOWN));
        return steps.stream().filter(step -> !step.kind().equals(Steps.STRIKE) && (patched || !step.kind().equals(Steps.POWER_DOWN))).mapToDouble(Step::timeS).sum();
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
