package pairwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import pairwright.advice.KnowledgeStore;
import pairwright.http.Server;
import picocli.CommandLine.Command;
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
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class Serve implements Callable<Integer> {
    private static final int LOOK_AGAIN_S = 2;

    @Spec
    private CommandSpec spec;

    @Option(names = "--host", paramLabel = "ADDRESS", defaultValue = "127.0.0.1",
            description = "The address to listen on. Only this machine unless said otherwise: ${DEFAULT-VALUE}.")
    private String host;

    @Option(names = "--port", paramLabel = "PORT", defaultValue = "7070", description = "The port; 0 for a free one. Usually ${DEFAULT-VALUE}.")
    private int port;

    @Option(names = "--data", paramLabel = "DIR", defaultValue = "pairwright-data",
            description = "Holds all state. A folder house/ in it, with catalogue/ and rules/ of your own, is laid over the built-in ones.")
    private Path data;

    @Override
    public Integer call() throws Exception {
        if (port < 0 || port > 65_535) {
            throw new ParameterException(spec.commandLine(), "--port must be 0 to 65535, but was " + port);
        }
        try {
            Files.createDirectories(data);
        } catch (IOException refused) {
            spec.commandLine().getErr().println("pairwright: the data folder " + data.toAbsolutePath()
                    + " cannot be made. Give another with --data");
            return 1;
        }
        KnowledgeStore knowledge = KnowledgeStore.withHouse(data.resolve("house"));
        knowledge.faults().forEach(fault -> spec.commandLine().getErr().println(fault));
        Server server;
        try {
            server = Server.start(knowledge, host, port);
        } catch (RuntimeException refused) {
            spec.commandLine().getErr().println("pairwright: cannot listen on " + host + ":" + port
                    + ". Maybe another program has that port: give another with --port, or 0 for a free one");
            return 1;
        }
        ScheduledExecutorService watch = watch(knowledge);
        CountDownLatch stopped = new CountDownLatch(1);
        Thread stop = new Thread(() -> {
            watch.shutdownNow();
            server.close();
            stopped.countDown();
        }, "stop");
        Runtime.getRuntime().addShutdownHook(stop);
        spec.commandLine().getOut().println("Pairwright is ready at http://" + host + ":" + server.port());
        spec.commandLine().getOut().flush();
        stopped.await();
        return 0;
    }

    /** Looks every other second whether the house folder changed. */
    private static ScheduledExecutorService watch(KnowledgeStore knowledge) {
        ScheduledExecutorService watch = Executors.newSingleThreadScheduledExecutor(task -> {
            Thread thread = new Thread(task, "house-folder");
            thread.setDaemon(true);
            return thread;
        });
        watch.scheduleWithFixedDelay(knowledge::reloadIfChanged, LOOK_AGAIN_S, LOOK_AGAIN_S, TimeUnit.SECONDS);
        return watch;
    }
}
