package pairwright.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import pairwright.advice.Knowledge;
import pairwright.catalogue.YamlFile;
import pairwright.http.SessionBody;
import pairwright.http.SessionRequest;
import pairwright.http.SessionView;
import pairwright.model.Fault;
import pairwright.session.Change;
import pairwright.session.Gear;
import pairwright.session.Planner;
import pairwright.session.Progress;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What to do when something has changed since a session was planned. */
@Command(
        name = "replan",
        description = "Plans a session again when something has failed or somebody is not coming: what stands stays, unless moving it is worth its price.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright plan barn-sextet.yaml --json > plan.json", "     pairwright replan barn-sextet.yaml --plan plan.json --lost-unit long-ribbon-1"})
final class ReplanCommand implements Callable<Integer> {
    @Mixin
    private PlanUse use;

    @Option(names = "--plan", required = true, paramLabel = "PLAN", description = "The plan that stands, as plan --json printed it.")
    private Path plan;

    @Option(names = "--number", paramLabel = "N", defaultValue = "1", description = "Which plan of that file stands. Usually the first.")
    private int number;

    @Option(names = "--lost-unit", paramLabel = "ID", description = "A microphone, stand, booster or pad there is no more. May be said several times.")
    private List<String> units = List.of();

    @Option(names = "--lost-channel", paramLabel = "ID", description = "A channel there is no more.")
    private List<String> channels = List.of();

    @Option(names = "--lost-seat", paramLabel = "ID", description = "Who is not coming, by the id in the line-up.")
    private List<String> seats = List.of();

    @Option(names = "--lost-minutes", paramLabel = "N", description = "Minutes of the time to set up that are gone; the line-up says how many there were.")
    private Integer minutes;

    @Option(names = "--price", paramLabel = "POINTS", description = "What moving something that stands must be worth, 0 to 1000. Usually 5.")
    private Double price;

    private YamlFile before;

    @Override
    public Integer call() {
        before = use.tree(plan);
        if (before == null) {
            return Main.UNUSABLE;
        }
        return use.with(this::altered, SessionBody::again, this::elsewhere, false, this::again);
    }

    private ObjectNode altered(ObjectNode root) {
        JsonNode plans = before.root().path("plans");
        if (plans.isArray() && (number < 1 || number > plans.size())) {
            throw use.fault("there is no plan " + number + " in " + plan + ". It holds " + plans.size());
        }
        JsonNode one = before.root().path("plan").isObject() ? before.root().path("plan") : before.root(); // what replan printed, or a plan by itself
        root.set("plan", plans.isArray() ? plans.get(number - 1) : one);
        ObjectNode lost = root.path("lost").isObject() ? (ObjectNode) root.path("lost") : root.putObject("lost");
        add(lost, "units", units);
        add(lost, "channels", channels);
        add(lost, "seats", seats);
        if (minutes != null) {
            lost.put("minutes", minutes);
        }
        if (price != null) {
            root.put("pricePoints", price);
        }
        return root;
    }

    private static void add(ObjectNode lost, String name, List<String> ids) {
        if (!ids.isEmpty()) {
            ArrayNode all = lost.path(name).isArray() ? (ArrayNode) lost.path(name) : lost.putArray(name);
            ids.forEach(all::add);
        }
    }

    private String elsewhere(Fault fault) {
        return fault.at().equals("/plan") || fault.at().startsWith("/plan/") ? plan.toString() 
                : fault.at().equals("/pricePoints") && price != null ? "--price" : fault.at().equals("/lost/minutes") && minutes != null ? "--lost-minutes" : null;
    }

    private int again(SessionRequest request, Gear gear, Planner planner, Knowledge known) {
        PlanText text = PlanUse.text(request, known);
        Consumer<Progress> progress = use.progress();
        Change change;
        try {
            change = planner.again(request.lineUp(), gear, request.before(), request.lost(), request.pricePoints(), progress);
        } catch (IllegalStateException none) {
            return use.printed().impossible(planner.shortAgain(request.lineUp(), gear, request.before(), request.lost(), progress), request, known, text);
        }
        return use.printed().print(SessionView.Changed.of(change, request, known.catalogue()), change.plan(), request, known, () -> text.of(change));
    }
}
