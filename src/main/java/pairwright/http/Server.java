package pairwright.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.json.JavalinJackson;
import io.micrometer.core.instrument.Timer;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.Duration;
import org.eclipse.jetty.http.UriCompliance;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import pairwright.advice.KnowledgeStore;
import pairwright.advice.UnusableQuestion;
import pairwright.catalogue.Json;

/** The HTTP server. Listens where it is told and nowhere else; stops without cutting a request short. */
public final class Server implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Server.class);
    private static final long LARGEST_BODY_BYTES = 64 * 1024;
    private static final int LARGEST_HEADER_BYTES = 8 * 1024;
    private static final int IDLE_MS = 15_000;
    private static final int STOP_MS = 5_000;

    private final Javalin app;
    private final ServerConnector[] connector = new ServerConnector[1];

    private Server(KnowledgeStore knowledge, String host, int port) {
        ObjectMapper json = Json.mapper();
        PrometheusMeterRegistry metrics = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
        app = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.http.maxRequestSize = LARGEST_BODY_BYTES;
            config.http.defaultContentType = "application/json";
            config.jsonMapper(new JavalinJackson(json, false));
            jetty(config, json, host, port);
            problems(config, json);
            timed(config, metrics);
            new Routes(knowledge, json, metrics).add(config.routes);
        });
    }

    /**
     * Starts a server.
     *
     * @param knowledge what it answers from
     * @param host the address to listen on
     * @param port the port; 0 for a free one
     * @throws RuntimeException when the port is taken or the address is not this machine's
     */
    public static Server start(KnowledgeStore knowledge, String host, int port) {
        Server server = new Server(knowledge, host, port);
        server.app.start();
        return server;
    }

    /** The port it listens on. */
    public int port() {
        return connector[0].getLocalPort();
    }

    /** Takes no more requests, finishes those that run, and stops. */
    @Override
    public void close() {
        app.stop();
    }

    private void jetty(JavalinConfig config, ObjectMapper json, String host, int port) {
        config.jetty.addConnector((server, http) -> {
            ServerConnector made = new ServerConnector(server, 1, 1, new HttpConnectionFactory(http));
            made.setHost(host);
            made.setPort(port);
            made.setIdleTimeout(IDLE_MS);
            connector[0] = made;
            return made;
        });
        config.jetty.modifyHttpConfiguration(http -> {
            http.setUriCompliance(UriCompliance.DEFAULT);
            http.setRequestHeaderSize(LARGEST_HEADER_BYTES);
            http.setSendServerVersion(false);
        });
        config.jetty.modifyServer(server -> {
            server.insertHandler(new GracefulHandler());
            server.setStopTimeout(STOP_MS);
            server.setErrorHandler(new ProblemErrorHandler(json));
        });
    }

    private static void problems(JavalinConfig config, ObjectMapper json) {
        config.routes.exception(BadRequest.class, (bad, context) -> send(context, json, bad.problem()));
        config.routes.exception(UnusableQuestion.class,
                (bad, context) -> send(context, json, Problem.of(400, bad.getMessage(), bad.faults())));
        config.routes.exception(HttpResponseException.class, (bad, context) -> send(context, json, Problem.of(bad.getStatus(), plain(bad, context))));
        config.routes.exception(Exception.class, (broken, context) -> {
            LOG.error("request failed: {} {}", context.method(), context.path(), broken);
            send(context, json, Problem.of(500, "The program made a mistake; the log of the server says more. Nothing was changed"));
        });
    }

    private static String plain(HttpResponseException bad, Context context) {
        return switch (bad.getStatus()) {
            case 404 -> "There is nothing at " + context.path() + ". The addresses are listed in /openapi.yaml";
            case 405 -> context.method() + " is not taken at " + context.path() + ". See /openapi.yaml";
            case 413 -> "The body is larger than " + LARGEST_BODY_BYTES + " bytes. Ask one question at a time";
            default -> "The request cannot be taken (status " + bad.getStatus() + ")";
        };
    }

    private static void send(Context context, ObjectMapper json, Problem problem) {
        context.status(problem.status());
        context.result(Routes.write(json, problem));
        context.contentType(Problem.MEDIA_TYPE);
    }

    private static void timed(JavalinConfig config, PrometheusMeterRegistry metrics) {
        config.routes.before(context -> context.attribute("started", System.nanoTime()));
        config.routes.after(context -> {
            context.header("X-Content-Type-Options", "nosniff");
            context.header("Cache-Control", "no-cache");
            Long started = context.attribute("started");
            if (started != null) {
                var endpoint = context.endpoints().lastHttpEndpoint();
                Timer.builder("pairwright_request").tag("path", endpoint == null ? "none" : endpoint.path)
                        .tag("status", Integer.toString(context.statusCode())).register(metrics)
                        .record(Duration.ofNanos(System.nanoTime() - started));
            }
        });
    }
}
