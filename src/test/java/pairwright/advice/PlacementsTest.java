package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.acoustics.Radiation;
import pairwright.acoustics.Room;
import pairwright.model.Limits;
import pairwright.model.MicType;
import pairwright.model.Neighbour;
import pairwright.model.Position;
import pairwright.rules.Placed;

class PlacementsTest {
    @Test
    void turningPastTheBackComesRoundTheOtherSide() {
        Workshop snare = Workshop.of("snare-drum", Limits.NONE, new Neighbour("hi-hat", 0.5, 175));
        Placed turned = turned(snare, "small-condenser-cardioid", 15);
        assertEquals(turned.nullDegrees() - 170, turned.nullMissDegrees(), 1e-9, "175 + 15 is 170 on the other side");
    }

    @ParameterizedTest
    @CsvSource({"70", "-70", "180"})
    void aTurnAgainstTopGoesToTheSideOnWhichLessIsHeardOfTheNeighbour(double neighbourDegrees) {
        Workshop snare = Workshop.of("snare-drum", Limits.NONE, new Neighbour("hi-hat", 0.5, neighbourDegrees));
        List<Placed> all = snare.placed().stream().filter(one -> Math.abs(one.aimDegrees()) == one.position().aimDegrees().high() && one.aimDegrees() != 0).toList();
        assertFalse(all.isEmpty());
        for (Placed one : all) {
            assertTrue(one.predicted().separationDb() >= separation(snare, one, -one.aimDegrees()) - 1e-9, one::toString);
            assertTrue(one.predicted().separationDb() >= separation(snare, one, 0) - 0.6, one::toString);
        }
    }

    private static double separation(Workshop at, Placed one, double aimDegrees) {
        return Placements.none(at.scene()).set(one.mic(), Placements.pattern(one), one.position(), one.distanceM(), aimDegrees).predicted().separationDb();
    }

    /** Over the rim of the snare drum, whether anybody would try that or not. */
    private static Placed turned(Workshop snare, String mic, double aimDegrees) {
        MicType type = snare.scene().catalogue().mics().get(mic);
        Position rim = snare.scene().setting().source().positions().stream().filter(one -> one.id().equals("over-rim")).findFirst().orElseThrow();
        return Placements.none(snare.scene()).set(type, type.patterns().get(0), rim, rim.distanceM().low(), aimDegrees);
    }

    @Test
    void anAngleSaidTheLongWayRoundIsTheSameNeighbour() {
        Neighbour right = new Neighbour("hi-hat", 0.5, 120);
        Neighbour long240 = new Neighbour("hi-hat", 0.5, -240);
        assertEquals(Workshop.of("snare-drum", Limits.NONE, right).scene().others(),
                Workshop.of("snare-drum", Limits.NONE, long240).scene().others());
    }

    @Test
    void aNeighbourBehindIsHeardAsFarOffTheAxisOnEitherSide() {
        assertEquals(separation(150, 15), separation(180, 15), 1e-9, "165 degrees on one side and on the other");
    }

    /** Behind a source is quieter than before it, as the end of a pipe is, and not silent, as the back of a lobe would be. */
    @ParameterizedTest
    @CsvSource({"flute, 130", "french-horn, 140", "kick-drum, 155", "cajon, 165", "singing-voice, 0"})
    void asMuchOfASourceGoesTowardItsOwnMicrophoneAsTowardThoseOfOthersAtThatAngle(String source, double angleDegrees) {
        Workshop at = Workshop.of(source, Limits.NONE);
        List<Placed> omnis = at.placed().stream().filter(one -> one.mic().id().equals("small-condenser-omni") && one.aimDegrees() == 0
                && one.position().offAxisDegrees().typical() == angleDegrees && one.position().mount().onStand()).toList();
        assertFalse(omnis.isEmpty());
        double indexDb = at.scene().setting().source().directivityIndexDb().at(Band.HZ_1000);
        double equalM = Room.criticalDistanceM(at.scene().setting().room().volumeM3(), at.scene().setting().room().reverbTimeS());
        for (Placed omni : omnis) {
            double apartM = omni.distanceM() + at.scene().setting().source().level().centreOffsetM();
            assertEquals(indexDb + Radiation.towardDb(indexDb, angleDegrees) + 20 * Math.log10(equalM / apartM), omni.predicted().directToReverbDb(), 1e-9);
        }
    }

    private static double separation(double neighbourDegrees, double aimDegrees) {
        return turned(Workshop.of("snare-drum", Limits.NONE, new Neighbour("hi-hat", 0.5, neighbourDegrees)), "small-condenser-supercardioid", aimDegrees).predicted().separationDb();
    }
}
