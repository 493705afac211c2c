package pairwright.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.MethodNotAllowedResponse;
import io.javalin.json.JavalinJackson;
import io.micrometer.core.instrument.Timer;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.http.UriCompliance;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import pairwright.advice.AtHand;
import pairwright.advice.CoverageDesk;
import pairwright.advice.HouseMemory;
import pairwright.advice.KnowledgeStore;
import pairwright.advice.UnusableQuestion;
import pairwright.catalogue.Json;
import pairwright.catalogue.Shown;
import pairwright.lab.KeysShut;
import pairwright.lab.LabDesk;
import pairwright.lab.OutOfDate;
import pairwright.locker.Locker;
import pairwright.rules.HouseRuleStopped;
import pairwright.session.HouseMarks;
import pairwright.session.PlanDesk;
import pairwright.session.Planner;
import pairwright.session.PurchaseDesk;
import pairwright.session.allocation.NoSolver;
import pairwright.session.allocation.NotDecided;
import pairwright.sheet.Assets;
import pairwright.sheet.Html;

/** The HTTP server. Listens where it is told and nowhere else; stops without cutting a request short. */
public final class Server implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Server.class);
    private static final String MISTAKE = "The program made a mistake; the log of the server says more. Nothing was changed";
    private static final long PLAN_LATER_S = 600;
    private static final int LARGEST_HEADER_BYTES = 8 * 1024;

    private final Javalin app;
    private final CoverageDesk coverage;
    private final PlanDesk plans;
    private final PurchaseDesk purchases;
    private final ListenWork listening;
    private final ServerConnector[] connector = new ServerConnector[1];

    /**
     * How long the server waits for others.
     *
     * @param idleMs for the next byte of a request or of its answer's reader
     * @param bodyMs for a whole body, so that one that drips in cannot hold a thread for ever
     * @param stopMs for requests that run when the server is told to stop, and a fifth of it for a client that falls silent meanwhile
     */
    record Patience(int idleMs, int bodyMs, int stopMs) {
        static final Patience USUAL = new Patience(15_000, 10_000, 5_000);
    }

    private Server(KnowledgeStore knowledge, Locker locker, Listen listen, Patience patience, Uploads.Limits uploads) {
        ObjectMapper json = Json.mapper();
        PrometheusMeterRegistry metrics = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
        Assets assets = new Assets();
        Html html = new Html(assets, locker != null);
        Faults faults = new Faults(json, html);
        Access access = new Access(listen, secret -> locker == null ? Optional.empty() : locker.tokens().of(secret), Clock.systemUTC());
        AtHand atHand = locker == null ? AtHand.EVERYTHING : new LockerAtHand(locker, Clock.systemDefaultZone());
        coverage = new CoverageDesk(knowledge::current);
        HouseMemory memory = locker == null ? HouseMemory.NOTHING : new HouseMarks(locker.marks());
        Planner planner = new Planner(knowledge::current, memory);
        plans = PlanDesk.of(knowledge::current, () -> locker == null ? 0 : locker.marks().revision(), planner);
        purchases = new PurchaseDesk(knowledge::current, memory);
        listening = new ListenWork(knowledge::current, new Uploads(uploads), patience.bodyMs());
        app = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.startup.showOldJavalinVersionWarning = false;
            config.http.defaultContentType = "application/json";
            config.http.prefer405over404 = true;
            config.router.javaLangErrorHandler((response, broken) -> mistake(response, json, broken));
            config.jsonMapper(new JavalinJackson(json, false));
            jetty(config, faults, listen, patience);
            problems(config, faults);
            LockerFaults.handle(config.routes, faults);
            timed(config, metrics);
            access.guard(config.routes);
            new Routes(knowledge, atHand, json, metrics, patience.bodyMs()).add(config.routes);
            new PageRoutes(knowledge, atHand, assets, html).add(config.routes);
            new SessionPlanRoutes(locker, knowledge::current, planner, json, patience.bodyMs()).add(config.routes);
            new ListenRoutes(listening, json).add(config.routes);
            new ListenPageRoutes(listening, knowledge::current, html).add(config.routes);
            new LabPracticeRoutes(knowledge::current, json, patience.bodyMs()).add(config.routes);
            if (locker != null) {
                new LabRoutes(locker, knowledge::current, json, patience.bodyMs()).add(config.routes);
                new LockerRoutes(locker, knowledge::current, json, patience.bodyMs()).add(config.routes);
                LockerPageRoutes pages = new LockerPageRoutes(locker, knowledge::current, html, patience.bodyMs());
                pages.add(config.routes);
                // before the pages of a session, which would take its address for an id
                new PurchaseRoutes(locker, new SessionStore(locker, knowledge::current, json), purchases, json, pages).add(config.routes);
                new SessionPageRoutes(pages, new SessionTexts(json)).add(config.routes);
                new CoverageRoutes(locker, coverage, json, pages).add(config.routes);
                new SessionRoutes(locker, knowledge::current, json, patience.bodyMs()).add(config.routes);
                new SessionPlanPageRoutes(pages, locker, knowledge::current, plans, json).add(config.routes);
                new LabClassPageRoutes(pages, new LabDesk(locker, knowledge::current)).add(config.routes);
            }
        });
    }

    /**
     * Starts a server.
     *
     * @param knowledge what it answers from
     * @param locker what there is and what of it is free; null for none
     * @param listen where it listens
     * @throws NoToken when others could reach it and there is no token to tell them apart
     * @throws RuntimeException when the port is taken or the address is not this machine's
     */
    public static Server start(KnowledgeStore knowledge, Locker locker, Listen listen) {
        return start(knowledge, locker, listen, Patience.USUAL);
    }

    /** Listens at an address and goes by no other name. */
    public static Server start(KnowledgeStore knowledge, Locker locker, String host, int port) {
        return start(knowledge, locker, new Listen(host, port), Patience.USUAL);
    }

    /** The same without a locker. */
    public static Server start(KnowledgeStore knowledge, String host, int port) {
        return start(knowledge, null, host, port);
    }

    static Server start(KnowledgeStore knowledge, String host, int port, Patience patience) {
        return start(knowledge, null, new Listen(host, port), patience);
    }

    static Server start(KnowledgeStore knowledge, Locker locker, Listen listen, Patience patience) {
        return start(knowledge, locker, listen, patience, Uploads.Limits.USUAL);
    }

    static Server start(KnowledgeStore knowledge, Locker locker, Listen listen, Patience patience, Uploads.Limits uploads) {
        if (!listen.open() && (locker == null || locker.tokens().all().isEmpty())) {
            throw new NoToken(listen);
        }
        Server server = new Server(knowledge, locker, listen, patience, uploads);
        server.app.start();
        return server;
    }

    /** What routes are added to beside its own, by a benchmark that compares them. */
    Javalin app() {
        return app;
    }

    /** Where recordings lie while they are measured. */
    Path uploads() {
        return listening.folder();
    }

    /** Every address that is answered, as in {@code GET /api/rooms/{id}}. */
    Set<String> addresses() {
        return app.unsafe.internalRouter.allHttpHandlers().stream().map(one -> one.endpoint).filter(one -> one.method.isHttpMethod())
                .map(one -> one.method.name() + " " + one.path).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The port it listens on. */
    public int port() {
        return connector[0].getLocalPort();
    }

    /** Takes no more requests, finishes those that run, and stops. Who falls silent meanwhile is not waited for long. */
    @Override
    public void close() {
        app.stop();
        coverage.close();
        plans.close();
        purchases.close();
        listening.close();
    }

    private void jetty(JavalinConfig config, Faults faults, Listen listen, Patience patience) {
        config.jetty.addConnector((server, http) -> {
            ServerConnector made = new ServerConnector(server, 1, 1, new HttpConnectionFactory(http));
            made.setHost(listen.address().getHostAddress());
            made.setPort(listen.port());
            made.setIdleTimeout(patience.idleMs());
            made.setShutdownIdleTimeout(patience.stopMs() / 5);
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
            server.setStopTimeout(patience.stopMs());
            server.setErrorHandler(new ProblemErrorHandler(faults));
        });
    }

    private static void problems(JavalinConfig config, Faults faults) {
        config.routes.exception(BadRequest.class, (bad, context) -> faults.send(context, bad.problem()));
        config.routes.exception(UnusableQuestion.class, (bad, context) -> faults.send(context, Problem.of(400, bad.faults())));
        // an answer is usually given without that rule; this is for one that could not be, and by now the rule is put aside
        config.routes.exception(HouseRuleStopped.class, (stopped, context) -> faults.send(context, Problem.of(503,
                "House rules failed on this question and were put aside: " + String.join(", ", stopped.ids()) + ". Ask again")));
        config.routes.exception(KeysShut.class, (shut, context) -> faults.send(context, Problem.of(403, shut.getMessage())));
        config.routes.exception(OutOfDate.class, (old, context) -> faults.send(context, Problem.of(422, old.getMessage())));
        config.routes.exception(NoSolver.class, (missing, context) -> later(context, faults, PLAN_LATER_S, missing));
        config.routes.exception(NotDecided.class, (open, context) -> later(context, faults, PLAN_LATER_S, open));
        config.routes.exception(SessionTurns.Later.class, (busy, context) -> later(context, faults, busy.retryAfterS(), busy));
        config.routes.exception(MethodNotAllowedResponse.class, (bad, context) -> {
            context.header("Allow", bad.getDetails().getOrDefault("availableMethods", "GET"));
            faults.send(context, Problem.of(405, context.method() + " is not taken at " + Shown.of(context.path())
                    + ". The addresses and their methods are listed in /openapi.yaml"));
        });
        config.routes.exception(HttpResponseException.class,
                (bad, context) -> faults.send(context, Problem.of(bad.getStatus(), plain(bad.getStatus(), context))));
        config.routes.exception(Exception.class, (broken, context) -> {
            // what Jetty finds wrong with a request while a route reads it, such as a query that is no UTF-8
            if (broken instanceof HttpException bad && bad.getCode() < 500) {
                faults.send(context, Problem.of(bad.getCode(), plain(bad.getCode(), context)));
                return;
            }
            LOG.error("request failed: {} {}", context.method(), context.path(), broken);
            faults.send(context, Problem.of(500, MISTAKE));
        });
    }

    /** The same for what is no exception, such as a stack that ran over, and of which a route hears nothing. */
    private static void mistake(HttpServletResponse response, ObjectMapper json, Error broken) {
        LOG.error("request failed", broken);
        response.setStatus(500);
        response.setContentType(Problem.MEDIA_TYPE);
        try {
            response.getOutputStream().write(Routes.write(json, Problem.of(500, MISTAKE)).getBytes(StandardCharsets.UTF_8));
        } catch (IOException gone) {
            LOG.debug("nobody is there to be told", gone);
        }
    }

    private static String plain(int status, Context context) {
        return switch (status) {
            case 400 -> "The address is not well-formed. Write blanks and other special characters as %20 and so on, in UTF-8";
            case 404 -> "There is nothing at " + Shown.of(context.path()) + (Faults.wantsPage(context.header("Accept"), context.path())
                    ? ". Ask, or look in the catalogue" : ". The addresses are listed in /openapi.yaml");
            default -> "The request cannot be taken (status " + status + ")";
        };
    }

    /** What cannot be had here, or not in the time there is. */
    private static void later(Context context, Faults faults, long retryAfterS, RuntimeException why) {
        context.header("Retry-After", Long.toString(retryAfterS));
        faults.send(context, Problem.of(503, why.getMessage()));
    }

    private static void timed(JavalinConfig config, PrometheusMeterRegistry metrics) {
        config.routes.before(context -> context.attribute("started", System.nanoTime()));
        config.routes.after(context -> {
            context.header("X-Content-Type-Options", "nosniff");
            context.res().addHeader("Vary", "Accept-Encoding");
            if (context.res().getHeader("Cache-Control") == null) {
                context.header("Cache-Control", "no-cache");
            }
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
