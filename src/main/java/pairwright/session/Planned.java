package pairwright.session;

import java.util.List;

/**
 * The answer to a line-up: plans, or what they fail for.
 *
 * @param plans best first, each different in kind from the ones before; empty where no plan serves every must-have
 * @param shortOf what there is too little of; empty with a plan
 * @param waysOut what would make it possible, cheapest first; empty with a plan
 * @param moves whom to seat elsewhere for the largest gain, best first; of the first plan
 * @param assumed what was not said and is taken as usual, in sentences
 * @param rulesVersion of the rules
 * @param catalogueVersion of the catalogue
 * @param timeShort what the best plan loses since there is no more time to set up; null where it loses nothing
 */
public record Planned(List<Plan> plans, List<Short> shortOf, List<WayOut> waysOut, List<Move> moves, List<String> assumed, String rulesVersion,
        String catalogueVersion, TimeShort timeShort) {
    public Planned {
        plans = List.copyOf(plans);
        shortOf = List.copyOf(shortOf);
        waysOut = List.copyOf(waysOut);
        moves = List.copyOf(moves);
        assumed = List.copyOf(assumed);
    }

    /** Where no time is short. */
    public Planned(List<Plan> plans, List<Short> shortOf, List<WayOut> waysOut, List<Move> moves, List<String> assumed, String rulesVersion, String catalogueVersion) {
        this(plans, shortOf, waysOut, moves, assumed, rulesVersion, catalogueVersion, null);
    }

    /** Says that nobody would be better elsewhere; null where somebody would, and without a plan. */
    public String noMoves() {
        return plans.isEmpty() || !moves.isEmpty() ? null : "Nothing is worth moving: no other place and no turn gains enough for what it asks of the players.";
    }

    /**
     * Says why there are fewer plans than were asked for; null where there are as many, and without a plan.
     *
     * @param lineUp that was planned
     */
    public String noMorePlans(LineUp lineUp) {
        if (plans.isEmpty() || plans.size() >= lineUp.plans()) {
            return null;
        }
        int least = lineUp.leastDifferent();
        return lineUp.plans() + " plans were asked for, and " + plans.size() + (plans.size() == 1 ? " is" : " are") + " there: with what there is, no other was found that has other types or techniques at "
                + (lineUp.seats().size() == 1 ? "the seat" : least + " of the " + lineUp.seats().size() + " seats or more") + ".";
    }

    /**
     * The time to set up is what keeps a plan from being better.
     *
     * @param neededMinutes what the plan takes that would be made with all the time there could be, with as many hands
     * @param minutes there are
     * @param costPoints what the plan loses by that, the least possible
     * @param without who gets nothing or fewer lines for it, in sentences
     * @param waysOut what would help, the easiest first
     */
    public record TimeShort(int neededMinutes, int minutes, double costPoints, List<String> without, List<WayOut> waysOut) {
        public TimeShort {
            without = List.copyOf(without);
            waysOut = List.copyOf(waysOut);
        }
    }

    /**
     * A resource there is too little of.
     *
     * @param resource what people call it
     * @param needed how many of it the nearest possible plan takes
     * @param there how many there are
     * @param seats who waits for it
     */
    public record Short(String resource, int needed, int there, List<String> seats) {
    }

    /**
     * Something that would make a plan possible.
     *
     * @param kind borrow, drop, share, or input for an instrument input in place of a line box
     * @param says what to do, in a sentence
     * @param pricePoints the lower the easier
     * @param score of the plan that is possible then
     */
    public record WayOut(String kind, String says, double pricePoints, double score) {
    }

    /**
     * A seat that would be better elsewhere.
     *
     * @param seat who
     * @param xM where to
     * @param yM where to
     * @param facingDegrees looking where
     * @param gainDb how much further apart the lines it touches are from what they should not hear, on average
     * @param worstLine the line that gains most
     * @param worstGainDb how much that one gains
     * @param says the same in a sentence
     */
    public record Move(String seat, double xM, double yM, double facingDegrees, double gainDb, int worstLine, double worstGainDb, String says) {
    }
}
