package pairwright.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.PatternDescr;
import org.drools.drl.ast.descr.RuleDescr;

/**
 * What a house rule may be: it looks at the setting and at one placement or pair at a time, compares what the facts hold, and says one
 * thing. So it can neither reach outside nor run for ever: there is nothing in it that could repeat. It stops accidents and crude
 * mischief; it is not a sandbox, so house rules are read from a folder on this machine and never taken over the network.
 */
final class HousePolicy {
    static final String PACKAGE = "house";

    private static final Set<String> FACTS = Set.of("Setting", "Placed", "Paired");
    private static final String FACTS_PACKAGE = "pairwright.rules.";
    /** What could repeat, make things, or hide code of its own in a comparison or after then. */
    private static final Pattern TOO_MUCH =
            Pattern.compile("->|::|[{}]|\\b(?:while|for|do|new|eval|matches|soundslike|from|collect|accumulate)\\b");
    private static final Pattern TEXT = Pattern.compile("\"(?:[^\"\\\\]|\\\\.)*\"|'(?:[^'\\\\]|\\\\.)*'");

    /** Classes of which every member may be used. */
    private static final Set<String> CLASSES = Set.of("java.lang.Math", "java.lang.Number", "java.lang.Double", "java.lang.Integer",
            "java.lang.Long", "java.lang.Boolean", "java.lang.Enum", "java.lang.Record", "java.lang.Comparable", "java.lang.Override",
            "java.lang.NoSuchFieldError", "java.lang.invoke.MethodHandles", "java.lang.invoke.MethodHandles$Lookup",
            "java.lang.invoke.MethodType", "java.lang.invoke.CallSite", "java.lang.invoke.MethodHandle", "java.lang.invoke.LambdaMetafactory",
            "java.lang.invoke.StringConcatFactory", "java.lang.invoke.SerializedLambda", "java.io.Serializable", "org.drools.util.DateUtils",
            "org.drools.compiler.kie.builder.MaterializedLambda", "org.drools.modelcompiler.util.EvaluationUtil",
            "pairwright.rules.Out", "pairwright.rules.Setting", "pairwright.rules.Placed", "pairwright.rules.Paired");
    /** Classes of which only these members may be used: the rest makes things as large, or takes as long, as one likes. */
    private static final Map<String, Set<String>> MEMBERS = Map.ofEntries(
            Map.entry("java.lang.Object", Set.of("<init>", "equals", "hashCode", "toString")),
            Map.entry("java.lang.String", Set.of("equals", "equalsIgnoreCase", "contains", "startsWith", "endsWith", "isEmpty", "isBlank",
                    "length", "toLowerCase", "toUpperCase", "strip", "trim", "compareTo", "hashCode", "indexOf", "valueOf")),
            Map.entry("java.lang.CharSequence", Set.of("length", "isEmpty", "toString")),
            Map.entry("java.lang.Class", Set.of()),
            Map.entry("java.lang.Exception", Set.of()),
            Map.entry("java.lang.Throwable", Set.of()),
            Map.entry("java.lang.IllegalArgumentException", Set.of("<init>")),
            Map.entry("java.lang.System", Set.of("arraycopy")), // values() of an enum
            Map.entry("java.util.Locale", Set.of("ENGLISH")),
            Map.entry("java.util.List", Set.of("contains", "containsAll", "size", "isEmpty", "get", "indexOf", "add", "equals")),
            Map.entry("java.util.ArrayList", Set.of("<init>", "add", "contains", "size")),
            Map.entry("java.util.Arrays", Set.of("asList")),
            Map.entry("java.util.Collections", Set.of("emptyList")),
            Map.entry("java.util.Objects", Set.of("equals", "requireNonNull", "isNull", "nonNull")),
            Map.entry("pairwright.acoustics.OctaveCurve", Set.of("at", "meanDb", "minus", "plus", "weightedMean", "weightedRms", "equals")),
            Map.entry("org.drools.model.Drools", Set.of()),
            Map.entry("org.drools.model.operators.MatchesOperator", Set.of()),
            Map.entry("org.drools.model.operators.SoundsLikeOperator", Set.of()),
            Map.entry("org.drools.modelcompiler.consequence.DroolsImpl", Set.of("asKnowledgeHelper")),
            Map.entry("org.drools.core.rule.consequence.KnowledgeHelper", Set.of("getRule")));
    /** All but the first only appear in generated code. */
    private static final List<String> PREFIXES = List.of("pairwright.model.", "org.drools.model.", "org.drools.modelcompiler.dsl.",
            "org.kie.api.definition.rule.", "java.util.function.", "java.time.format.");

    private HousePolicy() {
    }

    /** What is in a file and may not be. Functions and declared types would put the author's code where {@link #forbidden} does not look. */
    static List<Problem> check(String file, String text, PackageDescr descr) {
        List<Problem> found = new ArrayList<>();
        if (!descr.getNamespace().equals(PACKAGE)) {
            found.add(new Problem(file, 1, 1, null, "house rules live in: package " + PACKAGE + ";"));
        }
        refuse(found, file, descr.getFunctions(), "declare functions");
        refuse(found, file, descr.getTypeDeclarations(), "declare types");
        refuse(found, file, descr.getEnumDeclarations(), "declare types");
        refuse(found, file, descr.getFunctionImports(), "import functions");
        refuse(found, file, descr.getAccumulateImports(), "import functions");
        refuse(found, file, descr.getEntryPointDeclarations(), "declare entry points");
        refuse(found, file, descr.getWindowDeclarations(), "declare windows");
        refuse(found, file, descr.getAttributes(), "set attributes");
        refuse(found, file, descr.getGlobals().stream().filter(global -> !global.getIdentifier().equals("out")).toList(),
                "have another global than out");
        descr.getRules().forEach(rule -> found.addAll(check(file, text, rule)));
        return found;
    }

    private static void refuse(List<Problem> found, String file, Collection<? extends BaseDescr> those, String what) {
        those.forEach(one -> found.add(new Problem(file, one.getLine(), null, "house rules may not " + what + ". Take it out")));
    }

    private static List<Problem> check(String file, String text, RuleDescr rule) {
        List<Problem> found = new ArrayList<>();
        Consumer<String> wrong = what -> found.add(new Problem(file, rule.getLine(), 1, rule.getName(), what));
        if (rule.isQuery()) {
            wrong.accept("house rules may not declare queries. Write a rule");
            return found;
        }
        if (rule.getParentName() != null) {
            wrong.accept("a house rule stands by itself. Take out extends and write the conditions out");
        }
        for (String attribute : new TreeSet<>(rule.getAttributes().keySet())) {
            add(found, file, text, rule, attribute, attribute + " has no place in a house rule: all rules speak, in no order. Take it out");
        }
        if (!rule.getNamedConsequences().isEmpty()) {
            wrong.accept("a house rule says one thing. Make a rule of each then");
        }
        Set<String> seen = new HashSet<>();
        for (BaseDescr part : rule.getLhs().getDescrs()) {
            if (!(part instanceof PatternDescr pattern) || pattern.getSource() != null || !pattern.getBehaviors().isEmpty()) {
                found.add(new Problem(file, part.getLine() > 0 ? part.getLine() : rule.getLine(), rule.getName(),
                        "between when and then stand only Setting(...), Placed(...) and Paired(...), each at most once. Write it as one of"
                                + " them, and make two rules where either of two things is enough"));
                continue;
            }
            String type = pattern.getObjectType().replace(FACTS_PACKAGE, "");
            if (PlanFact.kinds().stream().anyMatch(kind -> kind.getSimpleName().equals(type))) {
                found.add(new Problem(file, pattern.getLine(), rule.getName(), type + " is a part of a plan, of which house rules do not speak yet."
                        + " Write it for Setting, Placed or Paired"));
            }
            if (FACTS.contains(type) && !seen.add(type)) {
                found.add(new Problem(file, pattern.getLine(), rule.getName(), "a second " + type + ": a house rule looks at one at a time,"
                        + " since comparing each with each takes far too long. Compare with a number"));
            }
            for (BaseDescr constraint : pattern.getDescrs()) {
                tooMuch(found, file, text, rule, constraint.getText() == null ? constraint.toString() : constraint.getText());
            }
        }
        tooMuch(found, file, text, rule, String.valueOf(rule.getConsequence()));
        return found;
    }

    private static void tooMuch(List<Problem> found, String file, String text, RuleDescr rule, String code) {
        var odd = TOO_MUCH.matcher(TEXT.matcher(code).replaceAll("\"\""));
        if (odd.find()) {
            add(found, file, text, rule, odd.group(), "house rules only compare: " + odd.group() + " is not allowed here. Use ==, !=, <, >, in (...)"
                    + " and what the facts hold");
        }
    }

    private static void add(List<Problem> found, String file, String text, RuleDescr rule, String near, String what) {
        Place place = Place.of(near, text, rule.getLine(), rule.getEndLine());
        found.add(place == null ? new Problem(file, rule.getLine(), rule.getName(), what)
                : new Problem(file, place.line(), place.column(), rule.getName(), what));
    }

    /** Every class or member the compiled rules use and may not. */
    static Set<String> forbidden(Map<String, byte[]> classes) {
        Set<String> own = new TreeSet<>();
        classes.keySet().forEach(path -> own.add(className(path)));
        Set<String> bad = new TreeSet<>();
        classes.forEach((path, bytes) -> {
            String name = className(path);
            if (name.startsWith("org.drools.project.model.") || name.matches(PACKAGE + "\\.DomainClassesMetadata[0-9A-F]{32}.*")) {
                return; // these two hold none of the author's code
            }
            for (String use : ClassUse.of(bytes)) {
                if (!own.contains(use.replaceFirst("#.*", "")) && !allowed(use)) {
                    bad.add(use.replace('#', '.'));
                }
            }
        });
        Set<String> members = new TreeSet<>(bad);
        bad.removeIf(use -> members.stream().anyMatch(member -> member.startsWith(use + "."))); // the member says more than its class
        return bad;
    }

    private static boolean allowed(String use) {
        if (use.startsWith("[")) {
            return true;
        }
        int hash = use.indexOf('#');
        String name = hash < 0 ? use : use.substring(0, hash);
        Set<String> some = MEMBERS.get(name);
        if (some != null) {
            return hash < 0 || some.contains(use.substring(hash + 1));
        }
        return CLASSES.contains(name) || PREFIXES.stream().anyMatch(name::startsWith);
    }

    private static String className(String path) {
        return path.substring(0, path.length() - ".class".length()).replace('/', '.');
    }
}
