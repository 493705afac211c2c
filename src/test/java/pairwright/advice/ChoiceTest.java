package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which candidates become options, on placements of a snare drum whose scores are set by hand. */
class ChoiceTest {
    private static final Workshop SNARE = Workshop.of("snare-drum");

    private final List<Candidate> ranked = new ArrayList<>();

    @Test
    void aSecondTypeOfAFamilyGivesWayToAnotherFamily() {
        givenSingle("small-condenser-cardioid", "over-rim", 0.05);
        givenSingle("small-condenser-supercardioid", "over-rim", 0.05);
        givenSingle("handheld-moving-coil", "over-rim", 0.05);
        thenChosen(2, 0, 2);
    }

    @Test
    void whereIdeasRunOutAnotherTypeIsBetterThanNothing() {
        givenSingle("small-condenser-cardioid", "over-rim", 0.05);
        givenSingle("small-condenser-supercardioid", "over-rim", 0.05);
        thenChosen(3, 0, 1);
    }

    @Test
    void fewerThanWantedAreGivenRatherThanOneTypeTwice() {
        givenSingle("small-condenser-cardioid", "over-rim", 0.05);
        givenSingle("small-condenser-cardioid", "over-rim", 0.08);
        givenSingle("small-condenser-cardioid", "shell", 0.1);
        thenChosen(3, 0);
    }

    @Test
    void eachTechniqueIsShownOnce() {
        givenPair("handheld-moving-coil", "over-rim", 0.05, "small-condenser-cardioid", "under-head", 0.12);
        givenPair("handheld-moving-coil", "over-rim", 0.05, "small-condenser-supercardioid", "under-head", 0.12);
        givenPair("handheld-moving-coil", "over-rim", 0.05, "small-condenser-cardioid", "shell", 0.1);
        givenSingle("handheld-moving-coil", "over-rim", 0.05);
        thenChosen(3, 0, 2, 3);
    }

    @Test
    void ofSeveralOptionsOneIsASingleMicrophoneHoweverFarDown() {
        givenPair("handheld-moving-coil", "over-rim", 0.05, "small-condenser-cardioid", "under-head", 0.12);
        givenPair("handheld-moving-coil", "over-rim", 0.05, "small-condenser-cardioid", "over-rim", 0.05);
        givenPair("handheld-moving-coil", "over-rim", 0.05, "small-condenser-cardioid", "shell", 0.1);
        givenSingle("handheld-moving-coil", "over-rim", 0.05);
        givenSingle("small-condenser-cardioid", "over-rim", 0.05);
        thenChosen(3, 0, 1, 3);
        thenChosen(2, 0, 3);
        thenChosen(1, 0);
    }

    @Test
    void whereNoSingleFitsPairsFillThePlaces() {
        givenPair("handheld-moving-coil", "over-rim", 0.05, "small-condenser-cardioid", "under-head", 0.12);
        givenPair("handheld-moving-coil", "over-rim", 0.05, "small-condenser-cardioid", "shell", 0.1);
        thenChosen(3, 0, 1);
    }

    @Test
    void nothingGivesNothing() {
        thenChosen(3);
    }

    private void givenSingle(String mic, String position, double distanceM) {
        ranked.add(Candidate.of(SNARE.one(mic, position, distanceM, nextPoints())));
    }

    private void givenPair(String first, String at, double distanceM, String second, String where, double awayM) {
        List<Judged> two = List.of(SNARE.one(first, at, distanceM, 0), SNARE.one(second, where, awayM, 0));
        Pairs.Pair pair = Pairs.of(SNARE.scene(), two).get(0);
        ranked.add(new Candidate(pair.paired().technique().id(), pair.first(), pair.second(), pair.paired(), List.of(), nextPoints()));
    }

    /** Each stands behind the one before. */
    private long nextPoints() {
        return 1000 - 100 * ranked.size();
    }

    private void thenChosen(int wanted, Integer... places) {
        assertEquals(List.of(places), Choice.of(ranked, wanted).stream().map(ranked::indexOf).toList());
    }
}
