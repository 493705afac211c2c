package pairwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import pairwright.lab.BenchMark;
import pairwright.locker.Role;
import pairwright.sheet.LabMarkTable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What every bench earned. */
@Command(
        name = "marks",
        description = "Prints what every bench earned, or writes it as CSV.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class LabMarks implements Callable<Integer> {
    @ArgGroup
    private How how = new How();

    @Mixin
    private LabSet exercises;

    @Spec
    private CommandSpec spec;

    /** One of two. */
    private static final class How {
        @Option(names = "--csv", paramLabel = "FILE", arity = "0..1", fallbackValue = "-", description = "As CSV, into a file or to standard output.")
        private Path csv;

        @Option(names = "--checks", description = "Print everything that was looked at, with its reason.")
        private boolean checks;
    }

    @Override
    public Integer call() {
        return exercises.with((desk, set) -> {
            List<BenchMark> marks = desk.marks(set, Role.INSTRUCTOR);
            if (how.csv != null) {
                exercises.locker().write(how.csv.toString().equals("-") ? null : how.csv, LabMarkTable.of(marks), "The marks are in ");
                return 0;
            }
            PrintWriter out = spec.commandLine().getOut();
            marks.forEach(bench -> LabText.mark(out, bench.bench(), bench.mark(), how.checks));
            return 0;
        });
    }
}
