package pairwright.session;

import java.util.List;
import pairwright.acoustics.OctaveCurve;
import pairwright.advice.Usual;
import pairwright.model.Basis;
import pairwright.model.Catalogue;
import pairwright.model.Confidence;
import pairwright.model.Level;
import pairwright.model.Range;
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
        HeardBefore heard = seat.heard();
        return heard == null ? source
                : source.heard(level(source.level(), heard), spectrum(source.spectrumDb(), heard.toneDb()), fundamentals(source.fundamentalHz(), heard));
    }

    /** Who plays louder has louder peaks, unless those were noted as well. */
    private static Level level(Level known, HeardBefore heard) {
        if (known == null) {
            return null;
        }
        double typical = heard.typicalDbSpl() == null ? known.typicalDbSpl() : heard.typicalDbSpl();
        double peak = heard.peakDbSpl() == null ? known.peakDbSpl() + typical - known.typicalDbSpl() : heard.peakDbSpl();
        return new Level(Math.min(typical, peak), peak, known.toleranceDb(), known.centreOffsetM());
    }

    private static OctaveCurve spectrum(OctaveCurve known, OctaveCurve toneDb) {
        if (toneDb == null) {
            return known;
        }
        OctaveCurve heard = known.plus(toneDb);
        return heard.relativeToBand(heard.highestBand());
    }

    private static Range fundamentals(Range known, HeardBefore heard) {
        double low = heard.lowestHz() == null ? known.low() : heard.lowestHz();
        double high = Math.max(low, heard.highestHz() == null ? known.high() : heard.highestHz());
        return new Range(low, Math.max(low, Math.min(high, known.typical())), high);
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
