package pairwright.rules;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A part of a plan for a case: the unremarkable one of plan-base.yaml and how the case differs from it. */
final class PlanSituation {
    private PlanSituation() {
    }

    /** Whether a case speaks of a part of a plan. */
    static boolean speaksOf(JsonNode how) {
        return PlanFact.kinds().stream().anyMatch(kind -> how.has(name(kind)));
    }

    /** The part that a case names, with the fields it gives. */
    static PlanFact differing(JsonNode how) {
        if (how.size() != 1) {
            throw new IllegalArgumentException("A case of a plan speaks of one part of it: " + how);
        }
        String name = how.fieldNames().next();
        Class<?> kind = PlanFact.kinds().stream().filter(one -> name(one).equals(name)).findFirst().orElseThrow(
                () -> new IllegalArgumentException("No such part of a plan: " + name));
        try (InputStream in = PlanSituation.class.getResourceAsStream("/rules/plan-base.yaml")) {
            ObjectNode part = (ObjectNode) Situation.YAML.readTree(in).get(name);
            how.get(name).fields().forEachRemaining(field -> {
                if (!part.has(field.getKey())) {
                    throw new IllegalArgumentException("No such field: " + name + "." + field.getKey());
                }
                part.set(field.getKey(), field.getValue());
            });
            return (PlanFact) Situation.YAML.treeToValue(part, kind);
        } catch (IOException wrong) {
            throw new IllegalArgumentException(name + ": " + wrong.getMessage(), wrong);
        }
    }

    /** The unremarkable part of a kind. */
    static PlanFact base(Class<?> kind) {
        return differing(Situation.YAML.createObjectNode().set(name(kind), Situation.YAML.createObjectNode()));
    }

    /** Points and cautions together, by rule. */
    static List<Finding> judged(RuleBase rules, PlanFact part) {
        List<Finding> findings = new ArrayList<>(rules.plan(false, List.of(part)));
        findings.addAll(rules.plan(true, List.of(part)));
        return findings;
    }

    static String name(Class<?> kind) {
        String name = kind.getSimpleName();
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }
}
