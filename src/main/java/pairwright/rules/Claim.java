package pairwright.rules;

import java.util.List;
import java.util.Map;

/**
 * What the rules find, as somebody says it who has thought of it and measured nothing: for whoever has to choose among reasons.
 *
 * @param words what stands for a name in braces; a name that is not there is nothing this case has
 */
public record Claim(Map<String, String> words) {
    /** The names that may stand in braces. */
    static final List<String> WORDS = List.of("source", "neighbour", "wanted", "room", "stage", "wind");

    public Claim {
        words = Map.copyOf(words);
    }

    /** Whether a rule speaks of nothing but what this case has. */
    public boolean suits(RuleInfo rule) {
        return rule.claim() != null && words.keySet().containsAll(Sentence.placeholders(rule.claim()));
    }

    /** The sentence; the title of the rule where it has none, or speaks of something this case does not have. */
    public String says(RuleInfo rule) {
        return suits(rule) ? Sentence.filled(rule.claim(), words::get) : rule.title();
    }
}
