package pairwright.rules;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/**
 * The rules that ship with the program, alone or with those of a house. Nothing of a house folder is kept here: whoever asks decides
 * whether it comes into use.
 */
public final class RuleBases {
    /** The concern of every rule of a house. */
    public static final String HOUSE = HousePolicy.PACKAGE;

    private final RuleBase builtIn = RuleBase.builtIn();

    /**
     * What was made of a house folder.
     *
     * @param rules both together; null where there is a problem
     * @param problems everything that is wrong
     */
    public record Result(RuleBase rules, List<Problem> problems) {
        private static Result failed(List<Problem> problems) {
            return new Result(null, List.copyOf(problems));
        }
    }

    /** The rules that ship with the program. */
    public RuleBase builtIn() {
        return builtIn;
    }

    /**
     * The built-in rules with those of a house beside them.
     *
     * @param house a folder of .drl files in package house; may be missing
     * @param stopped is told of house rules that fail when they are asked; then they should not be asked any more
     */
    public Result with(Path house, Consumer<HouseRuleStopped> stopped) {
        try {
            return Files.isDirectory(house) ? with(RuleFolder.read(house), stopped) : new Result(builtIn, List.of());
        } catch (IOException | UncheckedIOException unreadable) {
            return failed(house, "cannot be read: " + unreadable.getMessage() + ". Make every file in it a readable text in UTF-8");
        } catch (RuntimeException | LinkageError broken) {
            return failed(house, "cannot be used: " + broken.getMessage() + ". Take out the rule that was written last");
        }
    }

    private Result with(RuleFolder folder, Consumer<HouseRuleStopped> stopped) {
        if (folder.drl().isEmpty()) {
            return new Result(builtIn, List.of());
        }
        RuleCompiler.Result compiled = RuleCompiler.house().compile(folder.drl(), folder.cases());
        return compiled.problems().isEmpty()
                ? new Result(builtIn.with(compiled, folder.version(), HouseRules.Most.USUAL, stopped), List.of())
                : Result.failed(compiled.problems());
    }

    private static Result failed(Path house, String what) {
        return Result.failed(List.of(new Problem(house.toString(), -1, null, what)));
    }
}
