package pairwright.rules;

import pairwright.model.DangerKind;
import pairwright.model.HabitRank;
import pairwright.model.MicType;
import pairwright.model.Pattern;
import pairwright.model.Position;
import pairwright.model.Predicted;

/**
 * One placement with everything that was computed of it, for rules to read.
 *
 * @param index its number among the placements of the question; no two of one question share it
 * @param mic the type
 * @param pattern that is set
 * @param position where
 * @param distanceM from the sounding surface
 * @param aimDegrees turned off the line to the source
 * @param nullDegrees where the pattern hears least; null without a null
 * @param nullMissDegrees between its null and the loudest neighbour there; 180 without a null or a neighbour
 * @param turnGainDb how much lower the neighbours are picked up than if what comes from them straight came on its axis; 0 without any
 * @param loudestNeighbourDbSpl running level of the loudest neighbour as it comes straight to that place; 0 with none, and where no air is between
 * @param loudestNeighbourDegrees between the source and that neighbour, seen from there; 0 likewise
 * @param padDb pad that is in; 0 for none
 * @param habit what the trade thinks of it here; null for nothing in particular
 * @param habitWhy its reason; empty for none
 * @param inAirBlast moving air reaches it
 * @param inStickReach sticks, beaters or a bow reach it
 * @param inSpit breath moisture reaches it
 * @param nearMovingParts bellows, slides, pedals, keys or limbs reach it
 * @param vibrates the mount shakes
 * @param dangerSays what endangers it there, in a sentence; empty for nothing
 * @param keepClear what must stay free there, in words; empty for nothing
 * @param keepClearM how much room that needs; 0 for nothing
 * @param loadRatio input impedance over source impedance; 1000 where it does not matter
 * @param currentMa phantom current it draws; 0 for none
 * @param distanceRatio its distance over the critical distance for its pattern and the source's directivity
 * @param sourceAngleDegrees the angle the source takes, seen from there
 * @param standRatio resisting over overturning moment on an ordinary light stand, boom between two legs; 100 where no boom is needed
 * @param lowCornerHz where a boundary plate of half a metre begins to lose bass; 0 for other types
 * @param keptTimes in how many sessions of this house this type was left at this place, of those narrowest to the question; 0 where none is known
 * @param triedTimes in how many of them it stood there
 * @param keptShare what that is worth, -1 for always changed to 1 for always kept; 0 where none is known
 * @param keptWhere whose sessions those were, in words; empty where none is known
 * @param predicted what it gives
 */
public record Placed(
        int index,
        MicType mic,
        Pattern pattern,
        Position position,
        double distanceM,
        double aimDegrees,
        Double nullDegrees,
        double nullMissDegrees,
        double turnGainDb,
        double loudestNeighbourDbSpl,
        double loudestNeighbourDegrees,
        double padDb,
        HabitRank habit,
        String habitWhy,
        boolean inAirBlast,
        boolean inStickReach,
        boolean inSpit,
        boolean nearMovingParts,
        boolean vibrates,
        String dangerSays,
        String keepClear,
        double keepClearM,
        double loadRatio,
        double currentMa,
        double distanceRatio,
        double sourceAngleDegrees,
        double standRatio,
        double lowCornerHz,
        int keptTimes,
        int triedTimes,
        double keptShare,
        String keptWhere,
        Predicted predicted) {

    /** Whether something hot is near the place, be the microphone within its reach or just outside: hands and cables are not measured. */
    public boolean nearHeat() {
        return position.dangers().stream().anyMatch(danger -> danger.kind() == DangerKind.HEAT);
    }

    /** The share from the other side: above 0 where it was more often changed than kept. */
    public double changedShare() {
        return Math.max(0, -keptShare);
    }

    /** A placement is itself and no other: the engine compares facts often, and comparing sixty fields each time would be most of the work. */
    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return index;
    }
}
