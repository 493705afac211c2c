package pairwright.advice;

import java.util.List;
import pairwright.model.Complaint;
import pairwright.model.Heard;
import pairwright.model.Moves;
import pairwright.model.Option;
import pairwright.model.Predicted;
import pairwright.model.Remedy;
import pairwright.rules.Figure;

/** Moves that leave the microphones where they are: player, instrument, room, screen, gain, polarity. */
final class StillMoves {
    private final Complaint complaint;
    private final Trial base;

    StillMoves(Complaint complaint, Trial base) {
        this.complaint = complaint;
        this.base = base;
    }

    /** A move in words; null where it does not apply. What can be computed of it is told all the same. */
    Moves.Move of(Remedy remedy, Option option) {
        String effect = "";
        int mic = base.pair() == null ? 1 : 0;
        String change = "";
        switch (remedy.by()) {
            case SCREEN -> {
                Double most = roomAllowsDb(option);
                Double here = base.placed().get(0).predicted().separationDb();
                if (most == null || here == null || most - here < complaint.leastDb()) {
                    return null;
                }
                effect = "from " + Decibels.over(here) + " the neighbours to " + Decibels.over(most) + " them at the very best, for more the room does not allow";
            }
            case GAIN -> {
                Predicted predicted = base.placed().get(0).predicted();
                if (predicted.gainDb() == null) {
                    return null;
                }
                double padDb = base.placed().get(0).padDb();
                effect = "about " + Decibels.figure(predicted.gainDb()) + " dB of gain is right here"
                        + (padDb > 0 ? ", with the pad of " + Decibels.figure(padDb) + " dB in" : "");
            }
            case POLARITY -> {
                Double firstNullHz = base.together().firstNullHz();
                change = "second channel " + (base.pair().secondInverted() ? "inverted -> as it comes" : "as it comes -> inverted");
                if (firstNullHz != null) {
                    effect = "the first gap lies at " + Figure.forPeople(firstNullHz, "Hz") + " with both the same way round and at "
                            + Figure.forPeople(2 * firstNullHz, "Hz") + " with one turned over, which also takes out the bass below about "
                            + Figure.forPeople(firstNullHz / 3, "Hz");
                }
            }
            case PLAYER, INSTRUMENT, ROOM, FITTING -> {
                if (!remedy.factors().isEmpty() || remedy.levelDb() != null) {
                    return null; // it was tried, and there is no room for it
                }
            }
            default -> {
                return null;
            }
        }
        return new Moves.Move(remedy.by(), mic, remedy.says(), remedy.why(), change, effect, null, null, List.of(), null);
    }

    /** What would be left if nothing of the neighbours came straight. */
    private static Double roomAllowsDb(Option option) {
        double power = 0;
        for (Heard heard : option.mics().get(0).neighbours()) {
            power += heard.roomAllowsDb() == null ? 0 : Math.pow(10, -heard.roomAllowsDb() / 10);
        }
        return power == 0 ? null : -10 * Math.log10(power);
    }
}
