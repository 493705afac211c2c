package pairwright.locker;

import java.time.Instant;
import java.util.List;

/**
 * What somebody wants to book, before it is checked. Anything may be null for not said.
 *
 * @param units ids; all of them or none
 * @param from first moment
 * @param until first moment after it
 * @param kind null for a session
 * @param forWhat the session, class, borrower or workshop
 * @param by who answers for it; null for whoever acts
 * @param note what else to know
 */
public record BookingDraft(List<String> units, Instant from, Instant until, BookingKind kind, String forWhat, String by, String note) {
    public BookingDraft {
        units = units == null ? List.of() : List.copyOf(units);
    }
}
