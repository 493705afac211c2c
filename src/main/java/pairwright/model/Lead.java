package pairwright.model;

import java.util.List;

/**
 * A kind of lead.
 *
 * @param id microphone
 * @param name as a list says it
 * @param says from where to where it goes, and how it lies
 * @param lengthsM usual lengths, in any order
 * @param slackM what is left over at both ends together
 * @param slackShare what is added for each metre of the way, as it does not lie straight
 * @param confidence how sure
 * @param basis what the figures rest on
 */
public record Lead(String id, String name, String says, List<Double> lengthsM, double slackM, double slackShare, Confidence confidence, List<Rests> basis) {
    /** The kind between a microphone and its channel. */
    public static final String MICROPHONE = "microphone";

    public Lead {
        lengthsM = List.copyOf(lengthsM);
    }
}
