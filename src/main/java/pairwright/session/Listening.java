package pairwright.session;

import java.util.List;
import pairwright.acoustics.OctaveCurve;
import pairwright.advice.Overheard;
import pairwright.advice.Reaching;
import pairwright.model.Mount;
import pairwright.model.PatternData;
import pairwright.model.Placement;
import pairwright.model.Position;
import pairwright.model.Source;

/**
 * The microphone of a line where it stands, and who else reaches it there.
 *
 * @param line of the plan
 * @param position of the catalogue
 * @param spectrumDb of its own source as it is played
 * @param pattern that is set
 * @param around who sits around it
 * @param others who of them reach it
 */
record Listening(Line line, Position position, OctaveCurve spectrumDb, PatternData pattern, FloorSurroundings around, List<Reaching> others) {

    /** Whether there is air between a source and what takes it up. */
    static boolean inTheAir(Placement placement) {
        return placement.mount() != Mount.LEAD && placement.mount() != Mount.CONTACT && placement.predicted().typicalDbSpl() != null;
    }

    static Position position(Source source, String id) {
        return source.positions().stream().filter(one -> one.id().equals(id)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(source.id() + " has no position \"" + id + "\""));
    }

    /** All together. */
    Overheard all() {
        return of(others);
    }

    /** One of them alone. */
    Overheard alone(Reaching other) {
        return of(List.of(other));
    }

    private Overheard of(List<Reaching> some) {
        return Overheard.of(spectrumDb, line.placement().predicted().typicalDbSpl(), pattern, some);
    }

    double aimDegrees() {
        return line.placement().aimDegrees();
    }

    /** How far it may be turned. */
    double mostTurnDegrees() {
        return Math.max(Overheard.mostTurnDegrees(), position.aimDegrees().high());
    }

    /** The same after somebody was moved or turned: its own player, and it with them, or another. */
    Listening after(Seat moved) {
        double distanceM = line.placement().distanceM();
        if (line.seat().equals(moved.id())) {
            FloorSurroundings elsewhere = around.seated(moved);
            return new Listening(line, position, spectrumDb, pattern, elsewhere, elsewhere.at(position, distanceM));
        }
        Reaching from = from(moved);
        return new Listening(line, position, spectrumDb, pattern, around.moved(moved), others.stream()
                .map(other -> other.seat().equals(moved.id()) ? from : other).toList());
    }

    /** One of the others from elsewhere, or turned. */
    Reaching from(Seat moved) {
        return around.from(moved, around.mic(position, line.placement().distanceM()));
    }

    /** Whether its aim is one that turning may change; the side of a mid-side pair looks across and stays so. */
    boolean mayTurn() {
        return Math.abs(aimDegrees()) <= mostTurnDegrees();
    }

    /** Own level over all others with the better of two aims: as it is planned, and as is best there. */
    double bestDb() {
        Overheard all = all();
        double asPlannedDb = all.separationDb(aimDegrees());
        return mayTurn() ? Math.max(asPlannedDb, all.separationDb(all.bestAimDegrees(mostTurnDegrees()))) : asPlannedDb;
    }
}
