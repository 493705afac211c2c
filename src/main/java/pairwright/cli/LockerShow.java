package pairwright.cli;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import pairwright.locker.Booking;
import pairwright.locker.Span;
import pairwright.locker.Standing;
import pairwright.locker.Unit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** One unit. */
@Command(
        name = "show",
        description = "Shows all that is known of a unit, how it stands now, and its bookings of the next 30 days.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class LockerShow implements Callable<Integer> {
    @Parameters(paramLabel = "UNIT", description = "Its id, tag, serial number or label.")
    private String unit;

    @Mixin
    private LockerAt at;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        return at.with(locker -> {
            Unit found = UnitNamed.of(locker, unit);
            Instant now = Instant.now();
            Standing standing = locker.standing(new Span(now, now.plusSeconds(1))).stream().filter(one -> one.unit().id().equals(found.id())).findFirst().orElseThrow();
            spec.commandLine().getOut().print(UnitText.all(found, UnitText.then(standing)));
            List<Booking> bookings = locker.bookings(new Span(now, now.plus(Duration.ofDays(30))), found.id());
            spec.commandLine().getOut().print(bookings.isEmpty() ? "No booking in the next 30 days.\n" : BookingText.table(bookings));
            return 0;
        });
    }
}
