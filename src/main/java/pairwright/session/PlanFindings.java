package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import pairwright.rules.Finding;
import pairwright.rules.PlanFact;
import pairwright.rules.RuleBase;

/** The parts of one plan that are to be judged, and of whom each speaks. All of them are asked about at once. */
final class PlanFindings {
    private final Map<PlanFact, About> about = new IdentityHashMap<>();
    private final List<PlanFact> facts = new ArrayList<>();
    private final Map<PlanFact, List<Finding>> found = new IdentityHashMap<>();

    private record About(List<String> seats, List<Integer> lines) {
    }

    <F extends PlanFact> F add(F fact, List<String> seats, List<Integer> lines) {
        about.put(fact, new About(seats, lines));
        facts.add(fact);
        return fact;
    }

    /** @param warn whether cautions are asked for; else what has points */
    void ask(RuleBase rules, boolean warn) {
        rules.plan(warn, facts).forEach(finding -> found.computeIfAbsent((PlanFact) finding.subject(), any -> new ArrayList<>()).add(finding));
    }

    List<Finding> found(PlanFact fact) {
        return found.getOrDefault(fact, List.of());
    }

    /** What was found of some parts, in sentences, gravest first. */
    List<Said> said(RuleBase rules, List<? extends PlanFact> some) {
        List<Said> said = new ArrayList<>();
        for (PlanFact fact : some) {
            for (Finding finding : found(fact)) {
                said.add(new Said(finding.rule().id(), about.get(fact).seats(), about.get(fact).lines(), finding.rule().effect(),
                        finding.centipoints() / 100.0, finding.rule().severity(), rules.says(finding), finding.values(), finding.rule().basis()));
            }
        }
        said.sort(GRAVEST_FIRST);
        return List.copyOf(said);
    }

    /** Dangers, then what needs care, then notes; what moves a score by how much it does. */
    static final Comparator<Said> GRAVEST_FIRST = Comparator
            .comparing(Said::severity, Comparator.nullsLast(Comparator.reverseOrder()))
            .thenComparing(said -> -Math.abs(said.points()));
}
