package pairwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/** The real program in a process of its own, and what it prints. */
final class Program implements AutoCloseable {
    private static final long MOST_S = 120;

    private final Process process;
    private final BufferedReader out;
    private final CompletableFuture<String> err;

    private Program(Process process) {
        this.process = process;
        this.out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        this.err = CompletableFuture.supplyAsync(() -> {
            try {
                return new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
            } catch (IOException broken) {
                return broken.toString();
            }
        });
    }

    /**
     * Starts it.
     *
     * @param folder the folder it runs in
     * @param arguments as on a command line
     */
    static Program start(Path folder, String... arguments) throws IOException {
        return started(folder, List.of("-Dfile.encoding=UTF-8", "--enable-native-access=ALL-UNNAMED", "-cp", System.getProperty("java.class.path"), "pairwright.cli.Main"), arguments);
    }

    /** The same as people start it. */
    static Program ofJar(Path folder, Path jar, String... arguments) throws IOException {
        return started(folder, List.of("-jar", jar.toString()), arguments);
    }

    private static Program started(Path folder, List<String> options, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(options);
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        builder.environment().keySet().removeAll(List.of("JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS", "NO_COLOR"));
        return new Program(builder.start());
    }

    /** The next line it prints; null when it has ended. */
    String line() throws IOException {
        return out.readLine();
    }

    /** All else it prints until it ends. */
    String rest() throws IOException {
        StringBuilder text = new StringBuilder();
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            text.append(line).append('\n');
        }
        return text.toString();
    }

    /** Asks it to end, as a service manager does. */
    void terminate() {
        process.toHandle().destroy(); // unlike process.destroy(), leaves what it printed readable
    }

    /** Ends it without a chance to say so. */
    void kill() {
        process.toHandle().destroyForcibly();
    }

    /** Those it started itself. */
    List<ProcessHandle> children() {
        return process.children().toList();
    }

    int exit() throws InterruptedException {
        if (!process.waitFor(MOST_S, TimeUnit.SECONDS)) {
            throw new AssertionError("it does not end");
        }
        return process.exitValue();
    }

    /** What it said to standard error, once it has ended. */
    String err() {
        return err.join();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
