package pairwright.cli;

import java.io.IOException;
import java.io.PipedReader;
import java.io.PipedWriter;
import java.io.PrintWriter;
import java.io.BufferedReader;
import java.io.Writer;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Does once what a program does soon after it was started, so that the build can keep an archive of the classes that takes: asks a question, and serves one and some
 * pages. Run by the build only, in a folder of its own.
 */
final class Rehearsal {
    private static final String QUESTION = "drum kit next to a trumpet, dark, small room, no phantom";
    private static final List<String> PAGES = List.of("/", "/?q=snare", "/health", "/rules", "/sources", "/mic-types", "/locker", "/sessions", "/api/sources");

    private Rehearsal() {
    }

    /** @param arguments a folder that may be written */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Main.commandLine("ask").setOut(new PrintWriter(Writer.nullWriter())).execute("ask", QUESTION);
        Path data = Files.createDirectories(Path.of(arguments[0]));
        PipedReader said = new PipedReader();
        PrintWriter out = new PrintWriter(new PipedWriter(said));
        Thread serving = new Thread(() -> Main.commandLine("serve").setOut(out).execute("serve", "--port", "0", "--data", data.toString()));
        serving.setDaemon(true);
        serving.start();
        String address = new BufferedReader(said).readLine().replaceFirst(".* ", "");
        HttpClient client = HttpClient.newHttpClient();
        for (String page : PAGES) {
            client.send(HttpRequest.newBuilder(URI.create(address + page)).build(), HttpResponse.BodyHandlers.discarding());
        }
        client.send(HttpRequest.newBuilder(URI.create(address + "/api/ask")).header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString("{\"words\": \"" + QUESTION + "\"}")).build(), HttpResponse.BodyHandlers.discarding());
        System.exit(0);
    }
}
