package pairwright.locker;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Random;

/** A program that books until it is killed, and prints what it asks for before, and what was acknowledged after. */
final class WritesUntilKilled {
    private static final int THREADS = 3;
    private static final long ROUND_S = 30L * 86_400;
    private static final long THREAD_S = 10L * 86_400;
    private static final long SLOT_S = 600;

    private WritesUntilKilled() {
    }

    /** One thing asked for; a line of what is printed. */
    record Asked(String key, BookingDraft draft) {
        String line() {
            return String.join(" ", "asks", key, Long.toString(draft.from().getEpochSecond()), Long.toString(draft.until().getEpochSecond()),
                    String.join(",", draft.units()));
        }

        static Asked of(String[] words) {
            return new Asked(words[1], Load.draft(java.util.List.of(words[4].split(",")),
                    Instant.ofEpochSecond(Long.parseLong(words[2])), Instant.ofEpochSecond(Long.parseLong(words[3])), words[1]));
        }
    }

    /** Arguments: file of the locker or address of its server, number of the round, which keeps rounds and threads out of each other's time. */
    public static void main(String[] arguments) throws Exception {
        int round = Integer.parseInt(arguments[1]);
        PrintStream out = new PrintStream(new java.io.FileOutputStream(java.io.FileDescriptor.out), true, StandardCharsets.UTF_8);
        Instant start = Instant.parse("2031-01-01T00:00:00Z").plusSeconds(round * ROUND_S);
        try (Locker locker = Locker.open(place(arguments[0]), Load.CATALOGUE, Clock.systemUTC())) {
            Load.atOnce(THREADS, thread -> {
                Random random = new Random(1000L * round + thread);
                for (int number = 0;; number++) {
                    Instant from = start.plusSeconds(thread * THREAD_S + number * SLOT_S);
                    String key = "round-" + round + "-" + thread + "-" + number;
                    Asked asked = new Asked(key, Load.draft(Load.three(random), from, from.plusSeconds(SLOT_S), key));
                    out.println(asked.line());
                    out.println("done " + key + " " + Load.book(locker, key, asked.draft()).text());
                }
            });
        }
    }

    private static Place place(String text) {
        return text.startsWith("jdbc:") ? Place.at(text) : new Place(Path.of(text), null);
    }
}
