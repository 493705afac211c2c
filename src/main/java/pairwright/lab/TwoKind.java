package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.advice.Offer;
import pairwright.advice.Offers;
import pairwright.model.MicType;
import pairwright.model.Question;
import pairwright.model.Reason;
import pairwright.model.Signal;
import pairwright.model.Source;

/** One microphone on a source, or two, and which two. */
final class TwoKind implements Kind {
    private static final KindInfo INFO = new KindInfo("two", "One or two",
            "Say what a second microphone adds to a source and how two are set up, and when it is one too many.",
            "How wide one likes it. What two do together is predicted for a listener in the middle.",
            List.of("Set-ups that differ much", "Stereo is wanted", "A room to think of", "A character is wanted, and a neighbour plays", "Stereo is wanted, in a room with a neighbour"),
            List.of(15, 15, 20, 20, 25), false);
    private static final int TYPES = 5;
    /** One microphone, and three pairs of different techniques where there are as many. */
    private static final int SET_UPS = 4;
    /** With a lead of less, in points, one could argue for another. */
    private static final double CLEAR_LEAD_POINTS = 1;
    private static final int LEAST_REASONS = 4;
    private static final int WRONG_AGAINST = 3;
    private static final int LEAST_WRONG_AGAINST = 2;
    private static final double ON_STAGE_SHARE = 0.4;

    @Override
    public KindInfo info() {
        return INFO;
    }

    @Override
    public Optional<Case> draw(Draw draw, int level, Lab lab) {
        List<Source> sources = lab.catalogue().sources().values().stream().filter(source -> source.signal() == Signal.ACOUSTIC && source.pairs().size() >= 2).toList();
        List<MicType> types = lab.types().stream().filter(MicType::captures).filter(type -> type.channels() == 1 && lab.units(type.id()) >= 2).toList();
        if (types.size() < 2) {
            return Optional.empty();
        }
        Case drawn = Case.empty().with("source", draw.one(sources).id());
        drawn = drawn.with("types", types(draw, lab.source(drawn.one("source")), types).stream().sorted().toList());
        if (level == 2 || level == 5) {
            drawn = drawn.with("circumstances", "stereo");
            List<MicType> bodies = lab.types().stream().filter(MicType::captures).filter(type -> type.channels() == 2).toList();
            drawn = bodies.isEmpty() ? drawn : drawn.with("types", Stream.concat(drawn.all("types").stream(), Stream.of(draw.one(bodies).id())).sorted().toList());
        } else if (level >= 3 && draw.share() < ON_STAGE_SHARE) {
            drawn = drawn.with("circumstances", "live");
        }
        drawn = OneMic.surroundings(drawn, draw, level == 3 || level == 5, level == 4, level >= 4, lab);
        Question question = OneMic.question(drawn, lab, 2);
        Offers offers = Offers.of(question, lab.catalogue(), lab.rules(), null, null);
        List<Offer> shown = shown(draw, offers);
        if (shown.size() < SET_UPS || shown.get(0).centipoints() - shown.get(1).centipoints() < 100 * CLEAR_LEAD_POINTS) {
            return Optional.empty();
        }
        // who asks for stereo is not served by what makes none
        if (question.circumstances().contains("stereo") && !stereo(shown.get(0))) {
            return Optional.empty();
        }
        Case all = drawn.with("setUps", draw.shuffled(shown.stream().map(TwoMics::name).toList()));
        TwoMics mics = new TwoMics(offers, shown);
        return reasoned(draw, all, mics).map(asked -> against(draw, asked, mics, lab));
    }

    private static boolean stereo(Offer offer) {
        return TwoMics.oneBody(offer) || offer.pairing() != null && offer.pairing().stereo();
    }

    /** What the trade reaches for here among them, with some others. */
    private static List<String> types(Draw draw, Source source, List<MicType> there) {
        List<String> ids = there.stream().map(MicType::id).toList();
        List<String> usual = source.pairs().stream().flatMap(pair -> Stream.concat(pair.first().micTypes().stream(), pair.second().micTypes().stream())).distinct().filter(ids::contains).toList();
        return Stream.concat(draw.some(TYPES - 1, usual).stream(), draw.shuffled(ids).stream()).distinct().limit(TYPES).toList();
    }

    /** Best first; each another idea. */
    private static List<Offer> shown(Draw draw, Offers offers) {
        List<Offer> shown = new ArrayList<>();
        Set<String> ideas = new HashSet<>();
        for (Offer offer : draw.shuffled(offers.all())) {
            boolean fits = TwoMics.oneBody(offer) || offer.mics().stream().allMatch(mic -> mic.micType().channels() == 1) && !offer.matchedPair();
            if (fits && shown.size() < SET_UPS && ideas.add(TwoMics.oneBody(offer) ? "one body" : offer.technique())) {
                shown.add(offer);
            }
        }
        shown.sort(Comparator.comparingLong(offer -> -offer.centipoints()));
        return shown;
    }

    private static Optional<Case> reasoned(Draw draw, Case drawn, TwoMics shown) {
        List<String> right = draw.some(2, shown.forIt(0));
        List<String> wrong = shown.others(TwoMics.Why.REASON);
        if (right.size() < 2 || right.size() + wrong.size() < LEAST_REASONS) {
            return Optional.empty();
        }
        return Optional.of(drawn.with("reasons", draw.shuffled(Stream.concat(right.stream(), draw.some(4, wrong).stream()).toList()))
                .with("cautions", draw.shuffled(Stream.concat(draw.some(3, shown.mind(0)).stream(), draw.some(3, shown.others(TwoMics.Why.MIND)).stream()).toList())));
    }

    /** With one rule that speaks against one of them, any rule as likely, and some that speak against others and say nothing of that one; as it was where there are too few. */
    private static Case against(Draw draw, Case drawn, TwoMics shown, Lab lab) {
        List<String> rules = IntStream.range(0, shown.size()).boxed().flatMap(which -> shown.against(which).stream()).map(Reason::rule).distinct().sorted().toList();
        for (String right : draw.shuffled(rules)) {
            int of = draw.one(IntStream.range(0, shown.size()).filter(which -> shown.against(which).stream().anyMatch(reason -> reason.rule().equals(right))).boxed().toList());
            List<String> wrong = draw.some(WRONG_AGAINST, rules.stream().filter(rule -> !shown.counted(of).contains(rule)).filter(rule -> !title(rule, lab).equals(title(right, lab))).toList());
            if (wrong.size() >= LEAST_WRONG_AGAINST) {
                return drawn.with("againstOf", TwoMics.name(shown.offer(of))).with("against", draw.shuffled(Stream.concat(Stream.of(right), wrong.stream()).toList()));
            }
        }
        return drawn;
    }

    private static String title(String rule, Lab lab) {
        return lab.rules().rule(rule).title();
    }

    @Override
    public Exercise of(Case drawn, int level, Lab lab) {
        Question question = OneMic.question(drawn, lab, 2);
        return new TwoExercise(drawn, question, TwoMics.named(Offers.of(question, lab.catalogue(), lab.rules(), null, null), drawn.all("setUps")), lab);
    }
}
