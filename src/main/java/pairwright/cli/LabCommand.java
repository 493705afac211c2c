package pairwright.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Exercises. */
@Command(
        name = "lab",
        description = "Exercises for a class: made of what is free, handed out, marked and summed up.",
        subcommands = {LabKinds.class, LabMake.class, LabList.class, LabShow.class, LabKey.class, LabMark.class, LabMarks.class, LabSummary.class},
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class LabCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to do: kinds, make, list, show, key, mark, marks or summary");
    }
}
