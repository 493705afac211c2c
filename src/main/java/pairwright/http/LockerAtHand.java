package pairwright.http;

import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import pairwright.advice.AtHand;
import pairwright.advice.HouseMemory;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import pairwright.locker.Span;
import pairwright.model.Stock;
import pairwright.session.HouseMarks;

/** What a locker has at hand. Where the locker does not answer, questions still are answered. Safe to share between threads. */
public final class LockerAtHand implements AtHand {
    private final Locker locker;
    private final Clock clock;
    private final HouseMemory memory;

    /**
     * @param locker asked anew for every question
     * @param clock says what now is
     */
    public LockerAtHand(Locker locker, Clock clock) {
        this.locker = locker;
        this.clock = clock;
        this.memory = new HouseMarks(locker.marks());
    }

    @Override
    public HouseMemory memory() {
        return memory;
    }

    @Override
    public Stock at(OffsetDateTime from, OffsetDateTime until) {
        try {
            return locker.stock(span(from, until, clock.instant()));
        } catch (LockerFault.Unreachable away) {
            return Stock.OUT_OF_REACH;
        }
    }

    /** A time of which one end or both were not said. An end that is over already, with no start, is taken with the usual length before it. */
    static Span span(OffsetDateTime from, OffsetDateTime until, Instant now) {
        Instant end = until == null ? null : until.toInstant();
        Instant start = from != null ? from.toInstant() : end == null || now.isBefore(end) ? now : end.minus(USUAL_LENGTH);
        return new Span(start, end == null ? start.plus(USUAL_LENGTH) : end);
    }
}
