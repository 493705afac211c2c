package pairwright.model;

import java.util.List;

/**
 * A mic type, in one pattern, at one position, distance and aim, with what it is predicted to give.
 *
 * @param micType id
 * @param name of the type
 * @param family of the type
 * @param pattern that is set
 * @param position id at the source
 * @param positionName of the position
 * @param brings what is heard there
 * @param mount what holds it
 * @param distanceM from the sounding surface
 * @param heightM above the floor; null where it does not matter
 * @param aimDegrees turned off the line to the source
 * @param nullDegrees where the pattern hears least, off its own axis; null for a pattern without a null
 * @param nullMissDegrees between that null and the loudest neighbour; null without either
 * @param turnGainDb how much lower the neighbours are picked up than if what comes from them straight came on its axis; null without any
 * @param sourceAngleDegrees the angle the source takes, seen from there
 * @param distanceRatio its distance over the distance at which source and room are equally loud for this pattern; 0 where no air is between
 * @param standRatio resisting over overturning moment on an ordinary light stand, boom between two legs; null where no boom is needed
 * @param loadRatio input impedance over source impedance; null where it does not matter
 * @param lowCornerHz below which a loose boundary plate loses bass; null for other types
 * @param keepClearM how much room the player needs there; 0 for nothing in particular
 * @param currentMa phantom current it draws; 0 for none
 * @param phantom whether phantom power is on
 * @param pad whether a pad is in
 * @param padDb which; 0 for none
 * @param invertPolarity whether the channel is inverted
 * @param channels how many it takes
 * @param free how many units of the type are free; null without a locker
 * @param units which of the locker to take, one; empty where none can be named; null without a locker
 * @param predicted what it gives
 * @param neighbours what it hears of each neighbour; empty without any, and where no air is between
 */
public record Placement(
        String micType,
        String name,
        MicFamily family,
        Pattern pattern,
        String position,
        String positionName,
        String brings,
        Mount mount,
        double distanceM,
        Double heightM,
        double aimDegrees,
        Double nullDegrees,
        Double nullMissDegrees,
        Double turnGainDb,
        double sourceAngleDegrees,
        double distanceRatio,
        Double standRatio,
        Double loadRatio,
        Double lowCornerHz,
        double keepClearM,
        double currentMa,
        boolean phantom,
        boolean pad,
        double padDb,
        boolean invertPolarity,
        int channels,
        Integer free,
        List<Given> units,
        Predicted predicted,
        List<Heard> neighbours) {
}
