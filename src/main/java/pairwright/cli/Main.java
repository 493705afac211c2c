package pairwright.cli;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import pairwright.locker.BookingKind;
import pairwright.locker.Condition;
import pairwright.locker.LockerFault;
import pairwright.locker.PhantomSwitch;
import pairwright.locker.Role;
import pairwright.locker.UnitKind;
import pairwright.model.Fault;
import pairwright.model.FromLocker;
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
        footer = {"", "Try: pairwright ask \"brushed snare, quiet jazz trio, small room\""})
public final class Main implements Runnable {
    static final int UNUSABLE = 2;
    private static final List<Class<?>> COMMANDS = List.of(Ask.class, PlanCommand.class, ReplanCommand.class, LockerCommand.class, LabCommand.class, ListenCommand.class,
            NumberCommand.class, Serve.class, TokenCommand.class, BackupCommand.class, RestoreCommand.class, Demo.class, Buy.class, Check.class);
    private static final Pattern FIELD_LEFT_OUT = Pattern.compile("(is|are|has|holds|must|may|cannot|needs|names) ");

    @Spec
    private CommandSpec spec;

    /** Runs a command and ends with its exit code. */
    public static void main(String[] arguments) {
        System.exit(commandLine(arguments).execute(arguments));
    }

    /** All there is. */
    static CommandLine commandLine() {
        return with(COMMANDS);
    }

    /** What these arguments need: to read what every command takes costs more than some commands do, so where one is named only that is read. */
    static CommandLine commandLine(String... arguments) {
        List<Class<?>> named = arguments.length == 0 ? List.of() : COMMANDS.stream().filter(command -> nameOf(command).equals(arguments[0])).toList();
        return with(named.isEmpty() ? COMMANDS : named);
    }

    private static String nameOf(Class<?> command) {
        return command.getAnnotation(Command.class).name();
    }

    private static CommandLine with(List<Class<?>> commands) {
        CommandLine program = new CommandLine(new Main());
        commands.forEach(program::addSubcommand);
        return program.setCaseInsensitiveEnumValuesAllowed(true)
                .registerConverter(Role.class, new WordOf<>(Role.values()))
                .registerConverter(Condition.class, new WordOf<>(Condition.values()))
                .registerConverter(UnitKind.class, new WordOf<>(UnitKind.values()))
                .registerConverter(BookingKind.class, new WordOf<>(BookingKind.values()))
                .registerConverter(PhantomSwitch.class, new WordOf<>(PhantomSwitch.values()))
                .registerConverter(FromLocker.class, new WordOf<>(FromLocker.values()))
                .setParameterExceptionHandler((fault, arguments) -> {
                    fault.getCommandLine().getErr().println("pairwright: " + AnswerText.harmless(fault.getMessage()));
                    fault.getCommandLine().getErr().println("Try: " + fault.getCommandLine().getCommandSpec().qualifiedName() + " --help");
                    return UNUSABLE;
                })
                .setExecutionExceptionHandler((fault, line, parsed) -> {
                    if (fault instanceof LockerFault refused) {
                        return refused(line, refused);
                    }
                    line.getErr().println("pairwright: " + (fault.getMessage() == null ? "something went wrong here ("
                            + fault.getClass().getSimpleName() + "). Please report it with what you asked" : fault.getMessage()));
                    return 1;
                });
    }

    /** What was said wrong ends like any other fault of a command line; what cannot be just now ends with 1. */
    private static int refused(CommandLine line, LockerFault fault) {
        List<String> says = fault instanceof LockerFault.Unusable unusable && !unusable.faults().isEmpty()
                ? unusable.faults().stream().map(Main::sentence).toList() : List.of(fault.getMessage());
        says.forEach(one -> line.getErr().println("pairwright: " + AnswerText.harmless(one)));
        return fault instanceof LockerFault.Unusable ? UNUSABLE : 1;
    }

    /** Some faults say only what is wrong with the field they point at. */
    private static String sentence(Fault fault) {
        return FIELD_LEFT_OUT.matcher(fault.says()).lookingAt() ? fault.at().replaceFirst(".*/", "") + " " + fault.says() : fault.says();
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to do: " + COMMANDS.stream().limit(COMMANDS.size() - 1).map(Main::nameOf).collect(Collectors.joining(", "))
                + " or " + nameOf(COMMANDS.get(COMMANDS.size() - 1)));
    }
}
