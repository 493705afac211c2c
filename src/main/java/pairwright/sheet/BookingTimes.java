package pairwright.sheet;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.List;
import pairwright.catalogue.Shown;
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

    /** A moment that somebody says with its offset, as a field holds it; anything else as it is. */
    static String field(ZoneId zone, String text) {
        String plain = text.strip().replaceFirst("^(\\d{4}-\\d{2}-\\d{2}) +(?=\\d)", "$1T");
        try {
            Instant moment = OffsetDateTime.parse(plain.replace(' ', '+')).toInstant(); // an address may have lost its plus
            ZonedDateTime local = moment.atZone(zone);
            return zone.getRules().getValidOffsets(local.toLocalDateTime()).size() == 1 ? field(zone, moment) : moment.atZone(zone).toOffsetDateTime().toString();
        } catch (DateTimeException another) {
            return plain;
        }
    }

    /** What to know of a moment whose time of day comes twice; empty for any other. */
    static String twice(AtLocker at, Instant moment) {
        ZoneId zone = at.clock().getZone();
        ZonedDateTime local = moment.atZone(zone);
        return zone.getRules().getValidOffsets(local.toLocalDateTime()).size() < 2 ? "" : at.moments().time(moment) + " comes twice on "
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
            try {
                if (text.matches(".*(Z|[+-]\\d{2}:\\d{2})")) {
                    return known(OffsetDateTime.parse(text).toInstant());
                }
                return local(name, LocalDateTime.parse(text.replaceFirst("^(\\d{4}-\\d{2}-\\d{2}) +", "$1T")), zone);
            } catch (DateTimeException noTime) {
                faults.add(new Fault(name, "\u201c" + Shown.of(text) + "\u201d is no time. Write a date and a time of day, such as "
                        + at.moments().field(at.now()).replace('T', ' ')));
                return null;
            }
        }

        private Instant local(String name, LocalDateTime local, ZoneId zone) {
            ZoneOffsetTransition change = zone.getRules().getTransition(local);
            if (change != null && change.isGap()) {
                faults.add(new Fault(name, "There is no " + local.toLocalTime() + " on " + at.moments().day(local.toLocalDate()) + ": the clock goes from "
                        + change.getDateTimeBefore().toLocalTime() + " straight to " + change.getDateTimeAfter().toLocalTime() + ". Write a time before or after that"));
                return null;
            }
            if (change == null) {
                return known(local.atZone(zone).toInstant());
            }
            // the longer of the two, so that nothing somebody meant is left out
            Instant meant = local.toInstant(name.equals("/from") ? change.getOffsetBefore() : change.getOffsetAfter());
            notes.add(twice(at, meant) + " For the other one write " + local + (name.equals("/from") ? change.getOffsetAfter() : change.getOffsetBefore()) + ".");
            return known(meant);
        }

        private static Instant known(Instant moment) {
            int year = moment.atOffset(ZoneOffset.UTC).getYear();
            if (year < 1970 || year > 9998) {
                throw new DateTimeException("year " + year);
            }
            return moment;
        }
    }
}
