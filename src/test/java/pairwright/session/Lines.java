package pairwright.session;

import java.util.List;
import pairwright.acoustics.Level;
import pairwright.acoustics.OctaveCurve;
import pairwright.advice.AsPlayed;
import pairwright.model.MicType;
import pairwright.model.Mount;
import pairwright.model.Pattern;
import pairwright.model.Placement;
import pairwright.model.Position;
import pairwright.model.Predicted;

/** Lines of a plan for tests: where a microphone stands, and as loud as its own source is there; nothing else is predicted. */
final class Lines {
    private Lines() {
    }

    static Line line(LineUp lineUp, int number, String seat, String micType, Pattern pattern, String position, double distanceM, double aimDegrees) {
        return line(lineUp, number, seat, 1, micType, pattern, position, distanceM, aimDegrees, false);
    }

    static Line line(LineUp lineUp, int number, String seatId, int mic, String micType, Pattern pattern, String positionId, double distanceM,
            double aimDegrees, boolean inverted) {
        return line(lineUp, number, seatId, mic, micType, pattern, positionId, distanceM, aimDegrees, inverted, null);
    }

    /** @param separationDb its own source over all others, as it was predicted */
    static Line line(LineUp lineUp, int number, String seatId, int mic, String micType, Pattern pattern, String positionId, double distanceM,
            double aimDegrees, boolean inverted, Double separationDb) {
        Seat seat = lineUp.seat(seatId).orElseThrow();
        AsPlayed played = AsPlayed.of(Altered.source(Rooms.CATALOGUE, seat), seat.ways(), seat.dynamics(), Rooms.CATALOGUE.words());
        Position position = Rooms.position(seat.source(), positionId);
        MicType type = Rooms.CATALOGUE.mics().get(micType);
        boolean air = position.mount() != Mount.LEAD && position.mount() != Mount.CONTACT;
        Double typicalDbSpl = air ? Level.withCentreOffsetDbSpl(played.typicalDbSpl(), distanceM, played.source().level().centreOffsetM()) + position.levelDb() : null;
        Predicted predicted = new Predicted(null, typicalDbSpl, null, null, null, null, null, 0, null, separationDb, 0, 0, 0, 0, 0, 0, 0, 0, 0, OctaveCurve.ZERO,
                OctaveCurve.ZERO);
        Placement placement = new Placement(micType, type.name(), type.family(), pattern, positionId, position.name(), position.brings(), position.mount(),
                distanceM, position.heightM(), aimDegrees, null, null, null, 0, 0, null, null, null, 0, 0, false, false, 0, inverted, 1, null, null, predicted,
                List.of());
        return line(number, seat, mic, placement, FloorSurroundings.of(lineUp, seat, Rooms.CATALOGUE).spot(position, distanceM, aimDegrees));
    }

    static Line line(int number, Seat seat, int mic, Placement placement, Line.Spot spot) {
        return new Line(number, null, null, null, null, seat.id(), seat.id(), seat.source(), mic, placement, spot, null, null, null, null, null, null, 0, false,
                false, 0, null, null, Between.NOTHING, List.of());
    }
}
