package pairwright.lab;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import pairwright.model.Option;
import pairwright.model.Reason;

/**
 * The finding that decides, as an option tells it.
 *
 * @param rule its id; null where there is none
 * @param says its sentence; empty where there is none
 */
record Behind(String rule, String says) {
    /** What speaks for a set-up most. */
    static Behind of(Option option) {
        return option.reasons().stream().max(Comparator.comparingDouble(Reason::points)).map(reason -> new Behind(reason.rule(), reason.says())).orElse(new Behind(null, ""));
    }

    /** What makes most of the difference: what speaks against the worse of two, or what speaks for the better. */
    static Behind between(Option better, Option worse) {
        Map<String, Double> more = gained(worse, better);
        String rule = more.entrySet().stream().filter(entry -> entry.getValue() > 0).max(Map.Entry.<String, Double>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey).orElse(null);
        if (rule == null) {
            return of(better);
        }
        Reason against = reason(worse, rule);
        Reason decides = against != null && against.points() < 0 ? against : reason(better, rule) == null ? against : reason(better, rule);
        return new Behind(rule, decides.says());
    }

    /** Ids of all rules that count otherwise for one than for the other. */
    static Set<String> all(Option one, Option other) {
        Set<String> rules = new LinkedHashSet<>();
        gained(one, other).forEach((rule, points) -> {
            if (Math.abs(points) > 1e-9) {
                rules.add(rule);
            }
        });
        return rules;
    }

    /** By rule, what its findings give more to the second than to the first. */
    private static Map<String, Double> gained(Option from, Option to) {
        Map<String, Double> more = new LinkedHashMap<>();
        from.reasons().forEach(reason -> more.merge(reason.rule(), -reason.points(), Double::sum));
        to.reasons().forEach(reason -> more.merge(reason.rule(), reason.points(), Double::sum));
        return more;
    }

    private static Reason reason(Option option, String rule) {
        return option.reasons().stream().filter(reason -> reason.rule().equals(rule)).findFirst().orElse(null);
    }
}
