package pairwright.rules;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Looks a folder of rules through, without using them. */
public final class RuleCheck {
    private RuleCheck() {
    }

    /** Everything that is wrong with the rules of a folder: those of the program, or those of a house. */
    public static List<Problem> faults(Path folder) {
        RuleFolder all;
        try {
            all = RuleFolder.read(folder);
        } catch (IOException unreadable) {
            return List.of(new Problem(folder.toString(), -1, null, "cannot be read: " + unreadable.getMessage()));
        }
        Map<String, String> builtIn = new TreeMap<>();
        Map<String, String> house = new TreeMap<>();
        all.drl().forEach((file, text) -> (text.stripLeading().startsWith("package rules.") ? builtIn : house).put(file, text));
        List<Problem> found = new ArrayList<>();
        if (!builtIn.isEmpty()) {
            found.addAll(RuleCompiler.builtIn().compile(builtIn, all.cases(), all.statements()).problems());
        }
        if (!house.isEmpty()) {
            found.addAll(RuleCompiler.house().compile(house, all.cases()).problems());
        }
        return List.copyOf(found);
    }
}
