package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import pairwright.locker.Booking;
import pairwright.locker.Unit;

/** What is said of bookings in sentences. */
final class BookingWords {
    private static final int NAMED = 12;

    private BookingWords() {
    }

    /** "A session for Barn take, by Ada, today 10:00 to 14:00: Ribbon 1, Ribbon 2." */
    static String whole(AtLocker at, Booking booking) {
        return "A " + ReadingWords.words(booking.kind()) + (booking.forWhat().isEmpty() ? "" : " for " + booking.forWhat()) + ", by " + booking.by() + ", "
                + at.moments().span(booking.span()) + ": " + labels(at, booking.units(), booking) + ".";
    }

    /** Labels of units, be they gone from the locker since. */
    private static String labels(AtLocker at, List<String> ids, Booking booking) {
        String named = ids.stream().limit(NAMED).map(id -> label(at, id, booking)).collect(Collectors.joining(", "));
        return ids.size() > NAMED ? named + " and " + (ids.size() - NAMED) + " more" : named;
    }

    private static String label(AtLocker at, String id, Booking booking) {
        return at.locker().unit(id).map(Unit::label).orElseGet(() -> booking.lines().stream().filter(line -> line.unit().equals(id)).map(Booking.Line::label).findFirst().orElse(id));
    }

    /** Field by field what differs, such as "For what: Barn take now, yours Loft take". */
    static List<String> differences(AtLocker at, Booking now, BookingTyped wanted) {
        BookingTyped theirs = BookingTyped.of(at, now);
        List<String> all = new ArrayList<>();
        add(all, "From", theirs.from(), wanted.from());
        add(all, "Until", theirs.until(), wanted.until());
        add(all, "Kind", theirs.kind(), wanted.kind());
        add(all, "For what", theirs.forWhat(), wanted.forWhat());
        add(all, "By whom", theirs.by(), wanted.by());
        add(all, "Note", theirs.note(), wanted.note());
        if (!Set.copyOf(theirs.units()).equals(Set.copyOf(wanted.units()))) {
            add(all, "Units", labels(at, theirs.units(), now), labels(at, wanted.units(), now));
        }
        return all;
    }

    private static void add(List<String> all, String name, String theirs, String yours) {
        if (!Objects.equals(theirs, yours)) {
            all.add(name + ": " + shown(theirs) + " now, yours " + shown(yours));
        }
    }

    private static String shown(String value) {
        return value == null || value.isEmpty() ? "nothing" : "\u201c" + value.replaceFirst("^(\\d{4}-\\d{2}-\\d{2})T", "$1 ") + "\u201d";
    }
}
