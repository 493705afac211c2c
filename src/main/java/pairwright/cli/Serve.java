package pairwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Pattern;
import pairwright.advice.KnowledgeStore;
import pairwright.http.Listen;
import pairwright.http.NoToken;
import pairwright.http.Server;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import pairwright.locker.Place;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The HTTP service. */
@Command(
        name = "serve",
        description = "Answers questions over HTTP until it is told to stop.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "A folder house/ in the data folder is the house folder, unless --house names another.",
            "Where others can reach it, everybody needs a token: pairwright token add NAME --role reader"})
final class Serve implements Callable<Integer> {
    private static final int LOOK_AGAIN_S = 1;
    private static final Pattern NAME = Pattern.compile("[\\p{Alnum}._-]+(:\\d+)?|\\[[\\p{XDigit}:.]+](:\\d+)?");

    @Spec
    private CommandSpec spec;

    @Option(names = "--host", paramLabel = "ADDRESS", defaultValue = "127.0.0.1",
            description = "The address to listen on. Only this machine unless said otherwise: ${DEFAULT-VALUE}.")
    private String host;

    @Option(names = "--port", paramLabel = "PORT", defaultValue = "7070", description = "The port; 0 for a free one. Usually ${DEFAULT-VALUE}.")
    private int port;

    @Option(names = "--allow-host", paramLabel = "NAME", description = "A name the server goes by beside its address, such as that of a proxy before it. May be given again.")
    private List<String> names = List.of();

    @Option(names = "--require-tokens", description = "Everybody needs a token, on this machine as well: for a server behind a proxy.")
    private boolean requireTokens;

    @Mixin
    private LockerAt at;

    @Mixin
    private House house;

    @Override
    public Integer call() throws Exception {
        if (port < 0 || port > 65_535) {
            throw new ParameterException(spec.commandLine(), "--port must be 0 to 65535, but was " + port);
        }
        names.forEach(this::checkName);
        Place place = at.place();
        Path data = at.data();
        try {
            Files.createDirectories(data);
        } catch (IOException refused) {
            return refused("the data folder " + data.toAbsolutePath() + " cannot be made. Give another with --data");
        }
        Path houseFolder = house.or(data.resolve("house"));
        CompletableFuture<KnowledgeStore> known = new CompletableFuture<>();
        CompletableFuture<Locker> opening = CompletableFuture.supplyAsync(() -> Locker.open(place, () -> known.join().current().catalogue(), Clock.systemDefaultZone()));
        KnowledgeStore knowledge = KnowledgeStore.beforeHouse(houseFolder);
        known.complete(knowledge);
        Locker locker;
        try {
            locker = opening.join();
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof LockerFault fault) {
                return refused(fault.getMessage());
            }
            throw failed;
        }
        Server server;
        try {
            server = Server.start(knowledge, locker, new Listen(host, port, names, requireTokens));
        } catch (NoToken alone) {
            locker.close();
            return refused(alone.getMessage() + ". Make one first: pairwright token add NAME --role engineer" + at.option());
        } catch (RuntimeException refused) {
            locker.close();
            return refused("cannot listen on " + host + ":" + port
                    + ". Maybe another program has that port: give another with --port, or 0 for a free one."
                    + " Maybe the address is not one of this machine's: leave --host out");
        }
        ScheduledExecutorService watch = watch(knowledge, spec.commandLine().getErr());
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            watch.shutdownNow();
            stop(server, locker);
        }, "stop"));
        spec.commandLine().getOut().println("Pairwright is ready at http://" + (host.contains(":") ? "[" + host + "]" : host) + ":"
                + server.port());
        spec.commandLine().getOut().flush();
        new CountDownLatch(1).await(); // only a signal ends it, and then the hook does
        return 0;
    }

    private void checkName(String name) {
        if (!NAME.matcher(name).matches()) {
            throw new ParameterException(spec.commandLine(), "--allow-host takes a name such as locker.example or an address, but was \"" + name + "\"");
        }
    }

    private int refused(String says) {
        spec.commandLine().getErr().println("pairwright: " + says);
        return 1;
    }

    /** Ends the program itself, because after a signal the machine would report the signal and not that all went well. */
    private static void stop(Server server, Locker locker) {
        int exit = 0;
        try {
            server.close();
        } catch (RuntimeException cut) {
            System.err.println("pairwright: a request was still running and was cut short");
            exit = 1;
        }
        locker.close();
        Runtime.getRuntime().halt(exit);
    }

    /** Reads the house folder, and then looks every second whether it changed. */
    private static ScheduledExecutorService watch(KnowledgeStore knowledge, PrintWriter err) {
        ScheduledExecutorService watch = Executors.newSingleThreadScheduledExecutor(task -> {
            Thread thread = new Thread(task, "house-folder");
            thread.setDaemon(true);
            return thread;
        });
        AtomicReference<List<String>> said = new AtomicReference<>(List.of());
        watch.scheduleWithFixedDelay(() -> look(knowledge, said, err), 0, LOOK_AGAIN_S, TimeUnit.SECONDS);
        return watch;
    }

    private static void look(KnowledgeStore knowledge, AtomicReference<List<String>> said, PrintWriter err) {
        try {
            knowledge.reloadIfChanged();
            List<String> now = knowledge.faults(); // may have come from a question as well
            if (!now.equals(said.getAndSet(now))) {
                now.forEach(err::println);
                err.println(now.isEmpty() ? "The house folder is in use again." : "The last good set keeps answering.");
                err.flush();
            }
        } catch (RuntimeException inBetween) {
            // a file went away while it was read; the next look finds what is there then, which an exception here would prevent
            err.println("pairwright: the house folder could not be read just now, and is read again in " + LOOK_AGAIN_S + " s");
            err.flush();
        }
    }
}
