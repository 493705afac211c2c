package pairwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pairwright.model.Effect;
import pairwright.rules.Finding;
import pairwright.rules.Paired;

/**
 * One or two judged placements that may become an option.
 *
 * @param technique id of the technique; single for one
 * @param first the first placement
 * @param second the second; null for one
 * @param pair how they relate; null for one
 * @param pairFindings what the rules found of the two together
 * @param centipoints the sum of the points of its reasons in hundredths
 */
record Candidate(String technique, Judged first, Judged second, Paired pair, List<Finding> pairFindings, long centipoints) {
    static final String SINGLE = "single";

    static Candidate of(Judged single) {
        return new Candidate(SINGLE, single, null, null, List.of(), single.centipoints());
    }

    static Candidate of(Judged one, Judged other, Paired pair, List<Finding> findings) {
        Judged first = one.ofTwo();
        Judged second = other.ofTwo();
        long sum = 0;
        for (Finding finding : first.findings()) {
            sum += Judged.half(finding);
        }
        for (Finding finding : second.findings()) {
            sum += Judged.half(finding);
        }
        for (Finding finding : findings) {
            sum += finding.centipoints();
        }
        return new Candidate(pair.technique().id(), first, second, pair, findings, sum);
    }

    boolean ruledOut() {
        return pairFindings.stream().anyMatch(finding -> finding.rule().effect() == Effect.RULES_OUT);
    }

    /** What rules speak of: one microphone, or both and the two together. */
    List<Object> subjects() {
        return isSingle() ? List.of(first.placed()) : List.of(first.placed(), second.placed(), pair);
    }

    /** What the rules found for and against each microphone and the two together. */
    List<Finding> findings() {
        List<Finding> all = new ArrayList<>(first.findings());
        if (!isSingle()) {
            all.addAll(second.findings());
            all.addAll(pairFindings);
        }
        return all;
    }

    boolean isSingle() {
        return second == null;
    }

    /** What sets it apart: a pair its technique, a single the family of its type. Two candidates with one idea are variants of each other. */
    String idea() {
        return isSingle() ? technique + " " + first.placed().mic().family().id() : technique;
    }

    /** The type of its first microphone. */
    String mainType() {
        return first.placed().mic().id();
    }

    /** Best first; ties the same way every time. */
    static Comparator<Candidate> bestFirst() {
        return Comparator.comparingLong(Candidate::centipoints).reversed()
                .thenComparingInt(candidate -> candidate.first().placed().index())
                .thenComparingInt(candidate -> candidate.isSingle() ? -1 : candidate.second().placed().index())
                .thenComparing(Candidate::technique);
    }
}
