package pairwright.cli;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import pairwright.advice.AtHand;
import pairwright.catalogue.Json;
import pairwright.http.PurchaseView;
import pairwright.http.SessionStore;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import pairwright.locker.Span;
import pairwright.session.GearOf;
import pairwright.session.HouseMarks;
import pairwright.session.PurchaseDesk;
import pairwright.session.Purchased;
import pairwright.session.Purchases;
import pairwright.session.Purchases.Wish;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What to buy next for the stored sessions. */
@Command(
        name = "buy",
        description = "Says which microphones to buy next for the stored sessions: first so that every source that must be served is, then what raises the plans most for its price.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright buy --budget 6", "     pairwright buy --budget 10 --tier 3"})
final class Buy implements Callable<Integer> {
    @Option(names = "--budget", paramLabel = "N", description = "How much may be spent, in prices of the cheapest price class: 0 to " + Wish.MOST_BUDGET + ". Usually " + Wish.USUAL_BUDGET + ".")
    private int budget = Wish.USUAL_BUDGET;

    @Option(names = "--tier", paramLabel = "N", description = "No type of a dearer price class: 1 to " + Wish.DEAREST + ". Usually any.")
    private int mostTier = Wish.DEAREST;

    @Mixin
    private Printed printed;

    @Mixin
    private LockerAt at;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        within("--budget", budget, 0, Wish.MOST_BUDGET);
        within("--tier", mostTier, 1, Wish.DEAREST);
        return at.with(locker -> {
            List<Purchases.Session> sessions = new SessionStore(locker, at::knowledge, Json.mapper()).lineUps();
            if (sessions.isEmpty()) {
                throw new LockerFault.NotThere("There is no session yet to buy for. Store the line-ups of what you record, on the page /sessions of: pairwright serve");
            }
            PurchaseDesk.State state = worked(locker, new Wish(sessions, GearOf.owned(locker, new Span(locker.now(), locker.now().plus(AtHand.USUAL_LENGTH))), budget, mostTier));
            int code = printed.table(PurchaseView.of(state), List.of("buy", "why", "price", "spent", "points gained", "sessions raised"),
                    state.purchased().steps().stream().map(Buy::row).toList(), budget == 0 ? "With nothing to spend nothing is bought." : "Nothing of these price classes and within this budget makes any plan better.");
            if (!printed.json()) {
                summary(state.purchased());
            }
            return code;
        });
    }

    private void within(String option, int value, int least, int most) {
        if (value < least || value > most) {
            throw new ParameterException(spec.commandLine(), option + " takes " + least + " to " + most + ", but was " + value);
        }
    }

    private PurchaseDesk.State worked(Locker locker, Wish wish) {
        try (PurchaseDesk desk = new PurchaseDesk(at::knowledge, new HouseMarks(locker.marks()))) {
            return new Meanwhile(spec.commandLine().getErr()).until(state -> state.purchased() != null, () -> desk.state(wish), state -> state.progress().doing(),
                    "It was stopped before it was worked out. Start it again");
        }
    }

    private static List<String> row(Purchased.Step step) {
        return List.of((step.units() == 2 ? "a matched pair of " : "one ") + step.name(), step.phase() == Purchased.Phase.SERVE ? "so that all are served" : "for better plans",
                Integer.toString(step.price()), Integer.toString(step.spent()), step.gainPoints() == 0 ? "-" : points(step.gainPoints()),
                step.raises().stream().map(Purchased.Raised::name).collect(Collectors.joining(", ")));
    }

    private static String points(Double points) {
        return points == null ? "no plan" : String.format(Locale.ROOT, "%.1f", points);
    }

    private void summary(Purchased found) {
        spec.commandLine().getOut().println();
        for (int i = 0; i < found.before().size(); i++) {
            at.say(found.before().get(i).name() + ": " + points(found.before().get(i).points()) + " with what is owned, " + points(found.after().get(i).points()) + " with all of this.");
        }
        found.unserved().forEach(one -> at.say(one.name() + ": " + one.why()));
        if (!found.idle().isEmpty()) {
            at.say("Never needed by the best plans: " + found.idle().stream().map(idle -> idle.name() + (idle.used() == 0 ? "" : " (" + (idle.owned() - idle.used()) + " of " + idle.owned() + ")"))
                    .collect(Collectors.joining(", ")) + ".");
        }
        at.say("Prices are those of price classes, 1 to " + Wish.DEAREST + ": an order of magnitude, of no product.");
    }
}
