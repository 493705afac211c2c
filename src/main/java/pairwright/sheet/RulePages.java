package pairwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import pairwright.catalogue.Shown;
import pairwright.model.Effect;
import pairwright.model.Nearest;
import pairwright.rules.RuleBases;
import pairwright.rules.RuleInfo;
import pairwright.sheet.ReadingParts.Fact;
import pairwright.sheet.ReadingParts.Group;
import pairwright.sheet.ReadingParts.Line;
import pairwright.sheet.ReadingParts.Link;

/** The rules to read, all of them and one by one. */
public final class RulePages {
    /** Safety first; a concern that is not listed comes last. */
    private static final List<String> ORDER = List.of("safety", "handling", "power", "level", "noise", "pickup", "tone", "pairing", "memory", "plan", RuleBases.HOUSE);
    private static final int MOST_NEAR = 6;

    private RulePages() {
    }

    /**
     * What the list shows.
     *
     * @param faults of the form, with what to do; empty for none
     */
    public record Shelves(String words, List<Choice> concerns, List<Choice> effects, List<String> faults, int found, int all, String version,
            List<Group> groups) {
    }

    /** What the page of a rule shows. */
    public record Content(String id, String effect, String means, String severity, List<Sentences.Piece> says, String why, List<Fact> facts, List<Statement> practice,
            List<String> fires, List<String> silent, boolean house, Link before, Link after, List<Link> topic) {
    }

    /** A statement of the trade, and the other rules that embody it. */
    public record Statement(String says, List<Link> others) {
    }

    static Page list(Desk desk) {
        List<String> faults = new ArrayList<>();
        Visit visit = desk.visit();
        List<RuleInfo> all = desk.known().rules().rules();
        String words = visit.first("words") == null ? "" : visit.first("words");
        if (words.length() > Catalogues.LONGEST_SEARCH) {
            faults.add("These are " + words.length() + " characters. At most " + Catalogues.LONGEST_SEARCH + " are searched for: use fewer words.");
            words = Shown.of(words);
        }
        Set<String> concerns = new TreeSet<>(Comparator.comparingInt(RulePages::order).thenComparing(Comparator.naturalOrder()));
        all.forEach(rule -> concerns.add(rule.concern()));
        Map<String, String> effects = effects();
        String concern = known("concern", visit, concerns, faults);
        String effect = known("effect", visit, effects.keySet(), faults);
        String[] asked = words.toLowerCase(Locale.ROOT).split(" ");
        List<RuleInfo> found = all.stream().filter(rule -> concern == null || rule.concern().equals(concern))
                .filter(rule -> effect == null || effect(rule).equals(effect)).filter(rule -> holds(rule, asked)).toList();
        List<Group> groups = concerns.stream().map(one -> new Group(one, title(one), found.stream().filter(rule -> rule.concern().equals(one))
                .map(rule -> new Line(desk.at().rule(rule), shortly(desk, rule) + (isOfTheHouse(rule) ? ", house" : ""), "")).toList())).filter(group -> !group.lines().isEmpty()).toList();
        return desk.page(faults.isEmpty() ? 200 : 400, "rules", desk.rulesItself(), "rules", new Shelves(words,
                concerns.stream().map(one -> new Choice(one, title(one), one.equals(concern))).toList(),
                effects.entrySet().stream().map(one -> new Choice(one.getKey(), one.getValue(), one.getKey().equals(effect))).toList(),
                faults, found.size(), all.size(), desk.known().rules().version(), groups));
    }

    /** One rule; null for none of that id, however it is written. */
    static Page of(Desk desk, String id) {
        RuleInfo rule = find(desk, id);
        return rule == null ? null : desk.page("rule", desk.rule(rule.title(), rule.id(), desk.at().within("/rules", rule.concern(), title(rule.concern()))),
                "rule", content(desk, rule));
    }

    static RuleInfo find(Desk desk, String id) {
        return desk.known().rules().rule(id.toUpperCase(Locale.ROOT));
    }

    private static Content content(Desk desk, RuleInfo rule) {
        Measures measures = desk.measures();
        List<RuleInfo> all = desk.known().rules().rules();
        List<RuleInfo> topic = all.stream().filter(one -> one.concern().equals(rule.concern()) && one.topic().equals(rule.topic())).toList();
        int at = topic.indexOf(rule);
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Concern", title(rule.concern()) + ", " + rule.topic().replace('-', ' '), ""));
        facts.add(new Fact("Basis", ReadingWords.basis(rule.on()), measures.sentence(rule.basis()) + "."));
        facts.add(new Fact("For exercises", rule.teachable() ? "yes" : "no", rule.teachable() ? "One can be built on it." : ""));
        return new Content(rule.id(), shortly(desk, rule), means(rule), rule.severity() == null ? "" : rule.severity().id(), Sentences.pieces(desk, rule.says()),
                measures.sentence(rule.why()), facts,
                rule.practice().stream().map(one -> new Statement(measures.sentence(one.says()), all.stream()
                        .filter(other -> !other.id().equals(rule.id()) && other.practice().stream().anyMatch(theirs -> theirs.id().equals(one.id())))
                        .map(desk.at()::rule).toList())).toList(),
                cases(measures, rule, true), cases(measures, rule, false), isOfTheHouse(rule),
                at > 0 ? desk.at().rule(topic.get(at - 1)) : null, at < topic.size() - 1 ? desk.at().rule(topic.get(at + 1)) : null,
                topic.stream().filter(one -> one != rule).map(desk.at()::rule).toList());
    }

    private static List<String> cases(Measures measures, RuleInfo rule, boolean fires) {
        return rule.cases().stream().filter(one -> one.fires() == fires).map(one -> measures.sentence(one.says())).toList();
    }

    /** Rules whose ids come near one there is not. */
    static List<Link> near(Desk desk, String id) {
        String asked = id.toUpperCase(Locale.ROOT);
        List<RuleInfo> all = desk.known().rules().rules();
        String prefix = asked.length() < 3 ? asked : asked.substring(0, 3);
        List<String> ids = all.stream().map(RuleInfo::id).toList();
        List<RuleInfo> near = new ArrayList<>();
        Nearest.to(asked, ids).map(desk.known().rules()::rule).ifPresent(near::add);
        all.stream().filter(rule -> !near.contains(rule) && !prefix.isEmpty() && rule.id().startsWith(prefix)).limit(MOST_NEAR - near.size()).forEach(near::add);
        return near.stream().map(desk.at()::rule).toList();
    }

    private static String known(String name, Visit visit, Set<String> known, List<String> faults) {
        String given = visit.first(name);
        if (given != null && !known.contains(given)) {
            faults.add("There is no " + name + " \u201c" + Shown.of(given) + "\u201d. " + Nearest.remedy(Shown.of(given), known) + ".");
            return null;
        }
        return given;
    }

    private static boolean holds(RuleInfo rule, String[] words) {
        String text = (rule.id() + " " + rule.title() + " " + rule.topic() + " " + rule.says() + " " + rule.why()).toLowerCase(Locale.ROOT);
        for (String word : words) {
            if (!text.contains(word)) {
                return false;
            }
        }
        return true;
    }

    private static Map<String, String> effects() {
        Map<String, String> effects = new LinkedHashMap<>();
        effects.put("danger", "Danger: can harm a person");
        effects.put("care", "Care: can harm gear or a take");
        effects.put("note", "Note: good to know");
        effects.put(Effect.RULES_OUT.id(), "Rules out");
        effects.put(Effect.AGAINST.id(), "Against");
        effects.put(Effect.FOR.id(), "For");
        return effects;
    }

    private static String effect(RuleInfo rule) {
        return rule.effect() == Effect.CAUTION ? rule.severity().id() : rule.effect().id();
    }

    private static String shortly(Desk desk, RuleInfo rule) {
        return switch (rule.effect()) {
            case FOR -> "for, " + desk.measures().signed(rule.points(), 2);
            case AGAINST -> "against, " + desk.measures().signed(rule.points(), 2);
            case RULES_OUT -> "rules out";
            case CAUTION -> rule.severity().id();
        };
    }

    private static boolean isOfTheHouse(RuleInfo rule) {
        return rule.concern().equals(RuleBases.HOUSE);
    }

    private static String means(RuleInfo rule) {
        return switch (rule.effect()) {
            case FOR -> "Points where it speaks in full; where its reason grows with a number, a share of them.";
            case AGAINST -> "Points it takes where it speaks in full; where its reason grows with a number, a share of them.";
            case RULES_OUT -> "The set-up is not offered; the answer says so.";
            case CAUTION -> switch (rule.severity()) {
                case DANGER -> "A caution: this can harm a person.";
                case CARE -> "A caution: this can harm gear or a take.";
                case NOTE -> "A caution: good to know.";
            };
        };
    }

    private static int order(String concern) {
        int at = ORDER.indexOf(concern);
        return at < 0 ? ORDER.size() : at;
    }

    private static String title(String concern) {
        return concern.equals(RuleBases.HOUSE) ? "Of the house" : concern.substring(0, 1).toUpperCase(Locale.ROOT) + concern.substring(1);
    }
}
