package pairwright.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drools.model.Model;

/**
 * The rules of a house, apart from those of the program, so that a house rule that fails can be told from one of the program, and put
 * aside while the rest goes on. Never changes; safe to share between threads.
 */
final class HouseRules {
    private static final Pattern CONDITION = Pattern.compile("constraint '(.*?)' in \\[");

    private final Engine engine;
    private final Map<String, RuleCompiler.Written> written;
    private final String version;
    private final Most most;

    /**
     * How far house rules may go for one question. {@link HousePolicy} leaves them nothing to repeat with, so this is a second line.
     *
     * @param firings of one rule
     * @param millis of all together
     */
    record Most(long firings, long millis) {
        /** A rule fires once for a placement or pair, of which a question has a few thousand. */
        static final Most USUAL = new Most(100_000, 10_000);
    }

    private HouseRules(Engine engine, Map<String, RuleCompiler.Written> written, String version, Most most) {
        this.engine = engine;
        this.written = written;
        this.version = version;
        this.most = most;
    }

    static HouseRules of(RuleCompiler.Result compiled, String version, ClassLoader parent, Most most) {
        ClassLoader loader = new Loader(compiled.classes(), parent);
        List<Model> models = compiled.models().stream().map(name -> RuleBase.model(loader, name)).toList();
        return new HouseRules(new Engine(models, compiled.infos()), compiled.written(), version, most);
    }

    Map<String, RuleInfo> rules() {
        return engine.rules();
    }

    String version() {
        return version;
    }

    /** The same less some rules; null if none is left. */
    HouseRules without(Set<String> ids) {
        Set<String> left = new TreeSet<>(rules().keySet());
        left.removeAll(ids);
        return left.isEmpty() ? null
                : new HouseRules(engine.only(left), written, RuleFolder.version(List.of(version, "without", ids.toString())), most);
    }

    /**
     * What the rules find.
     *
     * @throws Failed where they do not come to an end well
     */
    List<Finding> judge(boolean warn, Setting setting, List<?> subjects) {
        try {
            return run(engine, warn, setting, subjects);
        } catch (RuntimeException | LinkageError | StackOverflowError tripped) {
            throw new Failed(culprits(warn, setting, subjects, tripped), tripped);
        }
    }

    /** House rules failed; each problem names one. */
    static final class Failed extends RuntimeException {
        private final transient List<Problem> problems;

        Failed(List<Problem> problems, Throwable cause) {
            super(cause);
            this.problems = problems;
        }

        List<Problem> problems() {
            return problems;
        }
    }

    private List<Finding> run(Engine rules, boolean warn, Setting setting, List<?> subjects) {
        Out out = new Out(rules.rules(), new Out.Guard(most.firings() * rules.ids(warn).size(), System.nanoTime() + most.millis() * 1_000_000));
        rules.judge(warn, setting, subjects, out);
        return out.findings();
    }

    /** The engine shares work between rules and does not always say for which it tripped; each rule by itself does. */
    private List<Problem> culprits(boolean warn, Setting setting, List<?> subjects, Throwable together) {
        List<Problem> found = new ArrayList<>();
        Set<String> asked = new TreeSet<>(engine.ids(warn));
        for (String id : asked) {
            try {
                run(engine.only(Set.of(id)), warn, setting, subjects);
            } catch (RuntimeException | LinkageError | StackOverflowError tripped) {
                found.add(problem(id, tripped));
            }
        }
        if (found.isEmpty()) {
            asked.forEach(id -> found.add(problem(id, together)));
        }
        return found;
    }

    private Problem problem(String id, Throwable tripped) {
        RuleCompiler.Written rule = written.get(id);
        String condition = null;
        String refused = null;
        boolean nothing = false;
        Set<Throwable> seen = new HashSet<>();
        for (Throwable one = tripped; one != null && seen.add(one); one = one.getCause()) {
            Matcher said = CONDITION.matcher(String.valueOf(one.getMessage()));
            condition = condition == null && said.find() ? said.group(1) : condition;
            refused = one instanceof Out.Refused ? one.getMessage() : refused;
            nothing |= one instanceof NullPointerException;
        }
        Place place = condition == null ? null : Place.of(condition, rule.text(), rule.line(), rule.endLine());
        if (place == null && refused != null) {
            place = Place.of(Pattern.compile("\\bout\\.\\w+\\("), rule.text(), rule.line(), rule.endLine());
        }
        String what = refused != null ? "the rule " + refused
                : "it trips over " + (condition == null ? "something" : condition) + (nothing
                ? ": that is not always there. Ask first whether it is, as in predicted.headroomDb != null"
                : " (" + root(tripped) + "). Take it out or ask first whether it applies");
        return place == null ? new Problem(rule.file(), rule.line(), 1, id, what)
                : new Problem(rule.file(), place.line(), place.column(), id, what);
    }

    private static String root(Throwable tripped) {
        Throwable root = tripped;
        while (root.getCause() != null) {
            root = root.getCause();
        }
        return root.getMessage() == null ? root.getClass().getSimpleName() : root.getMessage();
    }

    private static final class Loader extends ClassLoader {
        private final Map<String, byte[]> classes;

        Loader(Map<String, byte[]> classes, ClassLoader parent) {
            super(parent);
            this.classes = new HashMap<>(classes);
        }

        @Override
        protected Class<?> findClass(String name) throws ClassNotFoundException {
            byte[] bytes = classes.get(name.replace('.', '/') + ".class");
            if (bytes == null) {
                throw new ClassNotFoundException(name);
            }
            return defineClass(name, bytes, 0, bytes.length);
        }
    }
}
