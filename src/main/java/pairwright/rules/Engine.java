package pairwright.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drools.model.EntryPoint;
import org.drools.model.Global;
import org.drools.model.Model;
import org.drools.model.Query;
import org.drools.model.Rule;
import org.drools.model.TypeMetaData;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;
import pairwright.model.Effect;

/** Compiled rules made ready to judge. Never changes; safe to share between threads. */
final class Engine {
    private final List<Model> models;
    private final Map<String, RuleInfo> byId = new HashMap<>();
    /** What moves a score or rules out: asked of every placement that is possible. */
    private final Way scoring;
    /** What only warns: asked of the few that are shown. */
    private final Way warning;

    /** How some rules are asked: one after another where all of them can be, else by the engine; both are null where there are no rules. */
    private record Way(OneByOne oneByOne, KieBase engine) {
    }

    Engine(List<Model> models, List<RuleInfo> infos) {
        this.models = models;
        infos.forEach(info -> byId.put(info.id(), info));
        this.scoring = way(ids(false));
        this.warning = way(ids(true));
    }

    private Way way(Set<String> ids) {
        OneByOne oneByOne = OneByOne.of(models, ids);
        return new Way(oneByOne, oneByOne == null ? ready(ids) : null);
    }

    /** The rules it has, by id. */
    Map<String, RuleInfo> rules() {
        return byId;
    }

    /** Those that warn, or all others. */
    Set<String> ids(boolean warn) {
        Set<String> ids = new HashSet<>();
        byId.values().stream().filter(info -> (info.effect() == Effect.CAUTION) == warn).forEach(info -> ids.add(info.id()));
        return ids;
    }

    /** The same with some of its rules only. */
    Engine only(Set<String> ids) {
        return new Engine(models, byId.values().stream().filter(info -> ids.contains(info.id())).toList());
    }

    private KieBase ready(Set<String> ids) {
        if (ids.isEmpty()) {
            return null;
        }
        List<Model> parts = new ArrayList<>();
        models.forEach(model -> parts.add(new Part(model, model.getRules().stream().filter(rule -> ids.contains(rule.getName())).toList())));
        return KieBaseBuilder.createKieBaseFromModel(parts);
    }

    /**
     * Lets the rules that warn, or all others, speak.
     *
     * @throws RuntimeException what a rule trips over
     */
    void judge(boolean warn, Setting setting, List<?> subjects, Out out) {
        OneByOne oneByOne = (warn ? warning : scoring).oneByOne();
        if (oneByOne != null) {
            Judging judging = new Judging();
            judging.begin();
            int before = out.findings().size();
            oneByOne.judge(setting, subjects, out);
            judging.facts = subjects.size() + 1;
            judging.firings = out.findings().size() - before;
            judging.commit();
            return;
        }
        List<Object> facts = new ArrayList<>(subjects.size() + 1);
        facts.add(setting);
        facts.addAll(subjects);
        judge(warn, facts, out);
    }

    /**
     * The same for facts of any kind, by rules that need the engine.
     *
     * @throws RuntimeException what a rule trips over
     */
    void judge(boolean warn, List<?> facts, Out out) {
        KieBase rules = (warn ? warning : scoring).engine();
        if (rules != null) {
            judge(rules, facts, out);
        }
    }

    /** All rules that do not warn, or those that do, made ready for the engine whether they need it or not: to see that both say the same. */
    KieBase byTheEngine(boolean warn) {
        return ready(ids(warn));
    }

    /** What they were made of. */
    List<Model> models() {
        return models;
    }

    static void judge(KieBase rules, List<?> facts, Out out) {
        KieSession session = rules.newKieSession();
        Judging judging = new Judging();
        judging.begin();
        try {
            session.setGlobal("out", out);
            facts.forEach(session::insert);
            judging.firings = session.fireAllRules();
            judging.facts = facts.size();
        } finally {
            session.dispose();
            judging.commit();
        }
    }

    /** Some rules of a model. */
    private record Part(Model of, List<Rule> rules) implements Model {
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
        public List<Rule> getRules() {
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
}
