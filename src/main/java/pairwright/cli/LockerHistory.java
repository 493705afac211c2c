package pairwright.cli;

import java.util.List;
import java.util.concurrent.Callable;
import pairwright.http.LockerView;
import pairwright.locker.Event;
import pairwright.locker.Unit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What was done. */
@Command(
        name = "history",
        description = "Lists what was done and by whom, newest first.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class LockerHistory implements Callable<Integer> {
    @Parameters(paramLabel = "ABOUT", arity = "0..1", description = "Only of this unit or booking.")
    private String about;

    @Option(names = "--most", paramLabel = "N", defaultValue = "20", description = "How much of it, 1 to 1000. Usually 20.")
    private int most;

    @Mixin
    private Printed printed;

    @Mixin
    private LockerAt at;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (most < 1 || most > 1000) {
            throw new ParameterException(spec.commandLine(), "--most must be 1 to 1000, but was " + most);
        }
        return at.with(locker -> {
            List<Unit> named = about == null ? List.of() : locker.scanned(about);
            List<Event> events = locker.history(named.size() == 1 ? named.get(0).id() : about, null, most);
            return printed.table(LockerView.History.of(events, events.size() == most), List.of("when", "who", "what was done"),
                    events.stream().map(event -> List.of(MomentText.shown(event.at()), event.who(), event.says())).toList(), "Nothing was done yet.");
        });
    }
}
