package pairwright.lab;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.advice.Offers;
import pairwright.model.Caution;
import pairwright.model.Effect;
import pairwright.model.Mount;
import pairwright.model.Option;
import pairwright.model.Reason;
import pairwright.model.Severity;

/**
 * Some set-ups of one microphone or two, as they are shown, with why each is worth what it is.
 */
final class TwoMics {
    private static final String PAIRING = "PAI";
    private static final String STEREO = "STE";
    private static final double LEAST_AGAINST_POINTS = 1;

    private final List<Offer> offers;
    private final List<Option> options;

    /** Why a rule is spoken of. */
    enum Why {
        REASON, MIND
    }

    TwoMics(Offers from, List<Offer> offers) {
        this.offers = List.copyOf(offers);
        this.options = from.explained(offers);
    }

    /** @throws IllegalArgumentException where one is not offered any more */
    static TwoMics named(Offers from, List<String> names) {
        return new TwoMics(from, names.stream().map(name -> from.all().stream().filter(offer -> name(offer).equals(name)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The set-up \"" + name + "\" of the exercise is not among what is tried any more"))).toList());
    }

    /** By which one is found again. */
    static String name(Offer offer) {
        return offer.technique() + (offer.matchedPair() ? " matched" : "") + ": " + offer.mics().stream()
                .map(mic -> mic.micType().id() + " " + mic.pattern().id() + " " + mic.position().id() + " " + mic.distanceM() + " " + mic.aimDegrees()).collect(Collectors.joining(", "));
    }

    int size() {
        return offers.size();
    }

    Offer offer(int which) {
        return offers.get(which);
    }

    Option option(int which) {
        return options.get(which);
    }

    double points(int which) {
        return OneMic.points(offers.get(which));
    }

    /** The one that is worth most. */
    int best() {
        return IntStream.range(0, size()).boxed().max((one, other) -> Long.compare(offers.get(one).centipoints(), offers.get(other).centipoints())).orElseThrow();
    }

    /** Ids of the rules that speak for one, those on pairs first. */
    List<String> forIt(int which) {
        List<String> all = options.get(which).reasons().stream().filter(reason -> reason.effect() == Effect.FOR).map(Reason::rule).distinct().toList();
        return Stream.concat(all.stream().filter(TwoMics::onPairs), all.stream().filter(rule -> !onPairs(rule))).toList();
    }

    /** What speaks against one, that costs it a point or more. */
    List<Reason> against(int which) {
        return options.get(which).reasons().stream().filter(reason -> reason.effect() == Effect.AGAINST && reason.points() <= -LEAST_AGAINST_POINTS).toList();
    }

    /** Ids of all rules that say anything for or against one. */
    Set<String> counted(int which) {
        return options.get(which).reasons().stream().map(Reason::rule).collect(Collectors.toSet());
    }

    /** Ids of the rules whose cautions must be minded with one: all on pairs, and of the others those that harm somebody or something. */
    List<String> mind(int which) {
        return options.get(which).cautions().stream().filter(caution -> onPairs(caution.rule()) || caution.severity() != Severity.NOTE).map(Caution::rule).distinct().toList();
    }

    /** The same of all but the first, without what holds for that. */
    List<String> others(Why why) {
        List<String> first = of(0, why);
        return IntStream.range(1, size()).boxed().flatMap(which -> of(which, why).stream()).distinct().filter(rule -> !first.contains(rule)).toList();
    }

    private List<String> of(int which, Why why) {
        return why == Why.REASON ? forIt(which) : mind(which);
    }

    private static boolean onPairs(String rule) {
        return rule.startsWith(PAIRING) || rule.startsWith(STEREO);
    }

    /** Whether it is one microphone of two channels. */
    static boolean oneBody(Offer offer) {
        return offer.mics().size() == 1 && offer.channels() == 2;
    }

    /** As somebody sets it up. */
    String says(int which) {
        Offer offer = offers.get(which);
        String mics = offer.mics().stream().map(TwoMics::says).collect(Collectors.joining("; "));
        return (oneBody(offer) ? "One body with two channels" : offer.pairing() == null ? "One microphone" : offer.pairing().name()) + ": " + mics + (offer.secondInverted() ? "; the second inverted" : "") + ".";
    }

    private static String says(OfferedMic mic) {
        String turned = mic.aimDegrees() == 0 ? "" : ", turned " + Math.round(Math.abs(mic.aimDegrees())) + "\u00b0 off";
        // what touches the source or takes its line has no distance
        String far = mic.position().mount() == Mount.CONTACT || mic.position().mount() == Mount.LEAD ? "" : ", " + ChooseExercise.far(mic.distanceM());
        return OneMic.called(mic.micType(), mic.pattern()) + ", " + mic.position().name() + far + turned;
    }
}
