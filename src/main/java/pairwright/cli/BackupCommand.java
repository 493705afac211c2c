package pairwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** All of the locker in one file. */
@Command(
        name = "backup",
        description = "Writes all of the locker, as it is at one moment, into a new file, also while a server uses it.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright backup locker-2027-03-01.backup"})
final class BackupCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "A name that is free.")
    private Path file;

    @Mixin
    private LockerAt at;

    @Override
    public Integer call() {
        return at.with(locker -> {
            locker.backUp(file);
            at.say("All of the locker is in " + file + ". Bring it back with: pairwright restore " + file);
            return 0;
        });
    }
}
