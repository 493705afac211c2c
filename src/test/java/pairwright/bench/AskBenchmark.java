package pairwright.bench;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import pairwright.advice.Advisor;
import pairwright.advice.KnowledgeStore;
import pairwright.http.Server;
import pairwright.model.Request;

/**
 * How long an answer takes once warm, inside the program and over HTTP, against a request that does nothing. Not a test: machines differ.
 * Run it with {@code mvn -q test-compile exec:java@ask-benchmark}.
 */
public final class AskBenchmark {
    private static final List<String> QUESTIONS = List.of(
            "brushed snare, quiet jazz trio, small room", "kik, hard rock, no condensers", "contrabass next to the drums, warm",
            "Querflöte", "what do I put on a cajon with two channels and no phantom", "nylon guitr fingerpicked very soft, cheap preamp",
            "trumpet too bright, dark please", "singer and guitar at once, one player", "whispered voice",
            "grand piano for pop in a bad room", "horn", "drum kit, stereo, roomy", "tenor sax in a large room", "accordion",
            "distorted guitar amp, gritty", "harp in a church", "choir, natural", "double bass, bowed, one mic", "banjo next to a singer",
            "spoken voice in a bedroom");
    private static final int WARM_UP = 200;
    private static final int COUNTED = 500;

    private AskBenchmark() {
    }

    /** Prints the figures. */
    public static void main(String[] arguments) throws Exception {
        KnowledgeStore knowledge = KnowledgeStore.builtIn();
        Advisor advisor = new Advisor(knowledge::current);
        print("ask, no draws", times(words -> advisor.ask(Request.of(words))));
        print("ask, 200 draws", times(words -> advisor.ask(Request.of(words).withDraws(Request.USUAL_DRAWS))));
        try (Server server = Server.start(knowledge, "127.0.0.1", 0)) {
            HttpClient client = HttpClient.newHttpClient();
            URI ask = URI.create("http://127.0.0.1:" + server.port() + "/api/ask");
            URI health = URI.create("http://127.0.0.1:" + server.port() + "/health");
            for (int draws : new int[] {0, Request.USUAL_DRAWS}) {
                print("POST /api/ask, " + draws + " draws", times(words -> send(client, HttpRequest.newBuilder(ask).header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString("{\"words\": \"" + words + "\", \"draws\": " + draws + "}")).build())));
            }
            print("GET /health", times(words -> send(client, HttpRequest.newBuilder(health).build())));
        }
    }

    private interface Task {
        void run(String words) throws Exception;
    }

    private static void send(HttpClient client, HttpRequest request) throws Exception {
        HttpResponse<byte[]> response = client.send(request, HttpResponse.BodyHandlers.ofByteArray());
        if (response.statusCode() != 200) {
            throw new IllegalStateException("status " + response.statusCode());
        }
    }

    private static double[] times(Task task) throws Exception {
        for (int i = 0; i < WARM_UP; i++) {
            task.run(QUESTIONS.get(i % QUESTIONS.size()));
        }
        double[] ms = new double[COUNTED];
        for (int i = 0; i < COUNTED; i++) {
            long start = System.nanoTime();
            task.run(QUESTIONS.get(i % QUESTIONS.size()));
            ms[i] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(ms);
        return ms;
    }

    private static void print(String name, double[] ms) {
        System.out.printf(Locale.ROOT, "%-26s median %.2f ms, 90 %% %.2f ms, 99 %% %.2f ms (%d calls, %d questions)%n",
                name, ms[ms.length / 2], ms[ms.length * 9 / 10], ms[ms.length * 99 / 100], ms.length, QUESTIONS.size());
    }
}
