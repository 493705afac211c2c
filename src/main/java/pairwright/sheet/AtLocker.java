package pairwright.sheet;

import java.time.Clock;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pairwright.advice.Knowledge;
import pairwright.locker.Locker;
import pairwright.locker.Role;
import pairwright.sheet.ReadingParts.Link;

/**
 * What a page of the locker is made with, for one visit.
 *
 * @param html fills templates
 * @param known what is known at this moment
 * @param locker what there is
 * @param visit who reads what
 * @param role what the reader may do
 * @param clock what time it is, and in which zone
 */
public record AtLocker(Html html, Knowledge known, Locker locker, Visit visit, Role role, Clock clock) {
    /** Whether the reader may change anything; where not, no form is shown. */
    /** Why a page has nothing to press for a reader, in a sentence; empty for whoever may. */
    String asReader(String engineers) {
        return mayWrite() ? "" : "You came in as a reader, so there is nothing to change here: " + engineers + ".";
    }

    boolean mayWrite() {
        return role.covers(Role.ENGINEER);
    }

    Instant now() {
        return clock.instant();
    }

    /** How moments are written for this reader. */
    Moments moments() {
        return new Moments(clock.getZone(), visit.reader(), now());
    }

    Addresses at() {
        return new Addresses(visit);
    }

    Measures measures() {
        return new Measures(visit.reader());
    }

    /**
     * Around a page with times on it.
     *
     * @param page id of the part of the locker's menu
     * @param trail between that part and the page
     * @param done what was just done; empty for nothing
     */
    LockerFrame frame(String title, String page, List<Link> trail, String done) {
        return new LockerFrame(html.shell(title, "locker", visit), page, trail, done, moments().zone());
    }

    LockerFrame frame(String title, String page) {
        return frame(title, page, List.of(), "");
    }

    /** A page from a template in the folder of the locker; what it shows is its one parameter beside the frame. */
    Page page(int status, String template, LockerFrame frame, String name, Object value) {
        Map<String, Object> values = new HashMap<>(Map.of("frame", frame));
        values.put(name, value);
        return new Page(status, html.fill("locker/" + template + ".jte", values));
    }

    Page page(String template, LockerFrame frame, String name, Object value) {
        return page(200, template, frame, name, value);
    }
}
