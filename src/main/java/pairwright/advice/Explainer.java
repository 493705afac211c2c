package pairwright.advice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairwright.model.Caution;
import pairwright.model.Given;
import pairwright.model.Naming;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.PowerNeed;
import pairwright.model.Reason;
import pairwright.model.Sure;
import pairwright.model.Technique;
import pairwright.rules.Finding;
import pairwright.rules.Placed;
import pairwright.rules.RuleBase;

/** Turns a candidate into an option: every finding that moved its score becomes a reason, every caution stays. */
final class Explainer {
    private final Scene scene;
    private final RuleBase rules;
    private final Predictor predictor;
    private final Map<Object, List<Finding>> warnings = new IdentityHashMap<>();

    /** Asks the rules what to warn of, once for all that is shown. */
    Explainer(Scene scene, RuleBase rules, List<Candidate> shown) {
        this.scene = scene;
        this.rules = rules;
        this.predictor = new Predictor(scene);
        Set<Object> subjects = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Object> inOrder = new ArrayList<>();
        for (Candidate candidate : shown) {
            for (Object subject : candidate.subjects()) {
                if (subjects.add(subject)) {
                    inOrder.add(subject);
                }
            }
        }
        for (Finding finding : rules.warn(scene.setting(), inOrder)) {
            warnings.computeIfAbsent(finding.subject(), any -> new ArrayList<>()).add(finding);
        }
    }

    Option option(int rank, Candidate candidate, Sure sure) {
        return option(rank, candidate, sure, scene.supply().given(candidate));
    }

    /** @param units which to take for each microphone; null without a locker */
    Option option(int rank, Candidate candidate, Sure sure, List<List<Given>> units) {
        boolean pair = !candidate.isSingle();
        List<Reason> reasons = new ArrayList<>();
        candidate.first().findings().forEach(finding -> reason(finding, 1, pair ? Judged.half(finding) : finding.centipoints(), reasons));
        List<Caution> cautions = new ArrayList<>();
        caution(scene.setting(), 0, cautions);
        caution(candidate.first().placed(), 1, cautions);
        if (pair) {
            candidate.second().findings().forEach(finding -> reason(finding, 2, Judged.half(finding), reasons));
            candidate.pairFindings().forEach(finding -> reason(finding, 0, finding.centipoints(), reasons));
            caution(candidate.second().placed(), 2, cautions);
            caution(candidate.pair(), 0, cautions);
        }
        mergeTwins(reasons);
        reasons.sort(Comparator.<Reason>comparingDouble(reason -> -Math.abs(reason.points()))
                .thenComparing(Reason::rule).thenComparingInt(Reason::mic));
        cautions.sort(Comparator.<Caution>comparingInt(caution -> -caution.severity().ordinal())
                .thenComparing(Caution::rule).thenComparingInt(Caution::mic));
        Technique technique = pair ? candidate.pair().technique() : null;
        List<Placement> mics = new ArrayList<>();
        mics.add(placement(candidate.first().placed(), false, units == null ? null : units.get(0)));
        if (pair) {
            mics.add(placement(candidate.second().placed(), candidate.pair().secondInverted(), units == null ? null : units.get(1)));
        }
        return new Option(
                rank,
                candidate.centipoints() / 100.0,
                candidate.technique(),
                technique == null ? "Single" : technique.name(),
                List.copyOf(mics),
                pair ? candidate.pair().together() : null,
                List.copyOf(reasons),
                List.copyOf(withoutTwins(cautions)),
                sure);
    }

    private void reason(Finding finding, int mic, long centipoints, List<Reason> reasons) {
        if (centipoints != 0) {
            reasons.add(new Reason(finding.rule().id(), mic, finding.rule().effect(), centipoints / 100.0,
                    rules.says(finding, scene.setting()), finding.values(), finding.rule().basis()));
        }
    }

    /** What is said of both microphones in the same words and with the same numbers is one reason, of both, with the points of both. */
    private static void mergeTwins(List<Reason> reasons) {
        for (int i = 0; i < reasons.size(); i++) {
            Reason one = reasons.get(i);
            for (int j = reasons.size() - 1; j > i; j--) {
                Reason twin = reasons.get(j);
                if (one.rule().equals(twin.rule()) && one.mic() != twin.mic() && one.says().equals(twin.says()) && one.values().equals(twin.values())) {
                    double points = (Math.round(one.points() * 100) + Math.round(twin.points() * 100)) / 100.0;
                    reasons.set(i, new Reason(one.rule(), 0, one.effect(), points, one.says(), one.values(), one.basis()));
                    reasons.remove(j);
                }
            }
        }
    }

    private void caution(Object subject, int mic, List<Caution> cautions) {
        for (Finding finding : warnings.getOrDefault(subject, List.of())) {
            cautions.add(new Caution(finding.rule().id(), mic, finding.rule().severity(), rules.says(finding, scene.setting()),
                    finding.values(), finding.rule().basis()));
        }
    }

    /** Two microphones of one type bring every caution twice; the same sentence is said once, for both. */
    private static List<Caution> withoutTwins(List<Caution> cautions) {
        List<Caution> single = new ArrayList<>();
        for (Caution caution : cautions) {
            int twin = -1;
            for (int i = 0; i < single.size(); i++) {
                if (single.get(i).rule().equals(caution.rule()) && single.get(i).says().equals(caution.says())) {
                    twin = i;
                }
            }
            if (twin < 0) {
                single.add(caution);
            } else {
                single.set(twin, new Caution(caution.rule(), 0, caution.severity(), caution.says(), caution.values(), caution.basis()));
            }
        }
        return single;
    }

    private Placement placement(Placed placed, boolean inverted, List<Given> units) {
        return new Placement(
                placed.mic().id(),
                placed.mic().name(),
                placed.mic().family(),
                placed.pattern(),
                placed.position().id(),
                placed.position().name(),
                placed.position().brings(),
                placed.position().mount(),
                placed.distanceM(),
                placed.position().heightM(),
                placed.aimDegrees(),
                placed.nullDegrees(),
                placed.nullMissDegrees() >= Placements.NOWHERE_NEAR_DEGREES ? null : placed.nullMissDegrees(),
                scene.others().isEmpty() ? null : placed.turnGainDb(),
                placed.sourceAngleDegrees(),
                placed.distanceRatio(),
                placed.standRatio() >= Placements.NO_BOOM ? null : placed.standRatio(),
                placed.loadRatio() >= Placements.NEVER_MIND ? null : placed.loadRatio(),
                placed.lowCornerHz() == 0 ? null : placed.lowCornerHz(),
                placed.keepClearM(),
                placed.currentMa(),
                placed.mic().power() == PowerNeed.PHANTOM || placed.mic().power() == PowerNeed.PHANTOM_OR_BATTERY && scene.setting().phantomAllowed(),
                placed.padDb() > 0,
                placed.padDb(),
                inverted,
                placed.mic().channels(),
                scene.supply().free(placed.mic()),
                units,
                placed.predicted(),
                predictor.heard(placed));
    }

    /** An option in a few words: the types and where they go. */
    static String oneLine(Option option) {
        StringBuilder line = new StringBuilder();
        for (Placement mic : option.mics()) {
            line.append(line.length() == 0 ? "" : " and ").append(Naming.small(mic.name())).append(", ").append(Naming.small(mic.positionName()));
        }
        return line.toString();
    }
}
