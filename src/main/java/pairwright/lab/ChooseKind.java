package pairwright.lab;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pairwright.advice.Offer;
import pairwright.model.Effect;
import pairwright.model.MicType;
import pairwright.rules.RuleInfo;

/** One microphone out of a few for a source, and why. */
final class ChooseKind implements Kind {
    private static final KindInfo INFO = new KindInfo("choose", "Choose and justify",
            "Choose one microphone out of a few for a source, set it where it serves, and say what speaks for it.",
            "How it sounds to you: the numbers stand for a usual instrument of its kind, yours may differ.",
            List.of("Few types, nothing but the source to think of", "A room to think of", "A character is wanted", "More types, a neighbour plays",
                    "Many types, a neighbour, a character and a room"),
            List.of(15, 15, 20, 20, 25), true);
    private static final int[] TYPES = {4, 5, 5, 6, 7};
    /** Out of so many those are taken of which one leads. */
    private static final int MANY = 12;
    private static final int LEAST_THAT_STAND = 3;
    /** With a lead of less, in points, one could argue for another. */
    private static final double CLEAR_LEAD_POINTS = 1;
    /** What is worth less, or has as much against it in one point, is the best of a bad lot: no one to learn from. */
    private static final double LEAST_BEST_POINTS = 4;
    private static final double MOST_AGAINST_POINTS = 4;

    @Override
    public KindInfo info() {
        return INFO;
    }

    @Override
    public Optional<Case> draw(Draw draw, int level, Lab lab) {
        List<MicType> types = OneMic.types(lab);
        if (types.size() < TYPES[level - 1]) {
            return Optional.empty();
        }
        Case many = OneMic.surroundings(Case.empty().with("source", draw.one(OneMic.sources(lab, 3)).id())
                .with("types", draw.some(MANY, types).stream().map(MicType::id).sorted().toList()), draw, level == 2 || level == 5, level == 3 || level == 5, level >= 4, lab);
        OneMic all = OneMic.of(many, lab);
        List<String> few = few(draw, many, TYPES[level - 1], all.bestOfEach());
        if (few.size() < TYPES[level - 1]) {
            return Optional.empty();
        }
        Case drawn = many.with("types", few);
        OneMic one = all.only(drawn);
        if (!clear(one)) {
            return Optional.empty();
        }
        one.explain(one.bestOfEach());
        List<String> reasons = reasons(draw, one, lab);
        if (reasons.isEmpty()) {
            return Optional.empty();
        }
        Case asked = drawn.with("reasons", reasons).with("cautions", cautions(draw, one));
        lab.worked(asked, one);
        return Optional.of(asked);
    }

    /** Of many types one, and some that are clearly behind it or cannot stand here at all: what one type is worth does not depend on what others there are. */
    private static List<String> few(Draw draw, Case many, int wanted, List<Offer> best) {
        if (best.size() < LEAST_THAT_STAND) {
            return List.of();
        }
        List<Offer> good = best.subList(0, best.size() - LEAST_THAT_STAND + 1).stream().filter(ChooseKind::good).toList();
        if (good.isEmpty()) {
            return List.of();
        }
        Offer leads = draw.one(good);
        List<String> ahead = best.stream().filter(offer -> leads.centipoints() - offer.centipoints() < 100 * CLEAR_LEAD_POINTS).map(offer -> OneMic.mic(offer).micType().id()).toList();
        List<String> behind = many.all("types").stream().filter(type -> !ahead.contains(type)).toList();
        return Stream.concat(Stream.of(OneMic.mic(leads).micType().id()), draw.some(wanted - 1, behind).stream()).sorted().toList();
    }

    private static boolean good(Offer offer) {
        return OneMic.points(offer) >= LEAST_BEST_POINTS && offer.findings().stream().allMatch(finding -> finding.centipoints() > -100 * MOST_AGAINST_POINTS);
    }

    /** Whether one type leads, and another falls well short of it. */
    private static boolean clear(OneMic one) {
        List<Offer> best = one.bestOfEach();
        return best.size() >= LEAST_THAT_STAND && best.get(0).centipoints() - best.get(1).centipoints() >= 100 * CLEAR_LEAD_POINTS;
    }

    /** Rules that speak for microphones, just two for the best; those for the others before those for none of them, if they could be true here. None where fewer speak for the best. */
    private static List<String> reasons(Draw draw, OneMic one, Lab lab) {
        List<String> best = one.forIt(one.best());
        List<String> right = draw.some(2, best);
        if (right.size() < 2) {
            return List.of();
        }
        Stream<String> others = one.bestOfEach().stream().skip(1).flatMap(offer -> one.forIt(offer).stream());
        List<String> wrong = draw.shuffled(others.distinct().filter(rule -> !best.contains(rule)).toList());
        List<String> none = draw.shuffled(lab.rules().rules().stream().filter(rule -> forOneMic(rule) && one.claim().suits(rule)).map(RuleInfo::id).filter(rule -> !best.contains(rule) && !wrong.contains(rule)).toList());
        return draw.shuffled(Stream.concat(right.stream(), Stream.concat(wrong.stream(), none.stream()).limit(4)).toList());
    }

    private static boolean forOneMic(RuleInfo rule) {
        return rule.teachable() && rule.effect() == Effect.FOR && !rule.ofAPlan() && !rule.concern().equals("pairing");
    }

    private static List<String> cautions(Draw draw, OneMic one) {
        // what holds whatever is chosen is said before anything is touched, and not asked
        List<String> said = one.saidBefore();
        List<String> right = one.mind(one.best()).stream().filter(rule -> !said.contains(rule)).toList();
        List<String> wrong = one.bestOfEach().stream().flatMap(offer -> one.mind(offer).stream()).distinct()
                .filter(rule -> !right.contains(rule) && !said.contains(rule)).toList();
        return draw.shuffled(Stream.concat(draw.some(3, right).stream(), draw.some(3, wrong).stream()).toList());
    }

    @Override
    public Exercise of(Case drawn, int level, Lab lab) {
        return new ChooseExercise(drawn, lab.worked(drawn, OneMic.class, () -> OneMic.of(drawn, lab)), lab);
    }
}
