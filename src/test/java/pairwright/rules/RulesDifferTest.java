package pairwright.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** No rule says what another says, and none fires exactly when another does. */
class RulesDifferTest {
    private static final Pattern RULE = Pattern.compile("(?s)rule \"(\\S+)\".*?\\nwhen\\n(.*?)\\nthen\\n");
    /** Steps of one scale differ in a number and a word or two; sentences that share more than this are one sentence. */
    private static final double ALIKE_SHARE = 0.8;

    /** Condition by rule id: without names of variables and without the order of constraints. */
    private static Map<String, String> conditions() throws IOException {
        Map<String, String> conditions = new TreeMap<>();
        for (String text : RuleFolder.read(Path.of("rules")).drl().values()) {
            Matcher rule = RULE.matcher(text);
            while (rule.find()) {
                conditions.put(rule.group(1), normal(rule.group(2)));
            }
        }
        return conditions;
    }

    static String normal(String condition) {
        List<String> facts = new ArrayList<>();
        for (String fact : condition.strip().split("\\n(?=\\s*(\\$\\w+ : )?(\\w+)\\()")) {
            String plain = fact.strip().replaceFirst("^\\$\\w+\\s*:\\s*", "").replaceAll("\\s+", " ");
            int open = plain.indexOf('(');
            List<String> constraints = new ArrayList<>(split(plain.substring(open + 1, plain.length() - 1)));
            constraints.sort(null);
            if (!constraints.isEmpty()) {
                facts.add(plain.substring(0, open) + constraints);
            }
        }
        facts.sort(null);
        return facts.toString();
    }

    /** At commas that stand outside of brackets. */
    private static List<String> split(String constraints) {
        List<String> parts = new ArrayList<>();
        int depth = 0;
        int start = 0;
        for (int i = 0; i <= constraints.length(); i++) {
            char c = i == constraints.length() ? ',' : constraints.charAt(i);
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (c == ',' && depth == 0) {
                String part = constraints.substring(start, i).strip();
                if (!part.isEmpty()) {
                    parts.add(part);
                }
                start = i + 1;
            }
        }
        return parts;
    }

    private static Set<String> words(String says) {
        Set<String> words = new HashSet<>(Arrays.asList(says.toLowerCase(Locale.ROOT).replaceAll("[^a-z{} ]", " ").split("\\s+")));
        words.remove("");
        return words;
    }

    private static double alike(Set<String> one, Set<String> other) {
        Set<String> both = new HashSet<>(one);
        both.retainAll(other);
        return (double) both.size() / (one.size() + other.size() - both.size());
    }

    @Test
    void noTwoRulesHaveTheSameConditionAndTheSameEffect() throws IOException {
        RuleBase rules = RuleBase.builtIn();
        Map<String, String> conditions = conditions();
        assertEquals(rules.rules().stream().map(RuleInfo::id).toList(), List.copyOf(conditions.keySet()));
        Map<String, String> before = new TreeMap<>();
        List<String> twins = new ArrayList<>();
        conditions.forEach((id, condition) -> {
            String twin = before.putIfAbsent(rules.rule(id).effect() + " " + rules.rule(id).severity() + " " + condition, id);
            if (twin != null) {
                twins.add(twin + " and " + id + ": " + condition);
            }
        });
        assertEquals(List.of(), twins);
    }

    @Test
    void noTwoRulesSayTheSame() {
        List<RuleInfo> rules = RuleBase.builtIn().rules();
        List<String> twins = new ArrayList<>();
        Set<String> titles = new HashSet<>();
        for (int i = 0; i < rules.size(); i++) {
            assertTrue(titles.add(rules.get(i).title().toLowerCase(Locale.ROOT)), "two rules are titled " + rules.get(i).title());
            for (int j = 0; j < i; j++) {
                double alike = alike(words(rules.get(i).says()), words(rules.get(j).says()));
                if (alike >= ALIKE_SHARE) {
                    twins.add(rules.get(j).id() + " and " + rules.get(i).id() + ": " + rules.get(i).says());
                }
            }
        }
        assertEquals(List.of(), twins);
    }

    @Test
    void aConditionIsKnownAgainInAnotherOrderAndUnderAnotherName() {
        assertEquals(normal("  Setting(live == true)\n  $p : Placed(distanceM > 1, mic.family in (A, B))"),
                normal("  $q : Placed(mic.family in (A,  B), distanceM > 1)\n  $s : Setting(live == true)"));
        assertTrue(!normal("$p : Placed(distanceM > 1)").equals(normal("$p : Placed(distanceM > 2)")));
        assertTrue(alike(words("{mic} is at {distanceM}."), words("At {distanceM} is {mic}.")) == 1);
    }
}
