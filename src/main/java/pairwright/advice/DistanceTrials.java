package pairwright.advice;

import java.util.List;
import pairwright.model.Mount;
import pairwright.model.Remedy;

/** Nearer or farther, as the place and the other microphone of a pair allow. */
final class DistanceTrials {
    /** Distances closer than this to each other are one: nobody sets a stand more finely. */
    private static final double SAME_DISTANCE = 1.03;

    private final Rig rig;

    DistanceTrials(Rig rig) {
        this.rig = rig;
    }

    /** At each of the distances a remedy names, as a ratio to the one that stands. */
    void factors(Remedy remedy, int mic, List<Trial> list) {
        remedy.factors().forEach(factor -> distance(remedy, mic, rig.mic(mic).distanceM() * factor, list));
    }

    /** As far from what both hear as the other is. */
    void paths(Remedy remedy, int mic, List<Trial> list) {
        Standing.Mic one = rig.mic(mic);
        Standing.Mic other = rig.other(mic);
        if (rig.moveTogether() || Standing.wired(one.position()) || Standing.wired(other.position())) {
            return;
        }
        double distanceM = pathM(other) - (one.position().pathM() == null ? 0 : one.position().pathM());
        if (distanceM >= one.position().distanceM().low() && distanceM <= one.position().distanceM().high()) {
            distance(remedy, mic, distanceM, list);
        }
    }

    /** The farther of two so many times as far as the nearer. */
    void spacing(Remedy remedy, int mic, List<Trial> list) {
        Standing.Mic one = rig.mic(mic);
        Standing.Mic other = rig.other(mic);
        if (!rig.moveTogether() && !Standing.wired(other.position()) && one.distanceM() >= other.distanceM()) {
            remedy.factors().forEach(factor -> distance(remedy, mic, other.distanceM() * factor, list));
        }
    }

    private void distance(Remedy remedy, int mic, double wantedM, List<Trial> list) {
        Standing.Mic one = rig.mic(mic);
        if (Standing.wired(one.position())) {
            return;
        }
        // what a place allows, unless the microphone stands beyond that already
        double leastM = Math.min(one.distanceM(), one.position().distanceM().low());
        double mostM = Math.max(one.distanceM(), one.position().distanceM().high() * beyondRatio(remedy, one.position().mount()));
        double distanceM = Math.max(leastM, Math.min(mostM, wantedM));
        if (Math.max(distanceM / one.distanceM(), one.distanceM() / distanceM) < SAME_DISTANCE) {
            return;
        }
        if (rig.moveTogether()) {
            list.add(rig.all(remedy, mic, each -> each.at(distanceM)));
        } else {
            rig.moved(remedy, mic, one.at(distanceM), list);
        }
    }

    /** Nothing stands in the way of a stand that goes back; a clip or a floor stays where it is. */
    private static double beyondRatio(Remedy remedy, Mount mount) {
        boolean stands = mount == Mount.STAND || mount == Mount.BOOM || mount == Mount.OVERHEAD;
        return stands && remedy.beyondRatio() != null ? remedy.beyondRatio() : 1;
    }

    private static double pathM(Standing.Mic mic) {
        return mic.distanceM() + (mic.position().pathM() == null ? 0 : mic.position().pathM());
    }
}
