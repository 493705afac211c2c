package pairwright.advice;

import java.util.List;
import pairwright.model.Position;

/** Says who else reaches a microphone, by where it stands at its source. */
@FunctionalInterface
public interface Surroundings {
    /** Nobody else plays. */
    Surroundings NOBODY = (position, distanceM) -> List.of();

    /**
     * Who reaches a microphone.
     *
     * @param position of the source that is recorded
     * @param distanceM from its sounding surface
     * @return one for each who does, always in the same order
     */
    List<Reaching> at(Position position, double distanceM);
}
