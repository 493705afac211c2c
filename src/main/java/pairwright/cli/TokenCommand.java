package pairwright.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Who may come in. */
@Command(
        name = "token",
        description = "Tokens, by which a server that others can reach knows who comes.",
        subcommands = {TokenAdd.class, TokenList.class, TokenRevoke.class},
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class TokenCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to do: add, list or revoke");
    }
}
