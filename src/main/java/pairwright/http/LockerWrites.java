package pairwright.http;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import pairwright.catalogue.Shown;
import pairwright.locker.Act;
import pairwright.locker.Booking;
import pairwright.locker.Changes;
import pairwright.locker.Locker;
import pairwright.locker.Outcome;
import pairwright.locker.Unit;

/**
 * Writes once what is sent once or again: with the header Idempotency-Key, what was said the first time is said again. Everything a write
 * looks at is looked at within its transaction, so that it still holds when it is written, and so that a repetition looks at nothing.
 */
final class LockerWrites {
    private static final String KEY = "Idempotency-Key";
    private static final Pattern VISIBLE = Pattern.compile("[!-~]{1,200}");

    private final Locker locker;
    private final LockerJson json;

    /**
     * What is said of a write; kept with its key.
     *
     * @param status of HTTP
     * @param location where what was made is; null where nothing was made
     * @param etag of what was written; null where it is gone
     * @param body JSON; null for none
     */
    record Said(int status, String location, String etag, String body) {
        static final Said GONE = new Said(204, null, null, null);
    }

    LockerWrites(Locker locker, LockerJson json) {
        this.locker = locker;
        this.json = json;
    }

    /**
     * Does something and says what came of it.
     *
     * @param body as it came; empty for none
     * @param work may be done more than once before it counts
     */
    void write(Context context, String body, Function<Changes, Said> work) {
        String key = key(context);
        Act act = new Act(Access.who(context), key, key == null ? null : print(context, body));
        Outcome outcome = locker.change(act, changes -> json.write(work.apply(changes)));
        send(context, json.read(outcome.text(), Said.class), outcome.repeated());
    }

    Said made(Unit unit) {
        return new Said(201, "/api/locker/units/" + unit.id(), IfMatch.tag(unit.version()), json.write(unit));
    }

    Said altered(Unit unit) {
        return new Said(200, null, IfMatch.tag(unit.version()), json.write(unit));
    }

    Said made(Booking booking) {
        return new Said(201, "/api/locker/bookings/" + booking.id(), IfMatch.tag(booking.version()), json.write(LockerView.Booked.of(booking)));
    }

    Said altered(Booking booking) {
        return new Said(200, null, IfMatch.tag(booking.version()), json.write(LockerView.Booked.of(booking)));
    }

    /** Something was done to more than one unit. */
    Said done(LockerView.Table table) {
        return new Said(200, null, null, json.write(table));
    }

    private static void send(Context context, Said said, boolean repeated) {
        context.status(said.status());
        context.header("Cache-Control", "no-store");
        if (repeated) {
            context.header("Idempotent-Replay", "true");
        }
        if (said.location() != null) {
            context.header("Location", said.location());
        }
        if (said.etag() != null) {
            context.header("ETag", said.etag());
        }
        if (said.body() != null) {
            context.contentType("application/json; charset=utf-8").result(said.body());
        }
    }

    private static String key(Context context) {
        List<String> keys = Collections.list(context.req().getHeaders(KEY));
        if (keys.isEmpty()) {
            return null;
        }
        if (keys.size() > 1 || !VISIBLE.matcher(keys.get(0)).matches()) {
            throw new BadRequest(Problem.of(400, KEY + " must be one key of 1 to 200 visible characters, but was \"" + Shown.of(String.join(", ", keys))
                    + "\". Make up a new one for each thing you want done, such as a UUID, and send it again only with the same request"));
        }
        return keys.get(0);
    }

    private static String print(Context context, String body) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(body.getBytes(StandardCharsets.UTF_8));
            return context.method().name() + " " + context.path() + " " + HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible); // every Java has it
        }
    }
}
