package pairwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pairwright.model.Caution;
import pairwright.model.Effect;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.PowerNeed;
import pairwright.model.Reason;
import pairwright.model.Technique;
import pairwright.rules.Finding;
import pairwright.rules.Placed;
import pairwright.rules.RuleBase;

/** Turns a candidate into an option: every finding that moved its score becomes a reason, every caution stays. */
final class Explainer {
    private final Scene scene;
    private final RuleBase rules;
    private final List<Finding> general;

    Explainer(Scene scene, RuleBase rules, List<Finding> general) {
        this.scene = scene;
        this.rules = rules;
        this.general = general;
    }

    Option option(int rank, Candidate candidate) {
        List<Reason> reasons = new ArrayList<>();
        List<Caution> cautions = new ArrayList<>();
        boolean pair = candidate.second() != null;
        general.forEach(finding -> sort(finding, 0, 0, reasons, cautions));
        candidate.first().findings().forEach(finding -> sort(finding, 1, pair ? Judged.half(finding) : finding.centipoints(), reasons, cautions));
        if (pair) {
            candidate.second().findings().forEach(finding -> sort(finding, 2, Judged.half(finding), reasons, cautions));
            candidate.pairFindings().forEach(finding -> sort(finding, 0, finding.centipoints(), reasons, cautions));
        }
        reasons.sort(Comparator.<Reason>comparingDouble(reason -> -Math.abs(reason.points()))
                .thenComparing(Reason::rule).thenComparingInt(Reason::mic));
        cautions.sort(Comparator.<Caution>comparingInt(caution -> -caution.severity().ordinal())
                .thenComparing(Caution::rule).thenComparingInt(Caution::mic));
        Technique technique = pair ? candidate.pair().technique() : null;
        List<Placement> mics = new ArrayList<>();
        mics.add(placement(candidate.first().placed(), false));
        if (pair) {
            mics.add(placement(candidate.second().placed(), candidate.pair().secondInverted()));
        }
        return new Option(
                rank,
                candidate.centipoints() / 100.0,
                candidate.technique(),
                technique == null ? "Single" : technique.name(),
                List.copyOf(mics),
                pair ? candidate.pair().together() : null,
                List.copyOf(reasons),
                List.copyOf(withoutTwins(cautions)));
    }

    private void sort(Finding finding, int mic, long centipoints, List<Reason> reasons, List<Caution> cautions) {
        String says = rules.says(finding, scene.setting());
        if (finding.rule().effect() == Effect.CAUTION) {
            cautions.add(new Caution(finding.rule().id(), mic, finding.rule().severity(), says, finding.values(), finding.rule().basis()));
        } else if (centipoints != 0) {
            reasons.add(new Reason(finding.rule().id(), mic, finding.rule().effect(), centipoints / 100.0, says, finding.values(),
                    finding.rule().basis()));
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

    private static Placement placement(Placed placed, boolean inverted) {
        return new Placement(
                placed.mic().id(),
                placed.mic().name(),
                placed.mic().family(),
                placed.pattern(),
                placed.position().id(),
                placed.position().name(),
                placed.position().brings(),
                placed.distanceM(),
                placed.aimDegrees(),
                placed.nullDegrees(),
                placed.nullMissDegrees() >= Placements.NOWHERE_NEAR_DEGREES ? null : placed.nullMissDegrees(),
                placed.sourceAngleDegrees(),
                placed.distanceRatio(),
                placed.standRatio() >= Placements.NO_BOOM ? null : placed.standRatio(),
                placed.loadRatio() >= Placements.NEVER_MIND ? null : placed.loadRatio(),
                placed.lowCornerHz() == 0 ? null : placed.lowCornerHz(),
                placed.keepClearM(),
                placed.currentMa(),
                placed.mic().power() == PowerNeed.PHANTOM,
                placed.padDb() > 0,
                placed.padDb(),
                inverted,
                placed.mic().channels(),
                null,
                placed.predicted());
    }

    /** An option in a few words: the types and where they go. */
    static String oneLine(Option option) {
        StringBuilder line = new StringBuilder();
        for (Placement mic : option.mics()) {
            line.append(line.length() == 0 ? "" : " and ").append(mic.name().toLowerCase()).append(", ")
                    .append(mic.positionName().toLowerCase());
        }
        return line.toString();
    }
}
