package pairwright.rules;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The rule base in use. A broken house folder never replaces a good base. */
public final class RuleBases {
    private final Path house;
    private volatile RuleBase current = RuleBase.builtIn();
    private volatile List<Problem> problems = List.of();

    /**
     * Starts with the built-in rules alone, which is quick; {@link #reload} adds those of the house.
     *
     * @param house a folder of .drl files in package house; may be missing, null for none
     */
    public RuleBases(Path house) {
        this.house = house;
    }

    /** The rules of this moment. */
    public RuleBase current() {
        return current;
    }

    /** What is wrong with the house folder as it is now; empty for nothing. */
    public List<Problem> problems() {
        return problems;
    }

    /**
     * Reads the house folder.
     *
     * @return whether what is there is now in use
     */
    public synchronized boolean reload() {
        List<Problem> found = List.of();
        try {
            if (house == null || !Files.isDirectory(house)) {
                current = RuleBase.builtIn();
            } else {
                found = use(RuleFolder.read(house));
            }
        } catch (IOException unreadable) {
            found = List.of(new Problem(house.toString(), -1, null, "cannot be read: " + unreadable.getMessage()));
        } catch (RuntimeException | LinkageError broken) {
            found = List.of(new Problem(house.toString(), -1, null, "cannot be used: " + broken.getMessage()));
        }
        problems = found;
        return found.isEmpty();
    }

    private List<Problem> use(RuleFolder folder) {
        if (folder.drl().isEmpty()) {
            current = RuleBase.builtIn();
            return List.of();
        }
        RuleCompiler.Result compiled = RuleCompiler.house().compile(folder.drl(), folder.cases());
        if (compiled.problems().isEmpty()) {
            current = RuleBase.withHouse(compiled, folder.version());
        }
        return compiled.problems();
    }
}
