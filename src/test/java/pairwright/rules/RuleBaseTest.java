package pairwright.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

class RuleBaseTest {
    private static final RuleBase RULES = RuleBase.builtIn();

    private static Situation given(String yaml) throws Exception {
        JsonNode how = Situation.YAML.readTree(yaml);
        return Situation.differing(how);
    }

    private static List<String> said(List<Finding> findings) {
        return findings.stream().map(one -> one.rule().id() + (one.subject() instanceof Placed placed ? "@" + placed.index() : "")).toList();
    }

    @Test
    void aRuleOfTheQuestionAloneSpeaksOnceHoweverManyPlacementsThereAre() throws Exception {
        Setting loud = given("{setting: {allowedHours: 0.5}}").setting();
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            placed.add(given("{placed: {index: " + i + "}}").placed());
        }
        List<Finding> findings = Situation.judged(RULES, loud, placed);
        assertEquals(List.of("SAF-005"), said(findings));
        assertEquals(loud, findings.get(0).subject());
        assertEquals(List.of("SAF-005"), said(Situation.judged(RULES, loud, List.of())));
        assertEquals(List.of("PAI-007"), said(RULES.score(loud, List.of(Situation.base().paired()))));
    }

    @Test
    void findingsComeBySubjectAndThenByRuleWhateverTheEngineDoes() throws Exception {
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            placed.add(given("{placed: {index: " + i + ", predicted.headroomDb: 4, predicted.signalToNoiseDb: 44, habit: first, habitWhy: Why.}}").placed());
        }
        List<String> expected = new ArrayList<>(List.of("SAF-005"));
        placed.forEach(one -> expected.addAll(List.of("CUS-001@" + one.index(), "LVL-003@" + one.index(), "NSE-003@" + one.index())));
        Setting loud = given("{setting: {allowedHours: 0.5}}").setting();
        assertEquals(expected, said(Situation.judged(RULES, loud, placed)));
    }

    @Test
    void manyThreadsGetWhatOneGets() throws Exception {
        Situation situation = given("{placed: {predicted.headroomDb: 4, habit: second, habitWhy: Why.}}");
        List<String> alone = said(situation.judged(RULES, false));
        Callable<List<String>> again = () -> said(situation.judged(RULES, false));
        var threads = Executors.newFixedThreadPool(4);
        try {
            for (Future<List<String>> one : threads.invokeAll(Collections.nCopies(64, again))) {
                assertEquals(alone, one.get());
            }
        } finally {
            threads.shutdown();
        }
        assertEquals(List.of("CUS-002@0", "LVL-003@0"), alone);
    }

    @Test
    void aLeadWithoutAnyNumberOfSoundBreaksNoRule() throws Exception {
        Situation lead = given("""
                {setting: {source.level: null, source.lead: {typicalDbu: -20, peakDbu: -5, sourceOhm: 10000}, source.signal: instrument,
                           source.family: direct, typicalDbSpl: 0, peakDbSpl: 0, typicalDba: 0},
                 placed: {mic.family: line, mic.selfNoiseDba: null, mic.maxDbSpl: null, mic.sensitivityMvPerPa: null, mic.massKg: null,
                          mic.currentMa: null, mic.impedanceOhm: null, pattern: electrical, position.mount: lead, nullDegrees: null,
                          predicted.peakDbSpl: null, predicted.typicalDbSpl: null, predicted.headroomDb: null, predicted.noiseDba: null,
                          predicted.signalToNoiseDb: null, predicted.gainDb: null, predicted.outputPeakDbu: null,
                          predicted.directToReverbDb: null, predicted.separationDb: null},
                 paired: {together.firstNullHz: null}}""");
        assertTrue(said(lead.judged(RULES, false)).contains("SAF-013@0"));
        lead.judged(RULES, true).forEach(finding -> RULES.says(finding, lead.setting()));
    }

    @Test
    void aQuestionNeverMeetsARuleOfAPlanNorAPlanARuleOfAQuestion() throws Exception {
        Situation situation = given("{placed: {predicted.headroomDb: 4}}");
        LeftOut leftOut = new LeftOut("the tambourine", false);
        assertEquals(List.of("LVL-003@0"), said(Situation.judged(RULES, situation.setting(), List.of(situation.placed(), leftOut))));
        assertEquals(List.of("PLN-002"), said(RULES.plan(false, List.of(leftOut))));
        assertEquals(List.of(), said(RULES.plan(true, List.of(leftOut))));
        assertEquals("Nothing is left for the tambourine", RULES.says(RULES.plan(false, List.of(leftOut)).get(0)).replaceFirst(",.*", ""));
    }

    @Test
    void rulesGoByTheirIds() {
        assertEquals("Little headroom", RULES.rule("LVL-003").title());
        assertEquals(-3, RULES.rule("LVL-003").points());
        assertNull(RULES.rule("LVL-999"));
        assertEquals(RULES.rules().stream().map(RuleInfo::id).sorted().toList(), RULES.rules().stream().map(RuleInfo::id).toList());
        assertTrue(RULES.version().matches("[0-9a-f]{12}"), RULES.version());
    }
}
