package pairwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import pairwright.advice.KnowledgeStore;
import pairwright.http.SessionExample;
import pairwright.locker.DemoLocker;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import pairwright.locker.Place;
import pairwright.model.Catalogue;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A full locker to look at. */
@Command(
        name = "demo",
        description = "Fills the locker of an invented barn studio, with bookings around today, to look at and to ask.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class Demo implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--data", paramLabel = "DIR", defaultValue = "pairwright-demo", description = "The folder it is put in. Usually ${DEFAULT-VALUE}.")
    private Path data;

    @Override
    public Integer call() throws IOException {
        Files.createDirectories(data);
        Catalogue catalogue = KnowledgeStore.builtIn().current().catalogue();
        PrintWriter out = spec.commandLine().getOut();
        try (Locker locker = Locker.open(Place.in(data), () -> catalogue, Clock.systemDefaultZone())) {
            out.println(DemoLocker.fill(locker, catalogue, LocalDate.now(), ZoneId.systemDefault()) + " Try:");
        } catch (LockerFault refused) {
            spec.commandLine().getErr().println("pairwright: " + refused.getMessage());
            return 1;
        }
        out.println("  pairwright locker out --data " + data);
        out.println("  pairwright ask \"upright bass, warm\" --data " + data);
        Path sextet = data.resolve(SessionExample.NAME);
        if (!Files.exists(sextet)) {
            Files.writeString(sextet, SessionExample.yaml());
        }
        out.println("  pairwright plan " + sextet + " --data " + data);
        out.println("  pairwright serve --data " + data);
        out.flush();
        return 0;
    }
}
