package pairwright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Somebody may no longer come in. */
@Command(
        name = "revoke",
        description = "Makes a token worthless, also where a server runs, within a second.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class TokenRevoke implements Callable<Integer> {
    @Parameters(paramLabel = "NAME", description = "Whose it is.")
    private String name;

    @Mixin
    private LockerAt at;

    @Override
    public Integer call() {
        return at.with(locker -> {
            locker.tokens().revoke(name);
            at.say("The token of " + name + " is worthless now.");
            return 0;
        });
    }
}
