package pairwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.advice.AtHand;
import pairwright.advice.CoverageDesk;
import pairwright.http.CoverageView;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import pairwright.locker.Span;
import pairwright.model.Coverage;
import pairwright.model.Coverage.Verdict;
import pairwright.model.FromLocker;
import pairwright.model.Stock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What the locker covers. */
@Command(
        name = "coverage",
        description = "Says how well each source can be served with what is owned, or with what is free for a time, and what would help most.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright locker coverage", "     pairwright locker coverage --from 2027-03-01T10:00 --until 2027-03-01T18:00"})
final class LockerCoverage implements Callable<Integer> {
    private static final int MOST_HELPS = 6;

    @Option(names = "--locker", paramLabel = "WORD", description = {"owned for all that is owned and in order, free for what can be had at a time.",
            "Usually owned, and free where a time is named."})
    private String use;

    @Mixin
    private Times times;

    @Mixin
    private Printed printed;

    @Mixin
    private LockerAt at;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        FromLocker wanted = wanted();
        Span span = wanted == FromLocker.OWNED ? null : times.span(AtHand.USUAL_LENGTH);
        return at.with(locker -> {
            Stock stock = stock(locker, span);
            CoverageDesk.State state = worked(stock, wanted);
            int code = printed.table(CoverageView.of(state, wanted, span), List.of("source", "served", "points", "best of all types", "with"),
                    state.coverage().sources().stream().map(LockerCoverage::row).toList(), "There is no source in the catalogue.");
            if (!printed.json()) {
                summary(state.coverage());
            }
            return code;
        });
    }

    private FromLocker wanted() {
        if (use == null) {
            return times.said() ? FromLocker.FREE : FromLocker.OWNED;
        }
        FromLocker wanted = Stream.of(FromLocker.OWNED, FromLocker.FREE).filter(one -> one.id().equals(use.strip())).findFirst()
                .orElseThrow(() -> new ParameterException(spec.commandLine(), "--locker takes owned or free, but was \"" + use + "\""));
        if (wanted == FromLocker.OWNED && times.said()) {
            throw new ParameterException(spec.commandLine(), "what is owned is looked at for no time. Leave --from and --until out, or say --locker free");
        }
        return wanted;
    }

    private static Stock stock(Locker locker, Span span) {
        Stock stock = locker.stock(span == null ? new Span(locker.now(), locker.now().plus(AtHand.USUAL_LENGTH)) : span);
        if (stock != null && !stock.reachable()) {
            throw new LockerFault.Unreachable("The locker does not answer just now. Try again in a moment");
        }
        return stock;
    }

    private CoverageDesk.State worked(Stock stock, FromLocker wanted) {
        try (CoverageDesk desk = new CoverageDesk(at::knowledge)) {
            return new Meanwhile(spec.commandLine().getErr()).until(state -> state.coverage() != null, () -> desk.state(stock, wanted),
                    state -> state.done() + " of " + state.of() + " sources are judged", "It was stopped before all sources were judged. Start it again");
        }
    }

    private static List<String> row(Coverage.Served served) {
        return List.of(served.name(), words(served.verdict()), points(served.score()), points(served.bestScore()),
                served.with() == null ? "nothing that can be put there" : served.with().mics().stream()
                        .map(mic -> (mic.count() == 1 ? "" : mic.count() + " x ") + mic.name()).collect(Collectors.joining(" + ")));
    }

    private static String points(Double score) {
        return score == null ? "-" : String.format(Locale.ROOT, "%.1f", score);
    }

    private static String words(Verdict verdict) {
        return verdict.id().replace('-', ' ');
    }

    private void summary(Coverage coverage) {
        List<String> lines = new ArrayList<>();
        coverage.sources().stream().filter(one -> one.verdict() != Verdict.WELL && one.missing() != null)
                .forEach(one -> lines.add(one.name() + ": " + one.missing().says()));
        if (!lines.isEmpty()) {
            lines.add("");
        }
        lines.add("Of " + coverage.sources().size() + " sources: " + Stream.of(Verdict.values())
                .map(verdict -> coverage.sources().stream().filter(one -> one.verdict() == verdict).count() + " " + words(verdict)).collect(Collectors.joining(", ")) + ".");
        if (coverage.ahead()) {
            lines.add("Points can be above the best of all types: a matched pair, or a unit with a response of its own, may be worth more than units of which nothing is known.");
        }
        lines.add(coverage.helps().isEmpty() ? "No single type, alone or as a matched pair, would raise any of them." : "What would help most:");
        coverage.helps().stream().limit(MOST_HELPS).map(help -> "- " + (help.units() == 2 ? "a matched pair of " : "one ") + help.name() + ": raises "
                + help.raises().size() + (help.raises().size() == 1 ? " source" : " sources") + ", " + String.format(Locale.ROOT, "%.1f", help.gainPoints())
                + " points in all").forEach(lines::add);
        spec.commandLine().getOut().println();
        lines.forEach(at::say);
    }
}
