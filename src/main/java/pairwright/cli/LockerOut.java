package pairwright.cli;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import pairwright.http.LockerView;
import pairwright.locker.Booking;
import pairwright.locker.Locker;
import pairwright.locker.Out;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Units that leave their place. */
@Command(
        name = "out",
        description = "A unit leaves its place. Without one: what is out, overdue first.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright locker out 0117 --by Wren --until 18:00"})
final class LockerOut implements Callable<Integer> {
    @Parameters(paramLabel = "TAG", arity = "0..1", description = "What is scanned or typed: tag, serial number, label or id.")
    private String tag;

    @Option(names = "--by", paramLabel = "NAME", description = "Who takes it. Whoever booked it unless said.")
    private String by;

    @Option(names = "--until", paramLabel = "TIME", description = "When it comes back, where no booking says so: 2027-03-01T18:00, 2027-03-01 or 18:00 for today.")
    private String until;

    @Mixin
    private Printed printed;

    @Mixin
    private LockerAt at;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (tag == null) {
            return at.with(this::list);
        }
        Instant back = back();
        return at.with(locker -> {
            at.change(locker, changes -> {
                Booking booking = changes.takeOut(tag, by, back);
                return tag + " is out under booking " + booking.id() + (booking.forWhat().isEmpty() ? "" : ", " + booking.forWhat()) + ", until "
                        + MomentText.shown(booking.span().until()) + ".";
            });
            return 0;
        });
    }

    private Instant back() {
        return until == null ? null : Times.read(spec, new MomentText(Clock.systemDefaultZone()), "--until", until, true);
    }

    private int list(Locker locker) {
        List<Out> out = locker.out();
        return printed.table(LockerView.OutNow.of(Instant.now(), out), List.of("unit", "label", "who has it", "for", "back by", ""),
                out.stream().map(one -> List.of(one.unit().id(), one.unit().label(), one.line().takenBy() == null ? one.booking().by() : one.line().takenBy(),
                        one.booking().forWhat(), MomentText.shown(one.line().span().until()), one.overdue() ? "OVERDUE" : "")).toList(),
                "Nothing is out.");
    }
}
