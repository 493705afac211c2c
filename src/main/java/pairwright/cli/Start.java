package pairwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the program starts. A question from a terminal is over in a second or two, and a server wants to be ready as soon; most of that a virtual machine spends on
 * loading classes and on compiling code that never gets hot. The build leaves an archive of loaded classes beside the jar; a virtual machine uses one only if told
 * so on its command line, so for these commands this starts a second one that is told. They end together, whichever ends first. Where there is no archive, or
 * anything is unusual, the program simply runs here.
 */
public final class Start {
    private static final String TOLD = "pairwright.started";
    private static final String ARCHIVE = "pairwright.jsa";
    /** A young generation so large that little is ever collected in so short a life; what is not used takes no memory. */
    private static final List<String> SHORT_LIVED = List.of("-XX:TieredStopAtLevel=1", "-XX:CompileThresholdScaling=3", "-XX:+UseSerialGC", "-Xms256m", "-Xmn200m");

    /**
     * A server compiles fully what is ten times as hot as usual. What is merely hot while it starts is not worth that, and what an answer calls is soon hot enough: measured, the
     * start took two thirds of the processor time, the first ten answers two thirds of the time, and four hundred answers no more than before.
     */
    private static final List<String> LONG_LIVED = List.of("-XX:Tier4InvocationThreshold=50000", "-XX:Tier4MinInvocationThreshold=6000", "-XX:Tier4CompileThreshold=150000",
            "-XX:Tier4BackEdgeThreshold=400000");

    private Start() {
    }

    /** Runs a command and ends with its exit code. */
    public static void main(String[] arguments) {
        if (System.getProperty(TOLD) != null) {
            endWithWhoStarted();
        } else {
            List<String> quick = quick(arguments);
            if (quick != null) {
                try {
                    System.exit(ended(new ProcessBuilder(quick).inheritIO().start()));
                } catch (IOException | InterruptedException unusual) {
                    // no second virtual machine to be had: run here
                }
            }
        }
        Main.main(arguments);
    }

    /** Waits for the second one; what tells this one to end is passed on to it, and it may finish what it is at. */
    private static int ended(Process second) throws InterruptedException {
        Thread stop = new Thread(() -> {
            second.destroy();
            try {
                Runtime.getRuntime().halt(second.waitFor());
            } catch (InterruptedException cut) {
                second.destroyForcibly();
            }
        }, "stop");
        Runtime.getRuntime().addShutdownHook(stop);
        int exit = second.waitFor();
        try {
            Runtime.getRuntime().removeShutdownHook(stop);
        } catch (IllegalStateException ending) {
            // and then the hook ends this with the same code
        }
        return exit;
    }

    /** The first one may be killed without a chance to say so. */
    private static void endWithWhoStarted() {
        ProcessHandle.current().parent().ifPresent(first -> first.onExit().thenRun(() -> System.exit(1)));
    }

    /** The command line of a virtual machine that starts quickly; null if this one should do the work. */
    private static List<String> quick(String[] arguments) {
        boolean asks = arguments.length > 0 && arguments[0].equals("ask");
        if (!asks && (arguments.length == 0 || !arguments[0].equals("serve"))) {
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
        List<String> quick = new ArrayList<>(List.of(here.command().get(), "-XX:SharedArchiveFile=" + archive, "-Xshare:auto", "-Xlog:disable", "-D" + TOLD + "=true"));
        quick.addAll(asks ? SHORT_LIVED : LONG_LIVED);
        quick.addAll(List.of("-jar", given[1]));
        quick.addAll(List.of(arguments));
        return quick;
    }
}
