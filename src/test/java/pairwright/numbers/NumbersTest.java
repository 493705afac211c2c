package pairwright.numbers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pairwright.model.Severity;
import pairwright.rules.UnitNames;

/** What holds for every calculation, found in the list so that a new one is held to the same. */
class NumbersTest {
    /** The last colon of a step parts words from figures. */
    private static final Pattern STEP = Pattern.compile("[^=]*: ([^:=]+) = (-?[\\d.]+) ?(.*)");
    /** Units that only appear here. */
    private static final Map<String, String> MORE_UNITS = Map.of("Percent", "%", "Minutes", "min", "V", "V", "Mw", "mW", "Nm", "N m",
            "hours", "h", "legs", "1", "samples", "samples", "sourceDirectivityFactor", "1", "coefficient", "1");

    static Stream<CalculationInfo> all() {
        return Asking.NUMBERS.all().stream();
    }

    @Test
    void theAgreedIdsAreThereAndNoOthers() {
        assertEquals(new TreeSet<>(List.of("level-at-distance", "proximity", "comb", "critical-distance", "noise", "gain", "headroom", "ribbon-loading",
                "phantom-budget", "recording-angle", "mid-side", "exposure", "stand-stability", "null-angles", "delay", "spacing")),
                new TreeSet<>(all().map(CalculationInfo::id).toList()));
        assertEquals(16, all().count());
    }

    @ParameterizedTest
    @MethodSource("all")
    void theExampleWorksAndIsExplained(CalculationInfo info) {
        Worked worked = Asking.NUMBERS.work(info.id(), Asking.given(info.example()));
        assertEquals(info.id(), worked.id());
        assertFalse(worked.result().isEmpty());
        assertTrue(worked.says().endsWith(".") && worked.validity().endsWith(".") && info.answers().endsWith("?"), worked.toString());
        assertFalse(worked.toString().contains("{}"), worked.toString());
        assertEquals(info.formula(), worked.formula());
        checkSteps(worked);
    }

    @ParameterizedTest
    @MethodSource("all")
    void whatWasUsedSentBackGivesTheSame(CalculationInfo info) {
        Worked worked = Asking.NUMBERS.work(info.id(), Asking.given(info.example()));
        assertEquals(worked, Asking.NUMBERS.work(info.id(), Asking.given(worked.inputs())));
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyNumberSaysItsUnitInItsName(CalculationInfo info) {
        info.inputs().stream().filter(input -> input.unit() != null && input.kind() != InputKind.PATTERN)
                .forEach(input -> assertEquals(unitOf(input.name()), input.unit(), input.name()));
        Asking.NUMBERS.work(info.id(), Asking.given(info.example())).result()
                .forEach(value -> assertEquals(unitOf(value.name()), value.unit(), value.name()));
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyInputSaysWhatItIsAndItsUsualValueIsAllowed(CalculationInfo info) {
        for (Input input : info.inputs()) {
            assertTrue(input.says().endsWith("."), input.toString());
            assertFalse(input.required() && input.usual() != null, input.toString());
            if (input.usual() != null) {
                Map<String, Given> given = Asking.given(info.example());
                given.put(input.name(), Asking.of(input.usual()));
                assertFalse(Asking.NUMBERS.work(info.id(), given).result().isEmpty());
            }
        }
        assertEquals(info.inputs().size(), info.inputs().stream().map(Input::name).distinct().count());
    }

    @Test
    void whereTheWorkCanHurtTheCautionIsThereAndDefers() {
        for (String id : List.of("exposure", "stand-stability")) {
            CalculationInfo info = Asking.NUMBERS.info(id).orElseThrow();
            List<NumberCaution> cautions = Asking.NUMBERS.work(id, Asking.given(info.example())).cautions();
            assertTrue(cautions.stream().anyMatch(caution -> caution.severity() == Severity.DANGER && caution.says().contains("competent")
                    && caution.says().contains("of the place")), cautions.toString());
        }
        assertTrue(Asking.work("level-at-distance", "levelDbSpl=110 distanceM=0.2").cautions().get(0).says().contains("harms hearing"));
        assertTrue(Asking.work("headroom", "maxDbSpl=150 truePeakDbSpl=140").cautions().get(0).says().contains("hearing at once"));
        assertEquals(Severity.DANGER, Asking.work("stand-stability", "standMassKg=2.5 footRadiusM=0.35 micMassKg=1 reachM=0.8").cautions().get(0).severity());
    }

    @Test
    void beyondTheComfortableRangeValiditySaysSoWithTheNumber() {
        assertTrue(Asking.work("level-at-distance", "levelDbSpl=94 distanceM=0.05").validity().contains("At 0.05 m most sources are as large"));
        assertFalse(Asking.work("level-at-distance", "levelDbSpl=94 distanceM=0.5").validity().contains("most sources are as large"));
        assertTrue(Asking.work("critical-distance", "volumeM3=12 reverbTimeS=0.15").validity().contains("12 m3 is small"));
        assertTrue(Asking.work("spacing", "distanceM=1 separationDb=30").validity().contains("At 31.6 m indoors the room carries"));
        assertTrue(Asking.work("comb", "pathDifferenceM=0.005").validity().contains("34300 Hz, is above hearing"));
    }

    /** Inputs drawn over their whole ranges, edges often: an answer that can be followed by hand, or plain faults; nothing else. */
    @Property(tries = 600)
    void anyPossibleInputsAreWorkedOrRefusedInPlainWords(@ForAll long seed) {
        Random random = new Random(seed);
        List<CalculationInfo> all = Asking.NUMBERS.all();
        CalculationInfo info = all.get(random.nextInt(all.size()));
        Map<String, Given> given = new LinkedHashMap<>();
        info.inputs().forEach(input -> {
            if (input.required() || random.nextInt(3) > 0) {
                given.put(input.name(), draw(input, random));
            }
        });
        Worked worked;
        try {
            worked = Asking.NUMBERS.work(info.id(), given);
        } catch (UnusableInputs refused) {
            refused.faults().forEach(fault -> assertTrue(fault.at().startsWith("/") && fault.says().length() > 20, fault.toString()));
            return;
        }
        worked.result().forEach(value -> assertTrue(Double.isFinite(value.value()), worked::toString));
        assertFalse(worked.toString().matches("(?s).*(NaN|Infinity|\\{}).*"), worked::toString);
        checkSteps(worked);

        List<Map.Entry<String, Given>> shuffled = new ArrayList<>(given.entrySet());
        Collections.shuffle(shuffled, random);
        Map<String, Given> other = new LinkedHashMap<>();
        shuffled.forEach(entry -> other.put(entry.getKey(), entry.getValue()));
        assertEquals(worked.toString(), Asking.NUMBERS.work(info.id(), other).toString());
        assertEquals(worked.toString(), Asking.NUMBERS.work(info.id(), new HashMap<>(given)).toString());
    }

    private static Given draw(Input input, Random random) {
        return switch (input.kind()) {
            case WORD -> new Given.Text(input.choices().get(random.nextInt(input.choices().size())));
            case PATTERN -> random.nextInt(4) == 0 ? number(input, random) : new Given.Text(input.choices().get(random.nextInt(input.choices().size())));
            case NUMBERS -> new Given.Many(Stream.generate(() -> number(input, random)).limit(1 + random.nextInt(3)).toList());
            case NUMBER, WHOLE_NUMBER -> number(input, random);
        };
    }

    private static Given number(Input input, Random random) {
        double span = input.most() - input.least();
        double value = switch (random.nextInt(8)) {
            case 0 -> input.least();
            case 1 -> input.most();
            case 2, 3 -> input.least() + span * Math.pow(random.nextDouble(), 4);
            default -> input.least() + span * random.nextDouble();
        };
        return new Given.Number(input.kind() == InputKind.WHOLE_NUMBER ? Math.rint(value) : Math.rint(value * 1000) / 1000 < input.least()
                ? value : Math.rint(value * 1000) / 1000);
    }

    /** Every result stands in a step, the last step that computes is one, and every step's figures come to what it says. */
    private static void checkSteps(Worked worked) {
        List<String> steps = worked.steps();
        worked.result().forEach(value -> {
            String figure = " = " + Figures.of(value.value()) + (value.unit().equals("1") ? "" : " " + value.unit());
            assertTrue(steps.stream().anyMatch(step -> step.endsWith(figure)), () -> value + " is in none of " + steps);
        });
        int computed = 0;
        for (String step : steps) {
            Matcher parts = STEP.matcher(step);
            if (parts.matches()) {
                computed++;
                double printed = Double.parseDouble(parts.group(2));
                double byHand = Arithmetic.of(parts.group(1));
                double slack = 1.1 * Arithmetic.slack(parts.group(1)) + half(parts.group(2));
                assertEquals(printed, byHand, slack, () -> step + "\nin " + worked.inputs() + "\n" + steps);
            } else {
                assertFalse(step.contains(" = ") && step.contains(": "), step);
            }
        }
        assertTrue(computed >= 2, steps::toString);
    }

    /** Half of the last digit that is written. */
    private static double half(String figure) {
        int point = figure.indexOf('.');
        return 0.5 * Math.pow(10, point < 0 ? -2 : Math.min(-2, point + 1 - figure.length()));
    }

    private static String unitOf(String name) {
        for (Map.Entry<String, String> more : MORE_UNITS.entrySet()) {
            if (name.equals(more.getKey()) || java.lang.Character.isUpperCase(more.getKey().charAt(0)) && name.endsWith(more.getKey())) {
                return more.getValue();
            }
        }
        return UnitNames.unitOf(name);
    }
}
