package pairwright.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What the benches get. */
@Command(
        name = "show",
        description = "Prints the handouts of exercises; nothing in them tells the answer.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class LabShow implements Callable<Integer> {
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
            for (int number : bench.of(set)) {
                LabText.handout(out, set.benches().get(number - 1), desk.handout(set, number));
            }
            return 0;
        });
    }
}
