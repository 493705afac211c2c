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
        Run again = Run.of("demo", "--data", data);
        assertEquals(1, again.exit());
        assertTrue(again.err().contains("already"), again.err());
    }
}
