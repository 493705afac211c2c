package pairwright.lab;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import pairwright.advice.Offer;
import pairwright.rules.Finding;

/**
 * What decides for a set-up.
 *
 * @param rule id
 * @param says the sentence, with its numbers
 */
record StrongestReason(String rule, String says) {
    /** What speaks most for it; empty where nothing does. */
    static Optional<StrongestReason> of(Offer offer) {
        return offer.findings().stream().filter(finding -> finding.centipoints() > 0).max(Comparator.comparingLong(Finding::centipoints)).map(finding -> of(offer, finding));
    }

    /** What sets it most apart from something worse: what speaks for it and not for the other, or against the other and not against it. Empty where nothing does. */
    static Optional<StrongestReason> over(Offer better, Offer worse) {
        Map<String, Long> more = new HashMap<>();
        better.findings().forEach(finding -> more.merge(finding.rule().id(), finding.centipoints(), Long::sum));
        worse.findings().forEach(finding -> more.merge(finding.rule().id(), -finding.centipoints(), Long::sum));
        return more.entrySet().stream().filter(of -> of.getValue() > 0).max(Map.Entry.<String, Long>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey).flatMap(rule -> says(better, rule).or(() -> says(worse, rule)));
    }

    private static Optional<StrongestReason> says(Offer offer, String rule) {
        return offer.findings().stream().filter(finding -> finding.rule().id().equals(rule)).findFirst().map(finding -> of(offer, finding));
    }

    private static StrongestReason of(Offer offer, Finding finding) {
        return new StrongestReason(finding.rule().id(), offer.says(finding));
    }
}
