package pairwright.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.drools.model.Condition;
import org.drools.model.Consequence;
import org.drools.model.Constraint;
import org.drools.model.Model;
import org.drools.model.Pattern;
import org.drools.model.Rule;
import org.drools.model.SingleConstraint;
import org.drools.model.Variable;
import org.drools.model.functions.IntrospectableLambda;
import org.drools.model.functions.Predicate1;
import org.drools.model.functions.Predicate2;

/**
 * Compiled rules asked one after another, without an engine: the same conditions and the same consequences as they stand in the model. An engine pays where many facts
 * meet; a score is of one placement or pair at a time, and there its bookkeeping was more than half of an answer. It takes rules of one kind only: of the setting,
 * of one subject, or of both. Never changes; safe to share between threads.
 */
final class OneByOne {
    private static final Set<Class<?>> SUBJECTS = Set.of(Placed.class, Paired.class);

    private final Line[] lines;

    /**
     * One rule.
     *
     * @param of what it asks for beside the setting; null for nothing
     * @param first what it asks of the setting alone
     * @param then what it asks of the subject, with the setting or without
     * @param says its consequence
     */
    private record Line(String id, Class<?> of, Check[] first, Check[] then, Says says) {
    }

    @FunctionalInterface
    private interface Check {
        boolean holds(Setting setting, Object subject) throws Exception;
    }

    @FunctionalInterface
    private interface Says {
        void to(Setting setting, Object subject, Out out) throws Exception;
    }

    private OneByOne(List<Line> lines) {
        this.lines = lines.toArray(Line[]::new);
    }

    /** Those of some models that are among the ids; null where one of them is of another kind. */
    static OneByOne of(List<Model> models, Set<String> ids) {
        List<Line> lines = new ArrayList<>();
        for (Model model : models) {
            for (Rule rule : model.getRules()) {
                if (ids.contains(rule.getName())) {
                    Line line = line(rule);
                    if (line == null) {
                        return null;
                    }
                    lines.add(line);
                }
            }
        }
        return new OneByOne(lines);
    }

    /**
     * Lets all of them speak.
     *
     * @throws RuntimeException what a rule trips over
     */
    void judge(Setting setting, List<?> subjects, Out out) {
        Object[] ofAll = subjects.toArray();
        for (Line line : lines) {
            try {
                if (!hold(line.first(), setting, null)) {
                    continue;
                }
                if (line.of() == null) {
                    line.says().to(setting, null, out);
                    continue;
                }
                for (Object subject : ofAll) {
                    if (line.of().isInstance(subject) && hold(line.then(), setting, subject)) {
                        line.says().to(setting, subject, out);
                    }
                }
            } catch (RuntimeException tripped) {
                throw tripped;
            } catch (Exception tripped) {
                throw new IllegalStateException("rule " + line.id() + " cannot be asked", tripped);
            }
        }
    }

    private static boolean hold(Check[] checks, Setting setting, Object subject) throws Exception {
        for (Check check : checks) {
            if (!check.holds(setting, subject)) {
                return false;
            }
        }
        return true;
    }

    private static Line line(Rule rule) {
        Variable<?> setting = null;
        Variable<?> subject = null;
        List<Check> first = new ArrayList<>();
        List<Check> then = new ArrayList<>();
        for (Condition condition : rule.getView().getSubConditions()) {
            if (condition.getType() == Condition.Type.CONSEQUENCE) {
                continue;
            }
            if (!(condition instanceof Pattern<?> pattern) || condition.getType() != Condition.Type.PATTERN || !pattern.getBindings().isEmpty()) {
                return null;
            }
            boolean ofSetting = pattern.getPatternVariable().getType() == Setting.class;
            if (ofSetting ? setting != null || subject != null : subject != null) {
                return null;
            }
            if (!ofSetting && !SUBJECTS.contains(pattern.getPatternVariable().getType())) {
                return null;
            }
            setting = ofSetting ? pattern.getPatternVariable() : setting;
            subject = ofSetting ? subject : pattern.getPatternVariable();
            if (!checks(pattern.getConstraint(), setting, subject, ofSetting ? first : then)) {
                return null;
            }
        }
        Says says = says(rule, setting, subject);
        return says == null ? null : new Line(rule.getName(), subject == null ? null : subject.getType(), first.toArray(Check[]::new), then.toArray(Check[]::new), says);
    }

    /** Whether all that a constraint asks was understood. */
    private static boolean checks(Constraint constraint, Variable<?> setting, Variable<?> subject, List<Check> to) {
        if (constraint == SingleConstraint.TRUE) {
            return true;
        }
        if (constraint.getType() == Constraint.Type.MULTIPLE || constraint.getType() == Constraint.Type.AND) {
            return constraint.getChildren().stream().allMatch(child -> checks(child, setting, subject, to));
        }
        if (!(constraint instanceof SingleConstraint single) || single.isTemporal()) {
            return false;
        }
        Check check = check(single, setting, subject);
        return check != null && to.add(check);
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // a condition takes what its variables are, and says so only in its name
    private static Check check(SingleConstraint single, Variable<?> setting, Variable<?> subject) {
        Variable<?>[] of = single.getVariables();
        if (!Arrays.stream(of).allMatch(one -> one == setting || one == subject)) {
            return null;
        }
        if (of.length == 1) {
            Predicate1 asks = bare(single.getPredicate1(), Predicate1.class);
            return of[0] == setting ? (s, x) -> asks.test(s) : (s, x) -> asks.test(x);
        }
        if (of.length == 2 && of[0] != of[1]) {
            Predicate2 asks = bare(single.getPredicate2(), Predicate2.class);
            return of[0] == setting ? (s, x) -> asks.test(s, x) : (s, x) -> asks.test(x, s);
        }
        return null;
    }

    /** A condition without the wrapping that is there to describe it. */
    private static <P> P bare(P asks, Class<P> kind) {
        return asks instanceof IntrospectableLambda wrapped && kind.isInstance(wrapped.getLambda()) ? kind.cast(wrapped.getLambda()) : asks;
    }

    private static Says says(Rule rule, Variable<?> setting, Variable<?> subject) {
        Consequence consequence = rule.getDefaultConsequence();
        if (rule.getConsequences().size() != 1 || consequence.isUsingDrools() || consequence.isBreaking()) {
            return null;
        }
        Variable<?>[] of = consequence.getVariables();
        int[] which = new int[of.length]; // 0 the setting, 1 the subject, 2 where it writes to
        for (int i = 0; i < of.length; i++) {
            which[i] = of[i] == setting ? 0 : of[i] == subject ? 1 : of[i].getType() == Out.class ? 2 : -1;
            if (which[i] < 0) {
                return null;
            }
        }
        return (s, x, out) -> {
            Object[] given = new Object[which.length];
            for (int i = 0; i < given.length; i++) {
                given[i] = which[i] == 0 ? s : which[i] == 1 ? x : out;
            }
            consequence.getBlock().execute(given);
        };
    }
}
