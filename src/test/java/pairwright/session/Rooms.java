package pairwright.session;

import java.util.List;
import pairwright.advice.Reaching;
import pairwright.catalogue.CatalogueStore;
import pairwright.model.Catalogue;
import pairwright.model.Position;

/** Line-ups in rooms, for tests. */
final class Rooms {
    static final Catalogue CATALOGUE = new CatalogueStore().builtIn();
    static final Floor OPEN_AIR = new Floor("open-air", 40, 40, 20, 0.05);
    static final Floor BARN = new Floor("barn", 10, 14, 6, 1.1);

    private Rooms() {
    }

    static LineUp lineUp(Floor floor, List<Gobo> gobos, Seat... seats) {
        return new LineUp("Test", floor, List.of(seats), gobos, null, null, null, null, 3);
    }

    static LineUp inTheOpen(Seat... seats) {
        return lineUp(OPEN_AIR, List.of(), seats);
    }

    static Seat seat(String id, String source, double xM, double yM, double facingDegrees) {
        return new Seat(id, null, source, xM, yM, facingDegrees, null, null, null, null, null, true, null, false);
    }

    static Position position(String source, String id) {
        return CATALOGUE.sources().get(source).positions().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    }

    /** Who reaches a microphone at the first seat of a line-up. */
    static List<Reaching> reaching(LineUp lineUp, String position, double distanceM) {
        Seat seat = lineUp.seats().get(0);
        return FloorSurroundings.of(lineUp, seat, CATALOGUE).at(position(seat.source(), position), distanceM);
    }
}
