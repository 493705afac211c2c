package pairwright.http;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import pairwright.advice.KnowledgeStore;
import pairwright.locker.DemoLocker;
import pairwright.locker.Locker;
import pairwright.locker.Place;

/** The real server with a locker in a folder of its own, and one address more that reads a body and sends as many bytes as an answer has. */
public final class LoadServer {
    /** What is read of it to see that all of it works. */
    public static final List<String> READ = List.of("/", "/?words=violin", "/?words=drum+kit%2C+dark%2C+church", "/catalogue", "/sources", "/mics", "/rooms", "/characters", "/techniques",
            "/complaints", "/rules", "/numbers", "/guide", "/lab", "/lab/course", "/lab/exercises", "/listen", "/locker", "/locker/month", "/locker/bookings", "/locker/coverage",
            "/locker/desk", "/locker/history", "/locker/units/new", "/sessions", "/sessions/new", "/sessions/buy", "/api/sources", "/api/mics", "/api/rules", "/api/search?words=violin",
            "/api/locker/units", "/api/locker/bookings", "/api/locker/free", "/openapi.yaml", "/metrics", "/health");

    private LoadServer() {
    }

    /** Says {@code READY port} and serves until its input ends. */
    public static void main(String[] arguments) throws Exception {
        KnowledgeStore knowledge = KnowledgeStore.builtIn();
        Locker locker = Locker.open(Place.in(Files.createTempDirectory("load")), () -> knowledge.current().catalogue(), Clock.systemDefaultZone());
        DemoLocker.fill(locker, knowledge.current().catalogue(), LocalDate.now(), ZoneId.systemDefault());
        Server server = Server.start(knowledge, locker, "127.0.0.1", 0);
        HttpRequest question = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + "/api/ask")).header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString("{\"words\": \"violin in a barn, dark, next to a singer at 2 m\"}")).build();
        String answer = HttpClient.newHttpClient().send(question, HttpResponse.BodyHandlers.ofString()).body();
        server.app().unsafe.routes.post("/nothing", context -> {
            context.body();
            context.contentType("application/json").result(answer);
        });
        System.out.println("READY " + server.port());
        System.in.read();
        server.close();
        locker.close();
        System.exit(0);
    }
}
