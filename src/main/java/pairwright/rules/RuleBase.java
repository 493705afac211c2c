package pairwright.rules;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.drools.model.EntryPoint;
import org.drools.model.Global;
import org.drools.model.Model;
import org.drools.model.Query;
import org.drools.model.TypeMetaData;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.definition.rule.Rule;
import org.kie.api.runtime.KieSession;
import pairwright.model.Effect;

/** A set of compiled rules. Never changes; safe to share between threads. */
public final class RuleBase {
    static final String FOLDER = "META-INF/pairwright/rules/";
    /** Far more than any question needs; a rule that would fire for ever must not. */
    private static final int MOST_FIRINGS = 1_000_000;

    /** What moves a score or rules out: asked of every placement that is possible. */
    private final KieBase scoring;
    /** What only warns: asked of the few that are shown. */
    private final KieBase warning;
    private final Map<String, RuleInfo> byId = new HashMap<>();
    private final List<RuleInfo> rules;
    private final String version;

    private RuleBase(List<Model> models, List<RuleInfo> infos, String version) {
        infos.forEach(info -> byId.put(info.id(), info));
        this.scoring = KieBaseBuilder.createKieBaseFromModel(part(models, false));
        this.warning = KieBaseBuilder.createKieBaseFromModel(part(models, true));
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

    private List<Model> part(List<Model> models, boolean cautions) {
        List<Model> parts = new ArrayList<>();
        for (Model model : models) {
            parts.add(new Part(model, model.getRules().stream()
                    .filter(rule -> (byId.get(rule.getName()).effect() == Effect.CAUTION) == cautions).toList()));
        }
        return parts;
    }

    /** Some rules of a model. */
    private record Part(Model of, List<org.drools.model.Rule> rules) implements Model {
        @Override
        public String getName() {
            return of.getName();
        }

        @Override
        public String getPackageName() {
            return of.getPackageName();
        }

        @Override
        public List<Global> getGlobals() {
            return of.getGlobals();
        }

        @Override
        public List<org.drools.model.Rule> getRules() {
            return rules;
        }

        @Override
        public List<Query> getQueries() {
            return of.getQueries();
        }

        @Override
        public List<TypeMetaData> getTypeMetaDatas() {
            return of.getTypeMetaDatas();
        }

        @Override
        public List<EntryPoint> getEntryPoints() {
            return of.getEntryPoints();
        }
    }

    /**
     * What the rules find for and against single placements, and what they rule out; no cautions.
     *
     * @param subjects {@link Placed} or {@link Paired}
     * @return by subject in the order given; by rule id within a subject
     */
    public List<Finding> score(Setting setting, List<?> subjects) {
        return judge(scoring, setting, subjects);
    }

    /**
     * What the rules warn of.
     *
     * @param subjects {@link Placed} and {@link Paired}
     * @return by subject, those of the setting first, then in the order given; by rule id within a subject
     */
    public List<Finding> warn(Setting setting, List<?> subjects) {
        return judge(warning, setting, subjects);
    }

    private List<Finding> judge(KieBase engine, Setting setting, List<?> subjects) {
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
