package pairwright.advice;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Answer;
import pairwright.model.Catalogue;
import pairwright.model.Fault;
import pairwright.model.Given;
import pairwright.model.Heard;
import pairwright.model.MicType;
import pairwright.model.Option;
import pairwright.model.Position;
import pairwright.model.PowerNeed;
import pairwright.model.Question;
import pairwright.model.Setup;
import pairwright.model.Stock;
import pairwright.rules.Finding;
import pairwright.rules.Placed;
import pairwright.rules.RuleBase;
import pairwright.rules.Setting;

/**
 * Everything that stands for one source out of a whole locker, best first: judged once, whatever is booked, for whoever plans with it. A set-up of two
 * units that were matched is offered a second time for two that were not, since a plan may have to part them. What is offered does not depend on what
 * else there is: a locker with more in it offers the same at the same points, and more. Where more than six units of a type have a response of their
 * own, the six whose ids come first are predicted by it and the others as their type.
 *
 * <p>Not safe to share between threads.
 */
public final class Offers {
    private final Scene scene;
    private final RuleBase rules;
    private final Predictor predictor;
    private final Map<MicType, List<String>> alone = new IdentityHashMap<>();
    private final List<Offer> all;

    Offers(Scene scene, RuleBase rules, List<Candidate> candidates) {
        this.scene = scene;
        this.rules = rules;
        this.predictor = new Predictor(scene);
        this.all = candidates.stream().map(candidate -> new Offer(this, candidate, mics(candidate))).toList();
    }

    /**
     * Judges all there is, in a house that remembers nothing.
     *
     * @param question what is asked; its limits hold, how many options it wants and when does not matter
     * @param catalogue may differ from the one that is known, in a source or a room
     * @param rules of the same knowledge
     * @param stock the units there are, out or not; those that are lost are left out. Null for the whole catalogue, as often as is wanted
     * @param surroundings who reaches a microphone where; null for the neighbours of the question
     * @throws pairwright.rules.HouseRuleStopped where a house rule fails, see {@link Knowledge#answered}
     */
    public static Offers of(Question question, Catalogue catalogue, RuleBase rules, Stock stock, Surroundings surroundings) {
        return of(question, catalogue, rules, stock, surroundings, HouseMemory.NOTHING);
    }

    /**
     * The same in a house that remembers what was kept.
     *
     * @param memory asked once
     */
    public static Offers of(Question question, Catalogue catalogue, RuleBase rules, Stock stock, Surroundings surroundings, HouseMemory memory) {
        Scene scene = Scene.of(question, catalogue, Supply.whole(stock, catalogue), memory, surroundings);
        return new Offers(scene, rules, candidates(scene, rules, Advisor.judged(scene, rules, Placements.of(scene))));
    }

    /**
     * Set-ups as somebody has them, whatever the rules make of them, in the order given.
     *
     * @param question who asks
     * @param catalogue may differ from the one that is known, in a source or a room
     * @param surroundings who reaches a microphone where; null for the neighbours of the question
     * @throws UnusableQuestion with every fault of every set-up, such as an unknown id or a type that cannot be put up at its place, see {@link #fits}
     */
    public static Offers stood(Question question, Catalogue catalogue, Knowledge now, Surroundings surroundings, List<Setup> setups) {
        List<Fault> faults = new ArrayList<>();
        List<Standing> standing = new ArrayList<>();
        setups.forEach(setup -> standing.add(Standing.of(setup, catalogue.sources().get(question.source()), now, faults)));
        if (!faults.isEmpty()) {
            throw new UnusableQuestion(faults);
        }
        Scene scene = Scene.of(question, catalogue, Supply.whole(null, catalogue), HouseMemory.NOTHING, surroundings);
        Bench bench = new Bench(now, null, scene);
        List<Trial> trials = standing.stream().map(bench::trial).toList();
        return new Offers(scene, now.rules(), trials.stream().map(Trial::candidate).toList());
    }

    /** Whether a type can be put up at a place at all. */
    public static boolean fits(MicType mic, Position position) {
        return mic.captures() && Placements.fits(mic, position);
    }

    /** All that can be made of what is at hand, best first: alone, and in pairs of any types, matched where they are and as if they were not. */
    static List<Candidate> candidates(Scene scene, RuleBase rules, List<Judged> judged) {
        List<Pairs.Pair> pairs = new ArrayList<>(Pairs.ofAllTypes(scene, judged));
        pairs.addAll(pairs.stream().filter(pair -> pair.paired().matchedPair()).map(Pairs.Pair::unmatched).toList());
        Rack rack = scene.supply().atHand();
        List<Candidate> candidates = new ArrayList<>(judged.stream()
                .filter(one -> !one.ruledOut() && Placements.standsAlone(one.placed()) && rack.alone(one.placed().mic())).map(Candidate::of).toList());
        candidates.addAll(Advisor.pairs(scene, rules, pairs));
        candidates.sort(Candidate.bestFirst());
        return candidates;
    }

    private List<OfferedMic> mics(Candidate candidate) {
        Placed first = candidate.first().placed();
        if (candidate.isSingle()) {
            return List.of(mic(first, false));
        }
        Placed second = candidate.second().placed();
        boolean twins = first.mic().id().equals(second.mic().id());
        return List.of(mic(first, twins), mic(second, twins));
    }

    /** Two of one type are predicted as their type, whatever their own responses, so any two of it will do. */
    private OfferedMic mic(Placed placed, boolean twin) {
        MicType mic = placed.mic();
        Supply supply = scene.supply();
        List<String> units = twin ? ids(supply.owned().all(mic.id())) : alone.computeIfAbsent(mic, kind -> ids(supply.owned().fit(kind)));
        return new OfferedMic(mic, supply.measured(mic) ? units.get(0) : null, units, placed.pattern(), placed.position(), placed.distanceM(), placed.aimDegrees(),
                placed.predicted(), phantom(mic), placed.currentMa(), placed.padDb(), placed);
    }

    private boolean phantom(MicType mic) {
        return mic.power() == PowerNeed.PHANTOM || mic.power() == PowerNeed.PHANTOM_OR_BATTERY && scene.setting().phantomAllowed();
    }

    private static List<String> ids(List<Stock.Held> units) {
        return units.stream().map(Stock.Held::id).toList();
    }

    /** All of them, best first. */
    public List<Offer> all() {
        return all;
    }

    /** What holds for the whole question, in numbers: how loud the source is, how the room sounds, who else plays. */
    public Setting setting() {
        return scene.setting();
    }

    /** The same as an answer tells it. */
    public Answer.Numbers numbers() {
        return scene.numbers();
    }

    /** How much each octave of the source counts, 0 to 1. */
    public OctaveCurve weights() {
        return scene.weights();
    }

    /** What was not said and is taken as usual, in sentences; nothing of the time, which does not matter here. */
    public List<String> assumed() {
        List<String> ofTheTime = scene.supply().limits() ? scene.supply().assumed() : List.of();
        return scene.assumed().stream().filter(said -> !ofTheTime.contains(said)).toList();
    }

    /** What a microphone hears of each of the others; empty where none reaches it, and where no air is between. */
    public List<Heard> heard(OfferedMic mic) {
        return predictor.heard(mic.placed());
    }

    /**
     * Why they are worth what they are, and what to mind. The rules are asked once for all of them, so ask for all that are shown at once.
     *
     * @param shown of these offers
     * @return in the same order, ranked from 1 in it, with no unit named
     */
    public List<Option> explained(List<Offer> shown) {
        return explained(shown, shown.stream().map(offer -> List.<String>of()).toList());
    }

    /**
     * The same with the units that a plan takes.
     *
     * @param units for each of the offers the ids of its units, in the order of its microphones; none to leave them open
     * @throws IllegalArgumentException for a unit that the stock does not have, and for more or fewer units than microphones
     */
    public List<Option> explained(List<Offer> shown, List<List<String>> units) {
        List<Candidate> candidates = shown.stream().map(Offer::candidate).toList();
        Explainer explainer = new Explainer(scene, rules, candidates);
        List<Option> options = new ArrayList<>();
        for (int i = 0; i < candidates.size(); i++) {
            options.add(explainer.option(i + 1, candidates.get(i), null, given(shown.get(i), units.get(i))));
        }
        return List.copyOf(options);
    }

    /**
     * What the rules find for and against offers, forbid of them and warn of, with no sentence yet: what holds of the source whatever stands there is left out. The
     * rules are asked what to warn of once for all of them. Only a set-up as somebody has it has anything forbidden.
     *
     * @param some of these offers
     * @return in the same order
     */
    public List<List<Finding>> findings(List<Offer> some) {
        List<Object> subjects = new ArrayList<>();
        some.forEach(offer -> subjects.addAll(offer.candidate().subjects()));
        Map<Object, List<Finding>> warnings = new IdentityHashMap<>();
        rules.warn(scene.setting(), subjects.stream().distinct().toList()).forEach(finding -> warnings.computeIfAbsent(finding.subject(), any -> new ArrayList<>()).add(finding));
        List<List<Finding>> all = new ArrayList<>();
        for (Offer offer : some) {
            List<Finding> own = new ArrayList<>(offer.candidate().findings());
            offer.candidate().subjects().forEach(subject -> own.addAll(warnings.getOrDefault(subject, List.of())));
            all.add(List.copyOf(own));
        }
        return List.copyOf(all);
    }

    /** The sentence of a finding of these offers. */
    public String says(Finding finding) {
        return rules.says(finding, scene.setting());
    }

    private List<List<Given>> given(Offer offer, List<String> units) {
        if (!scene.supply().limits()) {
            return null;
        }
        if (!units.isEmpty() && units.size() != offer.mics().size()) {
            throw new IllegalArgumentException("an offer of " + offer.mics().size() + " microphones was given " + units.size() + " units");
        }
        return units.isEmpty() ? offer.mics().stream().map(mic -> List.<Given>of()).toList() : scene.supply().given(units);
    }
}
