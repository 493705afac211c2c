package pairwright.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every case in rules/: exactly the rule it names fires, or stays silent. */
class RuleCasesTest {
    private static final RuleBase RULES = RuleBase.builtIn();

    record Case(String file, String rule, boolean fires, JsonNode how, String says, List<String> also) {
        String says(Finding finding) {
            return finding.subject() instanceof PlanFact ? RULES.says(finding) : RULES.says(finding, Situation.differing(how).setting());
        }

        boolean asPair() {
            return how.has("paired") || how.has("second");
        }

        List<Finding> judged() {
            return PlanSituation.speaksOf(how) ? PlanSituation.judged(RULES, PlanSituation.differing(how)) : Situation.differing(how).judged(RULES, asPair());
        }
    }

    static List<Case> cases() throws IOException {
        List<Case> cases = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("rules"))) {
            for (Path file : files.filter(path -> path.toString().endsWith(".cases.yaml")).sorted().toList()) {
                for (JsonNode node : Situation.YAML.readTree(file.toFile())) {
                    List<String> also = new ArrayList<>();
                    node.path("also").forEach(id -> also.add(id.textValue()));
                    boolean fires = node.has("fires");
                    assertTrue(fires != node.has("silent"), file + ": a case has either fires or silent: " + node);
                    cases.add(new Case(file.toString(), node.get("rule").textValue(), fires, node.get(fires ? "fires" : "silent"),
                            node.path("says").asText(), also));
                }
            }
        }
        return cases;
    }

    /** Any second microphone costs something, so one rule speaks of every pair that is mixed to one. */
    @Test
    void onTheUnremarkableSituationNoRuleFiresButTheOneThatCountsTheSecondMicrophone() {
        assertEquals(List.of(), ids(Situation.base().judged(RULES, false)));
        assertEquals(List.of("PAI-007"), ids(Situation.base().judged(RULES, true)));
    }

    @Test
    void ofTheUnremarkablePartsOfAPlanOnlyASeatThatIsLeftOutIsSpokenOf() {
        for (Class<?> kind : PlanFact.kinds()) {
            assertEquals(kind == LeftOut.class ? List.of("PLN-002") : List.of(), ids(PlanSituation.judged(RULES, PlanSituation.base(kind))),
                    kind.getSimpleName());
        }
    }

    @TestFactory
    Stream<DynamicTest> eachCaseFiresExactlyWhatItNames() throws IOException {
        return cases().stream().map(one -> DynamicTest.dynamicTest(
                one.rule() + (one.fires() ? " fires: " : " is silent: ") + one.says(), () -> {
                    TreeSet<String> expected = new TreeSet<>(one.also());
                    if (one.fires()) {
                        expected.add(one.rule());
                    }
                    assertEquals(List.copyOf(expected), ids(one.judged()), one.file() + ": " + one.how());
                }));
    }

    @TestFactory
    Stream<DynamicTest> eachFiringCaseMakesASentenceAndEachOfItsNumbersIsFinite() throws IOException {
        return cases().stream().filter(Case::fires).map(one -> DynamicTest.dynamicTest(one.rule() + " says: " + one.says(), () -> {
            for (Finding finding : one.judged()) {
                String says = one.says(finding);
                assertFalse(says.isBlank() || says.contains("{") || says.contains("}") || says.contains("  "), says);
                assertTrue(finding.rule().says().contains("null") || !says.contains("null"), says);
                assertTrue(Character.isUpperCase(says.charAt(0)) || Character.isDigit(says.charAt(0)), says);
                assertTrue(says.endsWith(".") || says.endsWith("?"), says);
                finding.values().forEach(value -> assertTrue(Double.isFinite(value.value()), value.toString()));
            }
        }));
    }

    @Test
    void everyRuleHasACaseInWhichItFiresAndOneInWhichItStaysSilent() throws IOException {
        List<Case> cases = cases();
        List<String> lacking = new ArrayList<>();
        for (RuleInfo rule : RULES.rules()) {
            for (boolean fires : new boolean[] {true, false}) {
                if (cases.stream().noneMatch(one -> one.rule().equals(rule.id()) && one.fires() == fires)) {
                    lacking.add(rule.id() + " has no case in which it " + (fires ? "fires" : "stays silent"));
                }
            }
        }
        cases.stream().filter(one -> RULES.rule(one.rule()) == null).forEach(one -> lacking.add(one.file() + ": no such rule " + one.rule()));
        cases.stream().filter(one -> one.says().isBlank()).forEach(one -> lacking.add(one.rule() + ": a case says nothing: " + one.how()));
        assertEquals(List.of(), lacking);
    }

    @Test
    void whatTheProgramKnowsOfTheCasesIsWhatTheFilesSay() throws IOException {
        List<String> written = cases().stream().map(one -> one.rule() + one.fires() + one.says()).sorted().toList();
        List<String> known = RULES.rules().stream()
                .flatMap(rule -> rule.cases().stream().map(one -> rule.id() + one.fires() + one.says())).sorted().toList();
        assertEquals(written, known);
    }

    private static List<String> ids(List<Finding> findings) {
        return findings.stream().map(finding -> finding.rule().id()).distinct().sorted().toList();
    }
}
