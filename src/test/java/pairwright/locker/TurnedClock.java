package pairwright.locker;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands still until it is turned, forward or back. */
final class TurnedClock extends Clock {
    private volatile Instant now;

    TurnedClock(Instant now) {
        this.now = now;
    }

    void turn(Instant to) {
        now = to;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }

    @Override
    public Instant instant() {
        return now;
    }
}
