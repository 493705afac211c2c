package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program is killed while it writes. */
class KilledTest {
    private static final int FEW = 2;
    private static final int MANY = 30;
    private static final int MOST_MS = 900;

    @TempDir
    Path folder;

    /** What one run of the program printed. */
    private record Printed(Map<String, WritesUntilKilled.Asked> asked, Map<String, String> done) {
        List<WritesUntilKilled.Asked> unanswered() {
            return asked.values().stream().filter(one -> !done.containsKey(one.key())).toList();
        }
    }

    @Test
    void nothingAcknowledgedIsLostAndNothingIsHalfWrittenInAFile() throws Exception {
        loseNothing(Place.in(folder), FEW);
    }

    @Test
    void nothingAcknowledgedIsLostAndNothingIsHalfWrittenOnAServer() throws Exception {
        loseNothing(Databases.freshServer(), FEW);
    }

    @Test
    @Tag("long")
    void thirtyKillsLoseNothingInAFile() throws Exception {
        loseNothing(Place.in(folder), MANY);
    }

    @Test
    @Tag("long")
    void thirtyKillsLoseNothingOnAServer() throws Exception {
        loseNothing(Databases.freshServer(), MANY);
    }

    private void loseNothing(Place place, int kills) throws Exception {
        Random random = new Random(41);
        Map<String, BookingDraft> acknowledged = new HashMap<>();
        int hadBeenDone = 0;
        int unanswered = 0;
        try (Locker locker = open(place)) {
            Load.fill(locker);
        }
        for (int round = 0; round < kills; round++) {
            Printed printed = writeAndKill(place, round, random.nextInt(MOST_MS));
            assertTrue(printed.unanswered().size() > 0, "it was killed while nothing was being written");
            printed.done().forEach((key, id) -> acknowledged.put(id, printed.asked().get(key).draft()));
            SqlCheck.assertSound(place);
            try (Locker locker = open(place)) {
                assertEquals(List.of(), Load.faults(Load.all(locker), acknowledged), "after kill " + (round + 1));
                for (WritesUntilKilled.Asked asked : printed.unanswered()) {
                    Outcome again = bookedOnce(locker, asked);
                    acknowledged.put(again.text(), asked.draft());
                    hadBeenDone += again.repeated() ? 1 : 0;
                    unanswered++;
                }
                assertEquals(acknowledged.size(), Load.all(locker).size(), "a booking nobody asked for");
            }
        }
        System.out.printf("%d kills: %d bookings acknowledged and there in full; of %d cut off, %d had been written, all sent again and there once%n",
                kills, acknowledged.size(), unanswered, hadBeenDone);
    }

    /** Sends again what was cut off, twice; it is there once, whether or not it had been written before the kill. */
    private static Outcome bookedOnce(Locker locker, WritesUntilKilled.Asked asked) {
        long before = count(locker, asked.key());
        assertTrue(before <= 1, asked.key());
        Outcome again = Load.book(locker, asked.key(), asked.draft());
        assertEquals(before == 1, again.repeated(), asked.key());
        assertEquals(new Outcome(again.text(), true), Load.book(locker, asked.key(), asked.draft()));
        assertEquals(1, count(locker, asked.key()), asked.key());
        return again;
    }

    private static long count(Locker locker, String forWhat) {
        return Load.all(locker).stream().filter(booking -> booking.forWhat().equals(forWhat)).count();
    }

    private static Locker open(Place place) {
        return Locker.open(place, Load.CATALOGUE, Clock.systemUTC());
    }

    private Printed writeAndKill(Place place, int round, int afterMs) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1", "--enable-native-access=ALL-UNNAMED",
                "-cp", System.getProperty("java.class.path"), WritesUntilKilled.class.getName(), place.file() == null ? place.address() : place.file().toString(), Integer.toString(round));
        builder.environment().keySet().removeAll(List.of("JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS"));
        builder.redirectError(folder.resolve("errors-" + round + ".txt").toFile());
        Process program = builder.start();
        try (BufferedReader out = new BufferedReader(new InputStreamReader(program.getInputStream(), StandardCharsets.UTF_8))) {
            Printed printed = new Printed(new LinkedHashMap<>(), new HashMap<>());
            readUntilFirstDone(out, printed);
            Thread killer = new Thread(() -> killAfter(program, afterMs));
            killer.start();
            try {
                for (String line = out.readLine(); line != null; line = out.readLine()) {
                    take(line, printed);
                }
            } catch (IOException killed) {
                // killing closes the stream at this end as well; what was read before counts
            }
            killer.join();
            assertEquals(137, program.waitFor(), () -> "it ended by itself; see errors-" + round + ".txt");
            return printed;
        } finally {
            program.destroyForcibly().waitFor();
        }
    }

    private void readUntilFirstDone(BufferedReader out, Printed printed) throws IOException {
        while (printed.done().isEmpty()) {
            String line = out.readLine();
            if (line == null) {
                throw new IllegalStateException("it ended before it wrote anything: " + errors());
            }
            take(line, printed);
        }
    }

    private List<String> errors() throws IOException {
        List<String> lines = new ArrayList<>();
        try (var files = java.nio.file.Files.newDirectoryStream(folder, "errors-*.txt")) {
            for (Path one : files) {
                lines.addAll(java.nio.file.Files.readAllLines(one));
            }
        }
        return lines;
    }

    private static void killAfter(Process program, int afterMs) {
        try {
            Thread.sleep(afterMs);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        program.destroyForcibly();
    }

    /** A line that was cut off by the kill has no end and says nothing sure; a whole one counts. */
    private static void take(String line, Printed printed) {
        String[] words = line.split(" ");
        if (words[0].equals("asks") && words.length == 5 && words[4].split(",").length == 3) {
            WritesUntilKilled.Asked asked = WritesUntilKilled.Asked.of(words);
            printed.asked().put(asked.key(), asked);
        } else if (words[0].equals("done") && words.length == 3) {
            printed.done().put(words[1], words[2]);
        }
    }
}
