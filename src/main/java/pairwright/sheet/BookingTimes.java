package pairwright.sheet;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import pairwright.locker.Span;
import pairwright.model.Fault;

/**
 * From when until when, as it was typed.
 *
 * @param from null where it is not said or cannot be read
 * @param until likewise
 * @param faults what cannot be read, and times of day that the clock leaves out
 * @param notes what to know of the times that were read
 */
record BookingTimes(Instant from, Instant until, List<Fault> faults, List<String> notes) {

    /** The time; null where it is none. */
    Span span() {
        return from == null || until == null || !from.isBefore(until) ? null : new Span(from, until);
    }

    /** That it ends before it begins; empty where it does not. */
    List<Fault> turned(Moments moments) {
        return from == null || until == null || from.isBefore(until) ? List.of()
                : List.of(new Fault("/until", "is " + moments.moment(until) + ", not after " + moments.moment(from) + ". Let it end after it begins"));
    }

    /**
     * Reads what was typed.
     *
     * @param present of the booking that is altered: what stands there as it was means the very same moment; null for a new one
     */
    static BookingTimes read(AtLocker at, String from, String until, Span present) {
        List<Fault> faults = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        Reading reading = new Reading(at, faults, notes);
        Instant begins = reading.read("/from", from, present == null ? null : present.from());
        Instant ends = reading.read("/until", until, present == null ? null : present.until());
        if (ends != null && !ends.isAfter(at.now())) {
            notes.add("This time is over. Booking it writes down what was.");
        } else if (begins != null && ends != null && begins.isBefore(at.now()) && begins.isBefore(ends)) {
            notes.add("This time has begun already.");
        }
        return new BookingTimes(begins, ends, faults, notes);
    }

    /** As a field holds a moment, to the second where it has some. */
    static String field(ZoneId zone, Instant moment) {
        return moment.atZone(zone).toLocalDateTime().toString();
    }

    /** What an address says, as a field holds it; as it is where that would not be the same moment, or where it is none. */
    static String field(ZoneId zone, String text, boolean isEnd) {
        TypedMoment typed = TypedMoment.parse(text, zone, isEnd);
        return typed.at() == null || comesTwice(zone, typed.at().toInstant()) ? text.strip() : field(zone, typed.at().toInstant());
    }

    private static boolean comesTwice(ZoneId zone, Instant moment) {
        return zone.getRules().getValidOffsets(moment.atZone(zone).toLocalDateTime()).size() > 1;
    }

    /** What to know of a moment whose time of day comes twice; empty for any other. */
    static String twice(AtLocker at, Instant moment) {
        ZoneId zone = at.clock().getZone();
        ZonedDateTime local = moment.atZone(zone);
        return !comesTwice(zone, moment) ? "" : at.moments().time(moment) + " comes twice on "
                + at.moments().day(local.toLocalDate()) + ", as the clock is set back. Meant is the "
                + (local.equals(local.withEarlierOffsetAtOverlap()) ? "first" : "second") + ", UTC" + offset(local.getOffset()) + ".";
    }

    private static String offset(ZoneOffset offset) {
        return offset.equals(ZoneOffset.UTC) ? "" : offset.getId();
    }

    /** One reading of both times. */
    private record Reading(AtLocker at, List<Fault> faults, List<String> notes) {
        Instant read(String name, String text, Instant present) {
            ZoneId zone = at.clock().getZone();
            if (text == null) {
                return null;
            }
            if (present != null && text.equals(field(zone, present))) {
                return present;
            }
            TypedMoment typed = TypedMoment.parse(text, zone, name.equals("/until"));
            if (typed.at() == null) {
                faults.add(new Fault(name, typed.fault()));
                return null;
            }
            Instant meant = typed.at().toInstant();
            if (comesTwice(zone, meant) && !text.contains(typed.at().getOffset().getId())) {
                ZonedDateTime local = meant.atZone(zone);
                ZonedDateTime other = local.equals(local.withEarlierOffsetAtOverlap()) ? local.withLaterOffsetAtOverlap() : local.withEarlierOffsetAtOverlap();
                notes.add(twice(at, meant) + " For the other one write " + other.toOffsetDateTime() + ".");
            }
            return meant;
        }
    }
}
