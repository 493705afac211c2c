package pairwright.model;

import java.util.List;
import pairwright.acoustics.OctaveCurve;

/**
 * A sound that is wanted.
 *
 * @param id kebab case
 * @param name as an engineer would say it
 * @param says what is meant
 * @param words other words for it
 * @param toneDb how the recorded spectrum should differ from the source as it is
 * @param directToReverbDb the balance of direct sound to room that is wanted; null where it does not matter
 * @param speeds transducer speeds that suit; empty for any
 * @param against characters that contradict it
 * @param confidence how sure
 * @param basis what the figures rest on
 */
public record Character(
        String id,
        String name,
        String says,
        List<String> words,
        OctaveCurve toneDb,
        Range directToReverbDb,
        List<Speed> speeds,
        List<String> against,
        Confidence confidence,
        List<Rests> basis) {
}
