package pairwright.session;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import pairwright.advice.HouseMemory;
import pairwright.advice.KnowledgeStore;
import pairwright.locker.DemoLocker;
import pairwright.locker.Locker;
import pairwright.locker.Place;
import pairwright.locker.Span;
import pairwright.model.Limits;

/** Our folk-jazz sextet in its barn, and what is free of the locker of the demo on a day without bookings. */
final class Sextet {
    static final KnowledgeStore KNOWLEDGE = KnowledgeStore.builtIn();
    static final LineUp LINE_UP = new LineUp("Sextet", new Floor("barn", 9, 12, 5.5, 0.9), List.of(
            seat("fiddle", "violin", 2.2, 8, 120),
            seat("tenor", "tenor-saxophone", 6.8, 8, 240),
            seat("guitar", "nylon-guitar", 2.0, 5, 75),
            seat("bass", "double-bass", 4.5, 9.5, 180),
            seat("cajon", "cajon", 7.2, 4.5, 290),
            seat("voice", "singing-voice", 4.5, 4.2, 0)), List.of(new Gobo("screen", 5.8, 3.6, 5.8, 5.6, 1.4)), null, null, null, null, 3);
    static final Gear GEAR = gear();

    private Sextet() {
    }

    static Planner planner() {
        return new Planner(KNOWLEDGE::current, HouseMemory.NOTHING);
    }

    private static Seat seat(String id, String source, double xM, double yM, double facingDegrees) {
        return new Seat(id, null, source, xM, yM, facingDegrees, null, null, null, null, new Limits(2, null, null, null, null, null, null, null), true, null, false);
    }

    private static Gear gear() {
        LocalDate today = LocalDate.of(2027, 3, 1);
        try {
            Path folder = Files.createTempDirectory("sextet");
            try (Locker locker = Locker.open(Place.in(folder), () -> KNOWLEDGE.current().catalogue(), Clock.fixed(today.atTime(8, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC))) {
                DemoLocker.fill(locker, KNOWLEDGE.current().catalogue(), today, ZoneOffset.UTC);
                return GearOf.free(locker, new Span(today.plusDays(4).atTime(LocalTime.of(10, 0)).toInstant(ZoneOffset.UTC),
                        today.plusDays(4).atTime(LocalTime.of(18, 0)).toInstant(ZoneOffset.UTC)), Set.of());
            }
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }
}
