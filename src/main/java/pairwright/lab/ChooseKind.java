package pairwright.lab;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pairwright.advice.Offer;
import pairwright.model.MicType;

/** One microphone out of a few for a source, and why. */
final class ChooseKind implements Kind {
    private static final KindInfo INFO = new KindInfo("choose", "Choose and justify",
            "Choose one microphone out of a few for a source, set it where it serves, and say what speaks for it.",
            "How it sounds to you: the numbers stand for a usual instrument of its kind, yours may differ.",
            List.of("Few types, nothing but the source to think of", "A room to think of", "A character is wanted", "More types, a neighbour plays",
                    "Many types, a neighbour, a character and a room"),
            List.of(15, 15, 20, 20, 25), true);
    private static final int[] TYPES = {4, 5, 5, 6, 7};
    /** Two that are right, and as many that are not. */
    private static final int LEAST_REASONS = 4;
    /** With a lead of less, in points, one could argue for another. */
    private static final double CLEAR_LEAD_POINTS = 1;

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
        Case drawn = OneMic.surroundings(Case.empty().with("source", draw.one(OneMic.sources(lab, 3)).id())
                .with("types", draw.some(TYPES[level - 1], types).stream().map(MicType::id).sorted().toList()), draw, level == 2 || level == 5, level == 3 || level == 5, level >= 4, lab);
        OneMic one = OneMic.of(drawn, lab);
        if (!clear(one)) {
            return Optional.empty();
        }
        one.explain(one.bestOfEach());
        List<String> reasons = reasons(draw, one);
        return reasons.size() < LEAST_REASONS ? Optional.empty() : Optional.of(drawn.with("reasons", reasons).with("cautions", cautions(draw, one)));
    }

    /** Whether one type leads, and another falls well short of it. */
    private static boolean clear(OneMic one) {
        List<Offer> best = one.bestOfEach();
        return best.size() >= 3 && best.get(0).centipoints() - best.get(1).centipoints() >= 100 * CLEAR_LEAD_POINTS
                && best.stream().map(offer -> offer.mics().get(0).position().id()).distinct().count() > 1;
    }

    /** Rules that speak for any of them, just two for the best; none where fewer do. */
    private static List<String> reasons(Draw draw, OneMic one) {
        List<String> right = draw.some(2, one.forIt(one.best()));
        if (right.size() < 2) {
            return List.of();
        }
        Stream<String> others = one.bestOfEach().stream().skip(1).flatMap(offer -> one.forIt(offer).stream());
        List<String> wrong = others.distinct().filter(rule -> !one.forIt(one.best()).contains(rule)).toList();
        return draw.shuffled(Stream.concat(right.stream(), draw.some(4, wrong).stream()).toList());
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
        return new ChooseExercise(drawn, OneMic.of(drawn, lab), lab);
    }
}
