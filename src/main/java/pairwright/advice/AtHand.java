package pairwright.advice;

import java.time.Duration;
import java.time.OffsetDateTime;
import pairwright.model.Stock;

/** Says what microphones are at hand for a time. */
@FunctionalInterface
public interface AtHand {
    /** How long something is needed where a question does not say. */
    Duration USUAL_LENGTH = Duration.ofHours(4);
    /** No locker: the whole catalogue is at hand. */
    AtHand EVERYTHING = (from, until) -> null;

    /**
     * The stock for a time.
     *
     * @param from first moment; null for now
     * @param until first moment after it; null for {@link #USUAL_LENGTH} from then on
     * @return null where there is no locker, or nothing in it
     */
    Stock at(OffsetDateTime from, OffsetDateTime until);

    /** What was kept in this house before; nothing unless it says otherwise. Whoever asks what is at hand remembers by this as well. */
    default HouseMemory memory() {
        return HouseMemory.NOTHING;
    }

    /** The same microphones in a house that remembers. */
    default AtHand with(HouseMemory memory) {
        AtHand same = this;
        return new AtHand() {
            @Override
            public Stock at(OffsetDateTime from, OffsetDateTime until) {
                return same.at(from, until);
            }

            @Override
            public HouseMemory memory() {
                return memory;
            }
        };
    }
}
