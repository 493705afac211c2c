package pairwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import pairwright.lab.Handing;
import pairwright.lab.LabDesk;
import pairwright.locker.ExerciseSet;
import pairwright.locker.LockerFault;
import pairwright.locker.Role;
import pairwright.locker.UnitTable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The answers of a class. */
@Command(
        name = "mark",
        description = {"Marks the answers of a class from a CSV file and keeps them: one row an item, in the columns bench, item and answer. Several options of one item stand in one cell, blanks between.",
            "The first line names the columns: bench,item,answer. A row is such as 1,mic,long-ribbon.",
            "One fault, and nothing is kept."},
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright lab mark ID answers.csv --checks"})
final class LabMark implements Callable<Integer> {
    @Parameters(index = "1", paramLabel = "FILE", description = "CSV in UTF-8.")
    private Path file;

    @Option(names = "--checks", description = "Print everything that was looked at, with its reason.")
    private boolean checks;

    @Mixin
    private LabSet exercises;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        String text;
        try {
            text = UnitTable.text(Files.readAllBytes(file));
        } catch (IOException unreadable) {
            throw new LockerFault.NotThere("The file " + file + " cannot be read. Name one that is there");
        }
        return exercises.locker().with(locker -> {
            LabDesk desk = new LabDesk(locker, exercises.locker()::knowledge);
            ExerciseSet set = desk.set(exercises.id());
            List<Handing> handings = new ArrayList<>(desk.handings(set, desk.answers(set, text), Role.INSTRUCTOR));
            exercises.locker().change(locker, changes -> {
                handings.forEach(handing -> desk.handIn(changes, handing));
                return "Marked " + handings.size() + (handings.size() == 1 ? " bench." : " benches.");
            });
            PrintWriter out = spec.commandLine().getOut();
            handings.forEach(handing -> LabText.mark(out, handing.bench(), handing.mark(), checks));
            return 0;
        });
    }
}
