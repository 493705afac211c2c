package pairwright.advice;

import java.util.ArrayList;
import java.util.List;
import pairwright.model.Catalogue;
import pairwright.model.MicType;
import pairwright.model.PatternData;
import pairwright.model.Position;
import pairwright.model.Question;
import pairwright.model.RuledOut;
import pairwright.model.Setup;
import pairwright.rules.Finding;
import pairwright.rules.Placed;
import pairwright.rules.RuleBase;

/**
 * One microphone where somebody put it, judged as if it had been tried.
 *
 * @param offer what it is worth
 * @param ruledOut what rules it out; empty for nothing
 */
public record StoodAt(Offer offer, List<RuledOut> ruledOut) {
    /**
     * Judges several at once, each alone, in a house that remembers nothing.
     *
     * @param question what is asked
     * @param surroundings who reaches a microphone where
     * @param puts how they stand, each with its pattern, its distance and its aim; types and places of the catalogue
     * @return in the same order
     * @throws pairwright.rules.HouseRuleStopped where a house rule fails, see {@link Knowledge#answered}
     */
    public static List<StoodAt> of(Question question, Catalogue catalogue, RuleBase rules, Surroundings surroundings, List<Setup.Put> puts) {
        Scene scene = Scene.of(question, catalogue, Supply.whole(null, catalogue), HouseMemory.NOTHING, surroundings);
        Placements placements = Placements.none(scene);
        List<Placed> placed = puts.stream().map(put -> placed(placements, put, scene)).toList();
        List<Candidate> candidates = Advisor.judged(scene, rules, placed).stream().map(Candidate::of).toList();
        Offers offers = new Offers(scene, rules, candidates);
        List<StoodAt> stood = new ArrayList<>();
        for (int i = 0; i < candidates.size(); i++) {
            List<RuledOut> out = candidates.get(i).first().findings().stream().filter(WhyNotCase::rulesOut)
                    .map(finding -> ruledOut(finding, scene, rules)).toList();
            stood.add(new StoodAt(offers.all().get(i), out));
        }
        return List.copyOf(stood);
    }

    private static RuledOut ruledOut(Finding finding, Scene scene, RuleBase rules) {
        Placed placed = (Placed) finding.subject();
        return new RuledOut(placed.mic().id(), placed.pattern(), placed.position().id(), finding.rule().id(), rules.says(finding, scene.setting()), finding.values());
    }

    private static Placed placed(Placements placements, Setup.Put put, Scene scene) {
        MicType mic = scene.catalogue().mics().get(put.micType());
        PatternData pattern = mic.patterns().stream().filter(one -> one.pattern() == put.pattern()).findFirst().orElseThrow();
        Position position = scene.setting().source().positions().stream().filter(one -> one.id().equals(put.position())).findFirst().orElseThrow();
        return placements.set(mic, pattern, position, put.distanceM(), put.aimDegrees());
    }
}
