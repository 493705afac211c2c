package pairwright.cli;

import java.util.List;
import java.util.concurrent.Callable;
import pairwright.http.LabView;
import pairwright.locker.ExerciseSet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What was made. */
@Command(
        name = "list",
        description = "Lists exercises of classes, newest first.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class LabList implements Callable<Integer> {
    @Option(names = "--most", paramLabel = "N", defaultValue = "20", description = "How many, 1 to 1000. Usually 20.")
    private int most;

    @Mixin
    private Printed printed;

    @Mixin
    private LabAt at;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (most < 1 || most > 1000) {
            throw new ParameterException(spec.commandLine(), "--most must be 1 to 1000, but was " + most);
        }
        return at.locker().with(locker -> {
            List<ExerciseSet> sets = locker.exercises().all(most);
            return printed.table(new LabView.ExerciseLines(locker.exercises().count(), sets.stream().map(set -> LabView.ExerciseLine.of(set, locker.now())).toList()),
                    List.of("id", "kind", "level", "benches", "made", "by", "keys open"), sets.stream().map(set -> List.of(set.id(), set.kind(), Integer.toString(set.level()),
                            Integer.toString(set.benches().size()), MomentText.shown(set.at()), set.by(), MomentText.shown(set.opensAt()))).toList(),
                    "No exercises were made yet. Make some with: pairwright lab make KIND");
        });
    }
}
