package pairwright.locker;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.property.CalendarScale;
import biweekly.property.Method;
import biweekly.property.Status;
import biweekly.util.Duration;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.Period;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Date;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * Bookings as a calendar (iCalendar, RFC 5545) that other programs subscribe to: times in UTC, each entry under an identifier that stays and that no
 * other locker has, and with the version of its booking, so that a change takes the place of what was there. It goes from 90 days back to two years
 * ahead; that of a whole locker where so much is booked that no calendar program would take it looks less far, and says from when until when.
 */
public final class CalendarFeed {
    private static final Look WIDEST = new Look(Period.ofDays(90), Period.ofYears(2));
    /** How far a feed of the whole locker may look, the widest first; the first that holds few enough is taken. */
    private static final List<Look> LOOKS = List.of(WIDEST, new Look(Period.ofDays(90), Period.ofYears(1)), new Look(Period.ofDays(30), Period.ofDays(90)),
            new Look(Period.ofDays(7), Period.ofDays(28)), new Look(Period.ofDays(1), Period.ofDays(7)));
    /** Entries of a feed of the whole locker: about 2 MB. */
    static final int MOST = 5_000;
    private static final int MOST_NAMED = 60;
    private static final int LINE_OCTETS = 75;

    private CalendarFeed() {
    }

    /** How far is looked. */
    private record Look(Period back, Period ahead) {
        Span at(Instant now) {
            return new Span(now.atOffset(ZoneOffset.UTC).minus(back).toInstant(), now.atOffset(ZoneOffset.UTC).plus(ahead).toInstant());
        }
    }

    /**
     * The whole locker, one entry a booking.
     *
     * @param now when it is asked for
     */
    public static String ofLocker(Locker locker, Instant now) {
        return ofLocker(locker, now, MOST);
    }

    /** With at most so many entries: those that begin first, should even the narrowest look hold more. */
    static String ofLocker(Locker locker, Instant now, int most) {
        List<Span> spans = LOOKS.stream().map(look -> look.at(now)).toList();
        Span span = spans.stream().filter(one -> locker.count(one) <= most).findFirst().orElse(spans.get(spans.size() - 1));
        return ofLocker(locker.ownId(), span, locker.bookings(span, null, most), locker.units(), now);
    }

    /**
     * One unit, one entry each time it is booked.
     *
     * @param now when it is asked for
     */
    public static String ofUnit(Locker locker, Unit unit, Instant now) {
        return ofUnit(locker.ownId(), locker.bookings(WIDEST.at(now), unit.id()), unit, now);
    }

    static String ofLocker(String ownId, Span span, List<Booking> bookings, List<Unit> units, Instant now) {
        Map<String, Unit> byId = new LinkedHashMap<>();
        units.forEach(unit -> byId.put(unit.id(), unit));
        ICalendar calendar = calendar("Locker");
        calendar.setDescription("Bookings from " + span.from().atOffset(ZoneOffset.UTC).toLocalDate() + " to " + span.until().atOffset(ZoneOffset.UTC).toLocalDate() + ".");
        for (Booking booking : bookings) {
            // a unit may have left before its booking began
            Instant from = booking.lines().stream().map(line -> line.span().from()).min(Comparator.naturalOrder()).orElse(booking.span().from());
            Instant until = booking.lines().stream().map(line -> line.span().until()).max(Comparator.naturalOrder()).orElse(booking.span().until());
            List<Unit> booked = booking.units().stream().map(byId::get).filter(Objects::nonNull).toList();
            VEvent event = event(booking, "booking-" + booking.id() + "@" + ownId, new Span(from, until), now);
            int count = booking.lines().size();
            event.setSummary(plain(subject(booking) + " (" + count + (count == 1 ? " unit)" : " units)")));
            event.setDescription(plain(description(booking, booking.lines(), byId)));
            String places = booked.stream().map(Unit::storedAt).filter(Objects::nonNull).distinct().collect(Collectors.joining("; "));
            if (!places.isEmpty()) {
                event.setLocation(plain(places));
            }
            // a booking of things is nobody's own time
            event.setTransparency(true);
            calendar.addEvent(event);
        }
        return text(calendar);
    }

    static String ofUnit(String ownId, List<Booking> bookings, Unit unit, Instant now) {
        ICalendar calendar = calendar(unit.label());
        for (Booking booking : bookings) {
            for (Booking.Line line : booking.lines()) {
                if (line.unit().equals(unit.id())) {
                    VEvent event = event(booking, "booking-" + booking.id() + "-" + unit.id() + "@" + ownId, line.span(), now);
                    event.setSummary(plain(unit.label() + ": " + subject(booking)));
                    event.setDescription(plain(description(booking, List.of(line), Map.of(unit.id(), unit))));
                    if (unit.storedAt() != null) {
                        event.setLocation(plain(unit.storedAt()));
                    }
                    event.setTransparency(false);
                    calendar.addEvent(event);
                }
            }
        }
        return text(calendar);
    }

    private static ICalendar calendar(String name) {
        ICalendar calendar = new ICalendar();
        calendar.setProductId("-//Pairwright//Locker//EN");
        calendar.setCalendarScale(CalendarScale.gregorian());
        calendar.setMethod(Method.publish());
        calendar.setName(plain(name));
        calendar.addExperimentalProperty("X-WR-CALNAME", plain(name).replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,").replace("\n", "\\n"));
        calendar.setRefreshInterval(Duration.builder().minutes(15).build());
        return calendar;
    }

    private static VEvent event(Booking booking, String uid, Span span, Instant now) {
        VEvent event = new VEvent();
        event.setUid(uid + ".locker.pairwright");
        // with the method PUBLISH this is when the text was made
        event.setDateTimeStamp(Date.from(now));
        event.setDateStart(Date.from(span.from()), true);
        event.setDateEnd(Date.from(span.until()), true);
        event.setSequence((int) Math.min(booking.version(), Integer.MAX_VALUE));
        event.setStatus(Status.confirmed());
        event.addCategories(booking.kind().id());
        return event;
    }

    /** Such as "Session: sextet, first day". */
    private static String subject(Booking booking) {
        String kind = booking.kind().id().substring(0, 1).toUpperCase(Locale.ROOT) + booking.kind().id().substring(1);
        return booking.forWhat().isBlank() ? kind : kind + ": " + booking.forWhat();
    }

    private static String description(Booking booking, List<Booking.Line> lines, Map<String, Unit> units) {
        List<String> says = new ArrayList<>();
        says.add("Booking " + booking.id() + ", by " + booking.by() + ".");
        if (booking.note() != null && !booking.note().isBlank()) {
            says.add(booking.note());
        }
        for (Booking.Line line : lines.subList(0, Math.min(MOST_NAMED, lines.size()))) {
            Unit unit = units.get(line.unit());
            String place = unit == null ? "no longer in the locker" : unit.storedAt() == null ? "place unknown" : unit.storedAt();
            String where = line.returnedAt() != null ? "back" : line.takenAt() == null ? place
                    : line.takenBy() == null ? "out" : "out, with " + line.takenBy();
            says.add("- " + line.label() + ": " + where);
        }
        if (lines.size() > MOST_NAMED) {
            says.add("and " + (lines.size() - MOST_NAMED) + " more");
        }
        return String.join("\n", says);
    }

    /** Line ends of one kind, no other control characters, whole characters only: what a text of a calendar may hold. */
    private static String plain(String text) {
        StringBuilder plain = new StringBuilder();
        text.replace("\r\n", "\n").replace('\r', '\n').codePoints().forEach(sign -> {
            if (sign >= Character.MIN_SURROGATE && sign <= Character.MAX_SURROGATE) {
                plain.append('\uFFFD');
            } else if (sign == '\n' || sign == '\t' || !Character.isISOControl(sign)) {
                plain.appendCodePoint(sign);
            }
        });
        return plain.toString();
    }

    private static String text(ICalendar calendar) {
        StringWriter text = new StringWriter();
        try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
            // the library counts characters where the standard counts octets, so lines are folded here
            writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
            writer.write(calendar);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        StringBuilder folded = new StringBuilder();
        for (String line : text.toString().split("\r\n")) {
            fold(line, folded);
        }
        return folded.toString();
    }

    /** A line in pieces of at most 75 octets of UTF-8; each but the first begins with a blank, and no character is cut. */
    private static void fold(String line, StringBuilder folded) {
        int octets = 0;
        for (int at = 0; at < line.length(); at += Character.charCount(line.codePointAt(at))) {
            int sign = line.codePointAt(at);
            int more = sign < 0x80 ? 1 : sign < 0x800 ? 2 : sign < 0x10000 ? 3 : 4;
            if (octets + more > LINE_OCTETS) {
                folded.append("\r\n ");
                octets = 1;
            }
            folded.appendCodePoint(sign);
            octets += more;
        }
        folded.append("\r\n");
    }
}
