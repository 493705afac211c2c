package pairwright.cli;

import java.util.List;
import pairwright.locker.ExerciseSet;
import pairwright.locker.LockerFault;
import picocli.CommandLine.Option;

/** One bench of exercises, or all of them. */
final class LabBench {
    @Option(names = "--bench", paramLabel = "N", description = "Only of this bench.")
    private Integer bench;

    /** Numbers of those that are wanted. */
    List<Integer> of(ExerciseSet set) {
        if (bench != null && set.benches().stream().noneMatch(one -> one.number() == bench)) {
            throw new LockerFault.NotThere("There is no bench " + bench + ". Give one from 1 to " + set.benches().size());
        }
        return set.benches().stream().map(ExerciseSet.Bench::number).filter(number -> bench == null || number.equals(bench)).toList();
    }
}
