package pairwright.session;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import pairwright.advice.Usual;

/** What a plan takes for granted of channels and pads. */
final class Assumptions {
    private Assumptions() {
    }

    /** In sentences; empty where all that counts is noted. */
    static List<String> ofPads(Gear gear) {
        List<String> assumed = new ArrayList<>();
        if (gear.channels() == null) {
            if (!gear.pads().isEmpty()) {
                assumed.add("Pads for a line are left aside, since without channels nobody knows what an input takes.");
            }
            return assumed;
        }
        if (gear.channels().stream().anyMatch(channel -> channel.leastGainDb() == null)) {
            assumed.add("Channels whose lowest gain nobody noted are taken to go down to " + Math.round(Usual.LEAST_GAIN_DB) + " dB.");
        }
        String unknown = gear.pads().stream().filter(pad -> pad.passesPhantom() == null).map(Gear.LinePad::label).sorted().collect(Collectors.joining(", "));
        if (!unknown.isEmpty()) {
            assumed.add("Nobody noted whether phantom power passes " + unknown + ", so no microphone that needs it gets one of these pads.");
        }
        return assumed;
    }
}
