package pairwright.http;

import java.util.List;
import pairwright.model.FromLocker;
import pairwright.session.Gear;
import pairwright.session.LineUp;
import pairwright.session.Lost;
import pairwright.session.Picks;

/**
 * What is asked for when a session is to be planned, or planned again.
 *
 * @param lineUp everybody with a place
 * @param use what of the stored locker may be used; null for what is free where there is one
 * @param gear named in the request itself; null for the stored locker
 * @param bookings ids of the session's own bookings, which do not stand in its way
 * @param assumed what was not said and is taken as usual, in sentences
 * @param before what was picked earlier; null where it is planned for the first time
 * @param lost what there is no more since then
 * @param pricePoints what a change of something that stands already must be worth
 */
public record SessionRequest(LineUp lineUp, FromLocker use, Gear gear, List<String> bookings, List<String> assumed, Picks before, Lost lost, double pricePoints) {
    /** What moving one microphone is worth where nobody says so: about what a rule of middling weight gives. */
    public static final double USUAL_PRICE_POINTS = 5;
    static final double MOST_PRICE_POINTS = 1000;

    public SessionRequest {
        bookings = List.copyOf(bookings);
        assumed = List.copyOf(assumed);
    }
}
