package pairwright.advice;

import java.util.List;
import pairwright.model.Remedy;

/** Turned off the line to the source; where a neighbour is to be kept out, to either side. */
final class AimTrials {
    private final Rig rig;

    AimTrials(Rig rig) {
        this.rig = rig;
    }

    void turns(Remedy remedy, int mic, boolean eitherSide, List<Trial> list) {
        Standing.Mic one = rig.mic(mic);
        boolean turns = Placements.turns(one.pattern()) && (rig.single() || !rig.technique().stereo());
        if (!turns || Standing.wired(one.position())) {
            return;
        }
        double most = Math.max(Placements.MOST_TURN_DEGREES, one.position().aimDegrees().high());
        for (double turn : remedy.turnsDegrees()) {
            for (double degrees : eitherSide && turn > 0 ? new double[] {turn, -turn} : new double[] {turn}) {
                if (Math.abs(degrees) <= most && Math.abs(degrees - one.aimDegrees()) >= 1) {
                    rig.moved(remedy, mic, one.turned(degrees), list);
                }
            }
        }
    }
}
