package pairwright.cli;

import java.io.PrintWriter;
import java.util.function.Consumer;
import pairwright.session.Progress;

/** Tells those who wait how far a plan is. */
final class PlanProgress implements Consumer<Progress> {
    private final Meanwhile meanwhile;

    PlanProgress(PrintWriter err) {
        this.meanwhile = new Meanwhile(err);
    }

    @Override
    public void accept(Progress progress) {
        meanwhile.tell(progress.doing() + (progress.of() > 1 ? ", " + progress.done() + " of " + progress.of() : ""));
    }
}
