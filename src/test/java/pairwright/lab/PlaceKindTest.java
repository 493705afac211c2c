package pairwright.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pairwright.advice.KnowledgeStore;

/** A spot is worth what is predicted there. */
class PlaceKindTest {
    private static final Lab LAB = new Lab(KnowledgeStore.builtIn().current(), null);

    /** An alto saxophone in the middle of a dry room, and a snare drum a good metre behind the microphone, off to one side. */
    private static Case beside(String pattern, String type, double looks) {
        return Case.empty().with("types", type).with("pattern", pattern).with("widthM", 6).with("depthM", 6).with("heightM", 3).with("reverbTimeS", 0.12)
                .with("sources", List.of("alto-saxophone", "snare-drum")).with("xM", List.of("3", "2.3")).with("yM", List.of("3", "4.6")).with("facing", List.of("0", "180"))
                .with("spotXM", 3.0).with("spotYM", 3.7).with("looks", looks);
    }

    private static Answer spot(double xM, double yM, double looks) {
        return Answer.NOTHING.with("spot", List.of(Double.toString(xM), Double.toString(yM), Double.toString(looks)));
    }

    private static double share(Case drawn, int level, Answer answer) {
        return new PlaceKind().of(drawn, level, LAB).mark(answer).share();
    }

    @Test
    void theBackOfAFigureEightIsAsGoodAsItsFront() {
        Case drawn = beside("figure-8", "small-condenser-figure-8", 180);
        assertEquals(1, share(drawn, 1, spot(3, 3.7, 180)));
        assertEquals(1, share(drawn, 1, spot(3, 3.7, 0)));
        assertEquals(0, share(drawn, 1, spot(3, 3.7, 90)));
    }

    @Test
    void aDegreeOrTwoMakeNoDifferenceAndTheBackOfACardioidDoes() {
        Case drawn = beside("cardioid", "small-condenser-cardioid", 180);
        assertEquals(1, share(drawn, 1, spot(3, 3.7, 182)));
        assertEquals(1, share(drawn, 1, spot(3, 3.7, -178)));
        assertEquals(0, share(drawn, 1, spot(3, 3.7, 0)));
    }

    @Test
    void aSpotThatComesOutAsWellCountsAsMuchHoweverFarItIs() {
        Case drawn = beside("cardioid", "small-condenser-cardioid", 180);
        double nearby = share(drawn, 2, spot(3.03, 3.72, 180));
        assertTrue(nearby > 0.97, "three centimetres aside: " + nearby);
        double far = share(drawn, 2, spot(3, 5.4, 180));
        assertTrue(far < nearby / 2, "beyond the drum: " + far);
    }

    @Test
    void nobodyPutsAMicrophoneIntoAPlayerOrOutOfTheRoom() {
        Case drawn = beside("cardioid", "small-condenser-cardioid", 180);
        assertEquals(0, share(drawn, 2, spot(2.3, 4.6, 180)));
        assertEquals(0, share(drawn, 2, spot(7, 3, 180)));
        assertTrue(new PlaceKind().of(drawn, 2, LAB).mark(spot(7, 3, 180)).checks().get(0).says().contains("out of the room"));
    }

    @Test
    void aMicrophoneThatStandsIsOnlyTurned() {
        Exercise exercise = new PlaceKind().of(beside("cardioid", "small-condenser-cardioid", 180), 1, LAB);
        Item.Spot spot = (Item.Spot) exercise.handout().items().get(0);
        assertEquals(spot.leftM(), spot.rightM());
        assertEquals(spot.lowM(), spot.highM());
    }

    @Test
    void whereTheKeyShadesThePictureAnAnswerEarnsAllThatAPlaceCanEarn() {
        int shaded = 0;
        for (Variant variant : new Variants(new PlaceKind(), Variants.Purpose.CLASS, "shaded", 3, LAB).some(6)) {
            Exercise exercise = variant.exercise();
            Key key = exercise.key();
            for (Key.At at : key.spots().get(0).asGood()) {
                Mark mark = exercise.mark(Answer.NOTHING.with("spot", List.of(Double.toString(at.xM()), Double.toString(at.yM()), key.best().all("spot").get(2))));
                assertEquals(4, mark.checks().get(0).points(), at + " of " + key + ": " + mark);
                shaded++;
            }
        }
        assertTrue(shaded > 6, "shaded: " + shaded);
    }
}
