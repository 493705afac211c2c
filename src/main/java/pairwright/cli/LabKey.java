package pairwright.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.concurrent.Callable;
import pairwright.locker.Role;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What is right. */
@Command(
        name = "key",
        description = "Prints the keys of exercises, with the reasons and what they rest on.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class LabKey implements Callable<Integer> {
    @Parameters(paramLabel = "ID", description = "Of the exercises.")
    private String id;

    @Option(names = "--bench", paramLabel = "N", description = "Only of this bench.")
    private Integer bench;

    @Mixin
    private LabAt at;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        return at.with(id, (desk, set) -> {
            PrintWriter out = spec.commandLine().getOut();
            int[] wanted = LabAt.benches(set, bench);
            desk.key(set, Role.INSTRUCTOR).stream().filter(key -> Arrays.stream(wanted).anyMatch(number -> number == key.bench()))
                    .forEach(key -> LabText.key(out, key, desk.handout(set, key.bench())));
            return 0;
        });
    }
}
