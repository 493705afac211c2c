package pairwright.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What the benches get. */
@Command(
        name = "show",
        description = "Prints the handouts of exercises; nothing in them tells the answer.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class LabShow implements Callable<Integer> {
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
            for (int number : LabAt.benches(set, bench)) {
                LabText.handout(out, set.benches().get(number - 1), desk.handout(set, number));
            }
            return 0;
        });
    }
}
