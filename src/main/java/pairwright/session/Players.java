package pairwright.session;

import java.util.LinkedHashMap;
import java.util.Map;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Room;
import pairwright.advice.AsPlayed;
import pairwright.model.Catalogue;
import pairwright.model.Source;
import pairwright.model.SourceFamily;

/** What the seats of a line-up sound like, wherever they are: as they are played today, and what the room adds of each. */
final class Players {
    private final Map<String, Player> bySeat;

    /**
     * One of them.
     *
     * @param played the source as it is played, with what was noted of the player
     * @param reverberantOctavesDbSpl what the room adds of it; null in the open air, and for what makes no sound in the room
     */
    record Player(AsPlayed played, OctaveCurve reverberantOctavesDbSpl) {
        boolean sounds() {
            return played.source().level() != null;
        }

        /** Whether it is somebody who plays with the others; a room does not. */
        boolean plays() {
            return sounds() && played.source().family() != SourceFamily.AMBIENCE;
        }
    }

    private Players(Map<String, Player> bySeat) {
        this.bySeat = bySeat;
    }

    /** @param catalogue as it is, nothing of it altered for any seat */
    static Players of(LineUp lineUp, Catalogue catalogue) {
        Double absorptionM2 = Altered.outdoors(lineUp.floor(), catalogue) ? null
                : Double.valueOf(Room.absorptionM2(lineUp.floor().volumeM3(), lineUp.floor().reverbTimeS()));
        Map<String, Player> bySeat = new LinkedHashMap<>();
        for (Seat seat : lineUp.seats()) {
            Source source = Altered.source(catalogue, seat);
            AsPlayed played = AsPlayed.of(source, seat.ways(), seat.dynamics(), catalogue.words());
            bySeat.put(seat.id(), new Player(played, absorptionM2 == null || source.level() == null ? null : played.reverberantOctavesDbSpl(absorptionM2)));
        }
        return new Players(bySeat);
    }

    Player at(Seat seat) {
        return bySeat.get(seat.id());
    }
}
