package pairwright.cli;

import java.util.function.ToIntBiFunction;
import pairwright.lab.LabDesk;
import pairwright.locker.ExerciseSet;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
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

    /** One bench of a set, or all of them. */
    static int[] benches(ExerciseSet set, Integer bench) {
        if (bench != null && set.benches().stream().noneMatch(one -> one.number() == bench)) {
            throw new LockerFault.NotThere("There is no bench " + bench + ". Give one from 1 to " + set.benches().size());
        }
        return set.benches().stream().mapToInt(ExerciseSet.Bench::number).filter(number -> bench == null || number == bench).toArray();
    }
}
