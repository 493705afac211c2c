package pairwright.rules;

import java.util.List;
import pairwright.model.Basis;
import pairwright.model.Effect;
import pairwright.model.Severity;

/**
 * What a rule says of itself.
 *
 * @param id never reused
 * @param title in a few words
 * @param concern the folder it lives in
 * @param topic the file it lives in, without its ending
 * @param effect what its findings do
 * @param severity of its cautions; null for other effects
 * @param points what a finding adds at full share; below zero for against; 0 for cautions and what rules out
 * @param says the sentence, with the names of its values in braces
 * @param claim the same as somebody would say it who has only thought of it, without the numbers, with {source} {neighbour} {wanted} {room} {stage} {wind} where a
 *     case has them; null where the title has to do
 * @param why the reason behind it
 * @param on the kind of basis
 * @param basis what exactly it rests on
 * @param practice statements of trade practice it embodies, from rules/practice.yaml; empty where it has none
 * @param teachable whether an exercise can be built on it
 * @param treat what is to be done about the arrival it speaks of: align, leave or watch; null for rules of anything else
 * @param alone whether it judges a microphone only where that stands by itself; one of two does not hear of it
 * @param inPlan how it is told once there is a plan
 * @param cases situations in which it fires or stays silent, in words
 */
public record RuleInfo(
        String id,
        String title,
        String concern,
        String topic,
        Effect effect,
        Severity severity,
        double points,
        String says,
        String claim,
        String why,
        Basis on,
        String basis,
        List<Practice> practice,
        boolean teachable,
        String treat,
        boolean alone,
        InPlan inPlan,
        List<Case> cases) {
    static final String PLAN = "plan";

    /** Whether it judges a plan; else a question. */
    public boolean ofAPlan() {
        return concern.equals(PLAN);
    }

    /**
     * How a rule is told of a plan, where a question and a plan may speak of the same.
     *
     * @param instead ids of rules of a question that need not be told of a line of which this one speaks, which knows more of it
     * @param settled whether it only asks for what a plan on real channels has decided
     * @param each whether each of its findings names something of its own and is told by itself; else one stands for all
     */
    public record InPlan(List<String> instead, boolean settled, boolean each) {
        public static final InPlan PLAIN = new InPlan(List.of(), false, false);

        public InPlan {
            instead = List.copyOf(instead);
        }
    }

    /**
     * A statement of trade practice.
     *
     * @param id in a few words
     * @param says the statement
     */
    public record Practice(String id, String says) {
    }

    /**
     * One case.
     *
     * @param says the situation
     * @param fires whether the rule fires in it
     */
    public record Case(String says, boolean fires) {
    }
}
