package pairwright.advice;

import java.util.List;
import pairwright.model.Fault;

/** A question that cannot be answered as it stands; carries every fault found. */
public final class UnusableQuestion extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    UnusableQuestion(List<Fault> faults) {
        super(faults.get(0).says());
        this.faults = List.copyOf(faults);
    }

    /** All of them, in the order of the request's fields. */
    public List<Fault> faults() {
        return faults;
    }
}
