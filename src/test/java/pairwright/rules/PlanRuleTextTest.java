package pairwright.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a rule of a plan may be. */
class PlanRuleTextTest {
    private static final RuleBase RULES = RuleBase.builtIn();

    private static String rule(String folder, String effect, String fact) {
        return """
                package rules.%s.trial;

                import pairwright.model.*;
                import pairwright.rules.*;

                global pairwright.rules.Out out;

                rule "TST-001"
                  @title("Trial")
                  %s
                  @says("Of {seat} only.")
                  @why("For a test.")
                  @on("practice")
                  @basis("None")
                when
                  $l : %s
                then
                  out.note(drools.getRule(), $l);
                end
                """.formatted(folder, effect, fact);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            plan     | @effect("caution") @severity("note")                   | PlannedLine()  |
            plan     | @effect("against") @points(-60)                        | LeftOut()      |
            plan     | @effect("against") @points(-61)                        | LeftOut()      | at least -60, not -61
            plan     | @effect("against") @points(-13)                        | PlannedTwo()   | at least -12, not -13
            plan     | @effect("against") @points(-2)                         | PlannedLine()  | carry points, since the search weighs nothing else
            plan     | @effect("rules-out")                                   | LeftOut()      | what is not possible in a plan is never made
            plan     | @effect("caution") @severity("note") @treat("ignore")  | PlannedArrival() | @treat is one of [align, leave, watch]
            plan     | @effect("caution") @severity("note") @treat("leave")   | PlannedLine()  | only of a PlannedArrival is there anything to do
            plan     | @effect("caution") @severity("note")                   | Placed()       | a rule of the folder plan speaks of a part of a plan
            pairing  | @effect("caution") @severity("note")                   | LeftOut()      | a rule of the folder plan speaks of a part of a plan
            """)
    void aRuleOfAPlanKeepsToThePlanAndItsPointsToWhatTheSearchWeighs(String folder, String effect, String fact, String wrong) {
        List<Problem> problems = RuleCompiler.builtIn().compile(Map.of("trial.drl", rule(folder, effect, fact)), Map.of()).problems();
        if (wrong == null) {
            assertEquals(List.of(), problems);
        } else {
            assertTrue(problems.stream().anyMatch(problem -> problem.what().contains(wrong)), problems.toString());
        }
    }

    /** Else it would hang on the order of the rules. */
    @Property(tries = 300)
    void noTwoRulesSayDifferentThingsToDoAboutOneArrival(@ForAll boolean own, @ForAll boolean stereo, @ForAll boolean depth,
            @ForAll @DoubleRange(min = 0, max = 60) double delayMs, @ForAll @DoubleRange(min = 0, max = 40) double rippleDb,
            @ForAll @DoubleRange(min = 1, max = 12) double distanceRatio, @ForAll boolean inverted, @ForAll boolean wired) {
        PlannedArrival arrival = new PlannedArrival("the kit", "near", "far", own, stereo, depth, delayMs, delayMs < 0.015 ? null : Double.valueOf(500 / delayMs),
                rippleDb, distanceRatio, inverted, wired);
        List<String> treats = RULES.plan(true, List.of(arrival)).stream().map(finding -> finding.rule().treat()).filter(treat -> treat != null).distinct().toList();
        assertTrue(treats.size() <= 1, treats.toString());
    }
}
