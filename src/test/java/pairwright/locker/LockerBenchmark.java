package pairwright.locker;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import pairwright.advice.Advisor;
import pairwright.advice.AtHand;
import pairwright.advice.KnowledgeStore;
import pairwright.http.LockerAtHand;
import pairwright.http.Server;
import pairwright.model.Request;

/**
 * How long things take with a locker of 5,000 units and 200,000 bookings, in a file and on a server that confirms what is on its disk. Not a test:
 * machines differ. Run it with {@code mvn -q test-compile exec:java@locker-benchmark}; the arguments {@code SQLite} or {@code PostgreSQL} measure one of them.
 */
public final class LockerBenchmark {
    private static final int COUNTED = 100;
    private static final int FEW = 20;
    private static final String WORDS = "acoustic guitar, fingerpicked, stereo";

    private final String where;
    private final Locker locker;
    private final KnowledgeStore knowledge;
    private final Instant now = Instant.now();
    private final Random random = new Random(11);

    private LockerBenchmark(String where, Locker locker, KnowledgeStore knowledge) {
        this.where = where;
        this.locker = locker;
        this.knowledge = knowledge;
    }

    /** Prints the figures. */
    public static void main(String[] arguments) throws Exception {
        KnowledgeStore knowledge = KnowledgeStore.builtIn();
        Path folder = Files.createTempDirectory("locker-benchmark");
        try (Databases.Kept server = Databases.kept(folder)) {
            if (arguments.length == 0) {
                withoutUnits(knowledge, Place.in(folder.resolve("empty")));
            }
            for (String which : arguments.length == 0 ? new String[] {"SQLite", "PostgreSQL"} : arguments) {
                full(which, knowledge, which.equals("SQLite") ? Place.in(folder) : server.place());
            }
        } finally {
            try (Stream<Path> all = Files.walk(folder)) {
                all.sorted(Comparator.reverseOrder()).forEach(path -> path.toFile().delete());
            }
        }
        System.exit(0); // the pools of the server leave threads behind for a while
    }

    private static void withoutUnits(KnowledgeStore knowledge, Place place) throws Exception {
        try (Locker locker = Locker.open(place, () -> knowledge.current().catalogue(), Clock.systemUTC())) {
            LockerBenchmark empty = new LockerBenchmark("no units", locker, knowledge);
            empty.print("ask, no locker at all", COUNTED, () -> empty.ask(AtHand.EVERYTHING));
            empty.print("ask, a locker without units", COUNTED, () -> empty.ask(new LockerAtHand(locker, Clock.systemUTC())));
            empty.print("stock, a locker without units", COUNTED, () -> locker.stock(empty.span(4)) == null ? 0 : 1);
        }
    }

    private static void full(String where, KnowledgeStore knowledge, Place place) throws Exception {
        try (Locker locker = Locker.open(place, () -> knowledge.current().catalogue(), Clock.systemUTC())) {
            long start = System.nanoTime();
            BigLocker.fill(place, List.copyOf(knowledge.current().catalogue().mics().keySet()), Instant.now());
            System.out.printf(Locale.ROOT, "%-11s %,d units, %,d bookings written in %.0f s%n", where, BigLocker.UNITS, BigLocker.BOOKINGS, (System.nanoTime() - start) / 1e9);
            LockerBenchmark bench = new LockerBenchmark(where, locker, knowledge);
            bench.inside();
            bench.asked();
            bench.overHttp();
        }
    }

    private void inside() throws Exception {
        print("first look, units read", 1, () -> locker.units().size());
        print("free, 4 h, all", COUNTED, () -> locker.free(span(4), null).size());
        print("free, 4 h, one type", COUNTED, () -> locker.free(span(4), "small-condenser-cardioid").size());
        print("free, a week, all", COUNTED, () -> locker.free(span(7 * 24), null).size());
        print("standing, 4 h", COUNTED, () -> locker.standing(span(4)).size());
        print("stock, 4 h", COUNTED, () -> locker.stock(span(4)).units().size());
        print("bookings of a month", FEW, () -> locker.bookings(new Span(now.minus(Duration.ofDays(15)), now.plus(Duration.ofDays(15))), null).size());
        print("bookings of a day", COUNTED, () -> locker.bookings(span(24), null).size());
        print("bookings of a unit, 1 year", COUNTED, () -> locker.bookings(new Span(now, now.plus(Duration.ofDays(365))), BigLocker.id(random.nextInt(BigLocker.UNITS))).size());
        print("out", FEW, () -> locker.out().size());
        print("use of a month", FEW, () -> locker.use(YearMonth.now(ZoneOffset.UTC), ZoneOffset.UTC).types().size());
        print("history, newest 50", COUNTED, () -> locker.history(null, null, 50).size());
        print("booking 3 units, with a key", COUNTED, this::book);
    }

    private void asked() throws Exception {
        print("ask, no locker at all", COUNTED, () -> ask(AtHand.EVERYTHING));
        print("ask, this locker", COUNTED, () -> ask(new LockerAtHand(locker, Clock.systemUTC())));
    }

    private void overHttp() throws Exception {
        try (Server server = Server.start(knowledge, locker, "127.0.0.1", 0)) {
            HttpClient client = HttpClient.newHttpClient();
            for (String address : List.of("/locker", "/locker?from=" + day(now) + "T10:00&until=" + day(now) + "T14:00&free=yes", "/locker/month", "/locker/bookings",
                    "/locker/units/" + BigLocker.id(7), "/api/locker/units", "/api/locker/units?from=" + now, "/api/locker/free", "/api/locker/free?micType=small-condenser-cardioid",
                    "/api/locker/bookings", "/api/locker/bookings?most=500&from=" + now.minus(Duration.ofDays(180)) + "&until=" + now.plus(Duration.ofDays(180)), "/api/locker/out", "/api/locker/use",
                    "/api/locker/calendar.ics", "/api/locker/units/" + BigLocker.id(7) + "/calendar.ics")) {
                HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + address)).build();
                print("GET " + address, FEW, () -> sizeOf(client, request));
            }
        }
    }

    private static String day(Instant moment) {
        return moment.toString().substring(0, 10);
    }

    private static int sizeOf(HttpClient client, HttpRequest request) throws Exception {
        HttpResponse<byte[]> response = client.send(request, HttpResponse.BodyHandlers.ofByteArray());
        if (response.statusCode() != 200) {
            throw new IllegalStateException("status " + response.statusCode() + " for " + request.uri());
        }
        return response.body().length;
    }

    private int ask(AtHand atHand) {
        return new Advisor(knowledge::current, atHand).ask(Request.of(WORDS)).hashCode() == 0 ? 0 : 1;
    }

    private int book() {
        for (int tried = 0;; tried++) {
            Span span = span(2);
            List<String> units = random.ints(0, BigLocker.UNITS).distinct().limit(3).mapToObj(BigLocker::id).toList();
            try {
                locker.change(new Act("Wren", "bench-" + random.nextLong(), ""), changes -> changes.book(new BookingDraft(units, span.from(), span.until(),
                        BookingKind.SESSION, "Bench", "Wren", null)).id());
                return tried;
            } catch (LockerFault.Taken taken) {
                // another three are tried
            }
        }
    }

    /** Some time around now. */
    private Span span(int hours) {
        Instant from = now.plus(Duration.ofHours(random.nextInt(90 * 24) - 30 * 24L));
        return new Span(from, from.plus(Duration.ofHours(hours)));
    }

    /** Something that says how many it found. */
    private interface Task {
        int run() throws Exception;
    }

    private void print(String name, int times, Task task) throws Exception {
        for (int i = 0; i < times / 2; i++) {
            task.run();
        }
        double[] ms = new double[times];
        long found = 0;
        for (int i = 0; i < times; i++) {
            long start = System.nanoTime();
            found += task.run();
            ms[i] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(ms);
        System.out.printf(Locale.ROOT, "%-11s %-52s median %8.2f ms, p95 %8.2f ms (%d times, %,d on average)%n", where, name, ms[times / 2],
                ms[Math.min(times - 1, times * 95 / 100)], times, found / times);
    }
}
