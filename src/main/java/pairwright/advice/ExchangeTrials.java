package pairwright.advice;

import java.util.List;
import pairwright.model.MicType;
import pairwright.model.PatternData;
import pairwright.model.Position;
import pairwright.model.Remedy;

/** Another place, another pattern, or another type in the same place. */
final class ExchangeTrials {
    private final Rig rig;

    ExchangeTrials(Rig rig) {
        this.rig = rig;
    }

    void positions(Remedy remedy, int mic, List<Trial> list) {
        Standing.Mic one = rig.mic(mic);
        if (!rig.single()) {
            return; // the places of a pair are the pair
        }
        for (Position position : rig.scene().setting().source().positions()) {
            if (!position.id().equals(one.position().id()) && !position.notAlone() && Placements.fits(one.mic(), position)
                    && Placements.sensible(rig.scene(), position)) {
                for (double distanceM : Placements.distances(position)) {
                    rig.moved(remedy, mic, new Standing.Mic(one.mic(), one.pattern(), position, distanceM, position.aimDegrees().low()), list);
                }
            }
        }
    }

    void patterns(Remedy remedy, int mic, List<Trial> list) {
        Standing.Mic one = rig.mic(mic);
        one.mic().patterns().stream()
                .filter(pattern -> pattern != one.pattern() && (remedy.patterns().isEmpty() || remedy.patterns().contains(pattern.pattern())))
                .forEach(pattern -> rig.moved(remedy, mic, one.in(pattern), list));
    }

    void mics(Remedy remedy, int mic, List<Trial> list) {
        Standing.Mic one = rig.mic(mic);
        int others = rig.mics().stream().mapToInt(each -> each.mic().channels()).sum() - one.mic().channels();
        for (MicType other : rig.scene().catalogue().mics().values()) {
            if (!other.captures() || other.id().equals(one.mic().id()) || !Placements.within(rig.scene().question().limits(), other)
                    || other.channels() + others > rig.scene().setting().channels() || !Placements.fits(other, one.position())
                    || !remedy.micFamilies().isEmpty() && !remedy.micFamilies().contains(other.family())
                    || !rig.single() && (other.channels() > 1 || !rig.takes(mic, other)) || !rig.hasUnits(mic, other)) {
                continue;
            }
            for (PatternData pattern : other.patterns()) {
                double aimDegrees = Placements.turns(pattern) || one.aimDegrees() == Placements.SIDE_DEGREES ? one.aimDegrees() : one.position().aimDegrees().low();
                rig.moved(remedy, mic, new Standing.Mic(other, pattern, one.position(), one.distanceM(), aimDegrees), list);
            }
        }
    }
}
