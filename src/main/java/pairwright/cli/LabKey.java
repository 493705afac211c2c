package pairwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import pairwright.locker.Role;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What is right. */
@Command(
        name = "key",
        description = "Prints the keys of exercises, with the reasons and what they rest on.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class LabKey implements Callable<Integer> {
    @Mixin
    private LabBench bench;

    @Mixin
    private LabSet exercises;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        return exercises.with((desk, set) -> {
            PrintWriter out = spec.commandLine().getOut();
            List<Integer> wanted = bench.of(set);
            desk.key(set, Role.INSTRUCTOR).stream().filter(key -> wanted.contains(key.bench()))
                    .forEach(key -> LabText.key(out, key, desk.handout(set, key.bench())));
            return 0;
        });
    }
}
