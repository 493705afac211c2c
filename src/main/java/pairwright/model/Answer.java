package pairwright.model;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * The whole answer to a question.
 *
 * @param question what was asked and how it was understood
 * @param options best first, each another idea
 * @param sureness how sure that order is; null when nothing was drawn
 * @param ruledOut what would have been near the top but for a rule or a limit
 * @param instead where nothing fits: which limits stand in the way and what would fit without each; else empty
 * @param stock what of the locker it may use; null without a locker
 * @param out types of the locker that are taken and would be better, the best first; null without a locker
 * @param heard what was heard of the player before, and what that changed; null where nothing was given
 * @param rulesVersion of the rules used
 * @param catalogueVersion of the catalogue used
 */
public record Answer(
        Asked question,
        List<Option> options,
        Sureness sureness,
        List<RuledOut> ruledOut,
        List<Instead> instead,
        Stocked stock,
        List<Missed> out,
        Heard heard,
        String rulesVersion,
        String catalogueVersion) {

    /**
     * The question as it was understood, with what was taken for granted.
     *
     * @param ask questions back, where the words may mean more than one thing or are not known
     * @param assumed what was not said and is taken as usual, in sentences
     * @param numbers what was computed of the question as a whole; null when no source was understood
     */
    public record Asked(
            String words,
            Question meant,
            List<Reading> understood,
            List<String> notUnderstood,
            List<Reading> otherReadings,
            List<Ask> ask,
            List<String> assumed,
            Numbers numbers) {
    }

    /**
     * The question in numbers, as rules read them. Levels are null for a lead, room figures in the open air.
     *
     * @param typicalDbSpl running level at one metre, as it is played
     * @param peakDbSpl loudest peak at one metre, as it is played
     * @param typicalDba running level at one metre, A-weighted
     * @param lowestHz its lowest fundamental
     * @param allowedHours how long that level at one metre may last in a day by the 85 dBA, 3 dB rule; 24 at the most
     * @param preampGainDb the most gain at hand
     * @param preampNoiseDbu its input noise
     * @param preampOhm its input impedance
     * @param channels the most channels an option may take
     * @param volumeM3 of the room
     * @param heightM of the room
     * @param reverbTimeS of the room
     * @param criticalDistanceM where an omni hears as much room as source
     * @param roomNoiseDba of the room
     * @param loudestNeighbourDbSpl running level of the loudest neighbour where the microphone is; null with none
     * @param loudestNeighbourDegrees between the source and that neighbour; null with none
     */
    public record Numbers(
            Double typicalDbSpl,
            Double peakDbSpl,
            Double typicalDba,
            double lowestHz,
            double allowedHours,
            double preampGainDb,
            double preampNoiseDbu,
            double preampOhm,
            int channels,
            Double volumeM3,
            Double heightM,
            Double reverbTimeS,
            Double criticalDistanceM,
            double roomNoiseDba,
            Double loudestNeighbourDbSpl,
            Double loudestNeighbourDegrees) {
    }

    /**
     * A player who was heard before.
     *
     * @param noted what was heard against the entry of the catalogue, in sentences
     * @param changed what is advised otherwise for it, in sentences; found by asking the same question without it
     */
    public record Heard(List<String> noted, List<String> changed) {
    }

    /**
     * A way out when nothing fits.
     *
     * @param limit which limit stands in the way, as a pointer into the question
     * @param says what would fit without it
     * @param to what it has to be then, as text; null where it is simply left out
     */
    public record Instead(String limit, String says, String to) {
    }

    /**
     * What of a locker an answer uses.
     *
     * @param use what was asked for
     * @param from start of the time; null for now
     * @param until end of the time; null for the usual length
     * @param reachable false where the locker does not answer, and all is taken to be at hand
     */
    public record Stocked(FromLocker use, OffsetDateTime from, OffsetDateTime until, boolean reachable) {
    }

    /**
     * A type that is taken and would make a better answer.
     *
     * @param micType id
     * @param name of the type
     * @param score of the best option with it
     * @param betterPoints by how many points that is more than the first option; all of it where there is none
     * @param units those of the locker that are taken, the first that comes back first
     * @param says a sentence
     */
    public record Missed(String micType, String name, double score, double betterPoints, List<Taken> units, String says) {
    }

    /**
     * A unit that cannot be had.
     *
     * @param id of the unit
     * @param label what is written on it
     * @param why session, lab, loan, repair, in-repair, lost or overdue
     * @param forWhat what it is booked for; null for unknown
     * @param by who has it; null for unknown
     * @param freeFrom when it is free for as long; null for unknown
     */
    public record Taken(String id, String label, String why, String forWhat, String by, OffsetDateTime freeFrom) {
    }
}
