package pairwright.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program. */
@Command(
        name = "pairwright",
        description = "Which microphones to put on which source, and why.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {Ask.class, NumberCommand.class, Serve.class, Check.class},
        footer = {"", "Try: pairwright ask \"brushed snare, quiet jazz trio, small room\""})
public final class Main implements Runnable {
    static final int UNUSABLE = 2;

    @Spec
    private CommandSpec spec;

    /** Runs a command and ends with its exit code. */
    public static void main(String[] arguments) {
        System.exit(commandLine().execute(arguments));
    }

    static CommandLine commandLine() {
        return new CommandLine(new Main())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler((fault, arguments) -> {
                    fault.getCommandLine().getErr().println("pairwright: " + AnswerText.harmless(fault.getMessage()));
                    fault.getCommandLine().getErr().println("Try: " + fault.getCommandLine().getCommandSpec().qualifiedName() + " --help");
                    return UNUSABLE;
                })
                .setExecutionExceptionHandler((fault, line, parsed) -> {
                    line.getErr().println("pairwright: " + (fault.getMessage() == null ? "something went wrong here ("
                            + fault.getClass().getSimpleName() + "). Please report it with what you asked" : fault.getMessage()));
                    return 1;
                });
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to do: ask, number, serve or check");
    }
}
