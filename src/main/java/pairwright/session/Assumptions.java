package pairwright.session;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import pairwright.advice.Usual;
import pairwright.rules.Figure;

/** What a plan takes for granted of players, channels and pads. */
final class Assumptions {
    private Assumptions() {
    }

    /** Who would have to be at two places at once, in sentences; one who plays two things where they are is no news. */
    static List<String> ofPlayers(LineUp lineUp) {
        List<String> assumed = new ArrayList<>();
        SeatNames names = SeatNames.of(lineUp);
        for (int i = 0; i < lineUp.seats().size(); i++) {
            Seat one = lineUp.seats().get(i);
            for (Seat other : lineUp.seats().subList(i + 1, lineUp.seats().size())) {
                double apartM = Math.hypot(one.xM() - other.xM(), one.yM() - other.yM());
                if (one.samePlayer(other) && apartM >= LineUpCheck.LEAST_APART_M) {
                    assumed.add(one.player() + " plays two things at once, " + Figure.forPeople(apartM, "m") + " apart: " + names.of(one.id()) + " and " + names.of(other.id())
                            + " are planned as if both were heard at the same time. Name somebody else at one of them, or plan a session for each.");
                }
            }
        }
        return assumed;
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
