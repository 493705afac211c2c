package pairwright.cli;

import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import pairwright.locker.Token;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Who may come in. */
@Command(
        name = "list",
        description = "Lists whose tokens there are; the tokens themselves nobody can see.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class TokenList implements Callable<Integer> {
    @Mixin
    private Printed printed;

    @Mixin
    private LockerAt at;

    @Override
    public Integer call() {
        return at.with(locker -> {
            List<Token> tokens = locker.tokens().all();
            return printed.table(Map.of("tokens", tokens), List.of("name", "role", "since"),
                    tokens.stream().map(token -> List.of(token.name(), token.role().id(), MomentText.shown(token.since()))).toList(),
                    "There is no token. Make one with: pairwright token add NAME --role reader");
        });
    }
}
