package pairwright.http;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.locker.DemoLocker;
import pairwright.locker.Locker;
import pairwright.locker.Place;
import pairwright.locker.Role;

/** A server with a real locker, and what programs send to it. */
final class LockerServing implements AutoCloseable {
    /** What is for programs beside what begins with /api and /schema. */
    static final Set<String> FOR_PROGRAMS = Set.of("/health", "/metrics", "/openapi.yaml");

    final Locker locker;
    final String reader;
    final String engineer;
    final String instructor;
    private final Server server;

    private LockerServing(Place place, Clock clock, boolean guarded) {
        locker = Locker.open(place, () -> Serving.KNOWLEDGE.current().catalogue(), clock);
        reader = guarded ? locker.tokens().add("Finch", Role.READER) : null;
        engineer = guarded ? locker.tokens().add("Wren", Role.ENGINEER) : null;
        instructor = guarded ? locker.tokens().add("Ida", Role.INSTRUCTOR) : null;
        server = Server.start(Serving.KNOWLEDGE, locker, new Listen("127.0.0.1", 0, List.of(), guarded));
    }

    /** Everybody may do everything. */
    static LockerServing open(Place place) {
        return open(place, Clock.systemDefaultZone());
    }

    static LockerServing open(Place place, Clock clock) {
        return new LockerServing(place, clock, false);
    }

    /** Everybody needs a token. */
    static LockerServing guarded(Place place) {
        return new LockerServing(place, Clock.systemDefaultZone(), true);
    }

    /** With the units and bookings of the demo around a day, on whose morning it is all the time. */
    static LockerServing demo(Path folder, LocalDate today) {
        ZoneId zone = ZoneId.systemDefault();
        LockerServing serving = open(Place.in(folder), Clock.fixed(today.atTime(8, 0).atZone(zone).toInstant(), zone));
        DemoLocker.fill(serving.locker, Serving.KNOWLEDGE.current().catalogue(), today, zone);
        return serving;
    }

    /** Every address there is, as in {@code GET /api/rooms/{id}}. */
    Set<String> addresses() {
        return server.addresses();
    }

    /** Those that are not pages or what pages are made of. */
    Set<String> addressesForPrograms() {
        return addresses().stream().filter(address -> {
            String path = address.substring(address.indexOf(' ') + 1);
            return path.startsWith("/api/") || path.startsWith("/schema/") || FOR_PROGRAMS.contains(path);
        }).collect(Collectors.toCollection(TreeSet::new));
    }

    Reply get(String target, String... headers) {
        return send("GET", target, null, headers);
    }

    Reply post(String target, String body, String... headers) {
        return send("POST", target, body, headers);
    }

    /**
     * Sends a request.
     *
     * @param body null for none; JSON unless a header says otherwise
     * @param headers each whole, as in {@code If-Match: "1"}
     */
    Reply send(String method, String target, String body, String... headers) {
        byte[] bytes = body == null ? new byte[0] : body.getBytes(StandardCharsets.UTF_8);
        boolean typed = Stream.of(headers).anyMatch(header -> header.startsWith("Content-Type:"));
        boolean named = Stream.of(headers).anyMatch(header -> header.startsWith("Host:"));
        String head = method + " " + target + " HTTP/1.1\r\n" + (named ? "" : "Host: localhost\r\n") + "Connection: close\r\n"
                + (body == null ? "" : (typed ? "" : "Content-Type: application/json\r\n") + "Content-Length: " + bytes.length + "\r\n")
                + Stream.of(headers).map(header -> header + "\r\n").collect(Collectors.joining()) + "\r\n";
        return Serving.send(server.port(), Serving.joined(head, bytes));
    }

    int port() {
        return server.port();
    }

    @Override
    public void close() {
        server.close();
        locker.close();
    }
}
