package pairwright.session;

import java.util.List;
import pairwright.model.Given;
import pairwright.model.Pattern;
import pairwright.model.Placement;

/**
 * One microphone of a plan on its channel.
 *
 * @param number its place in the list of channels, from 1
 * @param channel id of the channel; null where channels are not counted
 * @param channelLabel what is written on it; null where channels are not counted
 * @param bank that the channel belongs to; null for none
 * @param unit of the locker; null where units are not counted
 * @param seat id
 * @param name what the line is called on a list: the player or source, and the place where there are two
 * @param source id
 * @param mic which of the option, from 1
 * @param placement the microphone and where it stands at its source
 * @param spot where that is in the room
 * @param stand id of the stand; null for none, and where stands are not counted
 * @param standLabel what is written on it
 * @param standKind what kind it takes; null where nothing stands
 * @param standRatio resisting over overturning moment of that stand with that microphone, its arm over a leg; null where not known or nothing leans
 * @param sharesStandWith number of the line whose stand carries both; null for none
 * @param booster id of an inline booster; null for none
 * @param boosterGainDb what it adds; 0 for none
 * @param phantom whether phantom power is on at this channel
 * @param phantomWanted whether the microphone needs it
 * @param currentMa that is drawn here
 * @param gainDb of the preamplifier, booster and pads taken into account
 * @param highPassHz a high-pass that leaves the lowest note as good as whole; null for none
 * @param between what else is between the microphone and its channel
 * @param cautions what the rules say of it as it is planned
 */
public record Line(int number, String channel, String channelLabel, String bank, Given unit, String seat, String name, String source, int mic,
        Placement placement, Spot spot, String stand, String standLabel, StandKind standKind, Double standRatio, Integer sharesStandWith,
        String booster, double boosterGainDb, boolean phantom, boolean phantomWanted, double currentMa, Double gainDb, Double highPassHz,
        Between between, List<Said> cautions) {
    private static final double SIDE_DEGREES = 90;

    /** Whether it is the sideways half of a mid-side pair: its null faces its own player, and what it is for is to hear beside that. No other line is turned as far. */
    public boolean side() {
        return placement.pattern() == Pattern.FIGURE_8 && Math.abs(placement.aimDegrees()) >= SIDE_DEGREES;
    }

    /** The same with a place in the list. */
    Line numbered(int other) {
        return new Line(other, channel, channelLabel, bank, unit, seat, name, source, mic, placement, spot, stand, standLabel, standKind, standRatio,
                sharesStandWith, booster, boosterGainDb, phantom, phantomWanted, currentMa, gainDb, highPassHz, between, cautions);
    }

    /** The same on the stand of another line. */
    Line sharing(Integer other) {
        return new Line(number, channel, channelLabel, bank, unit, seat, name, source, mic, placement, spot, stand, standLabel, standKind, standRatio,
                other, booster, boosterGainDb, phantom, phantomWanted, currentMa, gainDb, highPassHz, between, cautions);
    }

    /** The same with what the rules say of it. */
    Line judged(List<Said> said) {
        return new Line(number, channel, channelLabel, bank, unit, seat, name, source, mic, placement, spot, stand, standLabel, standKind, standRatio,
                sharesStandWith, booster, boosterGainDb, phantom, phantomWanted, currentMa, gainDb, highPassHz, between, said);
    }

    /**
     * Where a microphone is in the room, and where it looks.
     *
     * @param xM from the left wall
     * @param yM from the lower wall of the plan
     * @param zM above the floor
     * @param headingDegrees where its axis points on the plan: 0 up, 90 to the right
     * @param upDegrees how far its axis points up, -90 to 90
     */
    public record Spot(double xM, double yM, double zM, double headingDegrees, double upDegrees) {
    }
}
