package pairwright.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.drools.drl.ast.descr.PackageDescr;

/**
 * House rules may only touch the facts and plain values. It stops accidents and crude mischief; it is not a sandbox, so house rules are
 * read from a folder on this machine and never taken over the network.
 */
final class HousePolicy {
    static final String PACKAGE = "house";

    private static final Set<String> JAVA_LANG = Set.of("Object", "String", "Math", "Number", "Double", "Integer", "Long", "Boolean", "Enum",
            "Record", "CharSequence", "StringBuilder", "Comparable", "Exception", "Throwable", "IllegalArgumentException", "Class", "Override",
            "NoSuchFieldError", "invoke.MethodHandles", "invoke.MethodHandles$Lookup", "invoke.MethodType", "invoke.CallSite",
            "invoke.MethodHandle", "invoke.LambdaMetafactory", "invoke.StringConcatFactory", "invoke.SerializedLambda");
    private static final Set<String> OTHER = Set.of("java.util.List", "java.util.ArrayList", "java.util.Arrays", "java.util.Collections",
            "java.util.Objects", "java.io.Serializable", "org.drools.util.DateUtils",
            "org.drools.compiler.kie.builder.MaterializedLambda", "org.drools.modelcompiler.consequence.DroolsImpl",
            "org.drools.core.rule.consequence.KnowledgeHelper", "org.drools.modelcompiler.util.EvaluationUtil",
            "pairwright.rules.Out", "pairwright.rules.Setting", "pairwright.rules.Placed", "pairwright.rules.Paired");
    /** The last three only appear in generated code. */
    private static final List<String> PREFIXES = List.of("pairwright.model.", "pairwright.acoustics.OctaveCurve", "org.drools.model.",
            "org.drools.modelcompiler.dsl.", "org.kie.api.definition.rule.",
            "org.drools.core.base.accumulators.", "java.util.function.", "java.time.format.");

    private HousePolicy() {
    }

    /** What the text may hold. Functions and declared types would put the author's code where {@link #forbidden} does not look. */
    static List<Problem> check(String file, PackageDescr descr) {
        List<Problem> found = new ArrayList<>();
        if (!descr.getNamespace().equals(PACKAGE)) {
            found.add(new Problem(file, 1, null, "house rules live in: package " + PACKAGE + ";"));
        }
        descr.getFunctions().forEach(one -> found.add(new Problem(file, one.getLine(), null, "house rules may not declare functions")));
        descr.getTypeDeclarations().forEach(one -> found.add(new Problem(file, one.getLine(), null, "house rules may not declare types")));
        descr.getEnumDeclarations().forEach(one -> found.add(new Problem(file, one.getLine(), null, "house rules may not declare types")));
        descr.getFunctionImports().forEach(one -> found.add(new Problem(file, one.getLine(), null, "house rules may not import functions")));
        return found;
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
        if (use.startsWith("[") || use.equals("java.lang.System") || use.equals("java.lang.System#arraycopy") // values() of an enum
                || use.equals("java.util.Locale") || use.equals("java.util.Locale#ENGLISH")) {
            return true;
        }
        if (use.startsWith("java.lang.Class#")) {
            return false;
        }
        String name = use.contains("#") ? use.substring(0, use.indexOf('#')) : use;
        return OTHER.contains(name) || name.startsWith("java.lang.") && JAVA_LANG.contains(name.substring("java.lang.".length()))
                || PREFIXES.stream().anyMatch(name::startsWith);
    }

    private static String className(String path) {
        return path.substring(0, path.length() - ".class".length()).replace('/', '.');
    }
}
