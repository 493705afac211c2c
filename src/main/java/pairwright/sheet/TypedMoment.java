package pairwright.sheet;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import pairwright.catalogue.Shown;

/**
 * A moment as it was chosen, typed, or stands in an address: {@code 2027-03-01T10:00} by the clock on the wall, the same with an offset, or a day alone.
 *
 * @param at the moment; null where there is a fault
 * @param fault what is wrong with it and what to do, to stand behind the name of the field; null where nothing is
 */
record TypedMoment(OffsetDateTime at, String fault) {
    private static final int FIRST_YEAR = 1970;
    private static final int LAST_YEAR = 9998;
    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d\\d-\\d\\d");
    private static final Pattern LOCAL = Pattern.compile("\\d{4}-\\d\\d-\\d\\d[T ]\\d\\d:\\d\\d(:\\d\\d)?");
    /** A plus that nobody escaped comes out of an address as a blank. */
    private static final Pattern UNESCAPED = Pattern.compile("(.*:\\d\\d) (\\d\\d:\\d\\d)");
    private static final Pattern WITH_OFFSET = Pattern.compile("\\d{4}-\\d\\d-\\d\\d[T ]\\d\\d:\\d\\d(:\\d\\d(\\.\\d{1,9})?)?(Z|[+-]\\d\\d:\\d\\d)");
    private static final String SHAPE = "Write it like 2027-03-01T10:00, or with an offset, 2027-03-01T10:00+01:00";

    /**
     * Reads what was typed.
     *
     * @param zone whose clock on the wall
     * @param isEnd whether a day alone means its end; of an hour that the clock shows twice, an end means the later one, so that the time is long enough
     */
    static TypedMoment parse(String text, ZoneId zone, boolean isEnd) {
        String typed = UNESCAPED.matcher(text.strip().toUpperCase(Locale.ROOT)).replaceFirst("$1+$2");
        try {
            if (WITH_OFFSET.matcher(typed).matches()) {
                return within(OffsetDateTime.parse(typed.replace(' ', 'T')), text);
            }
            if (DAY.matcher(typed).matches()) {
                return within(LocalDate.parse(typed).plusDays(isEnd ? 1 : 0).atStartOfDay(zone).toOffsetDateTime(), text);
            }
            if (LOCAL.matcher(typed).matches()) {
                return local(LocalDateTime.parse(typed.replace(' ', 'T')), zone, isEnd, text);
            }
        } catch (DateTimeException onNoCalendar) {
            return new TypedMoment(null, "\"" + Shown.of(text) + "\" is on no calendar and no clock. " + SHAPE);
        }
        return new TypedMoment(null, "\"" + Shown.of(text) + "\" is no time. " + SHAPE);
    }

    private static TypedMoment local(LocalDateTime at, ZoneId zone, boolean isEnd, String text) {
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(at);
        if (offsets.isEmpty()) {
            return new TypedMoment(null, "\"" + Shown.of(text) + "\" does not exist in " + zone + ": the clocks go forward then. Take a time before or after");
        }
        return within(at.atOffset(offsets.get(isEnd ? offsets.size() - 1 : 0)), text);
    }

    private static TypedMoment within(OffsetDateTime at, String text) {
        return at.getYear() < FIRST_YEAR || at.getYear() > LAST_YEAR
                ? new TypedMoment(null, "\"" + Shown.of(text) + "\" is too far away. Give a year from " + FIRST_YEAR + " to " + LAST_YEAR)
                : new TypedMoment(at, null);
    }
}
