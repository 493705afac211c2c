package pairwright.rules;

import java.util.List;
import pairwright.model.Attack;
import pairwright.model.Character;
import pairwright.model.MicFamily;
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
 * @param loudestNeighbourDbSpl running level of the loudest neighbour at whichever of the usual places of the source it is loudest; 0 with none
 * @param loudestNeighbourDegrees between the source and that neighbour, seen from that place; 0 with none
 * @param stereoWanted the words asked for stereo
 * @param monoWanted the words asked for mono
 * @param onePerformer one person sings and plays
 * @param children children play or are near
 * @param live on a stage with loudspeakers
 * @param shockFelt somebody has felt a shock or a tingle
 * @param hung something is to hang above people
 * @param pluggedInBeside a neighbour is an amplifier or hangs on a lead
 * @param wishes families of microphones that were asked for, though not to the exclusion of others
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
        double loudestNeighbourDegrees,
        boolean stereoWanted,
        boolean monoWanted,
        boolean onePerformer,
        boolean children,
        boolean live,
        boolean shockFelt,
        boolean hung,
        boolean pluggedInBeside,
        List<MicFamily> wishes) {

    private static final int HZ_63 = 0;
    private static final int HZ_250 = 2;
    private static final int HZ_2000 = 5;
    private static final int HZ_4000 = 6;
    private static final int HZ_8000 = 7;
    private static final int HZ_16000 = 8;

    /** How much more is wanted from 63 to 250 Hz than the source gives; 0 when nothing special is wanted. */
    public double wantedLowDb() {
        return wanted == null ? 0 : wanted.toneDb().meanDb(HZ_63, HZ_250);
    }

    /** The same from 2 to 4 kHz. */
    public double wantedPresenceDb() {
        return wanted == null ? 0 : wanted.toneDb().meanDb(HZ_2000, HZ_4000);
    }

    /** The same from 8 to 16 kHz. */
    public double wantedAirDb() {
        return wanted == null ? 0 : wanted.toneDb().meanDb(HZ_8000, HZ_16000);
    }

    /** What the source itself has at 8 kHz, under its strongest octave. */
    public double sourceAirDb() {
        return source.spectrumDb().at(HZ_8000);
    }

    /** The same setting with another room, level and neighbour. */
    public Setting drawn(Room otherRoom, double otherCriticalDistanceM, double otherTypicalDbSpl, double otherPeakDbSpl, double otherTypicalDba,
            double otherLoudestNeighbourDbSpl) {
        return new Setting(source, attack, otherRoom, wanted, otherCriticalDistanceM, otherTypicalDbSpl, otherPeakDbSpl, otherTypicalDba,
                allowedHours, preampGainDb, preampNoiseDbu, preampOhm, phantomAllowed, channels, neighbours, otherLoudestNeighbourDbSpl,
                loudestNeighbourDegrees, stereoWanted, monoWanted, onePerformer, children, live, shockFelt, hung, pluggedInBeside, wishes);
    }

    /** Volume of the room. */
    public double volumeM3() {
        return room.volumeM3();
    }
}
