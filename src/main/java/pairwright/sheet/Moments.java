package pairwright.sheet;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import pairwright.drawing.Reader;
import pairwright.locker.Span;

/**
 * Moments as one reader writes them, in the zone of the program.
 *
 * @param zoneId whose clock on the wall
 * @param reader whose way of writing dates
 * @param now so that what is today or tomorrow can be called so
 */
record Moments(ZoneId zoneId, Reader reader, Instant now) {
    private static final DateTimeFormatter FIELD = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm");

    /** "today 14:00", "tomorrow 9:30", "Tue 1 Dec 2026, 14:00"; seconds only where there are some. */
    String moment(Instant at) {
        ZonedDateTime local = at.atZone(zoneId);
        return day(local.toLocalDate()) + (isNear(local.toLocalDate()) ? " " : ", ") + time(local);
    }

    /** "today 14:00 to 18:00", "Tue 1 Dec 2026, 14:00 to Wed 2 Dec 2026, 10:00". */
    String span(Span span) {
        ZonedDateTime from = span.from().atZone(zoneId);
        ZonedDateTime until = span.until().atZone(zoneId);
        return moment(span.from()) + " to " + (from.toLocalDate().equals(until.toLocalDate()) ? time(until) : moment(span.until()));
    }

    /** "today", "tomorrow", "yesterday", "Tue 1 Dec 2026". */
    String day(LocalDate day) {
        return switch ((int) Math.max(-2, Math.min(2, ChronoUnit.DAYS.between(now.atZone(zoneId).toLocalDate(), day)))) {
            case -1 -> "yesterday";
            case 0 -> "today";
            case 1 -> "tomorrow";
            default -> day.getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.UK) + " " + reader.date(day);
        };
    }

    private boolean isNear(LocalDate day) {
        return Math.abs(ChronoUnit.DAYS.between(now.atZone(zoneId).toLocalDate(), day)) <= 1;
    }

    private String time(ZonedDateTime at) {
        return DateTimeFormatter.ofLocalizedTime(at.getSecond() == 0 ? FormatStyle.SHORT : FormatStyle.MEDIUM).withLocale(reader.locale()).format(at);
    }

    /** The time of day alone. */
    String time(Instant at) {
        return time(at.atZone(zoneId));
    }

    /** The day of a moment, as an address says it. */
    String date(Instant at) {
        return at.atZone(zoneId).toLocalDate().toString();
    }

    /** For the attribute of a time element. */
    String iso(Instant at) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at.atZone(zoneId));
    }

    /** The zone in words, to be said once on a page: "Times are those of Europe/Vienna, now UTC+01:00." */
    String zone() {
        String offset = zoneId.getRules().getOffset(now).getId();
        String shown = offset.equals("Z") ? "UTC" : "UTC" + offset;
        return shown.equals("UTC") && zoneId.getRules().isFixedOffset() || zoneId.getId().equals(shown) ? "Times are in " + shown + "." : "Times are those of " + zoneId.getId() + ", now " + shown + ".";
    }

    /** As a field for a date and a time of day holds it. */
    String field(Instant at) {
        return FIELD.format(at.atZone(zoneId));
    }

    /**
     * What such a field sent.
     *
     * @throws DateTimeException where it is no date with a time of day, or a time of day that the clock leaves out
     */
    Instant read(String text) {
        LocalDateTime local = LocalDateTime.parse(text.strip().replace(' ', 'T'));
        if (local.getYear() < 1970 || local.getYear() > 9999) {
            throw new DateTimeException("year " + local.getYear());
        }
        return local.atZone(zoneId).toInstant();
    }
}
