package pairwright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** A booking that is off. */
@Command(
        name = "cancel",
        description = "Cancels a booking; refused while one of its units is out.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class LockerCancel implements Callable<Integer> {
    @Parameters(paramLabel = "ID", description = "The number of the booking.")
    private String id;

    @Mixin
    private LockerAt at;

    @Override
    public Integer call() {
        return at.with(locker -> {
            at.change(locker, changes -> {
                changes.cancel(id, null);
                return "Cancelled booking " + id + ".";
            });
            return 0;
        });
    }
}
