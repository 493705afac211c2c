package pairwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the program starts. A question from a terminal is over in a second or two, most of which a virtual machine spends on loading
 * classes and on compiling code that never gets hot. The build leaves an archive of loaded classes beside the jar; a virtual machine
 * uses one only if told so on its command line, so for {@code ask} this starts a second one that is told. Where there is no archive, or
 * anything is unusual, the program simply runs here.
 */
public final class Start {
    private static final String TOLD = "pairwright.started";
    private static final String ARCHIVE = "pairwright.jsa";
    private static final List<String> SHORT_LIVED = List.of("-Xshare:auto", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xlog:disable");

    private Start() {
    }

    /** Runs a command and ends with its exit code. */
    public static void main(String[] arguments) {
        List<String> quick = quick(arguments);
        if (quick != null) {
            try {
                System.exit(new ProcessBuilder(quick).inheritIO().start().waitFor());
            } catch (IOException | InterruptedException unusual) {
                // no second virtual machine to be had: run here
            }
        }
        Main.main(arguments);
    }

    /** The command line of a virtual machine that starts quickly; null if this one should do the work. */
    private static List<String> quick(String[] arguments) {
        if (arguments.length == 0 || !arguments[0].equals("ask") || System.getProperty(TOLD) != null) {
            return null;
        }
        ProcessHandle.Info here = ProcessHandle.current().info();
        String[] given = here.arguments().orElse(new String[0]);
        if (here.command().isEmpty() || given.length < 2 || !given[0].equals("-jar")) {
            return null; // options were given to the virtual machine: they are meant
        }
        Path archive = Path.of(given[1]).resolveSibling(ARCHIVE);
        if (!Files.isRegularFile(archive)) {
            return null;
        }
        List<String> quick = new ArrayList<>(List.of(here.command().get(), "-XX:SharedArchiveFile=" + archive, "-D" + TOLD + "=true"));
        quick.addAll(SHORT_LIVED);
        quick.addAll(List.of("-jar", given[1]));
        quick.addAll(List.of(arguments));
        return quick;
    }
}
