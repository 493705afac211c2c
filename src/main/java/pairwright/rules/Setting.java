package pairwright.rules;

import pairwright.model.Attack;
import pairwright.model.Character;
import pairwright.model.Room;
import pairwright.model.Source;

/**
 * What holds for the whole question: the source as it is played, the room, what is wanted and what is at hand.
 *
 * @param source what is recorded
 * @param attack of the source, as it is played
 * @param room where
 * @param wanted the sound that is wanted; null when none was named, which means the source as it is
 * @param criticalDistanceM where an omni hears as much room as source; 1000 in the open air
 * @param typicalDbSpl running level at one metre, as it is played; 0 for a lead
 * @param peakDbSpl loudest peak at one metre, as it is played; 0 for a lead
 * @param typicalDba running level at one metre, A-weighted; 0 for a lead
 * @param allowedHours how long that level at one metre may last in a day by the 85 dBA, 3 dB rule; 24 at the most
 * @param preampGainDb the most gain at hand
 * @param preampNoiseDbu equivalent input noise, unweighted, 150 ohm
 * @param preampOhm input impedance
 * @param phantomAllowed whether phantom power may be used
 * @param channels the most channels an option may take
 * @param neighbours how many other sources play
 * @param loudestNeighbourDbSpl running level of the loudest neighbour where the microphone is; 0 with none
 * @param stereoWanted the words asked for stereo
 * @param monoWanted the words asked for mono
 * @param onePerformer one person sings and plays
 * @param children children play or are near
 * @param live on a stage with loudspeakers
 */
public record Setting(
        Source source,
        Attack attack,
        Room room,
        Character wanted,
        double criticalDistanceM,
        double typicalDbSpl,
        double peakDbSpl,
        double typicalDba,
        double allowedHours,
        double preampGainDb,
        double preampNoiseDbu,
        double preampOhm,
        boolean phantomAllowed,
        int channels,
        int neighbours,
        double loudestNeighbourDbSpl,
        boolean stereoWanted,
        boolean monoWanted,
        boolean onePerformer,
        boolean children,
        boolean live) {
}
