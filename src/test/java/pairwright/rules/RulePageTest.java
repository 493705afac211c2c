package pairwright.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pairwright.model.Effect;

/** docs/rules.md is made from the rules, by this test. */
class RulePageTest {
    private static final Path PAGE = Path.of("docs/rules.md");

    @Test
    void thePageOfRulesIsUpToDate() throws IOException {
        String page = page(RuleBase.builtIn().rules());
        if (Boolean.getBoolean("rewrite")) {
            Files.writeString(PAGE, page);
        }
        assertEquals(page, Files.exists(PAGE) ? Files.readString(PAGE) : "",
                "docs/rules.md is out of date. Rewrite it with: mvn -q test -Dtest=RulePageTest -Drewrite=true");
    }

    private static String page(List<RuleInfo> rules) {
        StringBuilder page = new StringBuilder("""
                # The rules

                Made from `rules/`; do not edit. A rule reads numbers that were computed before and says one thing of them: for or against a
                placement, a pair or a plan (with points), that it is ruled out, or what to take care of (note, care, danger). Names in braces are
                filled in for each answer. Below each rule: why, what it rests on, and when it fires and when not.

                """);
        Set<String> concerns = new LinkedHashSet<>();
        rules.stream().map(RuleInfo::concern).sorted().forEach(concerns::add);
        for (String concern : concerns) {
            page.append("- [").append(concern).append("](#").append(concern).append(")\n");
        }
        for (String concern : concerns) {
            page.append("\n## ").append(concern).append('\n');
            rules.stream().filter(rule -> rule.concern().equals(concern)).forEach(rule -> add(page, rule));
        }
        return page.toString();
    }

    private static void add(StringBuilder page, RuleInfo rule) {
        page.append("\n### ").append(rule.id()).append(' ').append(rule.title()).append("\n\n");
        page.append("*").append(kind(rule)).append(", `rules/").append(rule.concern()).append('/').append(rule.topic())
                .append(".drl`*\n\n> ").append(rule.says()).append("\n\n");
        page.append(rule.why()).append(" Basis (").append(rule.on().id()).append("): ").append(rule.basis()).append(".\n\n");
        if (!rule.practice().isEmpty()) {
            page.append("Practice: ").append(String.join(" ", rule.practice().stream().map(RuleInfo.Practice::says).toList())).append("\n\n");
        }
        rule.cases().forEach(one -> page.append("- ").append(one.fires() ? "fires: " : "silent: ").append(one.says()).append('\n'));
    }

    private static String kind(RuleInfo rule) {
        return switch (rule.effect()) {
            case FOR, AGAINST -> rule.effect().id() + ", " + (rule.effect() == Effect.FOR ? "+" : "")
                    + String.valueOf(rule.points()).replaceFirst("\\.0$", "") + " points";
            case RULES_OUT -> "rules out";
            case CAUTION -> "caution: " + rule.severity().id();
        };
    }
}
