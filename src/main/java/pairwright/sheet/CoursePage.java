package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pairwright.advice.Knowledge;
import pairwright.lab.Course;
import pairwright.lab.Coverage;
import pairwright.lab.CoverageDesk;
import pairwright.lab.KindInfo;
import pairwright.lab.Kinds;
import pairwright.model.Lesson;
import pairwright.rules.RuleInfo;
import pairwright.sheet.ReadingParts.Grounds;
import pairwright.sheet.ReadingParts.Link;

/** Lessons about everything that can be taught, and which rules and calculations the exercises touch. */
public final class CoursePage {
    private static final Kinds KINDS = new Kinds();

    private CoursePage() {
    }

    /** What is done in a lesson: a kind of exercise at some levels, each of which leads to one. */
    public record Drill(String kind, List<Link> levels) {
    }

    /** A lesson. */
    public record LessonView(String id, int number, String name, String aim, int minutes, List<Drill> drills, List<Link> rules, Grounds grounds) {
    }

    /** A rule or a calculation, and the exercises that rest on it; empty for none. */
    public record Touched(Link what, String by) {
    }

    /**
     * What the page shows.
     *
     * @param left rules that could be taught and are in no lesson
     * @param counted how the coverage was counted, in a sentence; null while it is counted
     * @param counting how far it is, or why it cannot be counted and what to do; null where it is counted
     * @param again where to look again; null where that helps nothing
     * @param untouched what no exercise has touched
     * @param touched what some have
     */
    public record Content(List<LessonView> lessons, String whole, List<Link> left, String counted, String counting, String again, List<Link> untouched, List<Touched> touched) {
    }

    /** The page; without the coverage while that is still counted. */
    public static String of(Html html, Knowledge known, Visit visit, CoverageDesk.State state) {
        Optional<Coverage> coverage = state.coverage();
        Desk desk = new Desk(html, known, visit);
        Course course = Course.of(known.catalogue(), known.rules());
        List<LessonView> lessons = course.parts().stream().map(part -> lesson(desk, part)).toList();
        String whole = lessons.size() + " lessons, " + desk.measures().number(course.minutes() / 60.0, 0) + " hours in all, about "
                + course.parts().stream().mapToInt(part -> part.rules().size()).sum() + " rules.";
        LabLinks links = new LabLinks(desk);
        Content content = new Content(lessons, whole, course.left().stream().map(desk.at()::rule).toList(),
                coverage.map(one -> one.drawn() + " exercises were drawn to count this, " + one.each() + " of each kind at each level. What is rare may be missed.").orElse(null),
                counting(state), state.failed() == null ? visit.same(visit.reader().imperial()) : null, coverage.map(one -> one.untouched().stream().map(row -> links.rests(row.id())).toList()).orElse(List.of()),
                coverage.map(one -> one.rows().stream().filter(Coverage.Row::touched).map(row -> new Touched(links.rests(row.id()), by(row))).toList()).orElse(List.of()));
        return html.fill("lab/course.jte", Map.of("frame", LabFrame.below(html, visit, "Course", List.of(), ""), "content", content));
    }

    private static String counting(CoverageDesk.State state) {
        return state.coverage().isPresent() ? null : state.failed() == null ? "This is being counted: " + Math.max(1, state.begun()) + " of " + state.of() + " kinds of exercises. That takes half a minute or so."
                : "This cannot be counted: " + state.failed() + (state.failed().endsWith(".") ? "" : ".") + " Most often a rule of the house stops it: mend that, look with \"pairwright check\", and it is counted anew.";
    }

    private static LessonView lesson(Desk desk, Course.Part part) {
        Lesson lesson = part.lesson();
        List<Drill> drills = lesson.exercises().stream().map(drill -> new Drill(name(drill.kind()), drill.levels().stream()
                .map(level -> desk.at().link(PracticePage.address(drill.kind(), level), "level " + level)).toList())).toList();
        List<Link> rules = part.rules().stream().map((RuleInfo rule) -> desk.at().rule(rule)).toList();
        return new LessonView(lesson.id(), lesson.number(), lesson.name(), lesson.aim(), lesson.minutes(), drills, rules, desk.grounds(lesson.confidence(), lesson.basis()));
    }

    private static String name(String kind) {
        return KINDS.kind(kind).map(one -> one.info().name()).orElse(kind);
    }

    /** "Choose and justify 1 to 5; Put it right 2, 4". */
    private static String by(Coverage.Row row) {
        return row.levels().entrySet().stream().map(kind -> name(kind.getKey()) + " " + levels(kind.getValue())).collect(Collectors.joining("; "));
    }

    private static String levels(List<Integer> levels) {
        return levels.size() == KindInfo.LEVELS ? "1 to " + KindInfo.LEVELS : levels.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
