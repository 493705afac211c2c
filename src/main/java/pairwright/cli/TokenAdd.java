package pairwright.cli;

import java.util.concurrent.Callable;
import pairwright.locker.Role;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Somebody may come in. */
@Command(
        name = "add",
        description = "Makes a token, by which a server that others can reach knows who comes.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright token add Wren --role engineer"})
final class TokenAdd implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "NAME", description = "Whose it is, as the history will say.")
    private String name;

    @Option(names = "--role", paramLabel = "ROLE", required = true,
            description = "reader asks and reads; engineer also changes the locker; instructor will see the keys of exercises, once there are any.")
    private Role role;

    @Mixin
    private LockerAt at;

    @Override
    public Integer call() {
        return at.made(locker -> {
            String secret = locker.tokens().add(name, role);
            spec.commandLine().getErr().println("The token of " + AnswerText.harmless(name.strip()) + ", role " + role.id()
                    + ". Write it down now: it is shown only this once, and only a hash of it is kept.");
            spec.commandLine().getErr().flush();
            spec.commandLine().getOut().println(secret);
            return 0;
        });
    }
}
