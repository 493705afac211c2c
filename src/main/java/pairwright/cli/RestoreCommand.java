package pairwright.cli;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.concurrent.Callable;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A locker as it was. */
@Command(
        name = "restore",
        description = "Replaces the locker by what a backup holds, in one step, also while a server uses it.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright restore locker-2027-03-01.backup"})
final class RestoreCommand implements Callable<Integer> {
    private static final DateTimeFormatter NAMED = DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss");

    @Parameters(paramLabel = "FILE", description = "What backup wrote.")
    private Path file;

    @Option(names = "--replace", description = "Also where the locker is not empty; what was in it is written into a backup first.")
    private boolean replace;

    @Mixin
    private LockerAt at;

    @Override
    public Integer call() {
        return at.made(locker -> {
            if (!isEmpty(locker)) {
                if (!replace) {
                    throw new LockerFault.Taken("The locker is not empty, and all of it would be replaced. If that is meant, say --replace: what is there now is kept in a backup",
                            List.of());
                }
                Path before = at.data().resolve("before-restore-" + NAMED.format(LocalDateTime.now()) + ".backup");
                locker.backUp(before);
                at.say("What was in the locker until now is in " + before + ".");
            }
            locker.restore(file, LockerAt.who());
            at.say("The locker is as it was in " + file + ": " + locker.units().size() + " units.");
            return 0;
        });
    }

    private static boolean isEmpty(Locker locker) {
        return locker.units().isEmpty() && locker.tokens().all().isEmpty() && locker.history(null, null, 1).isEmpty();
    }
}
