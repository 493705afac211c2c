package pairwright.sheet;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import pairwright.locker.Booking;

/**
 * What the form of the desk holds. All but what was scanned stays from one unit to the next, and so it stands in the address.
 *
 * @param out whether units go out; else they come back
 * @param scanned tag, serial, label or id as it was typed or scanned
 * @param by who takes units; empty for whoever booked them
 * @param until as its field holds it: used where no booking has a unit; empty for not said
 * @param booking the booking whose units go out to anybody; empty for none
 */
record DeskForm(boolean out, String scanned, String by, String until, String booking) {
    static final String WAY = "way";
    static final String OUT = "out";
    static final String BACK = "back";
    static final String SCANNED = "scanned";
    static final String BY = "by";
    static final String UNTIL = "until";
    static final String FOR = "for";
    private static final Duration USUAL = Duration.ofHours(4);
    private static final int STEP_MIN = 15;

    /** As the address says; a time that has passed would only be in the way. */
    static DeskForm of(AtLocker at) {
        Visit visit = at.visit();
        String until = Objects.requireNonNullElse(visit.first(UNTIL), "");
        Instant end;
        try {
            end = until.isEmpty() ? null : at.moments().read(until);
        } catch (DateTimeException noTime) {
            end = null;
        }
        return new DeskForm(!BACK.equals(visit.first(WAY)), "", Objects.requireNonNullElse(visit.first(BY), ""),
                end == null || !end.isAfter(at.now()) ? "" : until, Objects.requireNonNullElse(visit.first(FOR), ""));
    }

    /** As it was sent. */
    static DeskForm of(Sent sent) {
        return new DeskForm(!BACK.equals(sent.first(WAY)), text(sent, SCANNED), text(sent, BY), text(sent, UNTIL), text(sent, FOR));
    }

    private static String text(Sent sent, String name) {
        return Objects.requireNonNullElse(sent.first(name), "");
    }

    DeskForm scanned(String text) {
        return new DeskForm(out, text, by, until, booking);
    }

    DeskForm until(String text) {
        return new DeskForm(out, scanned, by, text, booking);
    }

    DeskForm going(boolean outwards) {
        return new DeskForm(outwards, scanned, by, until, booking);
    }

    /** Whether and for which booking units go out to anybody. */
    DeskForm forBooking(String id) {
        return new DeskForm(out, scanned, by, until, id);
    }

    /** What the next unit begins with. */
    List<Param> kept() {
        List<Param> kept = new ArrayList<>(List.of(new Param(WAY, out ? OUT : BACK)));
        Stream.of(new Param(BY, by), new Param(UNTIL, until), new Param(FOR, booking)).filter(param -> !param.value().isEmpty()).forEach(kept::add);
        return kept;
    }

    /** The address of the desk as it stands, with something more to say. */
    String address(Param... more) {
        return Param.address(DeskPage.ADDRESS, Param.joined(kept(), List.of(more)));
    }

    /** The same with an end to begin with where none was said: four hours on, at a full quarter of an hour, or where the next booking begins. */
    DeskForm withUsualEnd(AtLocker at, Booking next) {
        if (!until.isEmpty()) {
            return this;
        }
        ZonedDateTime end = at.now().plus(USUAL).atZone(at.clock().getZone()).truncatedTo(ChronoUnit.MINUTES);
        ZonedDateTime full = end.plusMinutes(Math.floorMod(-end.getMinute(), STEP_MIN));
        boolean sooner = next != null && next.span().from().isBefore(full.toInstant());
        return until(at.moments().field(sooner ? next.span().from() : full.toInstant()));
    }
}
