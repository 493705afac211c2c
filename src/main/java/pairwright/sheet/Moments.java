package pairwright.sheet;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
    private static final String TIME = "(\\d{4}-\\d{2}-\\d{2} \\d{2}:\\d{2}(?::\\d{2})?)( UTC)?";
    /** A time as the locker writes it into a sentence, or one and until when. */
    private static final Pattern WRITTEN = Pattern.compile(TIME + "(?: to " + TIME + ")?");
    private static final DateTimeFormatter FIELD = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm");

    /** "today 14:00", "tomorrow 9:30", "Tue 1 Dec 2026, 14:00"; seconds only where there are some. */
    String moment(Instant at) {
        ZonedDateTime local = at.atZone(zoneId);
        return day(local.toLocalDate()) + (isNear(local.toLocalDate()) ? " " : ", ") + time(local);
    }

    /** "today 14:00 to 18:00", "Tue 1 Dec 2026, 14:00 to Wed 2 Dec 2026, 10:00". */
    String span(Span span) {
        return moment(span.from()) + " to " + end(span.from(), span.until());
    }

    /** Without its day where that was said already. */
    private String end(Instant from, Instant until) {
        return date(from).equals(date(until)) ? time(until) : moment(until);
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

    /** A sentence of the locker, with the times in it as this reader writes them. */
    String within(String says) {
        return WRITTEN.matcher(says).replaceAll(found -> Matcher.quoteReplacement(shown(found)));
    }

    private String shown(MatchResult found) {
        try {
            Instant from = written(found.group(1), found.group(2));
            return found.group(3) == null ? moment(from) : moment(from) + " to " + end(from, written(found.group(3), found.group(4)));
        } catch (DateTimeException noTime) {
            return found.group(); // somebody typed what looks like one
        }
    }

    /** By the clock of this program, where it is not said to be in UTC. */
    private Instant written(String time, String utc) {
        return LocalDateTime.parse(time.replace(' ', 'T')).atZone(utc == null ? zoneId : ZoneOffset.UTC).toInstant();
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
