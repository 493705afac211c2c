package pairwright.lab;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.advice.Offer;
import pairwright.model.Option;
import pairwright.model.RuledOut;
import pairwright.model.Severity;

/** What a choice of a microphone earns: how near it comes to the best that these types can do, split by what was decided. Not safe to share. */
final class ChooseMarks {
    /** A missed danger to people leaves less than half of the mark, one to gear a little more: nobody passes who hurts somebody. */
    private static final double DANGER_SHARE = 0.4;
    private static final double CARE_SHARE = 0.6;
    /** So far behind the best of them a type or a place is no answer; a distance, which is easier moved, less far. */
    private static final double MOST_SHORT_OF_TYPE_POINTS = 4;
    private static final double MOST_SHORT_OF_DISTANCE_POINTS = 2;
    /** By less nobody could say which of two is better, so both are right. */
    private static final double NO_LESS_POINTS = 0.25;

    private final ChooseExercise exercise;
    private final OneMic one;
    private final Lab lab;
    private final Mark.Sum sum = new Mark.Sum();
    private final Set<String> said = new HashSet<>();

    ChooseMarks(ChooseExercise exercise, OneMic one, Lab lab) {
        this.exercise = exercise;
        this.one = one;
        this.lab = lab;
    }

    /** Whether an offer comes as near to another as makes no difference. */
    static boolean noLess(Offer best, Offer offer) {
        return noLess(OneMic.points(best) - OneMic.points(offer));
    }

    static boolean noLess(double shortPoints) {
        return shortPoints < NO_LESS_POINTS;
    }

    /** Everything for no point short, nothing from so many on. */
    private static double share(double shortPoints, double mostPoints) {
        return noLess(shortPoints) ? 1 : Math.max(0, 1 - shortPoints / mostPoints);
    }

    private static OptionalDouble distance(Answer answer) {
        return Reckoned.in("cm", answer, ChooseExercise.DISTANCE);
    }

    /** Where an answer puts what; empty where nothing can stand as it says. */
    static Optional<OneMic.Spot> spot(Answer answer, OneMic one) {
        String type = answer.one(ChooseExercise.MIC);
        String place = answer.one(ChooseExercise.PLACE);
        OptionalDouble distance = distance(answer);
        boolean stands = type != null && place != null && one.best(type, place).isPresent() && distance.isPresent() && distance.getAsDouble() >= 0.5 && distance.getAsDouble() <= 10_000;
        return stands ? Optional.of(new OneMic.Spot(type, place, distance.getAsDouble() / 100)) : Optional.empty();
    }

    Mark mark(Answer answer) {
        String type = answer.one(ChooseExercise.MIC);
        String place = answer.one(ChooseExercise.PLACE);
        Optional<Offer> ofType = type == null ? Optional.empty() : one.best(type);
        Optional<Offer> atPlace = ofType.isEmpty() || place == null ? Optional.empty() : one.best(type, place);
        OptionalDouble distance = distance(answer);
        Optional<OneMic.Stood> stands = spot(answer, one).flatMap(one::judged);
        double typeShare = ofType.map(offer -> share(missed(offer), MOST_SHORT_OF_TYPE_POINTS)).orElse(0.0);
        type(type, ofType, typeShare);
        // the best place for what should not be there is worth as little as that
        double placeShare = place(ofType, atPlace, typeShare);
        distance(distance, atPlace, stands, placeShare);
        reasons(answer, stands);
        if (exercise.mindAsked()) {
            minded(answer, stands);
        }
        return sum.mark();
    }

    private double missed(Offer ofType) {
        return OneMic.points(one.best()) - OneMic.points(ofType);
    }

    private void type(String type, Optional<Offer> ofType, double share) {
        Option best = one.option(one.best());
        if (ofType.isEmpty()) {
            Optional<RuledOut> out = type == null || !exercise.offered(type) ? Optional.empty() : one.out(type);
            sum.add("The type", 0, 3, type == null ? "No type was named." : !exercise.offered(type) ? "\"" + type + "\" is none of those that were there."
                    : out.map(RuledOut::says).orElse(lab.type(type).name() + " has no place at this source."), out.map(RuledOut::rule).orElse(Behind.of(best).rule()));
            return;
        }
        double missed = missed(ofType.get());
        Behind behind = noLess(missed) ? Behind.of(best) : Behind.between(best, one.option(ofType.get()));
        sum.add("The type", share, 3, (noLess(missed) ? "Nothing here does more." : "At its best it is " + points(missed) + " short of " + OneMic.mic(one.best()).micType().name() + ".")
                + once(behind), behind.rule());
    }

    private double place(Optional<Offer> ofType, Optional<Offer> atPlace, double typeShare) {
        if (atPlace.isEmpty()) {
            sum.add("The place", 0, 2, ofType.isEmpty() ? "Without a microphone there is no place for it." : "It cannot stand there, or not alone.", null);
            return 0;
        }
        Offer could = ofType.orElseThrow();
        double missed = OneMic.points(could) - OneMic.points(atPlace.get());
        double share = typeShare * share(missed, MOST_SHORT_OF_TYPE_POINTS);
        Behind behind = noLess(missed) ? Behind.of(one.option(atPlace.get())) : Behind.between(one.option(could), one.option(atPlace.get()));
        String best = noLess(missed) ? "The place where it does most: " + OneMic.mic(atPlace.get()).position().brings() + "."
                : "It would do " + points(missed) + " more at this place: " + OneMic.mic(could).position().name() + "." + once(behind);
        sum.add("The place", share, 2, best + ofThisType(typeShare), behind.rule());
        return share;
    }

    private static String ofThisType(double typeShare) {
        return typeShare == 1 ? "" : typeShare > 0 ? " It counts for as much as the type does." : " For a type that is no answer here it earns nothing.";
    }

    private void distance(OptionalDouble distance, Optional<Offer> atPlace, Optional<OneMic.Stood> stands, double placeShare) {
        if (stands.isEmpty()) {
            sum.add("The distance", 0, 2, distance.isEmpty() ? "No distance that can be read." : "A distance counts at a place where the microphone can stand, from 0.5 cm to 100 m.", null);
            return;
        }
        OneMic.Stood judged = stands.get();
        if (!judged.ruledOut().isEmpty()) {
            sum.add("The distance", 0, 2, judged.ruledOut().get(0).says(), judged.ruledOut().get(0).rule());
            return;
        }
        Offer could = atPlace.orElseThrow();
        double missed = OneMic.points(could) - judged.option().score();
        Behind behind = noLess(missed) ? Behind.of(judged.option()) : Behind.between(one.option(could), judged.option());
        String says = noLess(missed) ? "No other distance does more there." : points(missed) + " are lost against " + ChooseExercise.centimetres(OneMic.mic(could).distanceM()) + " cm." + once(behind);
        sum.add("The distance", placeShare * share(missed, MOST_SHORT_OF_DISTANCE_POINTS), 2, says + (placeShare == 1 ? "" : " It counts for as much as type and place do."), behind.rule());
    }

    private void reasons(Answer answer, Optional<OneMic.Stood> stands) {
        List<String> right = stands.map(judged -> exercise.letters(ChooseExercise.REASONS, OneMic.forIt(judged.option()))).orElse(List.of());
        Set<String> given = new LinkedHashSet<>(answer.all(ChooseExercise.REASONS));
        long hit = given.stream().filter(right::contains).count();
        long wrong = given.size() - hit;
        String says = stands.isEmpty() ? "Nothing stands, so nothing speaks for it." : right.isEmpty() ? "As it stands none of what was offered speaks for it." : "As it stands this speaks for it: " + exercise.said(ChooseExercise.REASONS, right);
        sum.add("The reasons", given.size() > 2 ? 0 : (hit - 0.5 * wrong) / 2, 2, given.size() > 2 ? "Two were asked for, " + given.size() + " were given." : says,
                firstMissed(ChooseExercise.REASONS, right, given));
    }

    private void minded(Answer answer, Optional<OneMic.Stood> stands) {
        List<String> right = stands.map(judged -> exercise.letters(ChooseExercise.MIND, OneMic.mind(judged.option()))).orElse(List.of());
        Set<String> given = new LinkedHashSet<>(answer.all(ChooseExercise.MIND));
        Set<String> all = Stream.concat(right.stream(), given.stream()).collect(Collectors.toSet());
        long hit = given.stream().filter(right::contains).count();
        double share = stands.isEmpty() ? 0 : all.isEmpty() ? 1 : 2.0 * hit / all.size() - 1;
        sum.add("What to mind", share, 1, right.isEmpty() ? "As it stands none of them has to be minded." : "As it stands this must be minded: " + exercise.said(ChooseExercise.MIND, right), firstMissed(ChooseExercise.MIND, right, given));
        Set<String> missed = right.stream().filter(letter -> !given.contains(letter)).map(letter -> exercise.rule(ChooseExercise.MIND, letter)).collect(Collectors.toSet());
        stands.ifPresent(judged -> judged.option().cautions().stream().filter(caution -> caution.severity() != Severity.NOTE && missed.contains(caution.rule()))
                .forEach(caution -> sum.cap(caution.severity() == Severity.DANGER ? DANGER_SHARE : CARE_SHARE, caution.says())));
    }

    /** A reason behind what was said; nothing the second time. */
    private String once(Behind behind) {
        return said.add(behind.says()) ? " " + behind.says() : "";
    }

    /** The rule that was missed, or else one that was to be found. */
    private String firstMissed(String item, List<String> right, Set<String> given) {
        return Stream.concat(right.stream().filter(letter -> !given.contains(letter)), right.stream()).findFirst().map(letter -> exercise.rule(item, letter)).orElse(null);
    }

    static String points(double points) {
        return String.format(Locale.ROOT, "%.1f points", points);
    }
}
