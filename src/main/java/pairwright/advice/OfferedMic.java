package pairwright.advice;

import java.util.List;
import pairwright.model.MicType;
import pairwright.model.Pattern;
import pairwright.model.Position;
import pairwright.model.Predicted;
import pairwright.rules.Placed;

/**
 * One microphone of an offer, where it stands and what it gives there.
 *
 * @param micType the type; with the response of the unit, where that has its own
 * @param unit id, where it must be this very unit because it is predicted by its own response; else null
 * @param units ids of those of which any may be taken, in the order they are to be handed out; empty without a locker. Where an offer takes two of one
 *         type both have the same list
 * @param pattern that is set
 * @param position at the source
 * @param distanceM from the sounding surface
 * @param aimDegrees turned off the line to the source
 * @param predicted what it gives
 * @param phantom whether phantom power is on
 * @param currentMa phantom current it draws; 0 for none
 * @param padDb pad that is in; 0 for none
 * @param placed everything else that was computed of it
 */
public record OfferedMic(MicType micType, String unit, List<String> units, Pattern pattern, Position position, double distanceM, double aimDegrees,
        Predicted predicted, boolean phantom, double currentMa, double padDb, Placed placed) {
}
