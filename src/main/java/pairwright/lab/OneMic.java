package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import pairwright.acoustics.OctaveCurve;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.advice.Offers;
import pairwright.advice.UnusableQuestion;
import pairwright.model.Catalogue;
import pairwright.model.Caution;
import pairwright.model.Effect;
import pairwright.model.Limits;
import pairwright.model.MicFamily;
import pairwright.model.MicType;
import pairwright.model.Mount;
import pairwright.model.Neighbour;
import pairwright.model.Option;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.model.Position;
import pairwright.model.Question;
import pairwright.model.Reason;
import pairwright.model.RuledOut;
import pairwright.model.Setup;
import pairwright.model.Severity;
import pairwright.model.Signal;
import pairwright.model.Source;
import pairwright.model.SourceFamily;
import pairwright.rules.Claim;
import pairwright.rules.Setting;

/** One microphone wanted at a source, out of some types: what each of them can do there, and what any set-up of one is worth. Not safe to share. */
final class OneMic {
    /** Who can be two metres off: nobody sits beside an orchestra, or a room. */
    static final Predicate<Source> BESIDE = source -> source.family() != SourceFamily.AMBIENCE && source.family() != SourceFamily.ENSEMBLES;

    private final Lab lab;
    private final Question question;
    private final Offers offers;
    private final List<Offer> singles;
    private final Map<Offer, Option> explained = new LinkedHashMap<>();
    private final Map<String, Optional<RuledOut>> outs = new LinkedHashMap<>();
    private final Map<Spot, Stood> stood = new HashMap<>();

    private OneMic(Lab lab, Question question, Offers offers, List<Offer> singles) {
        this.lab = lab;
        this.question = question;
        this.offers = offers;
        this.singles = singles;
    }

    /** Where somebody puts a type. */
    record Spot(String type, String place, double distanceM) {
    }

    /**
     * A microphone where somebody put it.
     *
     * @param ruledOut what forbids it; empty for nothing
     */
    record Stood(Option option, List<RuledOut> ruledOut) {
    }

    /**
     * As a case has it: source, types; room, character, neighbour, neighbourM and neighbourDegrees where they are said.
     *
     * @throws IllegalArgumentException where the catalogue does not have something of it
     */
    static OneMic of(Case drawn, Lab lab) {
        Question question = question(drawn, lab, 1);
        Offers offers = Offers.of(question, lab.catalogue(), lab.rules(), null, null);
        List<Position> standing = standing(lab.source(question.source()));
        return new OneMic(lab, question, offers, offers.all().stream().filter(offer -> offer.mics().size() == 1).filter(offer -> standing.contains(mic(offer).position())).toList());
    }

    /** The same case with some of its types only; nothing is judged again, since what one type is worth does not depend on what others there are. */
    OneMic only(Case drawn) {
        List<String> types = drawn.all("types");
        return new OneMic(lab, question(drawn, lab, 1), offers, singles.stream().filter(offer -> types.contains(mic(offer).micType().id())).toList());
    }

    /** What a case asks, with so many channels at most; circumstances, too, where they are said. */
    static Question question(Case drawn, Lab lab, int channels) {
        List<String> types = drawn.all("types").stream().map(type -> lab.type(type).id()).toList();
        String room = drawn.all("room").isEmpty() ? null : drawn.one("room");
        List<Neighbour> neighbours = drawn.all("neighbour").isEmpty() ? List.of()
                : List.of(new Neighbour(lab.source(drawn.one("neighbour")).id(), drawn.number("neighbourM"), drawn.number("neighbourDegrees")));
        return new Question("", lab.source(drawn.one("source")).id(), List.of(), List.of(), room, drawn.all("character"), new Limits(channels, null, null, null, null, null, types, null), neighbours,
                drawn.all("circumstances"), List.of(), 1, null, null);
    }

    /** The places where a microphone stands alone in the air, so that a distance is a choice. */
    static List<Position> standing(Source source) {
        return source.positions().stream().filter(position -> !position.notAlone() && position.mount() != Mount.CONTACT && position.mount() != Mount.LEAD).toList();
    }

    /** Sources in the air with so many places at least where a microphone stands alone. */
    static List<Source> sources(Lab lab, int places) {
        return lab.catalogue().sources().values().stream().filter(source -> source.signal() == Signal.ACOUSTIC && standing(source).size() >= places).toList();
    }

    /** Types of one channel that take sound from the air. */
    static List<MicType> types(Lab lab) {
        return lab.types().stream().filter(type -> type.captures() && type.channels() == 1 && type.family() != MicFamily.PICKUP && type.family() != MicFamily.LINE).toList();
    }

    /** A case with a room, a character and a neighbour, each where it is wanted. */
    static Case surroundings(Case drawn, Draw draw, boolean room, boolean character, boolean neighbour, Lab lab) {
        Case with = drawn;
        if (room) {
            with = with.with("room", draw.one(List.copyOf(lab.catalogue().rooms().values())).id());
        }
        if (character) {
            with = with.with("character", draw.one(List.copyOf(lab.catalogue().characters().values())).id());
        }
        if (neighbour) {
            with = with.with("neighbour", draw.one(sources(lab, 1).stream().filter(other -> !other.id().equals(drawn.one("source")) && BESIDE.test(other)).toList()).id())
                    .with("neighbourM", draw.between(1.5, 4, 0.5)).with("neighbourDegrees", draw.between(90, 180, 30));
        }
        return with;
    }

    List<String> situation() {
        return situation(question, lab);
    }

    /** What there is to know of the source and what is around it, in sentences. */
    static List<String> situation(Question question, Lab lab) {
        Catalogue catalogue = lab.catalogue();
        List<String> said = new ArrayList<>(List.of(catalogue.sources().get(question.source()).says()));
        if (question.room() != null) {
            said.add("Room: " + catalogue.rooms().get(question.room()).name() + ".");
        }
        question.character().forEach(wanted -> said.add("Wanted: " + catalogue.characters().get(wanted).name() + "."));
        question.neighbours().forEach(next -> said.add(catalogue.sources().get(next.source()).name() + " plays " + next.distanceM() + " m from the microphone, "
                + Math.round(next.angleDegrees()) + "\u00b0 off the line to the source."));
        return said;
    }

    /** How loud the source is, how the room sounds and who else plays, in numbers. */
    Setting setting() {
        return offers.setting();
    }

    /** How much each octave of the source counts, 0 to 1. */
    OctaveCurve weights() {
        return offers.weights();
    }

    /** Reasons in the words of this case. */
    Claim claim() {
        return Claims.of(question, lab);
    }

    /** Whether none of the types can be set up here alone. */
    boolean none() {
        return singles.isEmpty();
    }

    /** All there is, best first. */
    List<Offer> all() {
        return singles;
    }

    /** The best there is; of the types that can be set up at all. */
    Offer best() {
        return singles.get(0);
    }

    /** The best of each type that can be set up here, best first. */
    List<Offer> bestOfEach() {
        Map<String, Offer> best = new LinkedHashMap<>();
        singles.forEach(offer -> best.putIfAbsent(mic(offer).micType().id(), offer));
        return List.copyOf(best.values());
    }

    /** The best of a type; empty where it cannot be set up here. */
    Optional<Offer> best(String type) {
        return singles.stream().filter(offer -> mic(offer).micType().id().equals(type)).findFirst();
    }

    /** The best of a type at a place. */
    Optional<Offer> best(String type, String place) {
        return singles.stream().filter(offer -> mic(offer).micType().id().equals(type) && mic(offer).position().id().equals(place)).findFirst();
    }

    /** What a microphone is called; with its pattern where it has others. */
    static String called(MicType type, Pattern pattern) {
        return type.patterns().size() == 1 ? type.name() : type.name() + ", set to " + pattern.id();
    }

    /** Whether a rule judges tone. */
    boolean ofTone(String rule) {
        return lab.rules().rule(rule).concern().equals("tone");
    }

    /** By which an offer is found again. */
    static String name(Offer offer) {
        OfferedMic mic = mic(offer);
        return mic.micType().id() + " " + mic.pattern().id() + " " + mic.position().id() + " " + mic.distanceM() + " " + mic.aimDegrees();
    }

    /** @throws IllegalArgumentException where it is not offered any more */
    Offer named(String name) {
        return singles.stream().filter(any -> name(any).equals(name)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The set-up \"" + name + "\" of the exercise is not among what is tried any more"));
    }

    static double points(Offer offer) {
        return offer.centipoints() / 100.0;
    }

    static OfferedMic mic(Offer offer) {
        return offer.mics().get(0);
    }

    /** A type at a place and a distance, in the pattern and at the aim that serve best nearest to there; empty where it cannot be set up. */
    Optional<Stood> judged(Spot spot) {
        judge(List.of(spot));
        return Optional.ofNullable(stood.get(spot));
    }

    /** Judges several at once, which takes less than one by one. */
    void judge(List<Spot> spots) {
        List<Spot> left = spots.stream().filter(spot -> !stood.containsKey(spot) && best(spot.type(), spot.place()).isPresent()).distinct().toList();
        if (!left.isEmpty()) {
            judge(left, left.stream().map(this::setup).toList());
        }
    }

    private void judge(List<Spot> spots, List<Setup> setups) {
        Offers judged = Offers.stood(question, lab.catalogue(), lab.knowledge(), null, setups);
        List<Option> options = judged.explained(judged.all());
        for (int i = 0; i < options.size(); i++) {
            stood.put(spots.get(i), new Stood(options.get(i), ruledOut(judged.all().get(i))));
        }
    }

    private Setup setup(Spot spot) {
        OfferedMic near = singles.stream().map(OneMic::mic).filter(mic -> mic.micType().id().equals(spot.type()) && mic.position().id().equals(spot.place()))
                .min(Comparator.comparingDouble(mic -> Math.abs(Math.log(mic.distanceM() / spot.distanceM())))).orElseThrow();
        return new Setup(null, List.of(new Setup.Put(spot.type(), near.pattern(), spot.place(), spot.distanceM(), near.aimDegrees())));
    }

    private static List<RuledOut> ruledOut(Offer offer) {
        OfferedMic mic = mic(offer);
        return offer.findings().stream().filter(finding -> finding.rule().effect() == Effect.RULES_OUT)
                .map(finding -> new RuledOut(mic.micType().id(), mic.pattern(), mic.position().id(), finding.rule().id(), offer.says(finding), finding.values())).distinct().toList();
    }

    /** What rules out a type here; empty where it can be set up, and where it fits no place. */
    Optional<RuledOut> out(String type) {
        if (best(type).isPresent()) {
            return Optional.empty();
        }
        return outs.computeIfAbsent(type, any -> standing(lab.source(question.source())).stream().flatMap(place -> lab.type(type).patterns().stream()
                .flatMap(pattern -> out(type, pattern, place).stream())).findFirst());
    }

    private List<RuledOut> out(String type, PatternData pattern, Position place) {
        try {
            return ruledOut(Offers.stood(question, lab.catalogue(), lab.knowledge(), null,
                    List.of(new Setup(null, List.of(new Setup.Put(type, pattern.pattern(), place.id(), place.distanceM().typical(), 0.0))))).all().get(0));
        } catch (UnusableQuestion doesNotFit) {
            return List.of();
        }
    }

    /** Ids of the rules that speak for an offer, strongest first. */
    List<String> forIt(Offer offer) {
        return forIt(option(offer));
    }

    static List<String> forIt(Option option) {
        return option.reasons().stream().filter(reason -> reason.effect() == Effect.FOR).map(Reason::rule).distinct().toList();
    }

    /** What its reasons say; what speaks against it says so, since nobody sees the points. */
    static List<String> why(Option option) {
        return option.reasons().stream().map(reason -> (reason.effect() == Effect.AGAINST ? "Against it: " : "") + reason.says()).toList();
    }

    /** Ids of the rules whose cautions harm somebody or something where they are missed. */
    List<String> mind(Offer offer) {
        return mind(option(offer));
    }

    static List<String> mind(Option option) {
        return option.cautions().stream().filter(caution -> caution.severity() != Severity.NOTE).map(Caution::rule).distinct().toList();
    }

    /** What the rules warn of in earnest whatever type is chosen, set up at its best. */
    List<Caution> always() {
        List<Offer> best = bestOfEach();
        explain(best);
        return option(best.get(0)).cautions().stream().filter(caution -> caution.severity() != Severity.NOTE && caution.mic() == 0)
                .filter(caution -> best.stream().allMatch(offer -> mind(offer).contains(caution.rule()))).toList();
    }

    /** What the rules warn of in earnest at any of these. */
    List<Caution> cautions(List<Offer> some) {
        Map<String, Caution> byRule = new LinkedHashMap<>();
        some.forEach(offer -> option(offer).cautions().stream().filter(caution -> caution.severity() != Severity.NOTE).forEach(caution -> byRule.putIfAbsent(caution.rule(), caution)));
        return List.copyOf(byRule.values());
    }

    /** Ids of the rules of what is {@link #always} warned of. */
    List<String> saidBefore() {
        return always().stream().map(Caution::rule).toList();
    }

    /** Why an offer is worth what it is. */
    Option option(Offer offer) {
        return explain(List.of(offer)).explained.get(offer);
    }

    /** Works out for several at once why they are worth what they are, which takes less than one by one. */
    OneMic explain(List<Offer> some) {
        List<Offer> left = some.stream().filter(offer -> !explained.containsKey(offer)).distinct().toList();
        List<Option> options = left.isEmpty() ? List.of() : offers.explained(left);
        for (int i = 0; i < options.size(); i++) {
            explained.put(left.get(i), options.get(i));
        }
        return this;
    }
}
