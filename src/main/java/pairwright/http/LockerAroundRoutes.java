package pairwright.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.DateTimeException;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.List;
import pairwright.catalogue.Shown;
import pairwright.locker.CalendarFeed;
import pairwright.locker.Event;
import pairwright.locker.Locker;
import pairwright.locker.Unit;
import pairwright.locker.LockerFault;

/** What leaves and comes back, what was done, and how much is used, for programs. */
final class LockerAroundRoutes {
    private static final int USUAL_EVENTS = 50;
    private static final int MOST_EVENTS = 500;

    private final Locker locker;
    private final LockerJson json;
    private final LockerWrites writes;
    private final int bodyMs;

    LockerAroundRoutes(Locker locker, LockerJson json, LockerWrites writes, int bodyMs) {
        this.locker = locker;
        this.json = json;
        this.writes = writes;
        this.bodyMs = bodyMs;
    }

    void add(RoutesConfig routes) {
        Routes.get(routes, "/api/locker/out", this::out);
        routes.post("/api/locker/out", this::takeOut);
        routes.post("/api/locker/in", this::bringBack);
        Routes.get(routes, "/api/locker/history", this::history);
        Routes.get(routes, "/api/locker/use", this::use);
        Routes.get(routes, "/api/locker/calendar.ics", context -> calendar(context, CalendarFeed.ofLocker(locker, locker.now())));
        Routes.get(routes, "/api/locker/units/{id}/calendar.ics", context -> calendar(context, CalendarFeed.ofUnit(locker, unit(context.pathParam("id")), locker.now())));
    }

    private void out(Context context) {
        new Query(context).check();
        LockerRoutes.answer(context, json, LockerView.OutNow.of(locker.now(), locker.out()));
    }

    private void takeOut(Context context) {
        new Query(context).check();
        String body = Body.json(context, bodyMs);
        BookingBody.Passing taken = BookingBody.leaving(Body.object(body, json.mapper(), "{\"unit\": \"R-01\", \"until\": \"2027-03-01T18:00:00+01:00\"}"));
        writes.write(context, body, changes -> writes.altered(changes.takeOut(taken.unit(), taken.by(), taken.until())));
    }

    private void bringBack(Context context) {
        new Query(context).check();
        String body = Body.json(context, bodyMs);
        BookingBody.Passing back = BookingBody.comingBack(Body.object(body, json.mapper(), "{\"unit\": \"R-01\"}"));
        writes.write(context, body, changes -> writes.altered(changes.bringBack(back.unit())));
    }

    private static void calendar(Context context, String calendar) {
        new Query(context).check();
        context.contentType("text/calendar; charset=utf-8").result(calendar);
        context.header("Cache-Control", "private, no-cache");
    }

    private Unit unit(String id) {
        return locker.unit(id).orElseThrow(() -> new LockerFault.NotThere("There is no unit \"" + Shown.of(id) + "\". All ids are at /api/locker/units"));
    }

    private void history(Context context) {
        Query query = new Query(context, "about", "before", "most");
        String about = query.text("about");
        Long before = query.whole("before", 1, Long.MAX_VALUE);
        Long most = query.whole("most", 1, MOST_EVENTS);
        query.check();
        int wanted = most == null ? USUAL_EVENTS : most.intValue();
        List<Event> events = locker.history(about, before, wanted + 1);
        boolean more = events.size() > wanted;
        LockerRoutes.answer(context, json, LockerView.History.of(more ? events.subList(0, wanted) : events, more));
    }

    private void use(Context context) {
        Query query = new Query(context, "month");
        YearMonth month = month(query);
        query.check();
        LockerRoutes.answer(context, json, LockerView.MonthOfUse.of(locker.use(month, ZoneId.systemDefault())));
    }

    private YearMonth month(Query query) {
        String text = query.text("month");
        if (text == null) {
            return YearMonth.from(locker.now().atZone(ZoneId.systemDefault()));
        }
        try {
            if (text.matches("\\d{4}-\\d\\d")) {
                return YearMonth.parse(text);
            }
        } catch (DateTimeException notAMonth) {
            // said below
        }
        query.fault("month", "\"" + Shown.of(text) + "\" is not a month. Write it like 2027-03");
        return null;
    }
}
