package pairwright.rules;

import static org.drools.model.PatternDSL.declarationOf;
import static org.drools.model.PatternDSL.globalOf;
import static org.drools.model.PatternDSL.not;
import static org.drools.model.PatternDSL.on;
import static org.drools.model.PatternDSL.or;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.drools.model.Global;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.drools.model.impl.ModelImpl;
import org.junit.jupiter.api.Test;
import pairwright.model.Effect;

/** Rules without an engine say what they say with it. */
class OneByOneTest {
    private static final RuleBase RULES = RuleBase.builtIn();

    @Test
    void inEveryCaseOfTheRulesTheyFindWhatTheEngineFinds() throws IOException {
        Set<String> fired = new HashSet<>();
        for (RuleCasesTest.Case one : RuleCasesTest.cases()) {
            if (PlanSituation.speaksOf(one.how())) {
                continue;
            }
            Situation situation = Situation.differing(one.how());
            List<Object> subjects = List.of(situation.placed(), situation.paired(), situation.paired().second());
            for (boolean warn : new boolean[] {false, true}) {
                List<Finding> byTheEngine = RULES.byTheEngine(warn, situation.setting(), subjects);
                assertEquals(told(byTheEngine), told(warn ? RULES.warn(situation.setting(), subjects) : RULES.score(situation.setting(), subjects)), one.rule());
                byTheEngine.forEach(finding -> fired.add(finding.rule().id()));
            }
        }
        for (boolean warn : new boolean[] {false, true}) {
            List<String> all = RULES.rules().stream().filter(info -> (info.effect() == Effect.CAUTION) == warn && !info.ofAPlan()).map(RuleInfo::id).toList();
            List<String> silent = all.stream().filter(id -> !fired.contains(id)).toList();
            assertTrue(silent.size() < 0.1 * all.size(), "of " + all.size() + " rules these were silent: " + silent);
        }
    }

    private static List<String> told(List<Finding> findings) {
        return findings.stream().map(finding -> finding.rule().id() + " " + System.identityHashCode(finding.subject()) + " " + finding.share() + " " + finding.values()).toList();
    }

    @Test
    void aRuleOfAnotherKindIsLeftToTheEngine() {
        Variable<Setting> setting = declarationOf(Setting.class);
        Variable<Placed> placed = declarationOf(Placed.class);
        Variable<Placed> other = declarationOf(Placed.class);
        Global<Out> out = globalOf(Out.class, "rules", "out");
        Rule known = rule("known").build(pattern(setting), pattern(placed), on(placed, out).execute((one, to) -> { }));
        Rule none = rule("none").build(pattern(setting), not(pattern(placed)), on(out).execute(to -> { }));
        Rule either = rule("either").build(or(pattern(placed), pattern(other)), on(out).execute(to -> { }));
        Variable<PlannedLine> line = declarationOf(PlannedLine.class);
        Rule plan = rule("plan").build(pattern(line), on(line, out).execute((one, to) -> { }));
        Rule two = rule("two").build(pattern(placed), pattern(other), on(placed, out).execute((one, to) -> { }));
        ModelImpl model = new ModelImpl("some");
        List.of(known, none, either, two, plan).forEach(model::addRule);
        assertNotNull(OneByOne.of(List.of(model), Set.of("known")));
        for (String id : List.of("none", "either", "two", "plan")) {
            assertNull(OneByOne.of(List.of(model), Set.of("known", id)), id);
        }
    }
}
