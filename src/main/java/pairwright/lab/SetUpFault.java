package pairwright.lab;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import pairwright.model.Severity;

/**
 * What is wrong with a set-up.
 *
 * @param rule that says so
 * @param grade how wrong
 * @param words makes the sentence, with its numbers
 */
record SetUpFault(String rule, Grade grade, Supplier<String> words) {
    /** Gravest first. */
    enum Grade {
        /** To people. */
        DANGER,
        /** The rules rule it out. */
        FORBIDDEN,
        /** Gear or the recording may come to harm. */
        CARE,
        /** Much speaks against it. */
        AGAINST;

        static Grade of(Severity severity) {
            return severity == Severity.DANGER ? DANGER : CARE;
        }
    }

    String says() {
        return words.get();
    }

    /** Gravest first, each rule once. */
    static List<SetUpFault> sorted(List<SetUpFault> faults) {
        Set<String> seen = new HashSet<>();
        return faults.stream().filter(fault -> seen.add(fault.rule())).sorted(Comparator.comparing(SetUpFault::grade)).toList();
    }
}
