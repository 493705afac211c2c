package pairwright.cli;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.Callable;
import pairwright.http.LockerView;
import pairwright.locker.Booking;
import pairwright.locker.Span;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What is booked. */
@Command(
        name = "bookings",
        description = "Lists the bookings of a time; of the next 30 days unless you name one.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class LockerBookings implements Callable<Integer> {
    @Option(names = "--unit", paramLabel = "UNIT", description = "Only of this unit.")
    private String unit;

    @Mixin
    private Times times;

    @Mixin
    private Printed printed;

    @Mixin
    private LockerAt at;

    @Override
    public Integer call() {
        Span span = times.span(Duration.ofDays(30));
        return at.with(locker -> {
            List<Booking> bookings = locker.bookings(span, unit == null ? null : UnitNamed.of(locker, unit).id());
            return printed.print(LockerView.Bookings.of(span, bookings, false), bookings.isEmpty()
                    ? "Nothing is booked from " + MomentText.shown(span.from()) + " until " + MomentText.shown(span.until()) + ".\n" : BookingText.table(bookings));
        });
    }
}
