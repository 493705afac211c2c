package pairwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import pairwright.locker.TableFault;
import pairwright.locker.TablePreview;
import pairwright.locker.UnitTable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Many units at once. */
@Command(
        name = "import",
        description = "Brings units in from a CSV file, all of them or none; units the file does not name stay as they are.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright locker import units.csv --preview"})
final class LockerImport implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "CSV in UTF-8, as export writes it.")
    private Path file;

    @Option(names = "--preview", description = "Only say what it would do, and every fault with its line.")
    private boolean preview;

    @Mixin
    private LockerAt at;

    @Override
    public Integer call() {
        String text;
        try {
            text = UnitTable.text(Files.readAllBytes(file));
        } catch (IOException unreadable) {
            throw new LockerFault.NotThere("The file " + file + " cannot be read. Name one that is there");
        }
        return at.made(locker -> in(locker, text));
    }

    private int in(Locker locker, String text) {
        TablePreview seen = UnitTable.preview(text, locker.units(), at.catalogue());
        if (!seen.usable()) {
            PrintWriter err = spec.commandLine().getErr();
            seen.faults().stream().map(TableFault::sentence).forEach(fault -> err.println("pairwright: " + AnswerText.harmless(fault)));
            err.println("pairwright: " + (seen.more() > 0 ? seen.more() + " more faults are not listed. " : "") + "Nothing was brought in. Mend the file and try again");
            return Main.UNUSABLE;
        }
        if (preview) {
            seen.rows().stream().filter(row -> row.effect() != TablePreview.Effect.SAME).forEach(row -> at.say("line " + row.line() + ": " + row.effect().id() + " " + what(row)));
            at.say("It would bring in: " + seen.sum() + ".");
            return 0;
        }
        at.change(locker, changes -> "Brought in: " + UnitTable.importInto(changes, text, at.catalogue()).sum() + ".");
        return 0;
    }

    private static String what(TablePreview.Row row) {
        StringBuilder says = new StringBuilder(row.unit().id() == null ? String.valueOf(row.unit().label()) : row.unit().id());
        row.changes().forEach(change -> says.append("; ").append(change.column()).append(" \"").append(change.from()).append("\" becomes \"").append(change.to()).append('"'));
        return says.toString();
    }
}
