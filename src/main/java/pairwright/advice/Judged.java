package pairwright.advice;

import java.util.List;
import pairwright.model.Effect;
import pairwright.rules.Finding;
import pairwright.rules.Placed;

/**
 * A placement and what the rules found.
 *
 * @param placed the placement
 * @param findings all of them, in a stable order
 * @param centipoints the sum of its points in hundredths
 * @param ruledOut whether a rule rules it out
 */
record Judged(Placed placed, List<Finding> findings, long centipoints, boolean ruledOut) {

    static Judged of(Placed placed, List<Finding> findings) {
        long sum = 0;
        boolean out = false;
        for (Finding finding : findings) {
            sum += finding.centipoints();
            out |= finding.rule().effect() == Effect.RULES_OUT;
        }
        return new Judged(placed, findings, sum, out);
    }

    /** The same as one of two: without what holds only of a microphone by itself. */
    Judged ofTwo() {
        return findings.stream().noneMatch(finding -> finding.rule().alone()) ? this : of(placed, findings.stream().filter(finding -> !finding.rule().alone()).toList());
    }

    /** Which type stands where, whatever its distance, pattern and aim. */
    String place() {
        return placed.mic().id() + "@" + placed.position().id();
    }

    /** A microphone of two carries half its points, so that pairs and singles compare. */
    static long half(Finding finding) {
        return Math.round(finding.centipoints() / 2.0);
    }
}
