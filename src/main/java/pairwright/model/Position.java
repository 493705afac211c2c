package pairwright.model;

import java.util.List;
import pairwright.acoustics.OctaveCurve;

/**
 * A named place at a source.
 *
 * @param id unique within the source, kebab case
 * @param name in a few words, for a set-up sheet
 * @param side on which side of the source
 * @param distanceM from the sounding surface
 * @param offAxisDegrees between the source's main axis and the line to the microphone
 * @param aimDegrees how far the microphone may be turned off that line
 * @param heightM above the floor, where it matters; else null
 * @param pathM how much farther the sound has come when it leaves the surface the distance is measured from, against the surface
 *     that sounds first, such as the depth of the shell for a place outside a kick drum; null for no difference
 * @param spot where on the source the distance is measured from, for drawings; null for the middle of its sounding surface
 * @param levelDb against the level the source's figure gives for that distance
 * @param toneDb against the source's average spectrum
 * @param brings what is heard there, in a few words
 * @param mount what holds the microphone
 * @param overPeople whether something hangs above a person
 * @param opposite whether the surface moves the other way than at the front, so that polarity is inverted
 * @param onlyFamilies families that can be used there; empty for any acoustic one
 * @param onlyWays ways of playing that make the place sensible, such as a mute in the bell; empty for any
 * @param notAlone whether only a part of the source is heard there, so that it is never the place of the only microphone
 * @param rearClosed whether hands close the rear openings there, so that no pattern lifts the bass of a near source
 * @param dangers what can harm a microphone there
 * @param keepClear what must stay free
 */
public record Position(
        String id,
        String name,
        Side side,
        Range distanceM,
        Range offAxisDegrees,
        Range aimDegrees,
        Double heightM,
        Double pathM,
        Spot spot,
        double levelDb,
        OctaveCurve toneDb,
        String brings,
        Mount mount,
        boolean overPeople,
        boolean opposite,
        List<MicFamily> onlyFamilies,
        List<String> onlyWays,
        boolean notAlone,
        boolean rearClosed,
        List<Danger> dangers,
        List<KeepClear> keepClear) {

    /** The same place at another instrument of its kind, which sounds a little different there. */
    public Position sounding(OctaveCurve otherToneDb) {
        return new Position(id, name, side, distanceM, offAxisDegrees, aimDegrees, heightM, pathM, spot, levelDb, otherToneDb, brings, mount, overPeople,
                opposite, onlyFamilies, onlyWays, notAlone, rearClosed, dangers, keepClear);
    }
}
