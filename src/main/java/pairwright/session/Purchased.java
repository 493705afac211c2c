package pairwright.session;

import java.util.List;
import pairwright.model.Word;

/**
 * What to buy next for sessions that are stored.
 *
 * @param budget how much may be spent, in prices of the cheapest price class
 * @param mostTier no type of a dearer price class is bought
 * @param before each session with what there is
 * @param steps one purchase each, in the order to buy; each as worth as is said after all before it
 * @param after each session with all that is bought
 * @param idle mic types of which units are never needed, with what there is
 * @param unserved why sessions have no plan in the end
 * @param cheapest whether it is proven that serving every session cannot cost less, as long as no seat that one microphone serves is bought two at once; true where nothing
 *     was needed
 * @param proven whether every plan that was compared is proven to be the best
 * @param rulesVersion of the rules
 * @param catalogueVersion of the catalogue
 */
public record Purchased(int budget, int mostTier, List<Served> before, List<Step> steps, List<Served> after, List<Idle> idle, List<Unserved> unserved, boolean cheapest,
        boolean proven, String rulesVersion, String catalogueVersion) {
    public Purchased {
        before = List.copyOf(before);
        steps = List.copyOf(steps);
        after = List.copyOf(after);
        idle = List.copyOf(idle);
        unserved = List.copyOf(unserved);
    }

    /** What a purchase is for. */
    public enum Phase implements Word {
        /** That every source that must be served is. */
        SERVE("serve"),
        /** That the plans are better. */
        COLOUR("colour");

        private final String id;

        Phase(String id) {
            this.id = id;
        }

        @Override
        public String id() {
            return id;
        }
    }

    /**
     * A session and its best plan.
     *
     * @param session id
     * @param name of it
     * @param points score of the plan; null where there is none
     */
    public record Served(String session, String name, Double points) {
    }

    /**
     * One purchase.
     *
     * @param micType id
     * @param name of the type
     * @param units 1, or 2 that are matched to each other
     * @param price of it
     * @param spent with all before it
     * @param gainPoints by how much the scores of all sessions that had a plan before rise together
     * @param points what the scores of all sessions with a plan come to then
     * @param served how many sessions have a plan then
     * @param raises the sessions whose plan it betters, or that have one now; as they were before it and are after it
     */
    public record Step(Phase phase, String micType, String name, int units, int price, int spent, double gainPoints, double points, int served, List<Raised> raises) {
        public Step {
            raises = List.copyOf(raises);
        }
    }

    /** A session that a purchase raises; {@code fromPoints} is null where it had no plan. */
    public record Raised(String session, String name, Double fromPoints, double toPoints) {
    }

    /**
     * A type of which there are more than any of the sessions' best plans takes.
     *
     * @param micType id
     * @param name of the type
     * @param owned units in order
     * @param used by the plan that takes most of them at once
     * @param labels of its units where none is used; empty else, as any of them will do
     */
    public record Idle(String micType, String name, int owned, int used, List<String> labels) {
        public Idle {
            labels = List.copyOf(labels);
        }
    }

    /** Why a session has no plan, in a sentence. */
    public record Unserved(String session, String name, String why) {
    }
}
