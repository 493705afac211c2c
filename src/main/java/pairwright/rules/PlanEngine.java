package pairwright.rules;

import java.util.List;

/**
 * The rules that judge a plan, apart from those that judge a question: a question never meets them, so that it costs nothing that they are there.
 * Made ready when the first plan is judged. Safe to share between threads.
 */
final class PlanEngine {
    private static final String PACKAGE = "rules." + RuleInfo.PLAN + ".";

    private final ClassLoader loader;
    private final List<String> models;
    private final List<RuleInfo> infos;
    private Engine engine;

    /** @param models names of the generated classes, which are loaded when they are needed */
    PlanEngine(ClassLoader loader, List<String> models, List<RuleInfo> infos) {
        this.loader = loader;
        this.models = models;
        this.infos = infos;
    }

    /** Whether a generated class holds rules for plans. */
    static boolean owns(String model) {
        return model.startsWith(PACKAGE);
    }

    /** What its rules say of themselves. */
    List<RuleInfo> infos() {
        return infos;
    }

    synchronized Engine engine() {
        if (engine == null) {
            engine = new Engine(models.stream().map(name -> RuleBase.model(loader, name)).toList(), infos);
        }
        return engine;
    }
}
