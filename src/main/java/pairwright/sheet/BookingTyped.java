package pairwright.sheet;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import pairwright.locker.Booking;
import pairwright.locker.BookingDraft;
import pairwright.locker.BookingKind;
import pairwright.locker.Span;

/**
 * What stands in the form of a booking, as it was typed or as an address says it. Null for nothing.
 *
 * @param units ids of those that are chosen
 * @param micType id of the mic type, or of the kind of unit, that alone is offered
 */
record BookingTyped(String from, String until, String kind, String forWhat, String by, String note, List<String> units, String micType) {
    static final String UNIT = "unit";
    static final String MIC_TYPE = "micType";
    private static final Duration USUAL = Duration.ofHours(4);

    /** What a form sent. */
    static BookingTyped of(Sent sent) {
        return new BookingTyped(sent.first("from"), sent.first("until"), sent.first("kind"), sent.first("for"), sent.first("by"), sent.first("note"),
                sent.all(UNIT).stream().distinct().toList(), sent.first(MIC_TYPE));
    }

    /** What an address says: from the next full hour where it says nothing, for four hours. */
    static BookingTyped asked(AtLocker at) {
        BookingTyped said = of(new Sent(at.visit().query()));
        Instant usual = at.now().atZone(at.clock().getZone()).truncatedTo(ChronoUnit.HOURS).plusHours(1).toInstant();
        String from = said.from == null ? BookingTimes.field(at.clock().getZone(), usual) : BookingTimes.field(at.clock().getZone(), said.from);
        String until = said.until == null ? BookingTimes.field(at.clock().getZone(), Objects.requireNonNullElse(read(at, from), usual).plus(USUAL))
                : BookingTimes.field(at.clock().getZone(), said.until);
        return said.during(from, until);
    }

    private static Instant read(AtLocker at, String from) {
        try {
            return at.moments().read(from);
        } catch (DateTimeException toldLater) {
            return null;
        }
    }

    /** A booking as it is. */
    static BookingTyped of(AtLocker at, Booking booking) {
        return new BookingTyped(BookingTimes.field(at.clock().getZone(), booking.span().from()), BookingTimes.field(at.clock().getZone(), booking.span().until()),
                booking.kind().id(), booking.forWhat().isEmpty() ? null : booking.forWhat(), booking.by(), booking.note(), booking.units(), null);
    }

    BookingTyped during(String begins, String ends) {
        return new BookingTyped(begins, ends, kind, forWhat, by, note, units, micType);
    }

    BookingTyped during(AtLocker at, Span span) {
        return during(BookingTimes.field(at.clock().getZone(), span.from()), BookingTimes.field(at.clock().getZone(), span.until()));
    }

    /** With one unit in place of another. */
    BookingTyped instead(String of, String another) {
        return choosing(units.stream().map(unit -> unit.equals(of) ? another : unit).distinct().toList());
    }

    BookingTyped choosing(List<String> some) {
        return new BookingTyped(from, until, kind, forWhat, by, note, some, micType);
    }

    /** With units that are in it whatever is chosen. */
    BookingTyped keeping(List<String> some) {
        Set<String> all = new LinkedHashSet<>(some);
        all.addAll(units);
        return choosing(List.copyOf(all));
    }

    /** An address that leads to a form in which this stands. */
    String address(String path, String version) {
        List<Param> params = new ArrayList<>();
        add(params, "from", from);
        add(params, "until", until);
        add(params, "kind", kind);
        add(params, "for", forWhat);
        add(params, "by", by);
        add(params, "note", note);
        add(params, MIC_TYPE, micType);
        add(params, UnitWritePages.VERSION, version);
        units.forEach(unit -> add(params, UNIT, unit));
        return Param.address(path, params);
    }

    private static void add(List<Param> params, String name, String value) {
        if (value != null) {
            params.add(new Param(name, value));
        }
    }

    /** The kind that is chosen; a session where none or an unknown one is. */
    BookingKind bookingKind() {
        return Stream.of(BookingKind.values()).filter(one -> one.id().equals(kind)).findFirst().orElse(BookingKind.SESSION);
    }

    /** What is to be booked; an empty text takes away what was said before. */
    BookingDraft draft(BookingTimes times) {
        return new BookingDraft(units, times.from(), times.until(), bookingKind(), Objects.requireNonNullElse(forWhat, ""), Objects.requireNonNullElse(by, ""),
                Objects.requireNonNullElse(note, ""));
    }
}
