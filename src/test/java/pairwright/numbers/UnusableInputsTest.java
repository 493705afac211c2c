package pairwright.numbers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.model.Fault;

/** What cannot be worked with is refused in plain words, all of it at once. */
class UnusableInputsTest {
    @Test
    void everyFaultIsSaidAtOnceWithItsPlace() {
        assertEquals(List.of(
                new Fault("/distance", "there is no input \"distance\" here. Did you mean distanceM?"),
                new Fault("/pattern", "pattern must be one of omni, wide-cardioid, cardioid, supercardioid, hypercardioid, figure-8, or a number from 0 to 1, "
                        + "but was the text \"cardoid\". Did you mean cardioid?"),
                new Fault("/distanceM", "distanceM is missing. Give a number from 0.01 to 20 m"),
                new Fault("/frequencyHz", "frequencyHz must be a number from 20 to 20000 Hz, but was 5"),
                new Fault("/angleDegrees", "angleDegrees must be a number from -180 to 180 degrees, but was the text \"front\"")),
                faults("proximity", "distance=1 pattern=cardoid frequencyHz=5 angleDegrees=front"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "proximity | pattern=cardioid distanceM=0.1 angleDegrees=180 | /angleDegrees | has its null",
            "proximity | pattern=1.2 distanceM=0.1 | /pattern | but was 1.2",
            "noise | sensitivityMvPerPa=20 levelDba=74 | /selfNoiseDba | neither selfNoiseDba nor resistanceOhm is given",
            "noise | sensitivityMvPerPa=20 levelDba=74 selfNoiseDba=10 resistanceOhm=200 | /selfNoiseDba | are both given",
            "noise | sensitivityMvPerPa=2 levelDba=74 resistanceOhm=200 inputNoiseDbu=-131 | /inputNoiseDbu | less than 150 ohm alone make (-130.92 dBu)",
            "gain | sensitivityMvPerPa=2 levelDbSpl=94 truePeakDbSpl=90 | /truePeakDbSpl | less than levelDbSpl with 94",
            "phantom-budget | currentsMa=3,20 supplyRatingMa=50 | /currentsMa/1 | P48 gives 14.12 mA into a short",
            "phantom-budget | currentsMa=3,-1,x supplyRatingMa=50 | /currentsMa/1 | entry 2 of currentsMa must be a number from 0 to 50 mA, but was -1",
            "phantom-budget | currentsMa=x supplyRatingMa=50 | /currentsMa | must be a list of at most 64 numbers from 0 to 50 mA, but was the text \"x\"",
            "phantom-budget | currentsMa=3 supplyRatingMa=50 system=p48 | /system | Did you mean P48?",
            "recording-angle | pattern=cardioid | /spacingM | are both 0",
            "recording-angle | pattern=omni includedDegrees=90 | /spacingM | two omnis in one spot",
            "exposure | levelDba=90,80 hours=1 | /hours | hours has 1 entries and levelDba 2",
            "exposure | levelDba=90,80 hours=20,5 | /hours | hours add up to 25",
            "stand-stability | standMassKg=2 footRadiusM=0.3 micMassKg=1 reachM=1 legs=2 | /legs | must be 3 to 12, or 0",
            "stand-stability | standMassKg=2 footRadiusM=0.3 micMassKg=1 reachM=1 legs=3.5 | /legs | must be a whole number from 0 to 12, but was 3.5",
            "delay | distanceM=0 | /distanceM | must be a number from 0.001 to 1000 m, but was 0",
            "delay | distanceM=1e9 | /distanceM | but was 1000000000",
            "delay | distanceM=1,2 | /distanceM | but was a list"})
    void theFaultSaysTheValueAndWhatIsAllowed(String id, String inputs, String at, String says) {
        Fault first = faults(id, inputs).get(0);
        assertEquals(at, first.at());
        assertTrue(first.says().contains(says), first.says());
    }

    @Test
    void aNumberThatIsNoneIsRefused() {
        for (double none : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThrows(UnusableInputs.class, () -> Asking.NUMBERS.work("delay", Map.of("distanceM", new Given.Number(none))));
        }
    }

    @Test
    void tooLongAListIsRefusedAsAWhole() {
        String currents = IntStream.range(0, 65).mapToObj(i -> "1").collect(Collectors.joining(","));
        assertEquals(List.of("/currentsMa"), faults("phantom-budget", "supplyRatingMa=100 currentsMa=" + currents).stream().map(Fault::at).toList());
        assertThrows(UnusableInputs.class, () -> Asking.NUMBERS.work("phantom-budget",
                Map.of("supplyRatingMa", new Given.Number(100), "currentsMa", new Given.Many(List.of()))));
    }

    @Test
    void anIdThereIsNotIsAnsweredWithTheNearest() {
        assertTrue(Asking.NUMBERS.info("proximty").isEmpty());
        assertEquals("There is no calculation \"proximty\". Did you mean proximity?", Asking.NUMBERS.unknown("proximty"));
        assertTrue(Asking.NUMBERS.unknown("loudness-war").contains("Use one of level-at-distance, proximity, "));
        assertThrows(IllegalArgumentException.class, () -> Asking.NUMBERS.work("proximty", Map.of()));
    }

    private static List<Fault> faults(String id, String inputs) {
        return assertThrows(UnusableInputs.class, () -> Asking.work(id, inputs)).faults();
    }
}
