package pairwright.cli;

import java.util.concurrent.Callable;
import pairwright.locker.Unit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** A unit that is gone for good. */
@Command(
        name = "remove",
        description = "Takes a unit out of the locker for good; refused while it is booked from now on.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class LockerRemove implements Callable<Integer> {
    @Parameters(paramLabel = "UNIT", description = "Its id, tag, serial number or label.")
    private String unit;

    @Mixin
    private LockerAt at;

    @Override
    public Integer call() {
        return at.with(locker -> {
            Unit gone = UnitNamed.of(locker, unit);
            at.change(locker, changes -> {
                changes.remove(gone.id(), null);
                return "Removed " + gone.id() + ", " + gone.label() + ". Its history stays.";
            });
            return 0;
        });
    }
}
