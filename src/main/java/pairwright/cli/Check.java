package pairwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import pairwright.advice.KnowledgeStore;
import pairwright.catalogue.CatalogueCheck;
import pairwright.rules.RuleCheck;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Faults of a catalogue or a house folder, all at once. */
@Command(
        name = "check",
        description = "Checks the catalogue and rules of a folder and prints every fault with its place and a remedy.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class Check implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "DIR", arity = "0..1", defaultValue = ".",
            description = "A folder with catalogue/ and rules/, or a house folder with parts of them. Usually the current one.")
    private Path folder;

    @Override
    public Integer call() {
        var out = spec.commandLine().getOut();
        Path entries = folder.resolve("catalogue");
        Path rules = folder.resolve("rules");
        if (!Files.isDirectory(entries) && !Files.isDirectory(rules)) {
            spec.commandLine().getErr().println("pairwright: there is no catalogue/ and no rules/ in " + folder.toAbsolutePath().normalize()
                    + ". Name the folder that holds them");
            return Main.UNUSABLE;
        }
        List<String> faults = Files.isDirectory(entries.resolve("schema")) ? ofTheProgram(entries, rules) : KnowledgeStore.withHouse(folder).faults();
        faults.forEach(out::println);
        out.println(faults.isEmpty() ? "No fault found." : faults.size() + (faults.size() == 1 ? " fault found." : " faults found."));
        out.flush();
        return faults.isEmpty() ? 0 : 1;
    }

    /** What the program is built from stands alone; a house folder is checked by laying it over what is built in, as it will be used. */
    private static List<String> ofTheProgram(Path entries, Path rules) {
        List<String> faults = new ArrayList<>();
        CatalogueCheck.faults(entries).forEach(fault -> faults.add(fault.toString()));
        if (Files.isDirectory(rules)) {
            RuleCheck.faults(rules).forEach(fault -> faults.add(fault.toString()));
        }
        return faults;
    }
}
