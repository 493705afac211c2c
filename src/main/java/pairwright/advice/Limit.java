package pairwright.advice;

import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.model.Limits;
import pairwright.model.Word;

/** The limits of a question one by one, so that each can be lifted to see what it costs. */
enum Limit {
    CHANNELS("/limits/mics", limits -> limits.mics() != null,
            limits -> new Limits(null, limits.phantom(), limits.preampGainDb(), limits.preampNoiseDbu(), limits.onlyFamilies(),
                    limits.withoutFamilies(), limits.onlyMicTypes(), limits.withoutMicTypes())),
    PHANTOM("/limits/phantom", limits -> Boolean.FALSE.equals(limits.phantom()),
            limits -> new Limits(limits.mics(), null, limits.preampGainDb(), limits.preampNoiseDbu(), limits.onlyFamilies(),
                    limits.withoutFamilies(), limits.onlyMicTypes(), limits.withoutMicTypes())),
    PREAMP("/limits/preampGainDb", limits -> limits.preampGainDb() != null || limits.preampNoiseDbu() != null,
            limits -> new Limits(limits.mics(), limits.phantom(), null, null, limits.onlyFamilies(),
                    limits.withoutFamilies(), limits.onlyMicTypes(), limits.withoutMicTypes())),
    ONLY_FAMILIES("/limits/onlyFamilies", limits -> !limits.onlyFamilies().isEmpty(),
            limits -> new Limits(limits.mics(), limits.phantom(), limits.preampGainDb(), limits.preampNoiseDbu(), null,
                    limits.withoutFamilies(), limits.onlyMicTypes(), limits.withoutMicTypes())),
    WITHOUT_FAMILIES("/limits/withoutFamilies", limits -> !limits.withoutFamilies().isEmpty(),
            limits -> new Limits(limits.mics(), limits.phantom(), limits.preampGainDb(), limits.preampNoiseDbu(),
                    limits.onlyFamilies(), null, limits.onlyMicTypes(), limits.withoutMicTypes())),
    ONLY_TYPES("/limits/onlyMicTypes", limits -> !limits.onlyMicTypes().isEmpty(),
            limits -> new Limits(limits.mics(), limits.phantom(), limits.preampGainDb(), limits.preampNoiseDbu(),
                    limits.onlyFamilies(), limits.withoutFamilies(), null, limits.withoutMicTypes())),
    WITHOUT_TYPES("/limits/withoutMicTypes", limits -> !limits.withoutMicTypes().isEmpty(),
            limits -> new Limits(limits.mics(), limits.phantom(), limits.preampGainDb(), limits.preampNoiseDbu(),
                    limits.onlyFamilies(), limits.withoutFamilies(), limits.onlyMicTypes(), null));

    private final String pointer;
    private final Predicate<Limits> set;
    private final UnaryOperator<Limits> lifted;

    Limit(String pointer, Predicate<Limits> set, UnaryOperator<Limits> lifted) {
        this.pointer = pointer;
        this.set = set;
        this.lifted = lifted;
    }

    /** The field of the question that sets it. */
    String pointer(Limits limits) {
        return this == PREAMP && limits.preampGainDb() == null ? "/limits/preampNoiseDbu" : pointer;
    }

    boolean isSet(Limits limits) {
        return set.test(limits);
    }

    Limits lifted(Limits limits) {
        return lifted.apply(limits);
    }

    /** The limit as it was set, in words. */
    String says(Limits limits) {
        return switch (this) {
            case CHANNELS -> "The limit of " + limits.mics() + (limits.mics() == 1 ? " channel" : " channels");
            case PHANTOM -> "The limit \"no phantom power\"";
            case PREAMP -> "The preamplifier (" + Stream.of(
                            limits.preampGainDb() == null ? "" : Questions.plain(limits.preampGainDb()) + " dB of gain",
                            limits.preampNoiseDbu() == null ? "" : "input noise " + Questions.plain(limits.preampNoiseDbu()) + " dBu")
                    .filter(part -> !part.isEmpty()).collect(Collectors.joining(", ")) + ")";
            case ONLY_FAMILIES -> "The limit \"only " + words(limits.onlyFamilies()) + "\"";
            case WITHOUT_FAMILIES -> "The limit \"no " + words(limits.withoutFamilies()) + "\"";
            case ONLY_TYPES -> "The limit \"only " + String.join(", ", limits.onlyMicTypes()) + "\"";
            case WITHOUT_TYPES -> "The limit \"not " + String.join(", ", limits.withoutMicTypes()) + "\"";
        };
    }

    private static String words(List<? extends Word> words) {
        return words.stream().map(Word::id).collect(Collectors.joining(", "));
    }
}
