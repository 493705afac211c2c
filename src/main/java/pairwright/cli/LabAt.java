package pairwright.cli;

import java.util.function.ToIntBiFunction;
import pairwright.lab.LabDesk;
import pairwright.locker.ExerciseSet;
import pairwright.locker.Locker;
import picocli.CommandLine.Mixin;

/** What every command of the lab takes: where the locker is that keeps its exercises. Whoever sits at the terminal teaches. */
final class LabAt {
    @Mixin
    private LockerAt at;

    LockerAt locker() {
        return at;
    }

    /** Does something with the exercises of a locker, which is made where it is not there. */
    int made(ToIntBiFunction<Locker, LabDesk> work) {
        return at.made(locker -> work.applyAsInt(locker, desk(locker)));
    }

    /** Does something with a set that is there. */
    int with(String id, ToIntBiFunction<LabDesk, ExerciseSet> work) {
        return at.with(locker -> {
            LabDesk desk = desk(locker);
            return work.applyAsInt(desk, desk.set(id));
        });
    }

    private LabDesk desk(Locker locker) {
        return new LabDesk(locker, at::knowledge);
    }
}
