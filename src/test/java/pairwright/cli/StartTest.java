package pairwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A jar with an archive of classes beside it, which starts a second virtual machine. */
class StartTest {
    private static final int SECOND_ENDS_S = 20;

    @TempDir
    Path folder;

    private Path jar;

    @BeforeEach
    void aJarAndAnArchiveThatNoMachineTakes() throws IOException {
        jar = folder.resolve("some.jar");
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, "pairwright.cli.Start");
        manifest.getMainAttributes().put(Attributes.Name.CLASS_PATH, Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(part -> Path.of(part).toAbsolutePath().toUri().toString()).collect(Collectors.joining(" ")));
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar), manifest)) {
            out.flush();
        }
        Files.writeString(folder.resolve("pairwright.jsa"), "made by another machine");
    }

    @Test
    void anArchiveThatCannotBeUsedIsPassedOverInSilence() throws Exception {
        try (Program program = Program.ofJar(folder, jar, "ask", "--draws", "0", "snare")) {
            assertTrue(program.line().startsWith("Understood: "));
            program.rest();
            assertEquals(0, program.exit());
            assertEquals("", program.err());
        }
        try (Program program = Program.ofJar(folder, jar, "ask", "  ")) {
            assertEquals(2, program.exit(), "the exit code is that of the second");
            assertTrue(program.err().startsWith("pairwright: "), program.err());
        }
    }

    @Test
    void aServerThatIsToldToEndEndsWithTheSecond() throws Exception {
        try (Program program = Program.ofJar(folder, jar, "serve", "--port", "0", "--data", "state")) {
            assertTrue(program.line().startsWith("Pairwright is ready at http://127.0.0.1:"));
            List<ProcessHandle> second = program.children();
            assertEquals(1, second.size());
            program.terminate();
            assertEquals(0, program.exit());
            assertFalse(second.get(0).isAlive());
        }
    }

    @Test
    void aServerWhoseFirstMachineIsKilledEndsAsWell() throws Exception {
        try (Program program = Program.ofJar(folder, jar, "serve", "--port", "0", "--data", "state")) {
            program.line();
            ProcessHandle second = program.children().get(0);
            program.kill();
            second.onExit().get(SECOND_ENDS_S, TimeUnit.SECONDS);
        }
    }

    @Test
    void aServerWhoseSecondMachineIsKilledSaysSoByItsCode() throws Exception {
        try (Program program = Program.ofJar(folder, jar, "serve", "--port", "0", "--data", "state")) {
            program.line();
            program.children().get(0).destroyForcibly();
            assertEquals(137, program.exit());
        }
    }
}
