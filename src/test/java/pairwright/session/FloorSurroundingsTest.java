package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.Rooms.CATALOGUE;
import static pairwright.session.Rooms.inTheOpen;
import static pairwright.session.Rooms.lineUp;
import static pairwright.session.Rooms.reaching;
import static pairwright.session.Rooms.seat;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.acoustics.Level;
import pairwright.acoustics.Octaves;
import pairwright.acoustics.Radiation;
import pairwright.acoustics.Weighting;
import pairwright.advice.KnowledgeStore;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.advice.Offers;
import pairwright.advice.Reaching;
import pairwright.model.HeardBefore;
import pairwright.model.Limits;
import pairwright.model.Source;

class FloorSurroundingsTest {
    private static final String VOICE = "singing-voice";
    private static final String AT_VOICE = "forearm";
    private static final Source TENOR = CATALOGUE.sources().get("tenor-saxophone");
    private static final String AT_TENOR = "in-front";

    /**
     * A voice at (5, 5) looks up the plan, its microphone half a metre before it, a saxophone around it. An aim above 0 turns the
     * microphone to the left as it looks: from down the plan toward the right of the plan.
     */
    @ParameterizedTest
    @CsvSource({"2, 5.5, 90, -1", "8, 5.5, 90, 1", "5, 9, 180, 0", "5, 2, 0, 0", "7, 7.5, 135, 0.7071", "3, 3.5, 45, -0.7071"})
    void theAngleIsSeenFromTheMicrophone(double xM, double yM, double angleDegrees, double acrossShare) {
        Reaching found = reaching(inTheOpen(seat("v", VOICE, 5, 5, 0), seat("t", VOICE, xM, yM, 0)), AT_VOICE, 0.5).get(0);
        assertEquals(angleDegrees, found.angleDegrees(), 1e-3);
        assertEquals(acrossShare, found.acrossShare(), 1e-4);
        assertEquals(Math.hypot(xM - 5, yM - 5.5), found.distanceM(), 1e-9);
        assertEquals("t", found.seat());
    }

    @Test
    void turnedTowardItAnotherComesNearerTheAxis() {
        Reaching left = reaching(inTheOpen(seat("v", VOICE, 5, 5, 0), seat("t", VOICE, 7, 3.5, 0)), AT_VOICE, 0.5).get(0);
        assertTrue(left.acrossShare() > 0);
        assertTrue(left.offAxisDegrees(30) < left.offAxisDegrees(0));
        assertTrue(left.offAxisDegrees(-30) > left.offAxisDegrees(0));
    }

    @Test
    void twiceAsFarIsSixDecibelsLess() {
        double centreM = TENOR.level().centreOffsetM();
        Reaching near = beside(0, 0, 0);
        Reaching far = beside(0, 0, 8);
        double expectedDb = 20 * Math.log10((far.distanceM() + centreM) / (near.distanceM() + centreM));
        for (int band = 0; band < 3; band++) {
            assertEquals(expectedDb, near.directOctavesDbSpl().at(band) - far.directOctavesDbSpl().at(band), 1e-9, "63 to 250 Hz go all round alike");
        }
    }

    /** A voice, and a saxophone four metres behind it or more, facing as given. */
    private static Reaching beside(double offM, double facingDegrees, double fartherM) {
        return reaching(inTheOpen(seat("v", VOICE, 20, 20, 0), seat("t", "tenor-saxophone", 20 + offM, 16 - fartherM, facingDegrees)), AT_VOICE, 0.5).get(0);
    }

    @Test
    void theLevelIsThatOfTheCatalogueAtThatDistanceAndAngle() {
        Reaching found = beside(0, 0, 0);
        Seat own = seat("v", VOICE, 20, 20, 0);
        Line.Spot spot = FloorSurroundings.of(inTheOpen(own), own, CATALOGUE).spot(Rooms.position(VOICE, AT_VOICE), 0.5, 0);
        // the bell at (20, 16), 0.75 m high, looks up the plan and 45 degrees upward
        double forwardM = spot.yM() - 16;
        double upM = spot.zM() - 0.75;
        double distanceM = Math.sqrt(Math.pow(spot.xM() - 20, 2) + forwardM * forwardM + upM * upM);
        double offAxisDegrees = Math.toDegrees(Math.acos((forwardM + upM) * Math.sqrt(0.5) / distanceM));
        assertEquals(distanceM, found.distanceM(), 1e-9);
        double together = Level.sumIncoherentDb(TENOR.spectrumDb().toArray());
        for (int band = 0; band < Octaves.COUNT; band++) {
            double atOneMetre = TENOR.level().typicalDbSpl() + TENOR.spectrumDb().at(band) - together;
            assertEquals(Level.withCentreOffsetDbSpl(atOneMetre, distanceM, 0.085) + Radiation.towardDb(TENOR.directivityIndexDb().at(band), offAxisDegrees),
                    found.directOctavesDbSpl().at(band), 1e-6);
        }
        assertNull(found.reverberantOctavesDbSpl(), "in the open air");
        assertEquals(0, found.screenDb());
    }

    @Test
    void turningAPlayerChangesNoMoreThanTheDirectivitySays() {
        Reaching toward = beside(0, 0, 0);
        Reaching away = beside(0, 180, 0);
        assertEquals(toward.distanceM(), away.distanceM(), 1e-9);
        assertEquals(toward.angleDegrees(), away.angleDegrees(), 1e-9);
        double forwardM = 4.5;
        double upM = toward.distanceM() > forwardM ? Math.sqrt(toward.distanceM() * toward.distanceM() - forwardM * forwardM) : 0;
        double elevation = Math.toDegrees(Math.atan2(upM, forwardM));
        for (int band = 0; band < Octaves.COUNT; band++) {
            double index = TENOR.directivityIndexDb().at(band);
            assertEquals(Radiation.towardDb(index, 45 - elevation) - Radiation.towardDb(index, 135 - elevation),
                    toward.directOctavesDbSpl().at(band) - away.directOctavesDbSpl().at(band), 0.05, "band " + band);
        }
        assertEquals(toward.directOctavesDbSpl().at(0), away.directOctavesDbSpl().at(0), 1e-9, "the bass goes all round");
        assertTrue(toward.directOctavesDbSpl().at(8) > away.directOctavesDbSpl().at(8) + 5, "the top does not");
    }

    @Test
    void whatIsAloneOnTheRightAndOnTheLeftIsHeardAlike() {
        LineUp two = inTheOpen(seat("a", "tenor-saxophone", 4, 5, 90), seat("b", "tenor-saxophone", 8, 5, 270));
        Reaching atA = reaching(two, AT_TENOR, 1).get(0);
        Reaching atB = reaching(two.seated(List.of(two.seats().get(1), two.seats().get(0))), AT_TENOR, 1).get(0);
        assertEquals(atA.distanceM(), atB.distanceM(), 1e-9);
        assertEquals(atA.angleDegrees(), atB.angleDegrees(), 1e-9);
        assertEquals(atA.acrossShare(), atB.acrossShare(), 1e-9);
        assertAlike(atA, atB);
    }

    @Test
    void aGoboBetweenTakesFromWhatComesStraightAndFromNothingElse() {
        Seat voice = seat("v", VOICE, 5, 5, 180);
        Seat tenor = seat("t", "tenor-saxophone", 5, 9, 180);
        Reaching open = reaching(lineUp(Rooms.BARN, List.of(), voice, tenor), AT_VOICE, 0.3).get(0);
        Reaching screened = reaching(lineUp(Rooms.BARN, List.of(new Gobo("g", 3, 7, 7, 7, 1.9)), voice, tenor), AT_VOICE, 0.3).get(0);
        Reaching beside = reaching(lineUp(Rooms.BARN, List.of(new Gobo("g", 8, 7, 10, 7, 1.9)), voice, tenor), AT_VOICE, 0.3).get(0);
        assertEquals(open.reverberantOctavesDbSpl(), screened.reverberantOctavesDbSpl());
        assertTrue(screened.screenDb() > 6 && screened.screenDb() < 20, screened.screenDb() + " dB");
        int loudest = open.directOctavesDbSpl().plus(Weighting.octaveWeightingDb()).highestBand();
        assertEquals(screened.screenDb(), open.directOctavesDbSpl().at(loudest) - screened.directOctavesDbSpl().at(loudest), 1e-9);
        for (int band = 1; band < Octaves.COUNT; band++) {
            assertTrue(screened.directOctavesDbSpl().at(band) < open.directOctavesDbSpl().at(band) - 4);
        }
        assertEquals(0, beside.screenDb());
        assertEquals(open.directOctavesDbSpl().at(4), beside.directOctavesDbSpl().at(4), 1e-9);
    }

    @Test
    void theRoomAddsWhatThePowerAndTheAbsorptionSay() {
        Reaching found = reaching(lineUp(Rooms.BARN, List.of(), seat("v", VOICE, 5, 5, 180), seat("t", "tenor-saxophone", 5, 9, 0)), AT_VOICE, 0.3).get(0);
        double absorptionM2 = 24 * Math.log(10) / 343 * 10 * 14 * 6 / 1.1;
        double atOneMetre = 91 + 0 - Level.sumIncoherentDb(TENOR.spectrumDb().toArray());
        double expectedDbSpl = atOneMetre + 10 * Math.log10(4 * Math.PI) - 1 + 10 * Math.log10(4 / absorptionM2);
        assertEquals(expectedDbSpl, found.reverberantOctavesDbSpl().at(3), 1e-9, "500 Hz is its strongest octave, 1 dB stronger to the front than all round");
    }

    @Test
    void aLeadMakesNoSoundAndASeatDoesNotReachItself() {
        LineUp three = inTheOpen(seat("v", VOICE, 5, 5, 0), seat("b", "bass-lead", 7, 5, 0), seat("v2", VOICE, 9, 5, 0));
        assertEquals(List.of("v2"), reaching(three, AT_VOICE, 0.3).stream().map(Reaching::seat).toList());
    }

    @Test
    void anotherIsAsLoudAsItIsPlayedAndAsItsPlayerWasHeard() {
        Seat voice = seat("v", VOICE, 5, 5, 0);
        Seat tenor = seat("t", "tenor-saxophone", 5, 9, 0);
        HeardBefore loud = new HeardBefore(97.0, null, null, null, null, null);
        Seat louder = new Seat("t", null, "tenor-saxophone", 5, 9, 0, List.of("overblown"), null, null, null, null, true, null, false);
        Seat heard = new Seat("t", null, "tenor-saxophone", 5, 9, 0, null, null, null, null, null, true, loud, false);
        double plain = overall(reaching(inTheOpen(voice, tenor), AT_VOICE, 0.3).get(0));
        assertEquals(plain + 6, overall(reaching(inTheOpen(voice, heard), AT_VOICE, 0.3).get(0)), 1e-9);
        double overblown = overall(reaching(inTheOpen(voice, louder), AT_VOICE, 0.3).get(0));
        assertTrue(overblown < plain + 4 && overblown > plain + 3, "4 dB, but a brighter horn sends less of it aside: " + (overblown - plain));
    }

    @Test
    void aStereoPairIsSpreadAndTurnedApartAboutItsPlace() {
        Seat piano = new Seat("p", null, "grand-piano", 5, 5, 0, null, null, null, null,
                new Limits(2, null, null, null, null, null, List.of("small-condenser-cardioid"), null), true, null, false);
        LineUp one = inTheOpen(piano, seat("v", VOICE, 9, 9, 0));
        FloorSurroundings around = FloorSurroundings.of(one, piano, CATALOGUE);
        Offer pair = Offers.of(SeatQuestion.of(piano, CATALOGUE), Altered.of(CATALOGUE, one, piano), KnowledgeStore.builtIn().current().rules(), null, around)
                .all().stream().filter(offer -> offer.technique().equals("near-coincident-pair")).findFirst().orElseThrow();
        OfferedMic mic = pair.mics().get(0);
        Line.Spot middle = around.spot(mic.position(), mic.distanceM(), mic.aimDegrees());
        Line.Spot left = around.spot(pair, 0);
        Line.Spot right = around.spot(pair, 1);
        assertEquals(pair.pairing().spacingM(), Math.hypot(left.xM() - right.xM(), left.yM() - right.yM()), 1e-9);
        assertEquals(middle.xM(), (left.xM() + right.xM()) / 2, 1e-9);
        assertEquals(middle.zM(), left.zM(), 1e-9);
        double between = (right.headingDegrees() - left.headingDegrees() + 360) % 360;
        assertTrue(between > 0 && between < 180, "the left one looks to the left: " + left + right);
        assertTrue(between >= pair.pairing().includedDegrees() - 1e-6, "of two that look down the headings lie farther apart");
    }

    private static double overall(Reaching reaching) {
        return Level.sumIncoherentDb(reaching.directOctavesDbSpl().toArray());
    }

    @Property(tries = 60)
    void movingAndTurningTheWholeLineUpChangesNothing(@ForAll @DoubleRange(min = -10, max = 10) double alongM,
            @ForAll @DoubleRange(min = 0, max = 360) double turnDegrees, @ForAll @DoubleRange(min = 0.5, max = 3) double apartM) {
        LineUp before = lineUp(Rooms.OPEN_AIR, List.of(new Gobo("g", 18, 21, 20.5, 22, 1.5)), seat("a", "tenor-saxophone", 20, 20, 40),
                seat("b", "trumpet", 20 + apartM, 22.5, 200), seat("c", "grand-piano", 17, 24, 135));
        LineUp after = lineUp(Rooms.OPEN_AIR, before.gobos().stream().map(gobo -> {
            double[] one = turned(gobo.x1M(), gobo.y1M(), turnDegrees);
            double[] two = turned(gobo.x2M(), gobo.y2M(), turnDegrees);
            return new Gobo("g", one[0] + alongM, one[1], two[0] + alongM, two[1], gobo.heightM());
        }).toList(), before.seats().stream().map(seat -> {
            double[] to = turned(seat.xM(), seat.yM(), turnDegrees);
            return seat.at(to[0] + alongM, to[1], seat.facingDegrees() + turnDegrees);
        }).toArray(Seat[]::new));
        for (String position : List.of("bell-to-keys", "bell", "in-front")) {
            List<Reaching> one = reaching(before, position, 0.4);
            List<Reaching> two = reaching(after, position, 0.4);
            for (int i = 0; i < one.size(); i++) {
                assertEquals(one.get(i).distanceM(), two.get(i).distanceM(), 1e-9);
                assertEquals(one.get(i).angleDegrees(), two.get(i).angleDegrees(), 1e-5);
                assertEquals(one.get(i).acrossShare(), two.get(i).acrossShare(), 1e-9);
                assertAlike(one.get(i), two.get(i));
            }
        }
    }

    /** Clockwise about (20, 20). */
    private static double[] turned(double xM, double yM, double degrees) {
        double turn = Math.toRadians(degrees);
        return new double[] {20 + (xM - 20) * Math.cos(turn) + (yM - 20) * Math.sin(turn), 20 + (yM - 20) * Math.cos(turn) - (xM - 20) * Math.sin(turn)};
    }

    private static void assertAlike(Reaching one, Reaching two) {
        IntStream.range(0, Octaves.COUNT).forEach(band -> assertEquals(one.directOctavesDbSpl().at(band), two.directOctavesDbSpl().at(band), 1e-6));
    }
}
