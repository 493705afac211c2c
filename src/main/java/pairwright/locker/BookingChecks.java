package pairwright.locker;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairwright.model.Fault;
import pairwright.model.Nearest;

/** Whether what somebody wants to book can be meant: every fault at once. */
final class BookingChecks {
    private static final int MOST_UNITS = 200;
    private static final Duration LONGEST = Duration.ofDays(731);
    private static final Duration AHEAD = Duration.ofDays(3660);
    private static final Instant EARLIEST = Instant.parse("2000-01-01T00:00:00Z");

    private BookingChecks() {
    }

    /**
     * The draft with what was not said filled in.
     *
     * @param kept units it may name although they are no longer there
     * @throws LockerFault.Unusable with every fault
     */
    static BookingDraft read(BookingDraft draft, Map<String, Unit> units, Set<String> kept, String who, Instant now) {
        List<Fault> faults = new ArrayList<>();
        List<String> ids = draft.units().stream().map(String::strip).toList();
        if (ids.isEmpty() || ids.size() > MOST_UNITS) {
            faults.add(new Fault("/units", ids.isEmpty() ? "no unit is named. Name at least one" : ids.size() + " units are named. Book at most " + MOST_UNITS + " at once"));
        }
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < ids.size() && i < MOST_UNITS; i++) {
            String id = ids.get(i);
            if (!seen.add(id)) {
                faults.add(new Fault("/units/" + i, Said.quoted(id) + " is named twice. Take one out"));
            } else if (!units.containsKey(id) && !kept.contains(id)) {
                faults.add(new Fault("/units/" + i, "there is no unit " + Said.quoted(id) + ". "
                        + Nearest.to(id, units.keySet()).map(near -> "Did you mean " + near + "?").orElse("Look at the list of units")));
            }
        }
        time(draft, now, faults);
        String forWhat = Said.line(draft.forWhat(), 200, "/for", faults);
        String by = Said.line(draft.by(), 80, "/by", faults);
        String note = Said.line(draft.note(), 500, "/note", faults);
        if (!faults.isEmpty()) {
            throw new LockerFault.Unusable(faults);
        }
        return new BookingDraft(ids, draft.from(), draft.until(), draft.kind() == null ? BookingKind.SESSION : draft.kind(),
                forWhat == null ? "" : forWhat, by == null ? who : by, note);
    }

    private static void time(BookingDraft draft, Instant now, List<Fault> faults) {
        if (draft.from() == null) {
            faults.add(new Fault("/from", "it is not said from when. Give a time"));
        } else if (draft.from().isBefore(EARLIEST)) {
            faults.add(new Fault("/from", "is " + draft.from() + ", before the year 2000. Correct the year"));
        }
        if (draft.until() == null) {
            faults.add(new Fault("/until", "it is not said until when. Give a time"));
        } else if (draft.until().isAfter(now.plus(AHEAD))) {
            faults.add(new Fault("/until", "is " + draft.until() + ", more than ten years ahead. Correct the year"));
        }
        if (draft.from() == null || draft.until() == null) {
            return;
        }
        if (!draft.from().isBefore(draft.until())) {
            faults.add(new Fault("/until", "is " + draft.until() + ", not after " + draft.from() + ". Let it end after it begins"));
        } else if (Duration.between(draft.from(), draft.until()).compareTo(LONGEST) > 0) {
            faults.add(new Fault("/until", "is " + draft.until() + ", more than two years after " + draft.from() + ". Book at most two years"));
        }
    }
}
