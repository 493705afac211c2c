package pairwright.rules;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.definition.rule.Rule;
import org.kie.api.runtime.KieSession;

/** A set of compiled rules. Never changes; safe to share between threads. */
public final class RuleBase {
    static final String FOLDER = "META-INF/pairwright/rules/";
    /** Far more than any question needs; a rule that would fire for ever must not. */
    private static final int MOST_FIRINGS = 1_000_000;

    private final KieBase engine;
    private final Map<String, RuleInfo> byId = new HashMap<>();
    private final List<RuleInfo> rules;
    private final String version;

    private RuleBase(List<Model> models, List<RuleInfo> infos, String version) {
        this.engine = KieBaseBuilder.createKieBaseFromModel(models);
        infos.forEach(info -> byId.put(info.id(), info));
        this.rules = infos.stream().sorted(Comparator.comparing(RuleInfo::id)).toList();
        this.version = version;
    }

    /** The rules that ship with the program; they were compiled when it was built. */
    public static RuleBase builtIn() {
        return withHouse(null, "");
    }

    /** The same with house rules, as compiled, beside them. */
    static RuleBase withHouse(RuleCompiler.Result house, String houseVersion) {
        ClassLoader own = RuleBase.class.getClassLoader();
        List<Model> models = new ArrayList<>();
        resource("models").lines().forEach(name -> models.add(model(own, name)));
        List<RuleInfo> infos = new ArrayList<>(RuleIndex.read(resource("index")));
        String version = resource("version").strip();
        if (house != null) {
            ClassLoader loader = new HouseLoader(house.classes(), own);
            house.models().forEach(name -> models.add(model(loader, name)));
            infos.addAll(house.infos());
            version = RuleFolder.version(List.of(version, houseVersion));
        }
        return new RuleBase(models, infos, version);
    }

    /**
     * What the rules find of single placements and, once, of the question as a whole.
     *
     * @return by subject, those of the setting first, then in the order given; by rule id within a subject
     */
    public List<Finding> judgePlacements(Setting setting, List<Placed> placed) {
        return judge(setting, placed);
    }

    /** What the rules find of pairs, in the order given; by rule id within a pair. */
    public List<Finding> judgePairs(Setting setting, List<Paired> pairs) {
        List<Finding> findings = judge(setting, pairs);
        findings.removeIf(finding -> finding.subject() == setting); // said already, with the placements
        return findings;
    }

    private List<Finding> judge(Setting setting, Collection<?> subjects) {
        Out out = new Out(this);
        Map<Object, List<Finding>> bySubject = new IdentityHashMap<>(subjects.size() * 2);
        bySubject.put(setting, new ArrayList<>());
        KieSession session = engine.newKieSession();
        try {
            session.setGlobal("out", out);
            session.insert(setting);
            for (Object subject : subjects) {
                session.insert(subject);
                bySubject.put(subject, new ArrayList<>());
            }
            if (session.fireAllRules(MOST_FIRINGS) == MOST_FIRINGS) {
                throw new IllegalStateException("The rules do not come to an end");
            }
        } finally {
            session.dispose();
        }
        out.findings().forEach(finding -> bySubject.get(finding.subject()).add(finding));
        List<Finding> sorted = new ArrayList<>(out.findings().size());
        add(bySubject.get(setting), sorted);
        subjects.forEach(subject -> add(bySubject.get(subject), sorted));
        return sorted;
    }

    /** Firing order is the engine's own business; an answer must not depend on it. */
    private static void add(List<Finding> ofOneSubject, List<Finding> sorted) {
        ofOneSubject.sort(Comparator.comparing(finding -> finding.rule().id()));
        sorted.addAll(ofOneSubject);
    }

    /** The sentence of a finding, with its names and numbers. */
    public String says(Finding finding, Setting setting) {
        return Sentence.says(finding, setting);
    }

    /** All rules, by id. */
    public List<RuleInfo> rules() {
        return rules;
    }

    /** One rule; null if there is none of that id. */
    public RuleInfo rule(String id) {
        return byId.get(id);
    }

    /** Changes whenever any rule changes. */
    public String version() {
        return version;
    }

    RuleInfo infoOf(Rule rule) {
        return byId.get(rule.getName());
    }

    private static Model model(ClassLoader loader, String name) {
        try {
            return (Model) loader.loadClass(name).getDeclaredConstructor().newInstance();
        } catch (ReflectiveOperationException missing) {
            throw new IllegalStateException("The compiled rules " + name + " cannot be loaded; build the program again", missing);
        }
    }

    private static String resource(String name) {
        try (InputStream in = RuleBase.class.getResourceAsStream("/" + FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException("This program was built without rules; build it again with mvn package");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static final class HouseLoader extends ClassLoader {
        private final Map<String, byte[]> classes;

        HouseLoader(Map<String, byte[]> classes, ClassLoader parent) {
            super(parent);
            this.classes = classes;
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
