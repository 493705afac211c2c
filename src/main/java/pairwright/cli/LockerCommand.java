package pairwright.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The locker. */
@Command(
        name = "locker",
        description = "What there is, who has it and when, and what is free.",
        subcommands = {LockerList.class, LockerShow.class, LockerAdd.class, LockerChange.class, LockerRemove.class, LockerFree.class,
            LockerBook.class, LockerBookings.class, LockerCancel.class, LockerOut.class, LockerIn.class, LockerHistory.class, LockerUse.class,
            LockerCoverage.class, LockerImport.class, LockerExport.class, LockerCalendar.class},
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class LockerCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to do: list, show, add, change, remove, free, book, bookings, cancel, out, in, history, use, coverage, import, export or calendar");
    }
}
