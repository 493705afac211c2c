package pairwright.rules;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * House rules tripped over something, or did not come to an end. What they would have said is unknown, so the question must be judged
 * again from the start by {@link #without()}.
 */
public final class HouseRuleStopped extends RuntimeException {
    private final transient RuleBase base;
    private final transient RuleBase without;
    private final transient List<Problem> problems;

    HouseRuleStopped(RuleBase base, RuleBase without, List<Problem> problems, Throwable cause) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("; ")), cause);
        this.base = base;
        this.without = without;
        this.problems = List.copyOf(problems);
    }

    /** The rules that were asked. */
    public RuleBase base() {
        return base;
    }

    /** The same less those that failed. */
    public RuleBase without() {
        return without;
    }

    /** Each rule that failed, its place, and why. */
    public List<Problem> problems() {
        return problems;
    }

    /** Which rules, without where they stand on this machine: what may be told to whoever asks over the network. */
    public Set<String> ids() {
        return problems.stream().map(Problem::rule).collect(Collectors.toCollection(TreeSet::new));
    }
}
