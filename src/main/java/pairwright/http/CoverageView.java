package pairwright.http;

import java.time.OffsetDateTime;
import java.util.List;
import pairwright.advice.CoverageDesk;
import pairwright.locker.Span;
import pairwright.model.Coverage;
import pairwright.model.FromLocker;

/**
 * What programs are told of coverage.
 *
 * @param state computing, or ready; until it is ready there are no sources and no helps
 * @param done sources that are judged
 * @param of so many
 * @param locker what of the locker was used: owned or free
 * @param from the time it has to be free for; null with owned
 * @param until its end; null with owned
 */
public record CoverageView(String state, int done, int of, FromLocker locker, OffsetDateTime from, OffsetDateTime until, List<Coverage.Served> sources,
        List<Coverage.Help> helps, String rulesVersion, String catalogueVersion) {

    /** @param span null with owned */
    public static CoverageView of(CoverageDesk.State state, FromLocker use, Span span) {
        Coverage found = state.coverage();
        OffsetDateTime from = span == null ? null : LockerView.shown(span.from());
        OffsetDateTime until = span == null ? null : LockerView.shown(span.until());
        return found == null ? new CoverageView("computing", state.done(), state.of(), use, from, until, List.of(), List.of(), null, null)
                : new CoverageView("ready", state.done(), state.of(), use, from, until, found.sources(), found.helps(), found.rulesVersion(), found.catalogueVersion());
    }
}
