package pairwright.session;

import java.util.List;
import java.util.Map;
import java.util.Set;
import pairwright.model.MicType;
import pairwright.session.allocation.Feed;

/**
 * One way from a microphone to its channels: what is put in between, and which channels do for it then.
 *
 * @param boosted whether an inline booster is in the line
 * @param box type of the line box; null for none
 * @param power what that runs on; null for none
 * @param instrument whether it goes into an instrument input
 * @param padded whether a pad is in the line
 * @param takes what it takes of the gear, by cap
 * @param pads for each of its channels the caps its pad may come from; empty for none
 * @param feeds what it asks of its channels; empty where those are not counted
 * @param centipoints what it costs that its peaks are too strong for the input; 0 where they are not
 */
record Course(boolean boosted, MicType box, Between.BoxPower power, boolean instrument, boolean padded, Map<String, Integer> takes, List<Set<String>> pads,
        List<Feed> feeds, long centipoints) {
}
