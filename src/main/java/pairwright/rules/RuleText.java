package pairwright.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drools.drl.ast.descr.AnnotationDescr;
import org.drools.drl.ast.descr.RuleDescr;
import pairwright.model.Basis;
import pairwright.model.Effect;
import pairwright.model.Severity;
import pairwright.model.Word;

/**
 * One rule as it stands in its file: reads what it says of itself, and finds what the rule compiler would let pass. A rule is one
 * thing in one place, so all of it is asked for here.
 */
final class RuleText {
    private static final Pattern BUILT_IN_ID = Pattern.compile("[A-Z]{3}-\\d{3}");
    private static final Pattern HOUSE_ID = Pattern.compile("HOUSE-\\d{3}");
    private static final Pattern CALL = Pattern.compile("out\\.(note|scaled)\\(\\s*drools\\.getRule\\(\\)\\s*,\\s*(\\$\\w+)\\s*(,.*)?\\);", Pattern.DOTALL);
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");
    private static final double MOST_POINTS = 12;
    /** A seat without a microphone is weighed against whole options, not against single reasons. */
    private static final double MOST_POINTS_OF_A_SEAT = 60;
    private static final List<String> TREATS = List.of("align", "leave", "watch");
    private static final List<String> IN_A_HOUSE =
            List.of("title", "effect", "points", "severity", "says", "claim", "why", "on", "basis", "teachable");
    private static final List<String> BUILT_IN =
            List.of("title", "effect", "points", "severity", "says", "claim", "why", "on", "basis", "practice", "teachable", "treat", "alone", "instead", "settled", "each");

    private final String file;
    private final String text;
    private final RuleDescr rule;
    private final boolean house;
    private final List<Problem> problems = new ArrayList<>();

    RuleText(String file, String text, RuleDescr rule, boolean house) {
        this.file = file;
        this.text = text;
        this.rule = rule;
        this.house = house;
    }

    List<Problem> problems() {
        return problems;
    }

    /**
     * What the rule says of itself; null if so much is wrong that it cannot be told.
     *
     * @param statements of trade practice, by id
     */
    RuleInfo read(String concern, String topic, List<RuleInfo.Case> cases, Map<String, String> statements) {
        if (!(house ? HOUSE_ID : BUILT_IN_ID).matcher(rule.getName()).matches()) {
            wrong(null, "a rule is named by its id, such as " + (house ? "HOUSE-001" : "LVL-003"));
        }
        List<String> known = house ? IN_A_HOUSE : BUILT_IN;
        for (String name : new TreeSet<>(rule.getAnnotationNames())) {
            if (!known.contains(name)) {
                wrong("@" + name, "@" + name + " means nothing here. Use " + String.join(", ", known));
            }
        }
        String title = needed("title");
        Effect effect = word("effect", Effect.values(), needed("effect"));
        String says = needed("says");
        String claim = claim();
        String why = needed("why");
        Basis on = word("on", Basis.values(), needed("on"));
        String basis = needed("basis");
        String severityWord = value("severity");
        Severity severity = severityWord == null ? null : word("severity", Severity.values(), severityWord);
        boolean teachable = truth("teachable");
        RuleInfo.InPlan inPlan = new RuleInfo.InPlan(value("instead") == null ? List.of() : List.of(value("instead").split(",\\s*")), truth("settled"), truth("each"));
        List<RuleInfo.Practice> practice = house ? List.of() : practice(statements);
        Matcher call = CALL.matcher(String.valueOf(rule.getConsequence()).strip());
        Class<?> subject = call.matches() ? subject(call.group(2)) : null;
        double points = points(effect, subject == LeftOut.class ? MOST_POINTS_OF_A_SEAT : MOST_POINTS);
        if (effect == Effect.CAUTION && severityWord == null) {
            wrong("@effect", "a caution needs @severity(\"note\"), (\"care\") or (\"danger\")");
        }
        if (effect != null && effect != Effect.CAUTION && severityWord != null) {
            wrong("@severity", "only a caution has a severity");
        }
        consequence(call, subject, says, effect);
        String treat = value("treat");
        String alone = value("alone");
        if (alone != null && (subject != Placed.class || effect != Effect.FOR && effect != Effect.AGAINST || !alone.equals("true"))) {
            wrong("@alone", "@alone(true) is for what speaks for or against a Placed that stands by itself. Take it out");
        }
        if (subject != null) {
            place(concern.equals(RuleInfo.PLAN), subject, effect, treat);
        }
        if (!problems.isEmpty()) {
            return null;
        }
        return new RuleInfo(rule.getName(), title, concern, topic, effect, severity, points, says, claim, why, on, basis, practice,
                teachable, treat, "true".equals(alone), inPlan, cases);
    }

    private boolean truth(String name) {
        String value = value(name);
        if (value != null && !value.equals("true") && !value.equals("false")) {
            wrong("@" + name, "@" + name + " is true or false, not " + value);
        }
        return "true".equals(value);
    }

    private String claim() {
        String claim = value("claim");
        if (claim != null && claim.isBlank()) {
            wrong("@claim", "@claim is empty. Write what somebody would say who has thought of it, or take it out");
        }
        for (String name : claim == null ? List.<String>of() : Sentence.placeholders(claim)) {
            if (!Claim.WORDS.contains(name)) {
                wrong("@claim", "{" + name + "} is no word for a claim, which is said before anything is measured. Use " + Claim.WORDS);
            }
        }
        return claim;
    }

    private List<RuleInfo.Practice> practice(Map<String, String> statements) {
        String given = value("practice");
        List<RuleInfo.Practice> practice = new ArrayList<>();
        for (String id : given == null ? List.<String>of() : List.of(given.split(",\\s*"))) {
            if (statements.containsKey(id)) {
                practice.add(new RuleInfo.Practice(id, statements.get(id)));
            } else {
                wrong("@practice", "there is no statement \"" + id + "\" in practice.yaml. Write it there, or correct the id");
            }
        }
        return List.copyOf(practice);
    }

    private double points(Effect effect, double most) {
        String given = value("points");
        if (effect == null) {
            return 0;
        }
        boolean moves = effect == Effect.FOR || effect == Effect.AGAINST;
        if (!moves) {
            if (given != null) {
                wrong("@points", "what " + (effect == Effect.CAUTION ? "cautions" : "rules out") + " has no points");
            }
            return 0;
        }
        double points;
        try {
            points = given == null ? 0 : Double.parseDouble(given);
        } catch (NumberFormatException notANumber) {
            points = 0;
        }
        if (effect == Effect.FOR && !(points > 0 && points <= most)) {
            wrong("@points", "what speaks for has points above 0, at most " + (int) most + ", not " + given);
        }
        if (effect == Effect.AGAINST && !(points < 0 && points >= -most)) {
            wrong("@points", "what speaks against has points below 0, at least " + (int) -most + ", not " + given);
        }
        return points;
    }

    /** After "then" stands one call, so that a rule can do nothing but speak. */
    private void consequence(Matcher call, Class<?> subject, String says, Effect effect) {
        if (!call.matches() || call.group(3) != null && call.group(3).contains(";")) {
            wrong("then", "after then stands one call: out.note(drools.getRule(), $subject, \"nameUnit\", value, ...); "
                    + "or out.scaled(drools.getRule(), $subject, share, ...);");
            return;
        }
        if (call.group(1).equals("scaled") && effect != Effect.FOR && effect != Effect.AGAINST) {
            wrong("then", "only what speaks for or against can be scaled");
        }
        if (subject == null) {
            wrong(call.group(2), call.group(2) + " is not a Setting, a Placed or a Paired of this rule" + (house ? "" : ", nor a part of a plan"));
            return;
        }
        List<String> values = new ArrayList<>();
        Matcher quoted = QUOTED.matcher(call.group(3) == null ? "" : call.group(3));
        while (quoted.find()) {
            String name = quoted.group(1);
            values.add(name);
            try {
                UnitNames.unitOf(name);
            } catch (IllegalArgumentException noUnit) {
                wrong("\"" + name + "\"", noUnit.getMessage());
            }
        }
        if (says == null) {
            return;
        }
        List<String> placeholders = Sentence.placeholders(says);
        if (placeholders.isEmpty() && effect != Effect.CAUTION) {
            wrong("@says", "the sentence names neither a number nor what it speaks of. Put at least one name in braces");
        }
        for (String name : placeholders) {
            if (!values.contains(name) && !Sentence.isText(name, subject)) {
                wrong("@says", "{" + name + "} is neither a value given after then nor a name for " + subject.getSimpleName());
            }
        }
        Matcher bySign = Pattern.compile("\\{([^{}|]*)\\|([^{}]*)}").matcher(says);
        while (bySign.find()) {
            if (!values.contains(bySign.group(1)) || !bySign.group(2).matches("[^|]+\\|[^|]+")) {
                wrong("@says", bySign.group() + " needs a value and two words, such as {separationDb|over|under}: the second stands where the value is below 0");
            }
        }
        if (says.replaceAll("\\{[^{}]*}", "").matches("(?s).*[{}].*")) {
            wrong("@says", "a brace is left open");
        }
    }

    private Class<?> subject(String variable) {
        Matcher bound = Pattern.compile(Pattern.quote(variable) + "\\s*:\\s*(\\w+)\\b").matcher(ownText());
        if (!bound.find()) {
            return null;
        }
        List<Class<?>> facts = new ArrayList<>(List.of(Setting.class, Placed.class, Paired.class));
        if (!house) {
            facts.addAll(PlanFact.kinds());
        }
        return facts.stream().filter(fact -> fact.getSimpleName().equals(bound.group(1))).findFirst().orElse(null);
    }

    /** What a question knows and what a plan knows are judged apart, so a rule keeps to the one or the other. */
    private void place(boolean ofAPlan, Class<?> subject, Effect effect, String treat) {
        if (ofAPlan != PlanFact.class.isAssignableFrom(subject)) {
            wrong(subject.getSimpleName(), "a rule of the folder plan speaks of a part of a plan, and no other does: "
                    + PlanFact.kinds().stream().map(Class::getSimpleName).toList());
        }
        if (ofAPlan && effect != null && effect != Effect.CAUTION && !PlanFact.WEIGHED.contains(subject)) {
            wrong("@effect", "of a plan only " + PlanFact.WEIGHED.stream().map(Class::getSimpleName).toList()
                    + " carry points, since the search weighs nothing else. Make it a caution");
        }
        if (ofAPlan && effect == Effect.RULES_OUT) {
            wrong("@effect", "what is not possible in a plan is never made. Make it a caution, or give it points");
        }
        if (treat != null && subject != PlannedArrival.class) {
            wrong("@treat", "only of a PlannedArrival is there anything to do by @treat. Take it out");
        }
        if (treat != null && !TREATS.contains(treat)) {
            wrong("@treat", "@treat is one of " + TREATS + ", not \"" + treat + "\"");
        }
    }

    private String needed(String name) {
        String value = value(name);
        if (value == null || value.isBlank()) {
            wrong(null, "@" + name + " is missing");
            return null;
        }
        return value;
    }

    private String value(String name) {
        AnnotationDescr annotation = rule.getAnnotation(name);
        if (annotation == null) {
            return null;
        }
        Object value = annotation.getValue();
        if (value == null) {
            return null;
        }
        String text = value.toString().strip();
        return text.length() > 1 && text.startsWith("\"") && text.endsWith("\"")
                ? text.substring(1, text.length() - 1).translateEscapes() : text;
    }

    private <W extends Word> W word(String name, W[] words, String given) {
        if (given == null) {
            return null;
        }
        for (W word : words) {
            if (word.id().equals(given)) {
                return word;
            }
        }
        wrong("@" + name, "@" + name + " is one of " + Arrays.stream(words).map(Word::id).toList() + ", not \"" + given + "\"");
        return null;
    }

    private String ownText() {
        String[] lines = text.split("\n", -1);
        return String.join("\n", Arrays.asList(lines).subList(Math.max(0, rule.getLine() - 1), Math.min(lines.length, rule.getEndLine())));
    }

    /** A fault at the first place of some text within the rule; at the start of the rule where it is not found. */
    private void wrong(String near, String what) {
        Place place = near == null ? null : Place.of(near, text, rule.getLine(), rule.getEndLine());
        problems.add(place == null
                ? new Problem(file, rule.getLine(), 1, rule.getName(), what)
                : new Problem(file, place.line(), place.column(), rule.getName(), what));
    }
}
