package pairwright.cli;

import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import pairwright.catalogue.Shown;

/** Moments as they are typed and printed at a terminal. */
final class MomentText {
    private static final DateTimeFormatter PRINTED = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d\\d-\\d\\d");
    private static final Pattern TIME = Pattern.compile("\\d?\\d:\\d\\d");
    private static final Pattern LOCAL = Pattern.compile("\\d{4}-\\d\\d-\\d\\d[T ]\\d\\d:\\d\\d(:\\d\\d)?");
    private static final Pattern WITH_OFFSET = Pattern.compile("\\d{4}-\\d\\d-\\d\\d[T ]\\d\\d:\\d\\d(:\\d\\d)?(Z|[+-]\\d\\d:\\d\\d)");

    private final Clock clock;

    MomentText(Clock clock) {
        this.clock = clock;
    }

    /**
     * What was typed.
     *
     * @param isEnd whether a day alone means its end
     * @throws IllegalArgumentException says what is wrong with it, to stand behind the name of an option
     */
    Instant read(String text, boolean isEnd) {
        String typed = text.strip().toUpperCase(Locale.ROOT);
        try {
            if (DAY.matcher(typed).matches()) {
                return LocalDate.parse(typed).plusDays(isEnd ? 1 : 0).atStartOfDay(clock.getZone()).toInstant();
            }
            if (TIME.matcher(typed).matches()) {
                return local(LocalDate.now(clock).atTime(LocalTime.parse(typed.length() == 4 ? "0" + typed : typed)));
            }
            if (LOCAL.matcher(typed).matches()) {
                return local(LocalDateTime.parse(typed.replace(' ', 'T')));
            }
            if (WITH_OFFSET.matcher(typed).matches()) {
                return OffsetDateTime.parse(typed.replace(' ', 'T')).toInstant();
            }
        } catch (DateTimeException noSuchDay) {
            throw new IllegalArgumentException("\"" + Shown.of(text) + "\" is on no calendar and no clock. Write it like 2027-03-01T10:00");
        }
        throw new IllegalArgumentException("\"" + Shown.of(text) + "\" is no time. Write it like 2027-03-01T10:00, 2027-03-01, or 10:00 for today");
    }

    /** Once a year a clock leaves an hour out, and once it shows one twice. */
    private Instant local(LocalDateTime typed) {
        List<ZoneOffset> offsets = clock.getZone().getRules().getValidOffsets(typed);
        if (offsets.size() == 1) {
            return typed.toInstant(offsets.get(0));
        }
        throw new IllegalArgumentException(typed + (offsets.isEmpty() ? " does not exist in " + clock.getZone() + ": the clocks go forward then. Take a time before or after"
                : " is there twice in " + clock.getZone() + ": the clocks go back then. Say which: " + typed + offsets.get(0) + " or " + typed + offsets.get(1)));
    }

    /** A moment by the clock of this machine; empty for none. */
    static String shown(Instant moment) {
        return moment == null ? "" : PRINTED.format(moment.atZone(ZoneId.systemDefault()));
    }
}
