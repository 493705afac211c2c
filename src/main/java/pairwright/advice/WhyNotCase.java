package pairwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pairwright.model.Answer;
import pairwright.model.Effect;
import pairwright.model.FromLocker;
import pairwright.model.Limits;
import pairwright.model.Meaning;
import pairwright.model.MicFamily;
import pairwright.model.Mount;
import pairwright.model.Naming;
import pairwright.model.Option;
import pairwright.model.Position;
import pairwright.model.PowerNeed;
import pairwright.model.RuledOut;
import pairwright.model.Stock;
import pairwright.model.WhyNot;
import pairwright.rules.Finding;
import pairwright.rules.Placed;

/** One question and one type: where it stands, what it loses, what would change that. */
final class WhyNotCase {
    /** Better places that are ruled out are told up to this many, each by another rule. */
    private static final int MOST_RULED_OUT = 3;
    private static final int MOST_LOSSES_SAID = 3;

    private final Knowledge now;
    private final Meaning meaning;
    private final Scene scene;
    private final Wanted wanted;
    private final Advisor.Verdict verdict;
    private final List<Answer.Instead> limits = new ArrayList<>();
    /** Every placement of the type, as judged; of a type a limit leaves out as if it did not. */
    private final List<Judged> own;

    WhyNotCase(Knowledge now, Meaning meaning, Scene scene, Wanted wanted) {
        this.now = now;
        this.meaning = meaning;
        this.scene = scene;
        this.wanted = wanted;
        this.verdict = Advisor.judge(scene, now.rules());
        findLimits();
        boolean listed = Placements.within(scene.question().limits(), wanted.mic()) && wanted.mic().channels() <= scene.setting().channels()
                && scene.supply().atHand().has(wanted.mic().id());
        this.own = listed
                ? verdict.judged().stream().filter(one -> one.placed().mic().id().equals(wanted.mic().id())).toList()
                : Advisor.judged(scene, now.rules(), Placements.of(scene, wanted.mic()));
    }

    WhyNot answer() {
        List<Candidate> all = verdict.candidates();
        Candidate first = all.isEmpty() ? null : all.get(0);
        Judged best = own.stream().filter(one -> wanted.is(one.placed()) && !Placements.isSide(one.placed())).min(standing()).orElse(null);
        Candidate single = best == null ? null : all.stream().filter(one -> one.isSingle() && one.first() == best).findFirst().orElse(null);
        WhyNot.Standing standing = standing(best, first);
        Candidate pair = all.stream().filter(one -> !one.isSingle() && wanted.isIn(one)).findFirst().orElse(null);

        List<Candidate> shown = new ArrayList<>();
        Candidate mine = best == null ? null : Candidate.of(best);
        if (mine != null) {
            shown.add(mine);
        }
        if (first != null) {
            shown.add(first);
        }
        Explainer explainer = new Explainer(scene, now.rules(), shown);
        Option told = mine == null ? null : explainer.option(1, mine, null);
        Option firstTold = first == null ? null : explainer.option(1, first, null);
        List<WhyNot.Loss> losses = mine == null || first == null ? List.of() : losses(first, mine);
        List<RuledOut> ruledOut = ruledOut(best, standing);
        WhyNotChanges changes = new WhyNotChanges(now, scene, wanted, verdict, best, standing);
        List<WhyNot.Change> found = standing == WhyNot.Standing.FIRST ? List.of() : changes.find();
        List<String> types = all.stream().filter(Candidate::isSingle).map(Candidate::mainType).distinct().toList();
        Integer typeRank = single == null ? null : types.indexOf(wanted.mic().id()) + 1;
        return new WhyNot(
                Advisor.asked(meaning, scene),
                wanted.mic().id(),
                wanted.mic().name(),
                standing,
                says(standing, best, mine, first, losses, ruledOut, typeRank, types.size(), changes.tried(), found),
                told == null ? null : told.mics().get(0),
                told == null ? null : told.score(),
                told == null ? List.of() : told.reasons(),
                told == null ? List.of() : told.cautions(),
                single == null ? null : all.indexOf(single) + 1,
                all.size(),
                typeRank,
                types.size(),
                firstTold,
                losses,
                ruledOut,
                List.copyOf(limits),
                pair == null ? null : inPair(pair, all),
                changes.tried(),
                found,
                now.rules().version(),
                now.catalogue().version());
    }

    /** What may be used alone comes before what may not, and that before what is ruled out; then the most points. */
    private static Comparator<Judged> standing() {
        return Comparator.<Judged>comparingInt(one -> one.ruledOut() ? 2 : Placements.standsAlone(one.placed()) ? 0 : 1)
                .thenComparing(Comparator.comparingLong(Judged::centipoints).reversed())
                .thenComparingInt(one -> one.placed().index());
    }

    private WhyNot.Standing standing(Judged best, Candidate first) {
        if (first != null && wanted.isIn(first)) {
            return WhyNot.Standing.FIRST;
        }
        if (best == null) {
            return WhyNot.Standing.NOWHERE;
        }
        if (!limits.isEmpty()) {
            return WhyNot.Standing.LIMITED;
        }
        return best.ruledOut() ? WhyNot.Standing.RULED_OUT
                : Placements.standsAlone(best.placed()) ? WhyNot.Standing.STANDS : WhyNot.Standing.PART;
    }

    private void findLimits() {
        Supply supply = scene.supply();
        if (!supply.atHand().has(wanted.mic().id())) {
            List<Stock.Held> taken = supply.taken(wanted.mic().id());
            limits.add(new Answer.Instead(Nested.AT + WaysOut.LOCKER, taken.isEmpty() ? "The locker has none." : OutWords.says(taken),
                    (supply.owned().has(wanted.mic().id()) ? FromLocker.OWNED : FromLocker.ANY).id()));
        }
        Limits set = scene.question().limits();
        for (Limit limit : Limit.values()) {
            boolean stops = switch (limit) {
                case CHANNELS -> wanted.mic().channels() > scene.setting().channels();
                case PHANTOM -> Boolean.FALSE.equals(set.phantom()) && wanted.mic().power() == PowerNeed.PHANTOM;
                case PREAMP -> false;
                case ONLY_FAMILIES -> !set.onlyFamilies().isEmpty() && !set.onlyFamilies().contains(wanted.mic().family());
                case WITHOUT_FAMILIES -> set.withoutFamilies().contains(wanted.mic().family());
                case ONLY_TYPES -> !set.onlyMicTypes().isEmpty() && !set.onlyMicTypes().contains(wanted.mic().id());
                case WITHOUT_TYPES -> set.withoutMicTypes().contains(wanted.mic().id());
            };
            if (stops) {
                limits.add(new Answer.Instead(Nested.AT + limit.pointer(set), limit == Limit.CHANNELS
                        ? "It takes " + wanted.mic().channels() + " channels, and " + scene.setting().channels()
                                + (set.mics() == null ? " are used where a question does not say." : " may be used.")
                        : limit.says(set) + " leaves it out.", null));
            }
        }
    }

    /** Rule by rule; what a pair has of each half counts half there as well. */
    static List<WhyNot.Loss> losses(Candidate there, Candidate here) {
        Map<String, long[]> points = new TreeMap<>();
        Map<String, String> titles = new LinkedHashMap<>();
        add(there, 0, points, titles);
        add(here, 1, points, titles);
        return points.entrySet().stream().filter(rule -> rule.getValue()[0] != 0 || rule.getValue()[1] != 0)
                .sorted(Comparator.<Map.Entry<String, long[]>>comparingLong(rule -> rule.getValue()[1] - rule.getValue()[0])
                        .thenComparing(Map.Entry::getKey))
                .map(rule -> new WhyNot.Loss(rule.getKey(), titles.get(rule.getKey()), rule.getValue()[0] / 100.0, rule.getValue()[1] / 100.0,
                        (rule.getValue()[0] - rule.getValue()[1]) / 100.0))
                .toList();
    }

    private static void add(Candidate candidate, int side, Map<String, long[]> points, Map<String, String> titles) {
        boolean pair = !candidate.isSingle();
        candidate.first().findings().forEach(one -> add(one, pair ? Judged.half(one) : one.centipoints(), side, points, titles));
        if (pair) {
            candidate.second().findings().forEach(one -> add(one, Judged.half(one), side, points, titles));
            candidate.pairFindings().forEach(one -> add(one, one.centipoints(), side, points, titles));
        }
    }

    private static void add(Finding finding, long centipoints, int side, Map<String, long[]> points, Map<String, String> titles) {
        points.computeIfAbsent(finding.rule().id(), any -> new long[2])[side] += centipoints;
        titles.put(finding.rule().id(), finding.rule().title());
    }

    /** What rules out the place that is shown; where that stands, places that would be better but are ruled out. */
    private List<RuledOut> ruledOut(Judged best, WhyNot.Standing standing) {
        if (best == null) {
            return List.of();
        }
        List<RuledOut> list = new ArrayList<>();
        if (best.ruledOut()) {
            best.findings().stream().filter(WhyNotCase::rulesOut).forEach(finding -> list.add(told(best, finding)));
            return list;
        }
        own.stream().filter(one -> one.ruledOut() && wanted.is(one.placed()) && Placements.standsAlone(one.placed())
                        && one.centipoints() > best.centipoints())
                .sorted(Comparator.comparingLong(Judged::centipoints).reversed().thenComparingInt(one -> one.placed().index()))
                .forEach(one -> {
                    Finding finding = one.findings().stream().filter(WhyNotCase::rulesOut).findFirst().orElseThrow();
                    if (list.size() < MOST_RULED_OUT && list.stream().noneMatch(other -> other.rule().equals(finding.rule().id()))) {
                        list.add(told(one, finding));
                    }
                });
        return list;
    }

    static boolean rulesOut(Finding finding) {
        return finding.rule().effect() == Effect.RULES_OUT;
    }

    private RuledOut told(Judged judged, Finding finding) {
        return new RuledOut(judged.placed().mic().id(), judged.placed().pattern(), judged.placed().position().id(), finding.rule().id(),
                now.rules().says(finding, scene.setting()), finding.values());
    }

    private WhyNot.InPair inPair(Candidate pair, List<Candidate> all) {
        Placed mine = wanted.is(pair.first().placed()) ? pair.first().placed() : pair.second().placed();
        Placed other = mine == pair.first().placed() ? pair.second().placed() : pair.first().placed();
        int rank = all.indexOf(pair) + 1;
        String partner = other.mic().id().equals(mine.mic().id()) ? "another of its kind" : "the " + Nested.named(other.mic());
        return new WhyNot.InPair(pair.technique(), pair.pair().technique().name(), other.mic().id(), rank, pair.centipoints() / 100.0,
                "As a pair with " + partner + " (" + Naming.small(pair.pair().technique().name()) + "; this one "
                        + Naming.small(mine.position().name()) + ", the other " + Naming.small(other.position().name()) + ") it has "
                        + points(pair.centipoints()) + " points and " + (rank == 1 ? "comes first." : "is number " + rank + " of " + all.size() + "."));
    }

    private String says(WhyNot.Standing standing, Judged best, Candidate mine, Candidate first, List<WhyNot.Loss> losses,
            List<RuledOut> ruledOut, Integer typeRank, int types, int tried, List<WhyNot.Change> found) {
        String mic = "The " + Nested.named(wanted.mic());
        String end = standing == WhyNot.Standing.FIRST ? "" : found.isEmpty()
                ? " Nothing that was tried alone brings it among the first three" + (best == null || best.ruledOut() ? " or makes it usable" : "") + " ("
                        + tried + " changes)."
                : " " + found.get(0).says();
        return switch (standing) {
            case FIRST -> mic + " is the first answer already" + (first.isSingle() ? "" : ", as a half of " + named(first)) + ", with "
                    + points(first.centipoints()) + " points.";
            case NOWHERE -> mic + " cannot be set up " + (wanted.position() == null ? "at any place of this source." : "there.") + " " + needs() + end;
            case LIMITED -> mic + " is left out. " + limits.stream().map(Answer.Instead::says).collect(Collectors.joining(" "))
                    + " Otherwise it would have " + points(best.centipoints()) + " points " + at(best) + "."
                    + (ruledOut.isEmpty() ? "" : " " + ruledOut.get(ruledOut.size() - 1).says()) + end;
            case RULED_OUT -> mic + " is ruled out: " + ruledOut.get(0).says() + end;
            case PART -> mic + " hears only a part of the source " + at(best) + ", so it is never alone there." + end;
            case STANDS -> mic + " has " + points(mine.centipoints()) + " points " + at(best) + " and is number " + typeRank + " of " + types
                    + " types; " + named(first) + " has " + points(first.centipoints()) + ". It loses most by: "
                    + losses.stream().filter(loss -> loss.lossPoints() > 0).limit(MOST_LOSSES_SAID)
                            .map(loss -> Naming.small(loss.title()) + " (" + points(Math.round(loss.lossPoints() * 100)) + ")")
                            .collect(Collectors.joining(", ")) + "." + end;
        };
    }

    private static String at(Judged judged) {
        return "in the place \"" + Naming.small(judged.placed().position().name()) + "\"";
    }

    /** What would have to be there for the type to be set up. */
    private String needs() {
        if (!wanted.mic().captures()) {
            return "It plays back and takes nothing up.";
        }
        List<Position> fitting = scene.setting().source().positions().stream().filter(position -> Placements.fits(wanted.mic(), position)).toList();
        List<Position> sensible = fitting.stream().filter(position -> Placements.sensible(scene, position)).toList();
        if (!sensible.isEmpty()) {
            return "It goes " + places(sensible) + ".";
        }
        if (!fitting.isEmpty()) {
            return "It goes " + places(fitting) + ", when it is played "
                    + fitting.stream().flatMap(position -> position.onlyWays().stream()).distinct().collect(Collectors.joining(" or ")) + ".";
        }
        MicFamily family = wanted.mic().family();
        return switch (family) {
            case LINE -> "It needs a lead to be plugged into, and this source has none in the catalogue.";
            case PICKUP -> "It needs a place to be fixed to the instrument, and this source has none in the catalogue.";
            case BOUNDARY -> "It needs a floor, a lid or the inside of the source to lie on, and this source has no such place in the catalogue.";
            default -> scene.setting().source().positions().stream().allMatch(position -> position.mount() == Mount.LEAD)
                    ? "This source comes on a lead and makes no sound: a line box takes it."
                    : "Every place of this source is for other families.";
        };
    }

    private static String places(List<Position> positions) {
        return positions.stream().map(position -> Naming.small(position.name())).collect(Collectors.joining("; or "));
    }

    /** A candidate in a few words. */
    static String named(Candidate candidate) {
        String first = "the " + Nested.named(candidate.first().placed().mic());
        if (candidate.isSingle()) {
            return first + " in the place \"" + Naming.small(candidate.first().placed().position().name()) + "\"";
        }
        String second = candidate.second().placed().mic().id().equals(candidate.mainType())
                ? "another" : "the " + Nested.named(candidate.second().placed().mic());
        return "the pair of " + first + " and " + second + " (" + Naming.small(candidate.pair().technique().name()) + ")";
    }

    /** Points as people read them. */
    static String points(long centipoints) {
        String shown = String.format(Locale.ROOT, "%.2f", centipoints / 100.0);
        return Objects.equals(shown, "-0.00") ? "0.00" : shown;
    }
}
