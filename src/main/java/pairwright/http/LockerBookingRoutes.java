package pairwright.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import pairwright.catalogue.Shown;
import pairwright.locker.Booking;
import pairwright.locker.BookingDraft;
import pairwright.locker.ListMark;
import pairwright.locker.Locker;
import pairwright.locker.Span;

/** Bookings, for programs. */
final class LockerBookingRoutes {
    /** How far ahead is looked where nobody says: four weeks. */
    private static final Duration AHEAD = Duration.ofDays(28);
    private static final Duration LONGEST = Duration.ofDays(400);
    private static final int MOST = 10_000;

    private final Locker locker;
    private final LockerJson json;
    private final LockerWrites writes;
    private final int bodyMs;

    LockerBookingRoutes(Locker locker, LockerJson json, LockerWrites writes, int bodyMs) {
        this.locker = locker;
        this.json = json;
        this.writes = writes;
        this.bodyMs = bodyMs;
    }

    void add(RoutesConfig routes) {
        Routes.get(routes, "/api/locker/bookings", this::list);
        routes.post("/api/locker/bookings", this::make);
        Routes.get(routes, "/api/locker/bookings/{id}", this::one);
        routes.patch("/api/locker/bookings/{id}", this::alter);
        routes.delete("/api/locker/bookings/{id}", this::cancel);
    }

    private void list(Context context) {
        Query query = new Query(context, "from", "until", "unit", "after", "most");
        Span span = query.span(startOfToday(), AHEAD);
        String unit = query.text("unit");
        ListMark after = mark(query);
        Long most = query.whole("most", 1, MOST);
        if (span != null && Duration.between(span.from(), span.until()).compareTo(LONGEST) > 0) {
            query.fault("until", "from and until are " + Duration.between(span.from(), span.until()).toDays() + " days apart. Ask for at most " + LONGEST.toDays()
                    + " at a time");
        }
        query.check();
        if (unit != null && locker.unit(unit).isEmpty()) {
            throw new BadRequest(Problem.of(404, "There is no unit \"" + Shown.of(unit) + "\". All units are at /api/locker/units"));
        }
        int wanted = most == null ? MOST : most.intValue();
        List<Booking> bookings = locker.bookings(span, unit, after, wanted + 1);
        boolean more = bookings.size() > wanted;
        LockerRoutes.answer(context, json, LockerView.Bookings.of(span, more ? bookings.subList(0, wanted) : bookings, more));
    }

    private static ListMark mark(Query query) {
        String text = query.text("after");
        if (text == null) {
            return ListMark.START;
        }
        return ListMark.of(text).orElseGet(() -> {
            query.fault("after", "\"" + Shown.of(text) + "\" is not where a list goes on. Take what an earlier answer says under after");
            return ListMark.START;
        });
    }

    private Instant startOfToday() {
        ZoneId zone = ZoneId.systemDefault();
        return locker.now().atZone(zone).toLocalDate().atStartOfDay(zone).toInstant();
    }

    private void one(Context context) {
        new Query(context).check();
        String id = context.pathParam("id");
        Booking booking = locker.booking(id).orElseThrow(() -> new BadRequest(Problem.of(404,
                "There is no booking \"" + Shown.of(id) + "\"; it may have been cancelled. Bookings are at /api/locker/bookings")));
        LockerRoutes.answerUnlessHad(context, IfMatch.tag(booking.version()), () -> json.write(LockerView.Booked.of(booking)));
    }

    private void make(Context context) {
        new Query(context).check();
        String body = Body.json(context, bodyMs);
        BookingDraft draft = BookingBody.read(Body.object(body, json.mapper(), BookingBody.EXAMPLE));
        writes.write(context, body, changes -> writes.made(changes.book(draft)));
    }

    private void alter(Context context) {
        new Query(context).check();
        String id = context.pathParam("id");
        IfMatch meant = IfMatch.of(context);
        String body = Body.patch(context, bodyMs);
        ObjectNode patch = (ObjectNode) Body.object(body, json.mapper(), "{\"until\": \"2027-03-01T20:00:00+01:00\"}");
        String who = Access.who(context);
        writes.write(context, body, changes -> {
            Booking booking = changes.booking(id);
            meant.check("booking " + id, booking.version());
            ObjectNode merged = Patched.of(json.tree(LockerView.Booked.of(booking)), patch, booking.version(), "booking " + id, List.of("id", "lines"));
            merged.remove(List.of("id", "lines"));
            return writes.altered(changes.alter(id, BookingBody.anew(merged, who), null));
        });
    }

    private void cancel(Context context) {
        new Query(context).check();
        String id = context.pathParam("id");
        IfMatch meant = IfMatch.of(context);
        writes.write(context, "", changes -> {
            meant.check("booking " + id, changes.booking(id).version());
            changes.cancel(id, null);
            return LockerWrites.Said.GONE;
        });
    }
}
