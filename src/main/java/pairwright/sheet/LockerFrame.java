package pairwright.sheet;

import java.util.List;
import pairwright.sheet.ReadingParts.Link;

/**
 * What stands around a page of the locker.
 *
 * @param shell what is around every page
 * @param page which of {@link #PARTS} it belongs to
 * @param trail where it lies within that part, outermost first, without itself; empty for the part's own page
 * @param done what was just done, in a sentence; empty for nothing
 * @param zone the zone of every time on the page, in words; empty where there are none
 */
public record LockerFrame(Shell shell, String page, List<Link> trail, String done, String zone) {
    /** The pages of the locker, in the order of their menu. */
    public static final List<Shell.Part> PARTS = List.of(
            new Shell.Part("units", "/locker", "Units"),
            new Shell.Part("bookings", "/locker/bookings", "Bookings"),
            new Shell.Part("desk", "/locker/desk", "Desk"),
            new Shell.Part("month", "/locker/month", "Month"),
            new Shell.Part("coverage", "/locker/coverage", "Coverage"));

    public LockerFrame {
        trail = List.copyOf(trail);
    }

    /** Around a page without times. */
    LockerFrame withoutTimes() {
        return new LockerFrame(shell, page, trail, done, "");
    }
}
