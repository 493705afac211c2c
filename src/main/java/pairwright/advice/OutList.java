package pairwright.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import pairwright.model.Answer;
import pairwright.model.MicType;
import pairwright.model.Stock;
import pairwright.rules.Placed;
import pairwright.rules.RuleBase;

/** The types that are taken and would make a better answer. */
final class OutList {
    private static final int MOST = 4;

    private OutList() {
    }

    /**
     * The best of each type that is wanting, as far as nothing else is.
     *
     * @param judged every placement of what the locker owns
     * @param candidates what can be had, best first
     * @return null where there is no locker to look into
     */
    static List<Answer.Missed> of(Scene scene, RuleBase rules, List<Judged> judged, List<Candidate> candidates) {
        Supply supply = scene.supply();
        if (!supply.limits()) {
            return null;
        }
        long first = candidates.isEmpty() ? 0 : candidates.get(0).centipoints();
        Map<String, Candidate> best = new LinkedHashMap<>();
        for (Candidate candidate : Advisor.wanting(scene, rules, judged)) {
            Set<String> wanting = wanting(supply.atHand(), candidate);
            if (candidate.centipoints() > first && wanting.size() == 1) {
                best.putIfAbsent(wanting.iterator().next(), candidate);
            }
        }
        List<Answer.Missed> list = new ArrayList<>();
        best.entrySet().stream().limit(MOST).forEach(of -> list.add(missed(supply, scene.catalogue().mics().get(of.getKey()), of.getValue(), first,
                !candidates.isEmpty())));
        return List.copyOf(list);
    }

    /** The types of which units are wanting. */
    private static Set<String> wanting(Rack atHand, Candidate candidate) {
        Set<String> types = new TreeSet<>();
        Placed first = candidate.first().placed();
        if (candidate.isSingle() || first.mic().id().equals(candidate.second().placed().mic().id())) {
            types.add(first.mic().id());
            return types;
        }
        for (Placed placed : List.of(first, candidate.second().placed())) {
            if (!atHand.alone(placed.mic())) {
                types.add(placed.mic().id());
            }
        }
        return types;
    }

    private static Answer.Missed missed(Supply supply, MicType mic, Candidate candidate, long first, boolean anything) {
        List<Stock.Held> taken = supply.taken(mic.id());
        boolean two = !candidate.isSingle() && mic.id().equals(candidate.second().placed().mic().id()) && mic.id().equals(candidate.mainType());
        String what = two ? (candidate.pair().matchedPair() ? "A matched pair of the " : "Two of the ") + Nested.named(mic) : "The " + Nested.named(mic);
        String with = two || candidate.isSingle() ? "" : ", in a pair,";
        String says = what + with + (anything ? " would score " + WhyNotCase.points(candidate.centipoints() - first) + " more. "
                : " would have " + WhyNotCase.points(candidate.centipoints()) + " points. ") + OutWords.says(taken);
        return new Answer.Missed(mic.id(), mic.name(), candidate.centipoints() / 100.0, (candidate.centipoints() - first) / 100.0,
                taken.stream().map(OutWords::taken).toList(), says);
    }
}
