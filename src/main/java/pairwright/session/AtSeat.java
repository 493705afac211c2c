package pairwright.session;

import java.util.List;
import pairwright.advice.Offer;
import pairwright.advice.Offers;
import pairwright.model.Catalogue;
import pairwright.model.Option;
import pairwright.model.Source;

/**
 * A seat with all that may be put in front of it, judged where it sits.
 *
 * @param seat of the line-up
 * @param catalogue as it is for this seat: its source as this player plays it, the room of the session
 * @param surroundings who else reaches its microphones
 * @param offers all that stands, best first
 */
record AtSeat(Seat seat, Catalogue catalogue, FloorSurroundings surroundings, Offers offers) {
    Source source() {
        return catalogue.sources().get(seat.source());
    }

    /** Why an offer is worth what it is, on the units that are named. Seats are judged once and shared, their offers are not safe to be. */
    Option explained(Offer offer, List<String> units) {
        synchronized (offers) {
            return offers.explained(List.of(offer), List.of(units)).get(0);
        }
    }

    /** The offer that is set up as it was picked, distance and aim as near as there is; null where none is of those types at those places. */
    Offer picked(Picks.AtSeat picked) {
        Offer found = null;
        double foundMiss = Double.POSITIVE_INFINITY;
        for (Offer offer : offers.all()) {
            double miss = miss(offer, picked);
            if (miss < foundMiss) {
                found = offer;
                foundMiss = miss;
            }
        }
        return found;
    }

    /** How far an offer is from what was picked; infinite where it is another thing. */
    private static double miss(Offer offer, Picks.AtSeat picked) {
        List<Picks.Mic> mics = picked.mics();
        if (offer.mics().size() != mics.size() || picked.technique() != null && !picked.technique().equals(offer.technique())) {
            return Double.POSITIVE_INFINITY;
        }
        double miss = 0;
        for (int i = 0; i < mics.size(); i++) {
            var mic = offer.mics().get(i);
            Picks.Mic other = mics.get(i);
            if (!mic.micType().id().equals(other.micType()) || !mic.position().id().equals(other.position())
                    || other.pattern() != null && mic.pattern() != other.pattern() || mic.unit() != null && other.unit() != null && !mic.unit().equals(other.unit())
                    || mic.unit() == null && other.unit() != null && !mic.units().isEmpty() && !mic.units().contains(other.unit())) {
                return Double.POSITIVE_INFINITY;
            }
            miss += other.distanceM() == null ? 0 : Math.abs(Math.log(mic.distanceM() / other.distanceM()));
            miss += other.aimDegrees() == null ? 0 : Math.abs(mic.aimDegrees() - other.aimDegrees()) / 1000;
        }
        return miss;
    }
}
