package pairwright.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.model.Basis;
import pairwright.model.Effect;

class SentenceTest {
    @ParameterizedTest(name = "{0} {1} is said as {2}")
    @CsvSource({
        "0.3, m, 30 cm", "0.05, m, 5 cm", "0.999, m, 1 m", "1.46, m, 1.5 m", "12.2, m, 12 m",
        "340.4, Hz, 340 Hz", "1715, Hz, 1.7 kHz", "17150, Hz, 17 kHz", "998, Hz, 1 kHz",
        "2.6, dB, 2.5 dB", "-2.9, dB, -3 dB", "12.4, dB, 12 dB", "-0.1, dB, -0.1 dB", "126.4, dB SPL, 126 dB SPL", "98.2, dB(A), 98 dB(A)", "-128, dBu, -128 dBu",
        "29.7, degrees, 30 degrees", "150, ohm, 150 ohm", "1500, ohm, 1.5 kohm", "1000000, ohm, 1 Mohm",
        "0.4, h, 24 minutes", "1, h, 1 hour", "2.69, h, 2.6 hours", "0.999, h, 59 minutes", "7.9, h, 7 hours", "0.0083, h, less than a minute",
        "1.44, ms, 1.4 ms", "7, mA, 7 mA", "0.11, kg, 0.1 kg", "0.62, 1, 0.62", "0.97, 1, 0.97", "0.999, 1, 1", "1.42, 1, 1.4"})
    void numbersAreRoundedAsFarAsAnybodyWouldTrustThem(double value, String unit, String said) {
        assertEquals(said, Figure.forPeople(value, unit));
    }

    @ParameterizedTest(name = "{0} is in {1}")
    @CsvSource({"distanceM, m", "peakDbSpl, dB SPL", "typicalDba, dB(A)", "outputPeakDbu, dBu", "headroomDb, dB", "currentMa, mA",
        "firstNullHz, Hz", "delayMs, ms", "reverbTimeS, s", "aimDegrees, degrees", "volumeM3, m3", "toneFit, 1", "loadRatio, 1", "allowedHours, h"})
    void theUnitIsTheEndOfTheName(String name, String unit) {
        assertEquals(unit, UnitNames.unitOf(name));
    }

    @Test
    void aNameWithoutAUnitIsRefusedByName() {
        var refused = assertThrows(IllegalArgumentException.class, () -> UnitNames.unitOf("loudness"));
        assertTrue(refused.getMessage().startsWith("\"loudness\" does not say its unit."), refused.getMessage());
        assertThrows(IllegalArgumentException.class, () -> UnitNames.unitOf("M"));
    }

    @Test
    void anArticleSuitsTheNameThatFollowsIt() throws Exception {
        Situation open = Situation.differing(Situation.YAML.readTree("{placed: {habitWhy: open door}}"));
        RuleInfo rule = new RuleInfo("TST-001", "Test", "test", "test", Effect.FOR, null, 1,
                "A {why}, then a {why}, extra {why}, a {wanted} one.", null, "why", Basis.PHYSICS, "none", List.of(), false, null, false, RuleInfo.InPlan.PLAIN, List.of());
        assertEquals("An open door, then an open door, extra open door, a natural one.",
                Sentence.says(new Finding(rule, open.placed(), 1, new Object[0]), open.setting()));
    }

    @ParameterizedTest(name = "{0} dB is said as {1}")
    @CsvSource({"-15.2, 15 dB under", "0, 0 dB over", "4.4, 4 dB over"})
    void aDifferenceIsSaidByTheWordThatSuitsItsSign(double separationDb, String said) {
        Situation base = Situation.base();
        RuleInfo rule = new RuleInfo("TST-001", "Test", "test", "test", Effect.FOR, null, 1, "It is {separationDb|over|under} the neighbours.", null, "why",
                Basis.PHYSICS, "none", List.of(), false, null, false, RuleInfo.InPlan.PLAIN, List.of());
        assertEquals("It is " + said + " the neighbours.",
                Sentence.says(new Finding(rule, base.placed(), 1, new Object[] {"separationDb", separationDb}), base.setting()));
        assertEquals(List.of("separationDb"), Sentence.placeholders(rule.says()));
    }

    @ParameterizedTest(name = "{0} is said as {1}")
    @CsvSource({"French horn, the French horn", "Bass by its lead, the bass by its lead", "Active DI, the active DI", "DI box, the DI box"})
    void aNameKeepsOnlyTheCapitalsThatAreItsOwn(String name, String said) throws Exception {
        Situation situation = Situation.differing(Situation.YAML.readTree("{setting: {source.name: " + name + "}}"));
        RuleInfo rule = new RuleInfo("TST-001", "Test", "test", "test", Effect.FOR, null, 1, "Near {source}.", null, "why", Basis.PHYSICS, "none",
                List.of(), false, null, false, RuleInfo.InPlan.PLAIN, List.of());
        assertEquals("Near " + said + ".", Sentence.says(new Finding(rule, situation.placed(), 1, new Object[0]), situation.setting()));
    }

    @Test
    void namesAreFilledInWithTheirArticleAndACapitalWhereASentenceStarts() {
        Situation base = Situation.base();
        RuleInfo rule = new RuleInfo("TST-001", "Test", "test", "test", Effect.FOR, null, 1,
                "{mic} in front of {source}, {position}, hears {distanceM}. {source}: {pattern}.", null, "why", Basis.PHYSICS, "none", List.of(), false, null, false, RuleInfo.InPlan.PLAIN, List.of());
        assertEquals("The small-diaphragm condenser in front of the test source, in front, hears 40 cm. The test source: cardioid.",
                Sentence.says(new Finding(rule, base.placed(), 1, new Object[] {"distanceM", 0.4}), base.setting()));
    }
}
