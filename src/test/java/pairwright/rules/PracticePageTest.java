package pairwright.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What the trade does, and where it is kept: rules/practice.yaml against the rules, and docs/practice.md made from both. */
class PracticePageTest {
    private static final Path PAGE = Path.of("docs/practice.md");
    private static final RuleBase RULES = RuleBase.builtIn();
    private static final Set<String> FIELDS = Set.of("id", "topic", "says", "why", "confidence", "keptBy", "notARule");

    private static List<JsonNode> statements() throws IOException {
        List<JsonNode> statements = new ArrayList<>();
        Situation.YAML.readTree(Path.of("rules", RuleFolder.PRACTICE).toFile()).forEach(statements::add);
        return statements;
    }

    /** Rules by the statement they embody. */
    private static Map<String, List<RuleInfo>> embodied() {
        Map<String, List<RuleInfo>> embodied = new TreeMap<>();
        RULES.rules().forEach(rule -> rule.practice().forEach(one -> embodied.computeIfAbsent(one.id(), any -> new ArrayList<>()).add(rule)));
        return embodied;
    }

    @Test
    void everyStatementIsARuleOrIsKeptElsewhereOrSaysWhyNotAndNeverTwoOfThem() throws IOException {
        Map<String, List<RuleInfo>> embodied = embodied();
        List<String> wrong = new ArrayList<>();
        for (JsonNode statement : statements()) {
            String id = statement.path("id").asText();
            List<String> kept = new ArrayList<>();
            embodied.getOrDefault(id, List.of()).forEach(rule -> kept.add(rule.id()));
            if ((kept.isEmpty() ? 0 : 1) + (statement.has("keptBy") ? 1 : 0) + (statement.has("notARule") ? 1 : 0) != 1) {
                wrong.add(id + ": rules " + kept + ", keptBy " + statement.path("keptBy").asText("-") + ", notARule "
                        + statement.path("notARule").asText("-"));
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void everyStatementIsCompleteAndStandsOnce() throws IOException {
        List<String> wrong = new ArrayList<>();
        Set<String> ids = new TreeSet<>();
        Set<String> sentences = new TreeSet<>();
        for (JsonNode statement : statements()) {
            String id = statement.path("id").asText();
            Set<String> unknown = new TreeSet<>();
            statement.fieldNames().forEachRemaining(field -> {
                if (!FIELDS.contains(field) || statement.path(field).asText().isBlank()) {
                    unknown.add(field);
                }
            });
            boolean complete = id.matches("[a-z0-9]+(-[a-z0-9]+)*") && statement.has("topic") && statement.has("says") && statement.has("why")
                    && Set.of("high", "medium", "low").contains(statement.path("confidence").asText());
            if (!complete || !unknown.isEmpty() || !ids.add(id) || !sentences.add(statement.path("says").asText())) {
                wrong.add(id + " " + unknown);
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(ids.size() >= 100, ids.size() + " statements");
    }

    /** A rule takes the sentence from a plain reading of the file; this holds it against a YAML parser. */
    @Test
    void aRuleBringsTheStatementAsItIsWritten() throws IOException {
        Map<String, String> written = new TreeMap<>();
        statements().forEach(statement -> written.put(statement.path("id").asText(), statement.path("says").asText()));
        assertEquals(written, RuleFolder.read(Path.of("rules")).statements());
        RULES.rules().forEach(rule -> rule.practice().forEach(one -> assertEquals(written.get(one.id()), one.says(), rule.id())));
    }

    @Test
    void aRuleThatNamesAStatementNobodyWroteIsAFaultWithItsLine() throws IOException {
        String text = Files.readString(Path.of("rules/level/preamp.drl")).replaceFirst("@practice\\(\"[^\"]*\"\\)", "@practice(\"made-up\")");
        List<Problem> problems = RuleCompiler.builtIn().compile(Map.of("preamp.drl", text), Map.of(), Map.of("known", "Known.")).problems();
        assertEquals(1, problems.size());
        assertTrue(problems.get(0).toString().matches("preamp.drl:\\d+(:\\d+)?: rule \"LVL-021\": there is no statement \"made-up\" in practice.yaml.*"),
                problems.toString());
    }

    @Test
    void noRuleReadsThePriceOfAType() throws IOException {
        for (Map.Entry<String, String> file : RuleFolder.read(Path.of("rules")).drl().entrySet()) {
            assertTrue(!file.getValue().contains("tier"), file.getKey());
        }
    }

    @Test
    void thePageOfPracticeIsUpToDate() throws IOException {
        String page = page();
        if (Boolean.getBoolean("rewrite")) {
            Files.writeString(PAGE, page);
        }
        assertEquals(page, Files.exists(PAGE) ? Files.readString(PAGE) : "",
                "docs/practice.md is out of date. Rewrite it with: mvn -q test -Dtest=PracticePageTest -Drewrite=true");
    }

    private static String page() throws IOException {
        List<JsonNode> statements = statements();
        Map<String, List<RuleInfo>> embodied = embodied();
        long byRules = statements.stream().filter(one -> embodied.containsKey(one.path("id").asText())).count();
        long elsewhere = statements.stream().filter(one -> one.has("keptBy")).count();
        StringBuilder page = new StringBuilder("""
                # What the trade does, and where it is kept

                Made from `rules/practice.yaml` and the rules; do not edit. %d statements of general trade practice: %d are rules, %d are kept by
                the catalogue or by how numbers are made, and %d cannot be decided from a question, an option or a pair, with the reason.

                """.formatted(statements.size(), byRules, elsewhere, statements.size() - byRules - elsewhere));
        Map<String, List<JsonNode>> topics = new LinkedHashMap<>();
        statements.forEach(one -> topics.computeIfAbsent(one.path("topic").asText(), any -> new ArrayList<>()).add(one));
        topics.keySet().forEach(topic -> page.append("- [").append(topic).append("](#").append(anchor(topic)).append(")\n"));
        topics.forEach((topic, of) -> {
            page.append("\n## ").append(topic).append("\n\n| statement | why | where |\n|---|---|---|\n");
            of.forEach(one -> page.append("| `").append(one.path("id").asText()).append("` ").append(one.path("says").asText())
                    .append(one.path("confidence").asText().equals("high") ? "" : " *(" + one.path("confidence").asText() + ")*")
                    .append(" | ").append(one.path("why").asText()).append(" | ").append(where(one, embodied)).append(" |\n"));
        });
        return page.toString();
    }

    private static String where(JsonNode statement, Map<String, List<RuleInfo>> embodied) {
        if (statement.has("keptBy")) {
            return statement.path("keptBy").asText();
        }
        if (statement.has("notARule")) {
            return "Not a rule: " + statement.path("notARule").asText();
        }
        return String.join(", ", embodied.get(statement.path("id").asText()).stream()
                .map(rule -> "[" + rule.id() + "](rules.md#" + anchor(rule) + ")").toList());
    }

    private static String anchor(RuleInfo rule) {
        return anchor(rule.id() + " " + rule.title());
    }

    private static String anchor(String heading) {
        return heading.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9 -]", "").replace(' ', '-');
    }
}
