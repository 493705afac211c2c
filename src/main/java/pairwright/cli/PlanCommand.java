package pairwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.concurrent.Callable;
import pairwright.advice.Knowledge;
import pairwright.http.SessionBody;
import pairwright.http.SessionRequest;
import pairwright.http.SessionView;
import pairwright.session.Gear;
import pairwright.session.Plan;
import pairwright.session.Planned;
import pairwright.session.Planner;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The plans of a session. */
@Command(
        name = "plan",
        description = "Plans a session: from a file that says who plays where to microphones, channels and stands, with what bleeds where and when it arrives.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright demo", "     pairwright plan pairwright-demo/barn-sextet.yaml --data pairwright-demo"})
final class PlanCommand implements Callable<Integer> {
    @Mixin
    private PlanUse use;

    @Option(names = "--plans", paramLabel = "N", description = "How many different plans, 1 to 5. As the file says, else 3.")
    private Integer plans;

    @Option(names = "--number", paramLabel = "N", defaultValue = "1", description = "Which of them is shown in full, and printed with --csv. Usually the first.")
    private int number;

    @Option(names = "--check", description = "Only look for faults in the file.")
    private boolean check;

    @Override
    public Integer call() {
        if (number < 1) {
            throw use.fault("--number begins at 1, but was " + number);
        }
        return use.with(this::altered, SessionBody::plan, fault -> null, check, this::plan);
    }

    private ObjectNode altered(ObjectNode root) {
        if (plans != null) {
            root.put("plans", plans);
        }
        return root;
    }

    private int plan(SessionRequest request, Gear gear, Planner planner, Knowledge known) {
        Planned planned = planner.plan(request.lineUp(), gear, use.progress());
        PlanText text = PlanUse.text(request, known);
        if (planned.plans().isEmpty()) {
            return use.printed().impossible(planned, request, known, text);
        }
        if (number > planned.plans().size()) {
            throw use.fault("there is no plan " + number + ". There " + (planned.plans().size() == 1 ? "is one" : "are " + planned.plans().size()));
        }
        Plan chosen = planned.plans().get(number - 1);
        return use.printed().print(SessionView.Plans.of(planned, request, known.catalogue()), chosen, request, known, () -> text.of(planned, chosen));
    }
}
