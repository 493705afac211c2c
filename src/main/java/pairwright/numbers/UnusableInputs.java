package pairwright.numbers;

import java.util.List;
import pairwright.model.Fault;

/** Inputs a calculation cannot be worked with; carries every fault found. */
public final class UnusableInputs extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    UnusableInputs(List<Fault> faults) {
        super(faults.get(0).says());
        this.faults = List.copyOf(faults);
    }

    /** All of them: unknown names first, then in the order of the calculation's inputs. */
    public List<Fault> faults() {
        return faults;
    }
}
