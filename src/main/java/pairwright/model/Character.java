package pairwright.model;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
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

    private static final double MOST_DB = 8;

    /** Several characters make one: their tones add, within 8 dB; the last word on room and speed counts. Null for none. */
    public static Character together(List<Character> named) {
        if (named.size() <= 1) {
            return named.isEmpty() ? null : named.get(0);
        }
        OctaveCurve tone = OctaveCurve.ZERO;
        Range directToReverbDb = null;
        Set<Speed> speeds = EnumSet.noneOf(Speed.class);
        Set<String> ids = new LinkedHashSet<>();
        Set<String> names = new LinkedHashSet<>();
        Set<String> against = new LinkedHashSet<>();
        Confidence confidence = Confidence.HIGH;
        for (Character character : named) {
            tone = tone.plus(character.toneDb());
            directToReverbDb = character.directToReverbDb() == null ? directToReverbDb : character.directToReverbDb();
            speeds.addAll(character.speeds());
            ids.add(character.id());
            names.add(Naming.small(character.name()));
            against.addAll(character.against());
            confidence = confidence.compareTo(character.confidence()) < 0 ? confidence : character.confidence();
        }
        return new Character(String.join("+", ids), String.join(" and ", names), "", List.of(), tone.map(db -> Math.max(-MOST_DB, Math.min(MOST_DB, db))),
                directToReverbDb, List.copyOf(speeds), List.copyOf(against), confidence, List.of());
    }
}
