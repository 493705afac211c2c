package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class TriesTest {
    private final Hands hands = new Hands();
    private final Tries tries = new Tries(hands);

    /** A clock that is set by hand. */
    private static final class Hands extends Clock {
        private Instant now = Instant.parse("2027-03-01T09:00:00Z");

        void pass(Duration time) {
            now = now.plus(time);
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

    @Test
    void fourSlipsCostNothingAndTheFifthWaits() {
        fail("a", 4);
        assertEquals(0, tries.waitS("a"));
        fail("a", 1);
        assertEquals(10, tries.waitS("a"));
    }

    @Test
    void slipsThatAreMinutesApartNeverWait() {
        for (int i = 0; i < 100; i++) {
            fail("a", 1);
            assertEquals(0, tries.waitS("a"));
            hands.pass(Duration.ofSeconds(61));
        }
    }

    @Test
    void eachFurtherOneWaitsTwiceAsLongUpToAQuarterOfAnHour() {
        fail("a", 5);
        for (long expected : new long[] {10, 20, 40, 80, 160, 320, 640, 900, 900, 900}) {
            assertEquals(expected, tries.waitS("a"));
            hands.pass(Duration.ofSeconds(expected));
            assertEquals(0, tries.waitS("a"));
            fail("a", 1);
        }
        fail("a", 100);
        assertEquals(900, tries.waitS("a"));
    }

    @Test
    void aWaitThatHasBegunIsSaidInWholeSecondsAndNeverAsNone() {
        fail("a", 5);
        hands.pass(Duration.ofMillis(9_999));
        assertEquals(1, tries.waitS("a"));
    }

    @Test
    void othersAreNotHeldUp() {
        fail("a", 50);
        assertEquals(0, tries.waitS("b"));
    }

    @Test
    void whoeverStopsIsTrustedAgain() {
        fail("a", 6);
        hands.pass(Duration.ofSeconds(20).plus(Duration.ofMinutes(15)).plusSeconds(1));
        fail("a", 4);
        assertEquals(0, tries.waitS("a"));
    }

    @Test
    void itRemembersOnlySoMany() {
        for (int i = 0; i < 3 * Tries.MOST_ADDRESSES; i++) {
            fail("address " + i, 1);
            if (i % 1000 == 0) {
                fail("stubborn", 1);
            }
        }
        assertEquals(Tries.MOST_ADDRESSES, tries.known());
        assertTrue(tries.waitS("stubborn") > 0, "one that keeps trying is not forgotten");
    }

    @Test
    void aHouseholdIsOneCaller() {
        assertEquals(Caller.own("2001:db8:1:2:aaaa::1"), Caller.own("[2001:db8:1:2:bbbb::2]"));
        assertEquals("192.0.2.7", Caller.own("192.0.2.7"));
        assertEquals(Caller.own("192.0.2.7"), Caller.own("::ffff:192.0.2.7"));
        assertTrue(!Caller.own("2001:db8:1:2::1").equals(Caller.own("2001:db8:1:3::1")));
    }

    private void fail(String address, int times) {
        for (int i = 0; i < times; i++) {
            tries.failed(address);
        }
    }
}
