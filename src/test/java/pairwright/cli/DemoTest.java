package pairwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoTest {
    @Test
    void theDemoFillsALockerOnceAndItAnswers(@TempDir Path folder) {
        String data = folder.resolve("demo").toString();
        Run filled = Run.of("demo", "--data", data);
        assertEquals(0, filled.exit(), filled.err());
        Run asked = Run.of("ask", "--draws", "0", "upright bass, warm", "--data", data);
        assertEquals(0, asked.exit(), asked.err());
        assertTrue(Run.of("locker", "out", "--data", data).out().contains("OVERDUE"));
        String late = Run.of("locker", "show", "open-pencil-1", "--data", data).out();
        assertTrue(late.contains("overdue: loan Organ in the chapel (Bram), due "), "whoever asks for a unit that is late is told who has it: " + late);
        String bookings = Run.of("locker", "bookings", "--data", data).out();
        assertTrue(bookings.contains("long-ribbon-1, long-ribbon-2,") && bookings.lines().allMatch(line -> line.length() <= 80), "no id is broken: " + bookings);
        Run again = Run.of("demo", "--data", data);
        assertEquals(1, again.exit());
        assertTrue(again.err().contains("already"), again.err());
    }
}
