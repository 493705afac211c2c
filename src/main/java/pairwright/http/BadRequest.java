package pairwright.http;

/** Ends a request with a problem. */
final class BadRequest extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    BadRequest(Problem problem) {
        super(problem.detail(), null, false, false);
        this.problem = problem;
    }

    Problem problem() {
        return problem;
    }
}
