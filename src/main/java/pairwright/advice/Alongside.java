package pairwright.advice;

import java.util.ArrayList;
import java.util.List;
import pairwright.model.Catalogue;
import pairwright.model.Neighbour;
import pairwright.model.Position;
import pairwright.model.Question;
import pairwright.model.Source;

/** The neighbours a question names: at the same distance and angle wherever the microphone stands, since a question has no floor. */
final class Alongside implements Surroundings {
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
            all.add(reaching(before == 0 ? other.id() : other.id() + " " + (before + 1), neighbour,
                    AsPlayed.of(other, List.of(), List.of(), catalogue.words()), absorptionM2));
        }
        return new Alongside(all);
    }

    private static Reaching reaching(String seat, Neighbour neighbour, AsPlayed other, Double absorptionM2) {
        double angleDegrees = Scene.foldedDegrees(neighbour.angleDegrees());
        return new Reaching(seat, other.source(), neighbour.distanceM(), angleDegrees, Reaching.acrossShare(angleDegrees),
                other.directOctavesDbSpl(neighbour.distanceM()), absorptionM2 == null ? null : other.reverberantOctavesDbSpl(absorptionM2), 0);
    }

    @Override
    public List<Reaching> at(Position position, double distanceM) {
        return all;
    }
}
