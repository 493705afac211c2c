package pairwright.session;

import java.util.List;
import pairwright.advice.Usual;
import pairwright.model.Basis;
import pairwright.model.Catalogue;
import pairwright.model.Confidence;
import pairwright.model.Rests;
import pairwright.model.Room;
import pairwright.model.Source;

/** The catalogue as it holds at one seat of a session: its room as it was measured, and its player as heard before. */
public final class Altered {
    /** The room of the session; no entry of the catalogue has this id. */
    public static final String ROOM = "room-of-the-session";

    private Altered() {
    }

    /**
     * For one seat.
     *
     * @param catalogue as it is
     * @param lineUp whose room is known to the catalogue, or null
     * @param seat whose source is known to the catalogue
     */
    public static Catalogue of(Catalogue catalogue, LineUp lineUp, Seat seat) {
        Catalogue roomed = catalogue.with(room(catalogue, lineUp.floor()));
        return seat.heard() == null ? roomed : roomed.with(source(catalogue, seat));
    }

    /** A source as its player was heard, where that was noted; what was not noted is as in the catalogue. */
    static Source source(Catalogue catalogue, Seat seat) {
        Source source = catalogue.sources().get(seat.source());
        if (source == null) {
            throw new IllegalArgumentException("there is no source \"" + seat.source() + "\" for seat \"" + seat.id() + "\"");
        }
        return seat.heard() == null ? source : seat.heard().over(source);
    }

    static boolean outdoors(Floor floor, Catalogue catalogue) {
        return base(catalogue, floor).outdoors();
    }

    /** Of the named kind, or the usual one, with the measures of the floor. */
    private static Room room(Catalogue catalogue, Floor floor) {
        Room base = base(catalogue, floor);
        boolean named = floor.room() != null;
        return new Room(ROOM, named ? base.name() : "Room of the session", base.says(), List.of(), floor.widthM(), floor.depthM(), floor.heightM(),
                floor.reverbTimeS(), base.noiseDba(), base.kind(), base.outdoors(), Confidence.HIGH,
                List.of(new Rests(List.of("widthM", "depthM", "heightM", "reverbTimeS"), Basis.MEASURED, "As the line-up says.")));
    }

    private static Room base(Catalogue catalogue, Floor floor) {
        Room base = catalogue.rooms().get(floor.room() == null ? Usual.ROOM : floor.room());
        if (base == null) {
            throw new IllegalArgumentException("there is no room \"" + floor.room() + "\"");
        }
        return base;
    }
}
