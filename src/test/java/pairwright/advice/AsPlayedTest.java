package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import pairwright.acoustics.Level;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Room;
import pairwright.model.Attack;
import pairwright.model.Catalogue;
import pairwright.model.Source;

class AsPlayedTest {
    private static final Catalogue CATALOGUE = Asking.KNOWLEDGE.current().catalogue();
    private static final Source TENOR = CATALOGUE.sources().get("tenor-saxophone");

    @Test
    void waysChangeLevelPeakToneAndAttack() {
        AsPlayed plain = AsPlayed.of(TENOR, List.of(), List.of(), CATALOGUE.words());
        assertEquals(new AsPlayed(TENOR, 91, 111, TENOR.spectrumDb(), Attack.MEDIUM), plain);
        AsPlayed overblown = AsPlayed.of(TENOR, List.of("overblown", "never heard of"), List.of(), CATALOGUE.words());
        assertEquals(95, overblown.typicalDbSpl());
        assertEquals(116, overblown.peakDbSpl());
        // 2 kHz has risen by 2 from -1, to 1, and is the strongest now
        assertEquals(OctaveCurve.of(-43, -16, -7, -2, -3, 0, -8, -18, -33), overblown.spectrumDb());
        assertEquals(Attack.IMPULSIVE, AsPlayed.of(TENOR, List.of("slapped"), List.of(), CATALOGUE.words()).attack());
    }

    @Test
    void softPlayingLowersThePeakAndLoudPlayingDoesNotRaiseIt() {
        CATALOGUE.words().dynamics().forEach(dynamic -> {
            AsPlayed played = AsPlayed.of(TENOR, List.of(), List.of(dynamic.id()), CATALOGUE.words());
            assertEquals(91 + dynamic.levelDb(), played.typicalDbSpl(), 1e-9, dynamic.id());
            assertEquals(111 + Math.min(0, dynamic.levelDb()), played.peakDbSpl(), 1e-9, dynamic.id());
        });
    }

    @Test
    void itsOctavesAddUpToItsLevelAtEveryDistance() {
        AsPlayed tenor = AsPlayed.of(TENOR, List.of(), List.of(), CATALOGUE.words());
        assertEquals(91, Level.sumIncoherentDb(tenor.directOctavesDbSpl(1).toArray()), 1e-9);
        assertEquals(91 - 20 * Math.log10(4.085 / 1.085), Level.sumIncoherentDb(tenor.directOctavesDbSpl(4).toArray()), 1e-9);
    }

    @Test
    void whatTheRoomAddsIsAsLoudAsTheStraightSoundAtTheCriticalDistance() {
        AsPlayed violin = AsPlayed.of(CATALOGUE.sources().get("violin"), List.of(), List.of(), CATALOGUE.words());
        double absorptionM2 = Room.absorptionM2(200, 0.6);
        // at 125 Hz a violin goes all round alike; from its centre, so without the offset
        double atOneMetre = violin.directOctavesDbSpl(1).at(1);
        assertEquals(atOneMetre - 20 * Math.log10(Room.criticalDistanceM(200, 0.6)), violin.reverberantOctavesDbSpl(absorptionM2).at(1), 1e-6);
    }

    @Test
    void aLeadHasNoLevel() {
        assertEquals(0, AsPlayed.of(CATALOGUE.sources().get("bass-lead"), List.of(), List.of(), CATALOGUE.words()).typicalDbSpl());
    }
}
