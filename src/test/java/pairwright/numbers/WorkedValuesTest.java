package pairwright.numbers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.acoustics.Printed.thenPrints;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import pairwright.model.Value;

/** Published and hand-checked values come out of the calculations. */
class WorkedValuesTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/numbers/values.csv", numLinesToSkip = 1)
    void theNumberIsAsPrinted(String id, String inputs, String name, String expected) {
        Worked worked = Asking.work(id, inputs);
        thenPrints(expected, worked.result().stream().filter(value -> value.name().equals(name)).findFirst()
                .orElseThrow(() -> new AssertionError(name + " is not in " + worked.result())).value());
    }

    @Test
    void everyCalculationIsInTheTable() throws Exception {
        Set<String> checked = new TreeSet<>();
        try (var table = getClass().getResourceAsStream("/numbers/values.csv")) {
            new String(table.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8).lines().skip(1)
                    .forEach(line -> checked.add(line.substring(0, line.indexOf(','))));
        }
        assertEquals(new TreeSet<>(Asking.NUMBERS.all().stream().map(CalculationInfo::id).toList()), checked);
    }

    @Test
    void peaksThatClipAreSaidWithWhatToTakeOff() {
        Worked worked = Asking.work("gain", "sensitivityMvPerPa=1.8 levelDbSpl=94 truePeakDbSpl=130");
        Value peak = worked.result().get(2);
        assertEquals("peakDbfs", peak.name());
        // 36 dB over the running level at -18, less 3.01 for the sine
        assertEquals(14.99, peak.value(), 0.005);
        assertTrue(worked.cautions().stream().anyMatch(caution -> caution.says().contains("15 dBFS and clip")), worked.cautions().toString());
    }

    @Test
    void whatHasNoNumberIsLeftOutAndSaid() {
        Worked equal = Asking.work("comb", "pathDifferenceM=0.3");
        assertEquals(List.of("firstNullHz", "secondNullHz", "thirdNullHz", "firstPeakHz", "delayMs", "peakDb"), names(equal));
        assertTrue(equal.steps().stream().anyMatch(step -> step.contains("cancel to nothing")));
        Worked room = Asking.work("critical-distance", "volumeM3=60 reverbTimeS=0.35 pattern=cardioid angleDegrees=180");
        assertTrue(!names(room).contains("directToReverbDb") && room.steps().stream().anyMatch(step -> step.contains("only room")), room.toString());
        Worked close = Asking.work("recording-angle", "pattern=omni spacingM=0.2");
        assertEquals(List.of("imageAt30Share"), names(close));
        assertTrue(close.says().contains("No source reaches a loudspeaker"), close.says());
        Worked upright = Asking.work("stand-stability", "standMassKg=5 footRadiusM=0.5 micMassKg=1 reachM=0.1");
        assertEquals(List.of("clutchMomentNm"), names(upright));
        assertTrue(upright.says().contains("nothing hangs beyond the feet"), upright.says());
    }

    @Test
    void theNullIsTurnedOntoTheOtherSource() {
        Worked worked = Asking.work("null-angles", "pattern=figure-8 otherDegrees=120");
        assertEquals(-30, worked.result().stream().filter(value -> value.name().equals("turnDegrees")).findFirst().orElseThrow().value(), 1e-9);
        assertTrue(worked.says().startsWith("Turned 30 degrees toward the other source"), worked.says());
        assertEquals(worked.result(), Asking.work("null-angles", "pattern=figure-8 otherDegrees=-120").result());
    }

    private static List<String> names(Worked worked) {
        return worked.result().stream().map(Value::name).toList();
    }
}
