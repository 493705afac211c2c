package pairwright.model;

import java.util.List;

/**
 * A kind of move against a complaint. What it does is computed for the placement at hand; that it is worth trying, and in which order, is
 * opinion.
 *
 * @param by what is moved or asked for
 * @param says what to do, in a sentence
 * @param why its reason
 * @param factors of the distance, in the order they are tried; empty where the distance stays
 * @param beyondRatio so many times as far as a place reaches a microphone on a stand may go; null for no farther than the place reaches
 * @param turnsDegrees off the line to the source, in the order they are tried; empty where the aim stays
 * @param levelDb what it makes of the level of the source; null for nothing
 * @param sources only at these sources, by id; with sourceFamilies, at either; both empty for any
 * @param sourceFamilies only at sources of these families
 * @param notSourceFamilies at no source of these families
 * @param micFamilies only with microphones of these families, and only such are taken in exchange; empty for any
 * @param patterns only these are switched to; empty for any
 * @param dangers only where one of these reaches the microphone, and out of its reach if the microphone is moved; empty anywhere
 * @param unmeasured whether it is worth doing though no number shows what it does to the complaint
 */
public record Remedy(
        MoveKind by,
        String says,
        String why,
        List<Double> factors,
        Double beyondRatio,
        List<Double> turnsDegrees,
        Double levelDb,
        List<String> sources,
        List<SourceFamily> sourceFamilies,
        List<SourceFamily> notSourceFamilies,
        List<MicFamily> micFamilies,
        List<Pattern> patterns,
        List<DangerKind> dangers,
        boolean unmeasured) {
}
