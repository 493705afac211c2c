package pairwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.catalogue.Json;

/** A class of the lab from the terminal, without a server. */
class LabCommandTest {
    private static final Pattern MADE = Pattern.compile("Made (x\\w+):");

    @TempDir
    Path folder;

    private Run run(String... arguments) {
        return Run.of(Stream.concat(Stream.concat(Stream.of("lab"), Stream.of(arguments)), Stream.of("--data", folder.toString())).toArray(String[]::new));
    }

    private String done(String... arguments) {
        Run run = run(arguments);
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 80 || line.contains(folder.toString())), run.out());
        return run.out();
    }

    private String made(String kind) {
        String said = done("make", kind, "--level", "1", "--benches", "2", "--seed", "barn");
        Matcher id = MADE.matcher(said);
        assertTrue(id.find(), said);
        assertTrue(said.replaceAll("\\s+", " ").contains("from the seed barn."), said);
        return id.group(1);
    }

    @Test
    void exercisesAreMadePrintedMarkedAndSummedUp() throws Exception {
        String id = made("reckon");
        assertTrue(done("list").contains(id), "listed");
        String handout = done("show", id);
        assertTrue(handout.contains("Bench 1: ") && handout.contains("Bench 2: "), handout);
        assertFalse(done("show", id, "--bench", "2").contains("Bench 1: "));
        String key = done("key", id, "--bench", "1");
        Matcher best = Pattern.compile("(?m)^(\\w[\\w-]*): (\\S+) - ").matcher(key);
        StringBuilder csv = new StringBuilder("bench,item,answer\n");
        while (best.find()) {
            csv.append("1,").append(best.group(1)).append(',').append(best.group(2)).append('\n');
        }
        assertTrue(csv.toString().lines().count() > 1, key);
        Path file = Files.writeString(folder.resolve("answers.csv"), csv);
        String marked = done("mark", id, file.toString(), "--checks");
        assertTrue(marked.contains("Bench 1: ") && marked.contains("(100 %)"), marked);
        assertTrue(done("marks", id).contains("Bench 2: nothing handed in"), "marks");
        assertEquals(3, done("marks", id, "--csv").lines().count());
        String summary = done("summary", id);
        assertTrue(summary.startsWith("1 of 2 benches handed in; their mean is 100 %."), summary);
    }

    @Test
    void everyKindCanBePrinted() {
        String kinds = Run.of("lab", "kinds").out();
        for (String kind : List.of("choose", "curves")) {
            assertTrue(kinds.contains(kind + ": "), kinds);
            String id = made(kind);
            assertTrue(done("show", id).lines().count() > 10);
            assertTrue(done("key", id).contains("Bench 2: "));
        }
    }

    @Test
    void everyFaultOfAFileIsSaidWithItsLineAndNothingIsKept() throws Exception {
        String id = made("reckon");
        Path file = Files.writeString(folder.resolve("answers.csv"), "bench,item,answer\n9,x,1\n1,nothing,2\n");
        Run run = run("mark", id, file.toString());
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().contains("line 2, column bench, \"9\"") && run.err().contains("line 3, column item"), run.err());
        assertEquals(2, done("marks", id).lines().filter(line -> line.endsWith("nothing handed in")).count());
    }

    @Test
    void whatCannotBeIsSaid() {
        assertEquals(2, run("make", "chose").exit());
        Run run = run("make", "choose", "--benches", "0", "--level", "9");
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("benches must be 1 to 60") && run.err().contains("level must be 1 to 5"), run.err());
        assertTrue(run("make", "choose", "--from", "2031-03-01T10:00", "--until", "2031-03-01T12:00").err().contains("pairwright: No microphone is free, and every bench of"), "no microphone is there");
        assertEquals(1, run("show", "x1").exit());
        assertEquals(2, Run.of("lab").exit());
    }

    @Test
    void programsGetWhatHttpGives() throws Exception {
        String id = made("reckon");
        JsonNode list = Json.mapper().readTree(done("list", "--json"));
        assertEquals(id, list.at("/exercises/0/id").asText(), list.toString());
    }
}
