package pairwright.cli;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import pairwright.advice.AtHand;
import pairwright.http.LockerView;
import pairwright.locker.Span;
import pairwright.locker.Unit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What can be had. */
@Command(
        name = "free",
        description = "Lists the units that can be had for all of a time.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright locker free --from 2027-03-01T10:00 --until 2027-03-01T18:00"})
final class LockerFree implements Callable<Integer> {
    @Option(names = "--type", paramLabel = "TYPE", description = "Only of this mic type, by its id.")
    private String type;

    @Mixin
    private Times times;

    @Mixin
    private Printed printed;

    @Mixin
    private LockerAt at;

    @Override
    public Integer call() {
        Span span = times.span(AtHand.USUAL_LENGTH);
        return at.with(locker -> {
            locker.checkType(type);
            List<Unit> units = locker.free(span, type);
            return printed.table(LockerView.Free.of(span, units), List.of("id", "label", "what", "stored at", "note"),
                    units.stream().map(unit -> Arrays.asList(unit.id(), unit.label(), UnitText.what(unit), unit.storedAt(), UnitText.oneLine(unit.note()))).toList(),
                    "Nothing is free from " + MomentText.shown(span.from()) + " until " + MomentText.shown(span.until()) + ". What is in the way: pairwright locker bookings");
        });
    }
}
