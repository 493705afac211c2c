package pairwright.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HouseRulesTest {
    private static final String GOOD = """
            package house;
            import pairwright.model.*;
            import pairwright.rules.*;
            global pairwright.rules.Out out;

            rule "HOUSE-001"
              @title("Keep clear of the door")
              @effect("against")
              @points(-4)
              @says("{mic} would stand in the way of the door at {distanceM}.")
              @why("The door opens inward.")
              @on("house")
              @basis("Our live room")
            when
              $p : Placed(mic.family == MicFamily.SMALL_DIAPHRAGM_CONDENSER, distanceM > 1.8)
            then
              out.note(drools.getRule(), $p, "distanceM", $p.distanceM());
            end
            """;

    private static final RuleBases BASES = new RuleBases();

    @TempDir
    private Path folder;

    private RuleBases.Result given(String text) throws Exception {
        Files.writeString(folder.resolve("studio.drl"), text);
        return BASES.with(folder, stopped -> { });
    }

    private List<String> faults(String text) throws Exception {
        Files.writeString(folder.resolve("studio.drl"), text);
        return RuleCheck.faults(folder).stream().map(problem -> problem.toString().replace(folder + "/", "")).toList();
    }

    @Test
    void theHouseRuleOnThePageForContributorsHasNoFault() throws Exception {
        String page = Files.readString(Path.of("DEVELOPERS.md"));
        int start = page.indexOf("package house;");
        assertEquals(List.of(), faults(page.substring(start, page.indexOf("```", start))));
    }

    @Test
    void aHouseRuleSpeaksBesideTheBuiltInOnes() throws Exception {
        RuleBase builtIn = BASES.builtIn();
        RuleBase both = given(GOOD).rules();
        assertEquals(builtIn.rules().size() + 1, both.rules().size());
        assertNotEquals(builtIn.version(), both.version());
        Situation far = Situation.differing(Situation.YAML.readTree("{placed: {distanceM: 2.5, habit: first, habitWhy: Why.}}"));
        List<Finding> findings = far.judged(both, false);
        assertEquals(List.of("CUS-001", "HOUSE-001"), findings.stream().map(one -> one.rule().id()).toList());
        assertEquals("The small-diaphragm condenser would stand in the way of the door at 2.5 m.",
                both.says(findings.get(1), far.setting()));
    }

    @Test
    void aBrokenHouseRuleIsNamedWithItsLineAndGivesNoRules() throws Exception {
        RuleBases.Result broken = given(GOOD.replace("distanceM > 1.8", "distnceM > 1.8"));
        assertNull(broken.rules());
        assertEquals(folder.resolve("studio.drl") + ":15:66: rule \"HOUSE-001\": no such field in: distnceM > 1.8",
                broken.problems().get(0).toString());
        assertEquals(List.of(), given(GOOD).problems());
    }

    @Test
    void aRuleFileThatIsNoTextIsSaidToBeUnreadable() throws Exception {
        Files.write(folder.resolve("studio.drl"), new byte[] {(byte) 0xff, (byte) 0xfe, 0});
        assertTrue(BASES.with(folder, stopped -> { }).problems().get(0).toString().contains("cannot be read"), BASES.with(folder, stopped -> { }).problems().toString());
    }

    @Test
    void aMissingFolderLeavesTheBuiltInRules() {
        assertSame(BASES.builtIn(), BASES.with(folder.resolve("nothing-here"), stopped -> { }).rules());
    }

    @ParameterizedTest(name = "{0} -> {1}: {2}")
    @CsvSource(delimiter = '|', value = {
        "@points(-4) | @points(4) | studio.drl:9:3: rule \"HOUSE-001\": what speaks against has points below 0, at least -12, not 4",
        "@basis(\"Our live room\") | @practice(\"one-plane\") | studio.drl:13:3: rule \"HOUSE-001\": @practice means nothing here",
        "@points(-4) | @points(-40) | studio.drl:9:3: rule \"HOUSE-001\": what speaks against has points below 0, at least -12, not -40",
        "@why(\"The door opens inward.\") | | studio.drl:6:1: rule \"HOUSE-001\": @why is missing",
        "@on(\"house\") | @on(\"hearsay\") | studio.drl:12:3: rule \"HOUSE-001\": @on is one of [physics, standard, published, measured, practice, estimate, house], not \"hearsay\"",
        "at {distanceM}. | at {doorM}. | studio.drl:10:3: rule \"HOUSE-001\": {doorM} is neither a value given after then nor a name for Placed",
        "\"distanceM\" | \"distance\" | studio.drl:17:34: rule \"HOUSE-001\": \"distance\" does not say its unit. End it in one of",
        "package house | package studio | studio.drl:1:1: house rules live in: package house;",
        "HOUSE-001 | MY-1 | studio.drl:6:1: rule \"MY-1\": a rule is named by its id, such as HOUSE-001"})
    void whatTheCompilerWouldLetPassIsFoundAndPlaced(String good, String bad, String fault) throws Exception {
        List<String> faults = faults(GOOD.replace(good, bad == null ? "" : bad));
        assertTrue(faults.stream().anyMatch(one -> one.startsWith(fault)), faults.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"{distanceM|over}", "{distanceM|over|}", "{source|over|under}", "{distanceM|over|under|level}"})
    void aWordThatDependsOnASignNeedsAValueAndAnotherWord(String bad) throws Exception {
        List<String> faults = faults(GOOD.replace("at {distanceM}.", "at " + bad + "."));
        assertTrue(faults.stream().anyMatch(one -> one.startsWith("studio.drl:10:3: rule \"HOUSE-001\": " + bad + " needs a value and two words")), faults.toString());
        assertEquals(List.of(), faults(GOOD.replace("at {distanceM}.", "at {distanceM|over|under}.")));
    }

    @ParameterizedTest(name = "house rules may not use {1}")
    @CsvSource(delimiter = '|', value = {
        "$p.distanceM() | java.lang.System.getenv | System.getenv().size()",
        "$p.distanceM() | java.lang.Runtime | Runtime.getRuntime().availableProcessors()",
        "$p.distanceM() | java.lang.Class.forName | Class.forName(\"distanceM\").hashCode()",
        "$p.distanceM() | java.nio.file.Path.of | java.nio.file.Path.of(\"distanceM\").hashCode()"})
    void aHouseRuleMayNotReachOutside(String good, String forbidden, String bad) throws Exception {
        List<String> faults = faults(GOOD.replace(good, bad));
        assertTrue(faults.stream().anyMatch(one -> one.contains("house rules may not use " + forbidden)), faults.toString());
    }

    @Test
    void afterThenStandsOneCallAndNothingElse() throws Exception {
        List<String> faults = faults(GOOD.replace("  out.note(", "  while (true) { }\n  out.note("));
        assertTrue(faults.get(0).startsWith("studio.drl:17:3: rule \"HOUSE-001\": house rules only compare: while is not allowed here"), faults.toString());
        List<String> two = faults(GOOD.replace("  out.note(", "  $p.mic();\n  out.note("));
        assertTrue(two.get(0).contains("after then stands one call"), two.toString());
    }

    @Test
    void functionsAndTypesOfItsOwnAreRefused() throws Exception {
        List<String> faults = faults(GOOD + "\nfunction int f() { return 1; }\n");
        assertTrue(faults.stream().anyMatch(one -> one.contains("house rules may not declare functions")), faults.toString());
    }

    @Test
    void anIdTakenTwiceIsNamedWithBothFiles() throws Exception {
        Files.writeString(folder.resolve("more.drl"), GOOD);
        assertEquals(List.of("studio.drl:6: rule \"HOUSE-001\": this id is taken in more.drl"), faults(GOOD));
    }

    @ParameterizedTest(name = "{1}: {2}")
    @CsvSource(delimiter = '|', value = {
        "when | when\\n  PlannedLine() | PlannedLine is a part of a plan, of which house rules do not speak yet",
        "when | when\\n  Placed(distanceM > 3) | a second Placed: a house rule looks at one at a time",
        "when | when\\n  not Paired(known == true) | between when and then stand only Setting(...), Placed(...) and Paired(...)",
        "when | when\\n  eval(1 < 2) | between when and then stand only",
        "when | when\\n  accumulate(Paired($d : knownShare); $n : count($d)) | between when and then stand only",
        "when | salience 10 when | salience has no place in a house rule",
        "when | timer (int: 1s) when | timer has no place in a house rule",
        "rule \"HOUSE-001\" | rule \"HOUSE-001\" extends \"HOUSE-002\" | a house rule stands by itself",
        "distanceM > 1.8 | mic.says matches \"(a+)+b\" | matches is not allowed here",
        "distanceM > 1.8 | mic.responseDb.map(v -> v).at(0) > 1 | no viable alternative at input 'v'",
        "$p.distanceM()); | $p.mic().id().repeat(1000000000).length()); | house rules may not use java.lang.String.repeat",
        "$p.distanceM()); | java.util.Collections.nCopies(1000000000, 1).size()); | house rules may not use java.util.Collections.nCopies",
        "$p.distanceM()); | drools.insert($p)); | is not applicable",
        "global pairwright.rules.Out out; | global pairwright.rules.Out out; global java.util.List more; | house rules may not have another global than out",
        "rule \"HOUSE-001\" | query again() Placed() again() end rule \"HOUSE-001\" | house rules may not declare queries"})
    void whatCouldRunForEverOrGrowWithoutEndIsRefused(String good, String bad, String fault) throws Exception {
        List<String> faults = faults(GOOD.replace(good, bad.replace("\\n", "\n")));
        assertTrue(faults.stream().anyMatch(one -> one.contains(fault)), faults.toString());
    }

    @Test
    void signsInATextOfARuleAreNotTakenForCode() throws Exception {
        assertEquals(List.of(), faults(GOOD.replace("mic.family == MicFamily.SMALL_DIAPHRAGM_CONDENSER", "mic.id != \"new -> {for} while\"")));
    }

    @Test
    void aMarkAtTheStartAndOtherEndsOfLinesChangeNeitherTheRulesNorTheirPlaces() throws Exception {
        assertEquals(List.of(), faults("\uFEFF" + GOOD.replace("\n", "\r\n")));
        assertTrue(faults("\uFEFF" + GOOD.replace("distanceM > 1.8", "distnceM > 1.8").replace("\n", "\r\n")).get(0)
                .startsWith("studio.drl:15:66: "), faults(GOOD).toString());
    }

    @ParameterizedTest(name = "{0} firings, {1} ms: {2}")
    @CsvSource({"0, 60000, the rule fires more than 0 times for one question", "100000, -1, the rule takes too long for one question"})
    void aRuleThatGoesTooFarIsStoppedAndNamedAndTheRestGoesOn(long firings, long millis, String says) throws Exception {
        List<HouseRuleStopped> told = new ArrayList<>();
        RuleCompiler.Result compiled = RuleCompiler.house().compile(Map.of("studio.drl", GOOD), Map.of());
        RuleBase limited = BASES.builtIn().with(compiled, "v", new HouseRules.Most(firings, millis), told::add);
        Situation far = Situation.differing(Situation.YAML.readTree("{placed: {distanceM: 2.5, habit: first, habitWhy: Why.}}"));
        HouseRuleStopped stopped = assertThrows(HouseRuleStopped.class, () -> far.judged(limited, false));
        assertEquals(List.of(stopped), told);
        assertEquals("studio.drl:17:3: rule \"HOUSE-001\": " + says, stopped.getMessage());
        assertSame(limited, stopped.base());
        assertEquals(List.of("CUS-001"), far.judged(stopped.without(), false).stream().map(one -> one.rule().id()).toList());
        assertEquals(BASES.builtIn().version(), stopped.without().version());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {
        "\"distanceM\", $p.mic().needsLoadOhm() | gives nothing for distanceM, which is no number",
        "\"distanceM\", $p.distanceM() / ($p.distanceM() - $p.distanceM()) | gives \"Infinity\" for distanceM, which is no number",
        "\"distanceM\", $p.mic().id() | gives \"small-condenser-cardioid\" for distanceM, which is no number",
        "\"distanceM\" | gives nothing for distanceM, which is no number"})
    void aRuleThatGivesNoNumberIsStoppedWhereItDoesNotWhereTheSentenceIsMade(String values, String says) throws Exception {
        RuleBase both = given(GOOD.replace("\"distanceM\", $p.distanceM()", values)).rules();
        Situation far = Situation.differing(Situation.YAML.readTree("{placed: {distanceM: 2.5}}"));
        HouseRuleStopped stopped = assertThrows(HouseRuleStopped.class, () -> far.judged(both, false));
        assertTrue(stopped.getMessage().contains("studio.drl:17:3: rule \"HOUSE-001\": the rule " + says), stopped.getMessage());
    }

    @Test
    void ofTwoRulesOnlyTheOneThatTripsIsPutAside() throws Exception {
        String second = GOOD.substring(GOOD.indexOf("rule \"")).replace("HOUSE-001", "HOUSE-002").replace("distanceM > 1.8", "mic.needsLoadOhm + 1 > 1.8");
        RuleBase both = given(GOOD + second).rules();
        Situation far = Situation.differing(Situation.YAML.readTree("{placed: {distanceM: 2.5}}"));
        HouseRuleStopped stopped = assertThrows(HouseRuleStopped.class, () -> far.judged(both, false));
        assertEquals(List.of("HOUSE-002"), List.copyOf(stopped.ids()));
        assertTrue(stopped.getMessage().contains("studio.drl:28:66: rule \"HOUSE-002\": it trips over mic.needsLoadOhm + 1 > 1.8"), stopped.getMessage());
        assertTrue(far.judged(stopped.without(), false).stream().anyMatch(one -> one.rule().id().equals("HOUSE-001")));
    }

    @Test
    void theRulesOfTheProgramPassTheSameCheck() {
        assertEquals(List.of(), RuleCheck.faults(Path.of("rules")));
    }
}
