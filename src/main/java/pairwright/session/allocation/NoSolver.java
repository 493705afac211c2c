package pairwright.session.allocation;

/** The solver cannot be loaded on this machine. */
public final class NoSolver extends RuntimeException {
    NoSolver(Throwable cause) {
        super("Plans need a solver that cannot be loaded here (" + System.getProperty("os.name") + ", " + System.getProperty("os.arch") + "): " + cause.getMessage()
                + ". Use the program as built for this machine, and see that its temporary folder may be written and may hold programs", cause);
    }
}
