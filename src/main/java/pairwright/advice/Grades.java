package pairwright.advice;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import pairwright.model.Catalogue;
import pairwright.model.Coverage.Verdict;
import pairwright.model.Grade;
import pairwright.rules.Finding;

/** Holds what can be had against what the catalogue asks of a grade. */
final class Grades {
    private final Grade well;
    private final Grade poorly;

    /** @throws IllegalStateException where the catalogue has no such grades */
    Grades(Catalogue catalogue) {
        this.well = grade(catalogue, Verdict.WELL);
        this.poorly = grade(catalogue, Verdict.POORLY);
    }

    private static Grade grade(Catalogue catalogue, Verdict verdict) {
        Grade grade = catalogue.grades().get(verdict.id());
        if (grade == null) {
            throw new IllegalStateException("the catalogue has no grade " + verdict.id() + ". Add catalogue/grades/" + verdict.id() + ".yaml");
        }
        return grade;
    }

    /** @param best with the whole catalogue; null where nothing can be used */
    Verdict of(Candidate candidate, Candidate best) {
        return meets(well, candidate, best) ? Verdict.WELL : meets(poorly, candidate, best) ? Verdict.POORLY : Verdict.NOT_AT_ALL;
    }

    private static boolean meets(Grade grade, Candidate candidate, Candidate best) {
        return candidate.centipoints() >= hundredths(grade.leastPoints())
                && (best == null || grade.mostBehindPoints() == null
                        || best.centipoints() - candidate.centipoints() <= hundredths(grade.mostBehindPoints()))
                && (grade.decidingPoints() == null || deciding(grade.decidingPoints(), candidate).isEmpty());
    }

    /** What decides against it. */
    List<Finding> deciding(Candidate candidate) {
        return well.decidingPoints() == null ? List.of() : deciding(well.decidingPoints(), candidate);
    }

    /** The same rule at both microphones of a pair is one reason, with the points of both. */
    private static List<Finding> deciding(double points, Candidate candidate) {
        Map<String, Long> byRule = new HashMap<>();
        candidate.first().findings().forEach(one -> byRule.merge(one.rule().id(), candidate.isSingle() ? one.centipoints() : Judged.half(one), Long::sum));
        if (!candidate.isSingle()) {
            candidate.second().findings().forEach(one -> byRule.merge(one.rule().id(), Judged.half(one), Long::sum));
            candidate.pairFindings().forEach(one -> byRule.merge(one.rule().id(), one.centipoints(), Long::sum));
        }
        if (byRule.values().stream().noneMatch(sum -> sum <= -hundredths(points))) {
            return List.of();
        }
        Stream<Finding> all = candidate.isSingle() ? candidate.first().findings().stream()
                : Stream.of(candidate.first().findings(), candidate.second().findings(), candidate.pairFindings()).flatMap(List::stream);
        return all.filter(one -> byRule.get(one.rule().id()) <= -hundredths(points)).toList();
    }

    private static long hundredths(double points) {
        return Math.round(points * 100);
    }
}
