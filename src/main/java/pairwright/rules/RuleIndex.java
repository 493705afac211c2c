package pairwright.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pairwright.model.Basis;
import pairwright.model.Effect;
import pairwright.model.Severity;
import pairwright.model.Word;

/** What the rules say of themselves as plain text, so that a running program need not parse rules: one "name value" a line, rules apart by a blank line. */
final class RuleIndex {
    private RuleIndex() {
    }

    static String write(List<RuleInfo> infos) {
        StringBuilder text = new StringBuilder();
        for (RuleInfo info : infos) {
            line(text, "id", info.id());
            line(text, "title", info.title());
            line(text, "concern", info.concern());
            line(text, "topic", info.topic());
            line(text, "effect", info.effect().id());
            line(text, "severity", info.severity() == null ? "" : info.severity().id());
            line(text, "points", Double.toString(info.points()));
            line(text, "says", info.says());
            line(text, "claim", info.claim() == null ? "" : info.claim());
            line(text, "why", info.why());
            line(text, "on", info.on().id());
            line(text, "basis", info.basis());
            line(text, "treat", info.treat() == null ? "" : info.treat());
            line(text, "alone", Boolean.toString(info.alone()));
            info.practice().forEach(one -> line(text, "practice", one.id() + " " + one.says()));
            line(text, "teachable", Boolean.toString(info.teachable()));
            line(text, "instead", String.join(" ", info.inPlan().instead()));
            line(text, "settled", Boolean.toString(info.inPlan().settled()));
            line(text, "each", Boolean.toString(info.inPlan().each()));
            info.cases().forEach(one -> line(text, one.fires() ? "fires" : "silent", one.says()));
            text.append('\n');
        }
        return text.toString();
    }

    static List<RuleInfo> read(String text) {
        List<RuleInfo> infos = new ArrayList<>();
        Map<String, String> fields = new LinkedHashMap<>();
        List<RuleInfo.Case> cases = new ArrayList<>();
        List<RuleInfo.Practice> practice = new ArrayList<>();
        for (String line : text.split("\n", -1)) {
            int space = line.indexOf(' ');
            if (space > 0) {
                String name = line.substring(0, space);
                String value = line.substring(space + 1).translateEscapes();
                if (name.equals("fires") || name.equals("silent")) {
                    cases.add(new RuleInfo.Case(value, name.equals("fires")));
                } else if (name.equals("practice")) {
                    practice.add(new RuleInfo.Practice(value.substring(0, value.indexOf(' ')), value.substring(value.indexOf(' ') + 1)));
                } else {
                    fields.put(name, value);
                }
            } else if (!fields.isEmpty()) {
                infos.add(info(fields, practice, cases));
                fields.clear();
                practice.clear();
                cases.clear();
            }
        }
        return List.copyOf(infos);
    }

    private static RuleInfo info(Map<String, String> fields, List<RuleInfo.Practice> practice, List<RuleInfo.Case> cases) {
        return new RuleInfo(fields.get("id"), fields.get("title"), fields.get("concern"), fields.get("topic"),
                word(Effect.values(), fields.get("effect")), word(Severity.values(), fields.get("severity")),
                Double.parseDouble(fields.get("points")), fields.get("says"), orNull(fields.get("claim")), fields.get("why"),
                word(Basis.values(), fields.get("on")), fields.get("basis"), List.copyOf(practice), Boolean.parseBoolean(fields.get("teachable")),
                orNull(fields.get("treat")), Boolean.parseBoolean(fields.get("alone")), new RuleInfo.InPlan(fields.get("instead").isEmpty() ? List.of() : List.of(fields.get("instead").split(" ")),
                Boolean.parseBoolean(fields.get("settled")), Boolean.parseBoolean(fields.get("each"))), List.copyOf(cases));
    }

    private static String orNull(String field) {
        return field == null || field.isEmpty() ? null : field;
    }

    private static <W extends Word> W word(W[] words, String id) {
        for (W word : words) {
            if (word.id().equals(id)) {
                return word;
            }
        }
        return null;
    }

    private static void line(StringBuilder text, String name, String value) {
        text.append(name).append(' ').append(value.replace("\\", "\\\\").replace("\n", "\\n")).append('\n');
    }
}
