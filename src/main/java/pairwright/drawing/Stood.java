package pairwright.drawing;

import pairwright.model.Address;
import pairwright.model.PatternData;
import pairwright.model.Placement;
import pairwright.model.Point;
import pairwright.model.Standpoint;
import pairwright.model.Position;
import pairwright.model.PowerNeed;

/**
 * One microphone of an option as it stands in space.
 *
 * @param number 1 or 2
 * @param placement what stands there
 * @param position of the source it stands at
 * @param address which part looks at the source
 * @param power what its type runs on
 * @param pattern the figures of the pattern that is set
 * @param standpoint where it stands; for a stereo pair where the middle of the pair stands
 * @param capsule where its own capsule is
 * @param turnDegrees turned to the left off the line to the source, seen from above or, where it looks steeply, from the side
 * @param air whether there is air between it and the source
 */
record Stood(int number, Placement placement, Position position, Address address, PowerNeed power, PatternData pattern, Standpoint standpoint, Point capsule,
        double turnDegrees, boolean air) {
    private static final double STEEP_DEGREES = 60;

    /** One metre along the line to the source. */
    Point sight() {
        return standpoint.surface().minus(standpoint.place()).unit();
    }

    /** Whether it looks so steeply up or down that from above nothing can be said of its direction. */
    boolean steep() {
        return Math.abs(sight().upDegrees()) > STEEP_DEGREES;
    }

    double heightM() {
        return capsule.upM();
    }
}
