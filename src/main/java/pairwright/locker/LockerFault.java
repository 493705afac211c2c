package pairwright.locker;

import java.util.List;
import java.util.stream.Collectors;
import pairwright.model.Fault;

/** Why something was not done. Nothing was changed. */
public abstract sealed class LockerFault extends RuntimeException {
    private static final long serialVersionUID = 1;

    private LockerFault(String says) {
        super(says);
    }

    /** What was said cannot be used. */
    public static final class Unusable extends LockerFault {
        private static final long serialVersionUID = 1;
        private final transient List<Fault> faults;

        public Unusable(List<Fault> faults) {
            super(faults.stream().map(Fault::says).collect(Collectors.joining("; ")));
            this.faults = List.copyOf(faults);
        }

        /** Every fault, with its place as a pointer such as /units/0. */
        public List<Fault> faults() {
            return faults;
        }
    }

    /** Somebody has it for that time, or it cannot be used. */
    public static final class Taken extends LockerFault {
        private static final long serialVersionUID = 1;
        private final transient List<Booking> clashes;

        public Taken(String says, List<Booking> clashes) {
            super(says);
            this.clashes = List.copyOf(clashes);
        }

        /** The bookings in the way; empty where a condition is. */
        public List<Booking> clashes() {
            return clashes;
        }
    }

    /** There is no such thing. */
    public static final class NotThere extends LockerFault {
        private static final long serialVersionUID = 1;

        public NotThere(String says) {
            super(says);
        }
    }

    /** It was changed meanwhile. */
    public static final class Changed extends LockerFault {
        private static final long serialVersionUID = 1;
        private final long version;

        public Changed(String says, long version) {
            super(says);
            this.version = version;
        }

        /** The version it has now. */
        public long version() {
            return version;
        }
    }

    /** The key of the act was used for something else. */
    public static final class KeyUsedOtherwise extends LockerFault {
        private static final long serialVersionUID = 1;

        public KeyUsedOtherwise(String says) {
            super(says);
        }
    }

    /** The database does not answer just now. Whether the last write was done is not known: send it again with its key. */
    public static final class Unreachable extends LockerFault {
        private static final long serialVersionUID = 1;

        public Unreachable(String says) {
            super(says);
        }
    }
}
