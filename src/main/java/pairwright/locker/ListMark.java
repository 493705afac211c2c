package pairwright.locker;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Up to where a list of bookings, the earliest first, was read. It holds although that booking is altered or cancelled meanwhile.
 *
 * @param fromS when the last of them begins, in seconds since 1970
 * @param id of the last of them
 */
public record ListMark(long fromS, long id) {
    private static final Pattern TEXT = Pattern.compile("(\\d{1,12})-(\\d{1,18})");

    /** Before the first. */
    public static final ListMark START = new ListMark(Long.MIN_VALUE, 0);

    /** Where a list goes on after a booking. */
    public static ListMark after(Booking last) {
        return new ListMark(last.span().from().getEpochSecond(), Long.parseLong(last.id()));
    }

    /** The mark a text stands for; none where it is not one. */
    public static Optional<ListMark> of(String text) {
        Matcher matcher = TEXT.matcher(text);
        return matcher.matches() ? Optional.of(new ListMark(Long.parseLong(matcher.group(1)), Long.parseLong(matcher.group(2)))) : Optional.empty();
    }

    /** As a text that may stand in an address. */
    public String text() {
        return fromS + "-" + id;
    }
}
