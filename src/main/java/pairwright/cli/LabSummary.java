package pairwright.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import pairwright.locker.Role;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What a class got right and missed. */
@Command(
        name = "summary",
        description = "Prints what a class missed most, and how each item was answered.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class LabSummary implements Callable<Integer> {
    @Mixin
    private LabSet exercises;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        return exercises.with((desk, set) -> {
            PrintWriter out = spec.commandLine().getOut();
            LabText.summary(out, desk.summary(set, Role.INSTRUCTOR));
            return 0;
        });
    }
}
