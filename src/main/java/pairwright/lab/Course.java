package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pairwright.model.Catalogue;
import pairwright.model.Lesson;
import pairwright.rules.RuleBase;
import pairwright.rules.RuleInfo;

/** An outline of lessons about all rules that are marked as teachable. */
public final class Course {
    private final List<Part> parts;
    private final List<RuleInfo> left;

    private Course(List<Part> parts, List<RuleInfo> left) {
        this.parts = List.copyOf(parts);
        this.left = List.copyOf(left);
    }

    /**
     * A lesson with its rules.
     *
     * @param lesson as the catalogue has it
     * @param rules that it is about, by id
     */
    public record Part(Lesson lesson, List<RuleInfo> rules) {
        public Part {
            rules = List.copyOf(rules);
        }
    }

    /** As the catalogue has it, about the rules there are. */
    public static Course of(Catalogue catalogue, RuleBase rules) {
        List<Lesson> lessons = catalogue.lessons().values().stream().sorted(Comparator.comparingInt(Lesson::number).thenComparing(Lesson::id)).toList();
        Set<String> named = new HashSet<>();
        lessons.forEach(lesson -> named.addAll(listed(lesson.rules())));
        List<RuleInfo> teachable = rules.rules().stream().filter(RuleInfo::teachable).toList();
        List<Part> parts = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (Lesson lesson : lessons) {
            List<RuleInfo> of = teachable.stream().filter(rule -> listed(lesson.rules()).contains(rule.id())
                    || !named.contains(rule.id()) && listed(lesson.topics()).contains(rule.concern() + "/" + rule.topic())).toList();
            of.forEach(rule -> taken.add(rule.id()));
            parts.add(new Part(lesson, of));
        }
        return new Course(parts, teachable.stream().filter(rule -> !taken.contains(rule.id())).toList());
    }

    private static List<String> listed(List<String> given) {
        return given == null ? List.of() : given;
    }

    /** In their order. */
    public List<Part> parts() {
        return parts;
    }

    /** Rules that could be taught and are in no lesson; none as the program comes, some where a house has rules of its own. */
    public List<RuleInfo> left() {
        return left;
    }

    /** All of it. */
    public int minutes() {
        return parts.stream().mapToInt(part -> part.lesson().minutes()).sum();
    }
}
