package pairwright.session;

/** How far a plan is: what is being done, and {@code done} steps of {@code of}. */
public record Progress(String doing, int done, int of) {
}
