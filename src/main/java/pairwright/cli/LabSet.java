package pairwright.cli;

import java.util.function.ToIntBiFunction;
import pairwright.lab.LabDesk;
import pairwright.locker.ExerciseSet;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** What every command takes that is about exercises which were made. */
final class LabSet {
    @Parameters(index = "0", paramLabel = "ID", description = "Of the exercises.")
    private String id;

    @Mixin
    private LabAt at;

    String id() {
        return id;
    }

    LockerAt locker() {
        return at.locker();
    }

    /** Does something with them. */
    int with(ToIntBiFunction<LabDesk, ExerciseSet> work) {
        return at.with(id, work);
    }
}
