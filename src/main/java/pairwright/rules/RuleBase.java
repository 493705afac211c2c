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
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.drools.model.Model;

/** A set of compiled rules. Never changes; safe to share between threads. */
public final class RuleBase {
    static final String FOLDER = "META-INF/pairwright/rules/";

    private final Engine builtIn;
    private final PlanEngine plans;
    private final String builtInVersion;
    private final HouseRules house;
    private final Consumer<HouseRuleStopped> told;
    private final Map<String, RuleInfo> byId = new HashMap<>();
    private final List<RuleInfo> rules;
    private final String version;

    private RuleBase(Engine builtIn, PlanEngine plans, String builtInVersion, HouseRules house, Consumer<HouseRuleStopped> told) {
        this.builtIn = builtIn;
        this.plans = plans;
        this.builtInVersion = builtInVersion;
        this.house = house;
        this.told = told;
        byId.putAll(builtIn.rules());
        plans.infos().forEach(info -> byId.put(info.id(), info));
        if (house != null) {
            byId.putAll(house.rules());
        }
        this.rules = byId.values().stream().sorted(Comparator.comparing(RuleInfo::id)).toList();
        this.version = house == null ? builtInVersion : RuleFolder.version(List.of(builtInVersion, house.version()));
    }

    /** The rules that ship with the program; they were compiled when it was built. */
    public static RuleBase builtIn() {
        ClassLoader own = RuleBase.class.getClassLoader();
        Map<Boolean, List<RuleInfo>> infos = RuleIndex.read(resource("index")).stream().collect(Collectors.partitioningBy(RuleInfo::ofAPlan));
        Map<Boolean, List<String>> models = resource("models").lines().collect(Collectors.partitioningBy(PlanEngine::owns));
        return new RuleBase(new Engine(models.get(false).stream().map(name -> model(own, name)).toList(), infos.get(false)),
                new PlanEngine(own, models.get(true), infos.get(true)), resource("version").strip(), null, null);
    }

    /**
     * The same with house rules, as compiled, beside them.
     *
     * @param stopped is told of house rules that fail, before whoever asked is
     */
    RuleBase with(RuleCompiler.Result compiled, String houseVersion, HouseRules.Most most, Consumer<HouseRuleStopped> stopped) {
        return new RuleBase(builtIn, plans, builtInVersion, HouseRules.of(compiled, houseVersion, RuleBase.class.getClassLoader(), most), stopped);
    }

    /**
     * What the rules find for and against single placements, and what they rule out; no cautions.
     *
     * @param subjects {@link Placed} or {@link Paired}
     * @return by subject in the order given; by rule id within a subject
     * @throws HouseRuleStopped where a house rule fails; then the question has to be judged anew
     */
    public List<Finding> score(Setting setting, List<?> subjects) {
        return judge(false, setting, subjects);
    }

    /**
     * What the rules warn of.
     *
     * @param subjects {@link Placed} and {@link Paired}
     * @return by subject, those of the setting first, then in the order given; by rule id within a subject
     * @throws HouseRuleStopped where a house rule fails; then the question has to be judged anew
     */
    public List<Finding> warn(Setting setting, List<?> subjects) {
        return judge(true, setting, subjects);
    }

    /**
     * What the rules of plans find for and against its parts, or what they warn of. They see no question, and the rules of a question see no plan.
     *
     * @param warn whether cautions are asked for; else what moves a score
     * @param parts of a plan
     * @return by part in the order given; by rule id within a part
     */
    public List<Finding> plan(boolean warn, List<? extends PlanFact> parts) {
        Out out = new Out(plans.engine().rules(), null);
        plans.engine().judge(warn, parts, out);
        return sorted(parts, out.findings());
    }

    private List<Finding> judge(boolean warn, Setting setting, List<?> subjects) {
        Out out = new Out(builtIn.rules(), null);
        builtIn.judge(warn, setting, subjects, out);
        List<Finding> all = out.findings();
        if (house != null) {
            all.addAll(ofTheHouse(warn, setting, subjects));
        }
        List<Object> ordered = new ArrayList<>(subjects.size() + 1);
        ordered.add(setting);
        ordered.addAll(subjects);
        return sorted(ordered, all);
    }

    /** The rules that ship with the program. */
    Engine engine() {
        return builtIn;
    }

    /** What the engine finds where the rules are usually asked without it; no house rules. */
    List<Finding> byTheEngine(boolean warn, Setting setting, List<?> subjects) {
        Out out = new Out(builtIn.rules(), null);
        List<Object> facts = new ArrayList<>(subjects);
        facts.add(0, setting);
        Engine.judge(builtIn.byTheEngine(warn), facts, out);
        return sorted(facts, out.findings());
    }

    private List<Finding> ofTheHouse(boolean warn, Setting setting, List<?> subjects) {
        try {
            return house.judge(warn, setting, subjects);
        } catch (HouseRules.Failed failed) {
            Set<String> ids = failed.problems().stream().map(Problem::rule).collect(Collectors.toCollection(TreeSet::new));
            HouseRuleStopped stopped = new HouseRuleStopped(this, new RuleBase(builtIn, plans, builtInVersion, house.without(ids), told),
                    failed.problems(), failed.getCause());
            told.accept(stopped);
            throw stopped;
        }
    }

    private static List<Finding> sorted(List<?> subjects, List<Finding> all) {
        Map<Object, List<Finding>> bySubject = new IdentityHashMap<>(subjects.size() * 2);
        subjects.forEach(subject -> bySubject.put(subject, new ArrayList<>()));
        all.forEach(finding -> bySubject.get(finding.subject()).add(finding));
        List<Finding> sorted = new ArrayList<>(all.size());
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

    /** The sentence of a finding on a part of a plan. */
    public String says(Finding finding) {
        return Sentence.says(finding);
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

    static Model model(ClassLoader loader, String name) {
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
}
