package pairwright.rules;

import pairwright.model.MicFamily;
import pairwright.model.PowerNeed;

/**
 * One microphone of a plan on its channel. A text is empty, and a number null, where it is not known or does not apply.
 *
 * @param line its number in words
 * @param seat whose it is
 * @param mic the type
 * @param unit what is written on the unit
 * @param note what the locker knows of that unit
 * @param channel what is written on the channel, or its number
 * @param bank with which it shares a supply
 * @param stand what is written on the stand
 * @param mateSeat who has the unit that this one was matched with, or in words where else that is
 * @param family of the type
 * @param power where the type takes its power from
 * @param passiveRibbon whether stray current or a plug under power can ruin it
 * @param phantom whether phantom power is on at the channel
 * @param phantomWanted whether the type, or the booster before it, needs that
 * @param switchShared whether one switch reaches other channels as well
 * @param boosted whether an inline booster is in the line
 * @param boosterPasses whether that lets phantom power through to the microphone
 * @param gainDb of the preamplifier
 * @param missingGainDb what is wanted over what the channel has; 0 where it is enough
 * @param leftGainDb what the channel has over what is wanted; 0 where it is not enough
 * @param ownPad whether the type has a pad
 * @param loadRatio input impedance of the channel over the impedance of the type
 * @param inputOhm input impedance of the channel
 * @param overPeople whether it stands above somebody
 * @param standing whether a stand with an arm holds it
 * @param standRatio resisting over overturning moment of that stand with it
 * @param lightStandRatio the same of an ordinary light stand, its arm between two legs
 * @param sharesStand whether another microphone is on the same stand
 * @param ownElsewhere whether another line of the seat is on a channel that is not next to it
 * @param pairUnlike whether it is one of a stereo pair on channels that differ in bank or in what they are
 * @param box what is written on the line box in the line, or what its type is called
 * @param boxed whether that is behind a pickup or microphone that must not go into a microphone input; else the line is planned with a box, or none is in it
 * @param boxOnCell whether the box runs on a cell
 * @param instrumentInput whether the line goes straight into an instrument input
 * @param pad what is written on the pad in the line
 * @param padLossDb what that takes away; 0 for none
 * @param ownPadDb the pad of the microphone itself that is in; 0 for none
 * @param padForInput whether that is in for the sake of the input
 * @param scorePoints what speaks for and against all that its seat gets, together; null but for the first line of a seat
 * @param usual what the trade puts there first and the seat does not get, in words
 * @param worst what costs it most, as a sentence
 * @param overDb by how much the loudest peak is over what the channel takes at its lowest gain, all pads taken off, with 6 dB in hand; 0 where it fits
 */
public record PlannedLine(String line, String seat, String mic, String unit, String note, String channel, String bank, String stand, String mateSeat,
        MicFamily family, PowerNeed power, boolean passiveRibbon, boolean phantom, boolean phantomWanted, boolean switchShared, boolean boosted,
        boolean boosterPasses, Double gainDb, Double missingGainDb, Double leftGainDb, boolean ownPad, Double loadRatio, Double inputOhm,
        boolean overPeople, boolean standing, Double standRatio, Double lightStandRatio, boolean sharesStand, boolean ownElsewhere, boolean pairUnlike,
        String box, boolean boxed, boolean boxOnCell, boolean instrumentInput, String pad, double padLossDb, double ownPadDb, boolean padForInput,
        Double scorePoints, String usual, String worst, Double overDb) implements PlanFact {
    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
