package pairwright.cli;

import java.time.YearMonth;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pairwright.http.LockerView;
import pairwright.locker.Use;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A month of use. */
@Command(
        name = "use",
        description = "Shows for each type how many were taken on each day of a month.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright locker use --month 2027-03"})
final class LockerUse implements Callable<Integer> {
    @Option(names = "--month", paramLabel = "MONTH", description = "Such as 2027-03. This month unless said.")
    private String month;

    @Mixin
    private Printed printed;

    @Mixin
    private LockerAt at;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        YearMonth wanted = month();
        return at.with(locker -> {
            Use use = locker.use(wanted, ZoneId.systemDefault());
            String days = IntStream.rangeClosed(1, wanted.lengthOfMonth()).mapToObj(day -> Integer.toString(day % 10)).collect(Collectors.joining());
            return printed.table(LockerView.MonthOfUse.of(use), List.of(wanted.toString(), "units", days),
                    use.types().stream().map(type -> List.of(type.micType(), Integer.toString(type.units()),
                            type.taken().stream().map(LockerUse::mark).collect(Collectors.joining()))).toList(), "There is no microphone in the locker.");
        });
    }

    private YearMonth month() {
        try {
            return month == null ? YearMonth.now() : YearMonth.parse(month.strip());
        } catch (DateTimeParseException none) {
            throw new ParameterException(spec.commandLine(), "\"" + month + "\" is no month. Write it like 2027-03");
        }
    }

    /** One character a day, so that a month fits a line. */
    private static String mark(int taken) {
        return taken == 0 ? "." : taken > 9 ? "+" : Integer.toString(taken);
    }
}
