package pairwright.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.Callable;
import pairwright.locker.CalendarFeed;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Bookings for a calendar program. */
@Command(
        name = "calendar",
        description = "Writes the bookings as a calendar file (iCalendar), from 90 days back to two years ahead.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright locker calendar bookings.ics"})
final class LockerCalendar implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", arity = "0..1", description = "Where to; to standard output unless said.")
    private Path file;

    @Option(names = "--unit", paramLabel = "UNIT", description = "Only of this unit.")
    private String unit;

    @Mixin
    private LockerAt at;

    @Override
    public Integer call() {
        return at.with(locker -> {
            Instant now = Instant.now();
            at.write(file, unit == null ? CalendarFeed.ofLocker(locker, now) : CalendarFeed.ofUnit(locker, UnitNamed.of(locker, unit), now), "The bookings are in ");
            return 0;
        });
    }
}
