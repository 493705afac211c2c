package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pairwright.model.Limits;
import pairwright.model.Together;

/** What two placements do together, by numbers worked out by hand at 343 m/s. */
class PairsTest {
    private final List<Judged> given = new ArrayList<>();

    @Test
    void topAndBottomOfASnareDifferByTheirDistancesAndTheLowerIsInverted() {
        Workshop snare = Workshop.of("snare-drum");
        givenOne(snare, "handheld-moving-coil", "over-rim", 0.05);
        givenOne(snare, "small-condenser-cardioid", "under-head", 0.12);
        Pairs.Pair pair = only(snare, "top-and-bottom");
        assertTrue(pair.paired().secondInverted());
        assertEquals(0.6122, pair.paired().together().delayMs(), 0.0001, "7 cm, and 14 cm through the shell");
        assertEquals(816.7, pair.paired().together().firstNullHz(), 0.1, "343 / (2 * 0.21)");
        assertEquals(2.4, pair.paired().together().distanceRatio(), 1e-9);
    }

    @Test
    void atEqualDistancesThereIsNoFirstNull() {
        Workshop snare = Workshop.of("snare-drum");
        givenOne(snare, "handheld-moving-coil", "over-rim", 0.05);
        givenOne(snare, "small-condenser-cardioid", "over-rim", 0.05);
        Together together = only(snare, "contrast-on-one-spot").paired().together();
        assertEquals(0, together.delayMs());
        assertNull(together.firstNullHz());
    }

    @Test
    void aMicrophoneComesLaterThanThePickupByItsDistanceAndNoLevelIsMadeUpForTheWire() {
        Workshop bass = Workshop.of("double-bass");
        givenOne(bass, "large-condenser-cardioid", "bridge", 0.2);
        givenOne(bass, "piezo-pickup", "pickup", 0.001);
        Together together = only(bass, "mic-and-line").paired().together();
        assertEquals(0.583, together.delayMs(), 0.001, "20 cm");
        assertEquals(857.5, together.firstNullHz(), 0.1, "343 / (2 * 0.2)");
        assertEquals(0, together.levelDifferenceDb());
        assertEquals(40, together.rippleDb(), "at equal faders nothing hides the comb");
    }

    @Test
    void aFarMicrophoneStandsAtLeastThreeTimesAsFar() {
        Workshop marimba = Workshop.of("marimba");
        givenOne(marimba, "small-condenser-cardioid", "above", 0.55);
        givenOne(marimba, "small-condenser-omni", "front", 1.6);
        assertEquals(List.of(), of(marimba, "near-and-far"), "1.6 m is less than three times 0.55 m");
        givenOne(marimba, "small-condenser-omni", "front", 2.8);
        Together together = only(marimba, "near-and-far").paired().together();
        assertEquals(6.56, together.delayMs(), 0.01, "2.25 m");
        assertEquals(76.2, together.firstNullHz(), 0.1, "343 / (2 * 2.25)");
    }

    @Test
    void twoInOneSpotAreOfTwoTypesAtOneDistance() {
        Workshop snare = Workshop.of("snare-drum");
        givenOne(snare, "handheld-moving-coil", "over-rim", 0.05);
        givenOne(snare, "small-condenser-cardioid", "over-rim", 0.08);
        assertEquals(List.of(), of(snare, "contrast-on-one-spot"));
        givenOne(snare, "small-condenser-cardioid", "over-rim", 0.05);
        assertEquals(0, only(snare, "contrast-on-one-spot").paired().together().delayMs());
    }

    @Test
    void theTypesArePraisedInTheOrderTheRecipeNamesThem() {
        assertEquals(1, share("handheld-moving-coil", "small-condenser-cardioid"), 1e-9);
        assertEquals(0.85, share("handheld-moving-coil", "handheld-moving-coil"), 1e-9);
        assertEquals(0.7, share("compact-drum-moving-coil", "handheld-moving-coil"), 1e-9);
        assertEquals(0.4, share("small-condenser-cardioid", "small-condenser-supercardioid"), 1e-9);
    }

    @Test
    void aPairTheTradeSeldomUsesIsTriedButNotSaidToBeCustom() {
        Workshop cowbell = Workshop.of("cowbell");
        givenOne(cowbell, "handheld-moving-coil", "mouth", 0.3);
        givenOne(cowbell, "small-condenser-cardioid", "mouth", 0.3);
        Pairs.Pair pair = only(cowbell, "contrast-on-one-spot");
        assertFalse(pair.paired().known());
        assertEquals(0, pair.paired().knownShare());
    }

    private double share(String over, String under) {
        Workshop snare = Workshop.of("snare-drum");
        given.clear();
        givenOne(snare, over, "over-rim", 0.05);
        givenOne(snare, under, "under-head", 0.12);
        return only(snare, "top-and-bottom").paired().knownShare();
    }

    @Test
    void aStereoPairFacesTheSourceEvenWhereATurnedMicrophoneScoresMore() {
        Workshop marimba = Workshop.of("marimba");
        for (Judged one : marimba.all()) {
            given.add(new Judged(one.placed(), List.of(), one.placed().aimDegrees() == 0 ? 100 : 900, false));
        }
        List<Pairs.Pair> stereo = Pairs.of(marimba.scene(), given).stream().filter(pair -> pair.paired().technique().stereo()).toList();
        assertFalse(stereo.isEmpty());
        for (Pairs.Pair pair : stereo) {
            assertEquals(0, pair.first().placed().aimDegrees(), pair.paired().technique().id());
            assertEquals(0, pair.second().placed().aimDegrees(), pair.paired().technique().id());
            assertEquals(0, pair.paired().together().delayMs());
            assertEquals(pair.first().placed().mic(), pair.second().placed().mic());
        }
        assertTrue(given.stream().anyMatch(one -> one.placed().aimDegrees() != 0), "none was turned");
    }

    @Test
    void whatIsRuledOutIsInNoPairAndOneChannelMakesNone() {
        Workshop snare = Workshop.of("snare-drum");
        givenOne(snare, "handheld-moving-coil", "over-rim", 0.05);
        Judged under = snare.one("small-condenser-cardioid", "under-head", 0.12, 100);
        given.add(new Judged(under.placed(), List.of(), 900, true));
        assertEquals(List.of(), of(snare, "top-and-bottom"));
        given.set(1, under);
        assertEquals(1, of(snare, "top-and-bottom").size());
        Workshop oneChannel = Workshop.of("snare-drum", new Limits(1, null, null, null, null, null, null, null));
        assertEquals(List.of(), Pairs.of(oneChannel.scene(), given));
    }

    private void givenOne(Workshop workshop, String mic, String position, double distanceM) {
        given.add(workshop.one(mic, position, distanceM, 100));
    }

    private List<Pairs.Pair> of(Workshop workshop, String technique) {
        return Pairs.of(workshop.scene(), given).stream().filter(pair -> pair.paired().technique().id().equals(technique)).toList();
    }

    private Pairs.Pair only(Workshop workshop, String technique) {
        List<Pairs.Pair> pairs = of(workshop, technique);
        assertEquals(1, pairs.size(), pairs.toString());
        return pairs.get(0);
    }
}
