package pairwright.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Programs that are started to be measured, each with the class path of this one. */
final class Children {
    private Children() {
    }

    /** What one said, and the seconds of processor time it took. */
    record Said(List<String> lines, int exit) {
        /** The words of the lines that begin with a word, without it. */
        List<String[]> all(String word) {
            return lines.stream().filter(line -> line.startsWith(word + " ")).map(line -> line.substring(word.length() + 1).split(" ")).toList();
        }

        /** The end of what it said. */
        String end() {
            return String.join(" / ", lines.subList(Math.max(0, lines.size() - 3), lines.size()));
        }
    }

    static List<String> java(String heap, String main, String... arguments) {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        if (heap != null) {
            command.add(heap);
        }
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), main));
        command.addAll(List.of(arguments));
        return command;
    }

    static Said run(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        process.getOutputStream().close();
        try (BufferedReader out = reader(process)) {
            return new Said(out.lines().toList(), process.waitFor());
        }
    }

    /** A {@code LoadServer}; it ends when this is closed. */
    static final class Served implements AutoCloseable {
        final int port;
        private final Process process;

        Served(String heap) throws IOException {
            process = new ProcessBuilder(java(heap, "pairwright.http.LoadServer")).redirectError(ProcessBuilder.Redirect.DISCARD).start();
            String line = reader(process).readLine();
            if (line == null || !line.startsWith("READY ")) {
                process.destroy();
                throw new IOException("The server did not start" + (heap == null ? "" : " with " + heap));
            }
            port = Integer.parseInt(line.substring("READY ".length()));
        }

        boolean alive() {
            return process.isAlive();
        }

        @Override
        public void close() {
            try {
                process.getOutputStream().close();
                if (!process.waitFor(20, TimeUnit.SECONDS)) {
                    process.destroyForcibly();
                }
            } catch (IOException | InterruptedException gone) {
                process.destroyForcibly();
            }
        }
    }

    private static BufferedReader reader(Process process) {
        return new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }
}
