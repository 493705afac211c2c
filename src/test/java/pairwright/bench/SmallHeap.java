package pairwright.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import pairwright.http.LoadServer;

/** The work of a server in a small heap: every address that can be read without a name, and questions, several at once. */
final class SmallHeap {
    private static final int AT_ONCE = 8;
    private final HttpClient client = HttpClient.newHttpClient();

    /** How much was asked for, and what went wrong. */
    record Worked(int requests, List<String> faults) {
    }

    Worked work(String heap, int questions) throws Exception {
        List<String> faults = new ArrayList<>();
        int requests = 0;
        try (Children.Served server = new Children.Served(heap)) {
            URI root = URI.create("http://127.0.0.1:" + server.port);
            for (int round = 0; round < 3; round++) {
                for (String address : LoadServer.READ) {
                    requests++;
                    told(faults, address, send(HttpRequest.newBuilder(root.resolve(address)).header("Accept", "text/html,*/*").build()));
                }
            }
            List<Thread> threads = new ArrayList<>();
            List<String> wrong = java.util.Collections.synchronizedList(faults);
            for (int t = 0; t < AT_ONCE; t++) {
                int first = t;
                Thread thread = new Thread(() -> {
                    for (int i = first; i < questions; i += AT_ONCE) {
                        String body = i % 50 == 0 ? "{\"words\": \"" + DifferentQuestions.of(i) + "\", \"draws\": 200}" : DifferentQuestions.body(i);
                        told(wrong, "POST /api/ask", send(HttpRequest.newBuilder(root.resolve("/api/ask")).header("Content-Type", "application/json")
                                .POST(HttpRequest.BodyPublishers.ofString(body)).build()));
                    }
                });
                threads.add(thread);
                thread.start();
            }
            for (Thread thread : threads) {
                thread.join();
            }
            requests += questions;
            if (!server.alive()) {
                faults.add("the server is gone");
            }
        } catch (IOException broken) {
            faults.add(broken.getMessage());
        }
        return new Worked(requests, faults);
    }

    private int send(HttpRequest request) {
        try {
            return client.send(request, HttpResponse.BodyHandlers.ofByteArray()).statusCode();
        } catch (IOException | InterruptedException broken) {
            return 0;
        }
    }

    private static void told(List<String> faults, String address, int status) {
        if (status == 0 || status >= 400) {
            faults.add(address + ": " + (status == 0 ? "no answer" : "status " + status));
        }
    }
}
