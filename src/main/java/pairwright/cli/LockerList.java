package pairwright.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.advice.AtHand;
import pairwright.http.LockerView;
import pairwright.locker.Locker;
import pairwright.locker.Span;
import pairwright.locker.Standing;
import pairwright.locker.Unit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The units there are. */
@Command(
        name = "list",
        description = "Lists the units, and how each stands for a time if you name one.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright locker list ribbon --from 2027-03-01T10:00 --until 2027-03-01T18:00"})
final class LockerList implements Callable<Integer> {
    @Parameters(paramLabel = "WORDS", arity = "0..*", description = "Only those in whose id, label, type, tag or place every word is.")
    private List<String> words = List.of();

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
        return at.with(locker -> {
            locker.checkType(type);
            return times.said() ? then(locker) : all(locker);
        });
    }

    private int all(Locker locker) {
        List<Unit> units = locker.units().stream().filter(this::wanted).toList();
        return printed.table(new LockerView.Units(null, null, units, null), List.of("id", "label", "what", "condition", "stored at"),
                units.stream().map(unit -> Arrays.asList(unit.id(), unit.label(), UnitText.what(unit), unit.condition().id(), unit.storedAt())).toList(), none());
    }

    private int then(Locker locker) {
        Span span = times.span(AtHand.USUAL_LENGTH);
        List<Standing> standing = locker.standing(span).stream().filter(one -> wanted(one.unit())).toList();
        return printed.table(
                new LockerView.Units(LockerView.shown(span.from()), LockerView.shown(span.until()), standing.stream().map(Standing::unit).toList(),
                        standing.stream().map(LockerView.Stands::of).toList()),
                List.of("id", "label", "what", "then"),
                standing.stream().map(one -> List.of(one.unit().id(), one.unit().label(), UnitText.what(one.unit()), UnitText.then(one))).toList(), none());
    }

    private String none() {
        return words.isEmpty() && type == null ? "The locker is empty. Add a unit with: pairwright locker add" : "No unit is like that. Leave some of it out";
    }

    private boolean wanted(Unit unit) {
        String said = Stream.of(unit.id(), unit.label(), UnitText.what(unit), unit.tag(), unit.serial(), unit.storedAt(), unit.note()).filter(Objects::nonNull)
                .collect(Collectors.joining(" ")).toLowerCase(Locale.ROOT);
        return (type == null || type.equals(unit.micType())) && words.stream().allMatch(word -> said.contains(word.toLowerCase(Locale.ROOT)));
    }
}
