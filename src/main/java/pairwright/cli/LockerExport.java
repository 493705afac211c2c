package pairwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import pairwright.locker.UnitTable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Every unit as a table. */
@Command(
        name = "export",
        description = "Writes every unit as CSV, from which import makes the same units again.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright locker export units.csv"})
final class LockerExport implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", arity = "0..1", description = "Where to; to standard output unless said.")
    private Path file;

    @Option(names = "--decimal-comma", description = "For a spreadsheet that writes decimals with a comma.")
    private boolean decimalComma;

    @Mixin
    private LockerAt at;

    @Override
    public Integer call() {
        return at.with(locker -> {
            var units = locker.units();
            at.write(file, decimalComma ? UnitTable.writeWithDecimalComma(units) : UnitTable.write(units), units.size() + " units are in ");
            return 0;
        });
    }
}
