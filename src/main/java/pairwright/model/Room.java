package pairwright.model;

import java.util.List;

/**
 * A kind of room.
 *
 * @param id kebab case
 * @param name what people call it
 * @param says how it sounds and what to mind
 * @param words other names
 * @param widthM width
 * @param depthM depth
 * @param heightM height; for the open air the numbers describe nothing and outdoors is set
 * @param reverbTimeS mid-band reverberation time
 * @param noiseDba noise when nobody plays
 * @param kind whether it flatters
 * @param outdoors no reverberation at all
 * @param confidence how sure
 * @param basis what the figures rest on
 */
public record Room(
        String id,
        String name,
        String says,
        List<String> words,
        double widthM,
        double depthM,
        double heightM,
        double reverbTimeS,
        double noiseDba,
        RoomKind kind,
        boolean outdoors,
        Confidence confidence,
        List<Rests> basis) {

    /** The same room with so many times its reverberation time. */
    public Room ringing(double times) {
        return new Room(id, name, says, words, widthM, depthM, heightM, reverbTimeS * times, noiseDba, kind, outdoors, confidence, basis);
    }

    /** Volume in cubic metres. */
    public double volumeM3() {
        return widthM * depthM * heightM;
    }
}
