package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.Rooms.CATALOGUE;
import static pairwright.session.Rooms.inTheOpen;
import static pairwright.session.Rooms.lineUp;
import static pairwright.session.Rooms.seat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pairwright.acoustics.FirstOrder;
import pairwright.acoustics.Octaves;
import pairwright.acoustics.Weighting;
import pairwright.advice.KnowledgeStore;
import pairwright.advice.Offers;
import pairwright.model.Heard;
import pairwright.model.HeardBefore;
import pairwright.model.Limits;
import pairwright.model.Option;
import pairwright.model.Pattern;
import pairwright.model.Placement;
import pairwright.model.Position;

class HearingTest {
    private static final String CARDIOID = "small-condenser-cardioid";

    @Test
    void whatALineHearsIsWhatTheAdviceReckonedWithToTheLastDigit() {
        Seat tenor = new Seat("t", null, "tenor-saxophone", 3, 4, 70, List.of("overblown"), null, null, null,
                new Limits(2, null, null, null, null, null, List.of("long-ribbon", "large-condenser-multi-pattern"), null), true,
                new HeardBefore(94.0, null, null, null, null, null), false);
        LineUp barn = lineUp(Rooms.BARN, List.of(new Gobo("g", 4, 4.5, 6, 5.5, 1.8)), tenor, seat("v", "singing-voice", 6, 7, 200),
                seat("k", "drum-kit", 2, 9, 150), seat("b", "bass-lead", 8, 8, 0), seat("p", "grand-piano", 7, 3, 300));
        FloorSurroundings around = FloorSurroundings.of(barn, tenor, CATALOGUE);
        Offers offers = Offers.of(SeatQuestion.of(tenor, CATALOGUE), Altered.of(CATALOGUE, barn, tenor), KnowledgeStore.builtIn().current().rules(),
                null, around);
        List<Line> lines = new ArrayList<>();
        for (Option option : offers.explained(Stream.concat(offers.all().stream().limit(12),
                offers.all().stream().filter(offer -> offer.mics().stream().anyMatch(mic -> mic.aimDegrees() != 0)).limit(6)).toList())) {
            for (Placement placement : option.mics()) {
                Position position = Rooms.position("tenor-saxophone", placement.position());
                lines.add(Lines.line(lines.size() + 1, tenor, 1, placement, around.spot(position, placement.distanceM(), placement.aimDegrees())));
            }
        }
        Hearing hearing = Hearing.of(barn, CATALOGUE);
        List<Hears> all = hearing.of(lines);
        for (Line line : lines) {
            List<Hears> hears = all.stream().filter(one -> one.line() == line.number()).toList();
            List<Heard> advised = line.placement().neighbours();
            assertEquals(List.of("v", "k", "p"), hears.stream().map(Hears::seat).toList(), "a lead makes no sound");
            for (int i = 0; i < hears.size(); i++) {
                assertEquals(advised.get(i).seat(), hears.get(i).seat());
                assertEquals(advised.get(i).separationDb(), hears.get(i).separationDb(), 0);
                assertEquals(advised.get(i).octavesDb(), hears.get(i).octavesDb());
                assertEquals(advised.get(i).loudestHz(), hears.get(i).loudestHz(), 0);
                assertEquals(advised.get(i).roomAllowsDb(), hears.get(i).roomAllowsDb(), 0);
            }
            Listening listening = hearing.listening(List.of(line)).get(0);
            assertEquals(line.placement().predicted().separationDb(), listening.all().separationDb(line.placement().aimDegrees()), 0);
        }
        assertTrue(lines.stream().anyMatch(line -> line.placement().aimDegrees() != 0), "some of them are turned");
    }

    /** Two voices in the open: the microphone of the one, an octave at a time. */
    @Test
    void anOctaveIsTheLevelAtItsDistanceOffTheAxisOfSourceAndMicrophone() {
        LineUp two = inTheOpen(seat("v", "singing-voice", 10, 10, 0), seat("w", "singing-voice", 13, 10.45, 270));
        Line line = Lines.line(two, 1, "v", CARDIOID, Pattern.CARDIOID, "forearm", 0.45, 0);
        Hears hears = Hearing.of(two, CATALOGUE).of(List.of(line)).get(0);
        // the other is 3 m to the side of the microphone and sings straight at it
        assertEquals(3, hears.distanceM(), 1e-9);
        assertEquals(90, hears.angleDegrees(), 1e-6);
        double nearerDb = 20 * Math.log10((3 + 0.062) / (0.45 + 0.062));
        for (int band = 0; band < Octaves.COUNT; band++) {
            double coefficient = CATALOGUE.mics().get(CARDIOID).patterns().get(0).coefficient().at(band);
            assertEquals(nearerDb - FirstOrder.responseDb(coefficient, 90), hears.octavesDb().at(band), 1e-6);
        }
        assertEquals(null, hears.roomAllowsDb());
        assertEquals(0, hears.screenDb());
    }

    @Test
    void theLoudestOctaveIsTheLoudestToTheEar() {
        LineUp two = inTheOpen(seat("v", "singing-voice", 10, 10, 0), seat("b", "double-bass", 12, 13, 180));
        Line line = Lines.line(two, 1, "v", CARDIOID, Pattern.CARDIOID, "forearm", 0.45, 0);
        double[] bass = CATALOGUE.sources().get("double-bass").spectrumDb().plus(Weighting.octaveWeightingDb()).toArray();
        assertTrue(bass[3] > bass[2] && bass[3] > bass[4], "of a bass the octave at 500 Hz");
        assertEquals(500, Hearing.of(two, CATALOGUE).of(List.of(line)).get(0).loudestHz());
    }

    @Test
    void turnedAwayAMicrophoneHearsLessAndIsToldWhatItWouldHearStraight() {
        LineUp two = inTheOpen(seat("v", "singing-voice", 10, 10, 0), seat("w", "singing-voice", 12, 11, 270));
        Hears straight = Hearing.of(two, CATALOGUE).of(List.of(Lines.line(two, 1, "v", CARDIOID, Pattern.CARDIOID, "forearm", 0.45, 0))).get(0);
        assertEquals(straight.separationDb(), straight.straightDb(), 0);
        // the microphone looks down the plan, the other is to its left
        assertTrue(straight.betterAimDegrees() < 0, straight::toString);
        assertTrue(straight.betterDb() >= straight.separationDb() + 1);
        Hears turned = Hearing.of(two, CATALOGUE).of(List.of(Lines.line(two, 1, "v", CARDIOID, Pattern.CARDIOID, "forearm", 0.45, straight.betterAimDegrees()))).get(0);
        assertEquals(straight.betterDb(), turned.separationDb(), 1e-9);
        assertEquals(straight.separationDb(), turned.straightDb(), 1e-9);
        assertEquals(turned.separationDb(), turned.betterDb(), 0, "no turn is better still");
        assertEquals(straight.betterAimDegrees(), turned.betterAimDegrees());
        Hears wrong = Hearing.of(two, CATALOGUE).of(List.of(Lines.line(two, 1, "v", CARDIOID, Pattern.CARDIOID, "forearm", 0.45, 30))).get(0);
        assertTrue(wrong.separationDb() < straight.separationDb());
        assertEquals(straight.angleDegrees() - 30, wrong.angleDegrees(), 1e-6);
    }

    @Test
    void aWireHearsNobodyAndWhoIsAloneHearsNobody() {
        LineUp two = inTheOpen(seat("v", "singing-voice", 10, 10, 0), seat("b", "double-bass", 12, 13, 180), seat("l", "bass-lead", 12, 15, 180));
        Line contact = Lines.line(two, 1, "b", "piezo-pickup", Pattern.CONTACT, "pickup", 0.001, 0);
        assertEquals(List.of(), Hearing.of(two, CATALOGUE).of(List.of(contact)));
        LineUp one = inTheOpen(seat("v", "singing-voice", 10, 10, 0), seat("l", "bass-lead", 12, 15, 180));
        assertEquals(List.of(), Hearing.of(one, CATALOGUE).of(List.of(Lines.line(one, 1, "v", CARDIOID, Pattern.CARDIOID, "forearm", 0.45, 0))));
    }

    @Test
    void inALiveRoomNoTurnGetsBeyondWhatTheRoomAllows() {
        LineUp two = lineUp(new Floor("church", 15, 20, 9, 3.5), List.of(), seat("v", "singing-voice", 5, 5, 0), seat("t", "trumpet", 10, 15, 180));
        Hears hears = Hearing.of(two, CATALOGUE).of(List.of(Lines.line(two, 1, "v", CARDIOID, Pattern.CARDIOID, "forearm", 0.45, 0))).get(0);
        assertTrue(hears.separationDb() <= hears.roomAllowsDb());
        assertTrue(hears.betterDb() <= hears.roomAllowsDb());
    }
}
