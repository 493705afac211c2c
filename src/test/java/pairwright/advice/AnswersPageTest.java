package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pairwright.model.Caution;
import pairwright.model.Effect;
import pairwright.model.Habit;
import pairwright.model.HabitRank;
import pairwright.model.Limits;
import pairwright.model.Option;
import pairwright.model.PairRecipe;
import pairwright.model.Pattern;
import pairwright.model.Placement;
import pairwright.model.Question;
import pairwright.model.Reason;
import pairwright.model.Severity;
import pairwright.model.Source;
import pairwright.model.SourceFamily;
import pairwright.model.Way;
import pairwright.rules.Figure;
import pairwright.rules.Finding;
import pairwright.rules.RuleBase;

/** docs/answers.md is made by asking, by this test: what is said of every source, and what became of the trade's own picks. */
class AnswersPageTest {
    private static final Path PAGE = Path.of("docs/answers.md");
    private static final int REASONS = 4;

    private final Knowledge knowledge = Asking.KNOWLEDGE.current();
    private final RuleBase rules = knowledge.rules();
    private final StringBuilder page = new StringBuilder(600_000);

    @Test
    void thePageOfAnswersIsUpToDate() throws IOException {
        write();
        if (Boolean.getBoolean("rewrite")) {
            Files.writeString(PAGE, page);
        }
        assertEquals(page.toString(), Files.exists(PAGE) ? Files.readString(PAGE) : "",
                "docs/answers.md is out of date. Rewrite it with: mvn -q test -Dtest=AnswersPageTest -Drewrite=true");
    }

    private void write() {
        page.append("""
                # The answers

                Made by asking; do not edit. For every source the three options of the plain question, with nothing but the source said: score,
                technique, microphones and places, the reasons that weigh most, and the cautions. Then the first option for each way of playing
                that changes it, and what became of the usual choices of the trade (`habits` and `pairs` of the entry): shown, or behind the
                last option that is shown, and by which rules. Points in brackets; sentences of the rules are in [rules.md](rules.md).

                """);
        for (SourceFamily family : SourceFamily.values()) {
            page.append("- [").append(family.id()).append("](#").append(family.id()).append(")\n");
        }
        for (SourceFamily family : SourceFamily.values()) {
            page.append("\n## ").append(family.id()).append('\n');
            knowledge.catalogue().sources().values().stream().filter(source -> source.family() == family).forEach(this::source);
        }
    }

    private void source(Source source) {
        page.append("\n### ").append(source.name()).append("\n\n");
        Scene scene = scene(source, List.of());
        Advisor.Verdict verdict = Advisor.judge(scene, rules);
        List<Candidate> chosen = Choice.of(verdict.candidates(), Usual.OPTIONS);
        List<Option> options = verdict.options(rules, Usual.OPTIONS);
        options.forEach(this::option);
        cautions(options);
        for (Way way : source.ways()) {
            Option first = Advisor.judge(scene(source, List.of(way.id())), rules).options(rules, 1).get(0);
            page.append("- *").append(way.id()).append("*: ").append(title(first)).append('\n');
        }
        page.append('\n');
        for (Habit habit : Placements.habits(scene)) {
            page.append(of(habit, verdict, chosen));
        }
        for (PairRecipe recipe : source.pairs()) {
            page.append(of(recipe, verdict, chosen));
        }
    }

    private Scene scene(Source source, List<String> ways) {
        return Scene.of(new Question("", source.id(), ways, List.of(), null, List.of(), Limits.NONE, List.of(), List.of(), List.of(),
                Usual.OPTIONS, null, null), knowledge.catalogue());
    }

    private void option(Option option) {
        page.append(option.rank()).append(". **").append(points(option.score())).append("** ").append(title(option)).append("  \n   ");
        page.append(option.reasons().stream().limit(REASONS).map(AnswersPageTest::reason).collect(Collectors.joining(" "))).append('\n');
    }

    private static String title(Option option) {
        return (option.mics().size() > 1 ? option.techniqueName() + ": " : "")
                + option.mics().stream().map(AnswersPageTest::place).collect(Collectors.joining(" + "));
    }

    private static String place(Placement mic) {
        return mic.micType() + (mic.name().endsWith(mic.pattern().id()) || electrical(mic.pattern()) ? "" : " " + mic.pattern().id()) + " at "
                + mic.position() + (electrical(mic.pattern()) ? "" : " " + Figure.forPeople(mic.distanceM(), "m"))
                + (mic.aimDegrees() == 0 ? "" : " turned " + Math.round(mic.aimDegrees()) + " degrees")
                + (mic.pad() ? " padded" : "") + (mic.invertPolarity() ? " inverted" : "");
    }

    private static boolean electrical(Pattern pattern) {
        return pattern == Pattern.CONTACT || pattern == Pattern.ELECTRICAL;
    }

    private static String reason(Reason reason) {
        return reason.says() + " (" + reason.rule() + " " + points(reason.points()) + ")";
    }

    private void cautions(List<Option> options) {
        page.append('\n');
        List<String> said = new ArrayList<>();
        for (Severity severity : List.of(Severity.DANGER, Severity.CARE, Severity.NOTE)) {
            for (Option option : options) {
                for (Caution caution : option.cautions()) {
                    if (caution.severity() == severity && !said.contains(caution.says())) {
                        said.add(caution.says());
                        String where = options.stream().filter(one -> one.cautions().stream().anyMatch(other -> other.says().equals(caution.says())))
                                .map(one -> String.valueOf(one.rank())).collect(Collectors.joining(","));
                        page.append("- ").append(severity.id()).append(where.equals("1,2,3") ? "" : " [" + where + "]").append(": ")
                                .append(caution.says()).append(" (").append(caution.rule()).append(")\n");
                    }
                }
            }
        }
    }

    private String of(Habit habit, Advisor.Verdict verdict, List<Candidate> chosen) {
        String name = habit.rank().id() + ": " + habit.micType() + (habit.patterns().isEmpty() ? "" : " " + habit.patterns().stream()
                .map(Pattern::id).collect(Collectors.joining("/"))) + (habit.positions().isEmpty() ? "" : " at " + String.join(", ", habit.positions()));
        List<Candidate> holding = verdict.candidates().stream().filter(candidate -> holds(habit, candidate.first())
                || !candidate.isSingle() && holds(habit, candidate.second())).toList();
        return "- " + name + ". " + outcome(holding, habit.rank() == HabitRank.AVOID, habit.rank() != HabitRank.AVOID, chosen) + "\n";
    }

    private static boolean holds(Habit habit, Judged judged) {
        return judged.placed().mic().id().equals(habit.micType()) && judged.placed().habit() == habit.rank()
                && judged.placed().habitWhy().equals(habit.why());
    }

    private static String of(PairRecipe recipe, Advisor.Verdict verdict, List<Candidate> chosen) {
        List<Candidate> holding = verdict.candidates().stream().filter(candidate -> !candidate.isSingle()
                && candidate.technique().equals(recipe.technique())
                && holds(recipe.first(), candidate.first()) && holds(recipe.second(), candidate.second())).toList();
        return "- pair" + (recipe.seldom() ? ", seldom" : "") + ": " + recipe.technique() + ", " + part(recipe.first()) + " and " + part(recipe.second()) + ". " + outcome(holding, false, !recipe.seldom(), chosen) + "\n";
    }

    private static boolean holds(PairRecipe.Part part, Judged judged) {
        return part.position().equals(judged.placed().position().id())
                && (part.micTypes().isEmpty() || part.micTypes().contains(judged.placed().mic().id()));
    }

    private static String part(PairRecipe.Part part) {
        return (part.micTypes().isEmpty() ? "any" : String.join("/", part.micTypes())) + " at " + part.position();
    }

    private static String outcome(List<Candidate> holding, boolean avoid, boolean usual, List<Candidate> chosen) {
        if (holding.isEmpty()) {
            return avoid ? "Never offered." : marked("Ruled out", usual) + " or outside what was tried.";
        }
        for (int i = 0; i < chosen.size(); i++) {
            if (holding.contains(chosen.get(i))) {
                return (avoid ? "**Offered** as option " : "Option ") + (i + 1) + ".";
            }
        }
        Candidate best = holding.get(0);
        Candidate last = chosen.get(chosen.size() - 1);
        if (best.centipoints() > last.centipoints()) {
            Candidate like = chosen.stream().filter(shown -> shown.idea().equals(best.idea())).findFirst().orElse(chosen.get(0));
            return "A variant of option " + (chosen.indexOf(like) + 1) + ", " + behind(best, like) + ".";
        }
        return marked("Behind", usual) + ": " + behind(best, last) + against(best) + ".";
    }

    /** What an engineer expects to see and does not is set in bold, for whoever reads the page. */
    private static String marked(String word, boolean usual) {
        return usual ? "**" + word + "**" : word;
    }

    private static String behind(Candidate best, Candidate other) {
        return points(best.centipoints() / 100.0) + " against " + points(other.centipoints() / 100.0);
    }

    private static String against(Candidate candidate) {
        String rules = findings(candidate).stream().filter(finding -> finding.rule().effect() == Effect.AGAINST && finding.centipoints() <= -100)
                .map(finding -> finding.rule().id()).distinct().limit(REASONS).collect(Collectors.joining(", "));
        return rules.isEmpty() ? "" : "; against it " + rules;
    }

    private static List<Finding> findings(Candidate candidate) {
        List<Finding> all = new ArrayList<>(candidate.first().findings());
        if (!candidate.isSingle()) {
            all.addAll(candidate.second().findings());
            all.addAll(candidate.pairFindings());
        }
        return all;
    }

    private static String points(double points) {
        return String.format(Locale.ROOT, "%.1f", points);
    }
}
