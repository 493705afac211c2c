package pairwright.sheet;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.catalogue.Shown;
import pairwright.model.Fault;
import pairwright.model.FromLocker;
import pairwright.model.Request;
import pairwright.model.Word;

/**
 * When something is needed and what of the locker may be used, as an address says it, and back: {@code from=2027-03-01T10:00&until=2027-03-01T14:00&locker=owned}.
 * A time without an offset is that of the clock on the wall.
 *
 * @param from null where it is not named or cannot be read
 * @param until likewise
 * @param use likewise
 * @param faults what cannot be read, each at the name of its field
 */
record LockerQuery(OffsetDateTime from, OffsetDateTime until, FromLocker use, List<Fault> faults) {
    static LockerQuery read(Visit visit, Clock clock) {
        List<Fault> faults = new ArrayList<>();
        OffsetDateTime from = moment(visit, clock, "from", false, faults);
        OffsetDateTime until = moment(visit, clock, "until", true, faults);
        if (until != null && last(visit, "from") == null && !until.toInstant().isAfter(clock.instant())) {
            faults.add(new Fault("until", "\"" + Shown.of(last(visit, "until")) + "\" is over, and no start is named. Name one, or a later end"));
        }
        return new LockerQuery(from, until, use(visit, faults), List.copyOf(faults));
    }

    private static OffsetDateTime moment(Visit visit, Clock clock, String name, boolean isEnd, List<Fault> faults) {
        String text = last(visit, name);
        if (text == null) {
            return null;
        }
        TypedMoment moment = TypedMoment.parse(text, clock.getZone(), isEnd);
        if (moment.fault() != null) {
            faults.add(new Fault(name, moment.fault()));
        }
        return moment.at();
    }

    private static FromLocker use(Visit visit, List<Fault> faults) {
        String text = last(visit, "locker");
        FromLocker found = Stream.of(FromLocker.values()).filter(use -> use.id().equals(text)).findFirst().orElse(null);
        if (text != null && found == null) {
            faults.add(new Fault("locker", "there is no way to use the locker \"" + Shown.of(text) + "\". Use one of "
                    + Stream.of(FromLocker.values()).map(Word::id).collect(Collectors.joining(", "))));
        }
        return found;
    }

    private static String last(Visit visit, String name) {
        List<String> all = visit.all(name);
        return all.isEmpty() ? null : all.get(all.size() - 1);
    }

    /** The part of a query that says so. It holds for the next question as well. */
    static List<Param> written(Request request) {
        List<Param> query = new ArrayList<>();
        if (request.from() != null) {
            query.add(new Param("from", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(request.from())));
        }
        if (request.until() != null) {
            query.add(new Param("until", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(request.until())));
        }
        if (request.locker() != null) {
            query.add(new Param("locker", request.locker().id()));
        }
        return query;
    }
}
