package pairwright.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Processor time, in seconds, of the program as it is delivered, begun cold. */
final class Start {
    private final String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    private final Path jar;
    private final int times;

    /** What is begun at last may be a child of what was begun, so both are told to the shell, which knows. */
    Start(Path jar, int times) throws IOException {
        if (!Files.exists(jar)) {
            throw new IOException("there is no " + jar + ": mvn -DskipTests package makes it");
        }
        this.jar = jar;
        this.times = times;
    }

    private interface Once {
        double run() throws Exception;
    }

    private double middle(Once once) throws Exception {
        double[] s = new double[times];
        for (int i = 0; i < times; i++) {
            s[i] = once.run();
        }
        Arrays.sort(s);
        return s[times / 2];
    }

    double hello() throws Exception {
        return middle(() -> shell(java + " -cp " + System.getProperty("java.class.path") + " pairwright.bench.Hello"));
    }

    double ask() throws Exception {
        return middle(() -> shell(java + " -jar " + jar + " ask 'brushed snare, dark, small room'"));
    }

    /** User and system time of a command and all it began. */
    private static double shell(String command) throws Exception {
        Children.Said said = Children.run(List.of("bash", "-c", "TIMEFORMAT='CPU %U %S'; time { " + command + " > /dev/null 2>&1; }"));
        String[] words = said.all("CPU").get(0);
        return Double.parseDouble(words[0]) + Double.parseDouble(words[1]);
    }

    double serve() throws Exception {
        return middle(this::served);
    }

    private double served() throws Exception {
        Path data = Files.createTempDirectory("start");
        Process process = new ProcessBuilder(java, "-jar", jar.toString(), "serve", "--port", "0", "--data", data.toString()).redirectError(ProcessBuilder.Redirect.DISCARD).start();
        try {
            String line = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8)).readLine();
            URI address = URI.create(line.substring(line.indexOf("http")) + "/health");
            int status = HttpClient.newHttpClient().send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString()).statusCode();
            if (status != 200) {
                throw new IOException("status " + status + " of /health");
            }
            double seconds = process.toHandle().info().totalCpuDuration().orElseThrow().toNanos() / 1e9;
            return seconds + process.descendants().mapToDouble(child -> child.info().totalCpuDuration().map(took -> took.toNanos() / 1e9).orElse(0.0)).sum();
        } finally {
            process.descendants().forEach(ProcessHandle::destroy);
            process.destroy();
            process.waitFor(10, TimeUnit.SECONDS);
        }
    }
}
