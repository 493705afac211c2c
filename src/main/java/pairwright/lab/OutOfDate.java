package pairwright.lab;

/** What is kept of an exercise is no longer understood, or names what the catalogue or the rules do not have any more. */
public final class OutOfDate extends RuntimeException {
    private static final long serialVersionUID = 1;

    OutOfDate(String says, Throwable cause) {
        super(says, cause);
    }
}
