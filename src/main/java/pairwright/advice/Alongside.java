package pairwright.advice;

import java.util.ArrayList;
import java.util.List;
import pairwright.acoustics.Level;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Room;
import pairwright.model.Catalogue;
import pairwright.model.Neighbour;
import pairwright.model.Position;
import pairwright.model.Question;
import pairwright.model.Source;

/** The neighbours a question names: at the same distance and angle wherever the microphone stands, since a question has no floor. */
final class Alongside implements Surroundings {
    /** Power level over the level at one metre all round: 10 lg of the surface of a sphere of that radius. */
    private static final double SPHERE_DB = 10 * Math.log10(4 * Math.PI);

    private final List<Reaching> all;

    private Alongside(List<Reaching> all) {
        this.all = List.copyOf(all);
    }

    /**
     * Those of a question.
     *
     * @param absorptionM2 of the room; null in the open air
     * @param assumed takes a sentence for each who is left out
     */
    static Alongside of(Question question, Catalogue catalogue, Double absorptionM2, List<String> assumed) {
        List<Reaching> all = new ArrayList<>();
        for (Neighbour neighbour : question.neighbours()) {
            Source other = catalogue.sources().get(neighbour.source());
            if (other.level() == null) {
                assumed.add(other.name() + " as a neighbour makes no sound in the room: left out.");
                continue;
            }
            long before = all.stream().filter(one -> one.source() == other).count();
            all.add(reaching(before == 0 ? other.id() : other.id() + " " + (before + 1), neighbour, other, absorptionM2));
        }
        return new Alongside(all);
    }

    private static Reaching reaching(String seat, Neighbour neighbour, Source other, Double absorptionM2) {
        double oneMetreDbSpl = other.level().typicalDbSpl();
        double direct = Level.withCentreOffsetDbSpl(oneMetreDbSpl, neighbour.distanceM(), other.level().centreOffsetM());
        OctaveCurve powerDb = Scene.octavesDbSpl(oneMetreDbSpl, other.spectrumDb()).minus(other.directivityIndexDb()).plus(SPHERE_DB);
        double angleDegrees = Scene.foldedDegrees(neighbour.angleDegrees());
        return new Reaching(seat, other, neighbour.distanceM(), angleDegrees, Reaching.acrossShare(angleDegrees),
                Scene.octavesDbSpl(direct, other.spectrumDb()),
                absorptionM2 == null ? null : powerDb.map(db -> Room.reverberantDbSpl(db, absorptionM2)), 0);
    }

    @Override
    public List<Reaching> at(Position position, double distanceM) {
        return all;
    }
}
