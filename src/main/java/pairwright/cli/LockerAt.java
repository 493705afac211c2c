package pairwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import pairwright.advice.Knowledge;
import pairwright.advice.KnowledgeStore;
import pairwright.locker.Act;
import pairwright.locker.Changes;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import pairwright.locker.Place;
import pairwright.model.Catalogue;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What every command that touches the locker takes: where it is kept. */
final class LockerAt {
    private static final String VARIABLE = "PAIRWRIGHT_DATABASE";
    private static final String SCHEME = "jdbc:postgresql://";
    private static final Path USUAL = Path.of("pairwright-data");

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--data", paramLabel = "DIR", description = "The folder that holds the locker and all other state. Usually pairwright-data.")
    private Path folder;

    @Option(names = "--database", paramLabel = "ADDRESS", description = {"A PostgreSQL server that keeps the locker: jdbc:postgresql://HOST/NAME?user=...",
            "Where a password is in it, put it into the variable " + VARIABLE + " instead, which no list of processes shows."})
    private String database;

    private KnowledgeStore knowledge;

    /** Whether anybody said where a locker is. */
    boolean named() {
        return folder != null || address() != null;
    }

    Path data() {
        return folder == null ? USUAL : folder;
    }

    /** Where it is, as told. */
    Place place() {
        String address = address();
        if (address == null) {
            return Place.in(data());
        }
        if (!address.startsWith(SCHEME)) {
            throw new ParameterException(spec.commandLine(), (database == null ? "the variable " + VARIABLE : "--database") + " must begin with " + SCHEME
                    + " and then name a host and a database");
        }
        if (address.replaceFirst("\\?.*", "").contains("@")) {
            throw new ParameterException(spec.commandLine(), "an address takes no name before the host. Write it behind: " + SCHEME + "HOST/NAME?user=...&password=...");
        }
        return Place.at(address);
    }

    /** How a command line names it again; a server's address may hold a secret and is not repeated. */
    String option() {
        return address() != null ? database == null ? "" : " --database with the same address" : folder == null ? "" : " --data " + folder;
    }

    private String address() {
        String said = database == null ? System.getenv(VARIABLE) : database;
        return said == null || said.isBlank() ? null : said.strip();
    }

    /** Does something with a locker that is there. */
    int with(ToIntFunction<Locker> work) {
        Place place = place();
        if (place.file() != null && !Files.exists(place.file())) {
            throw new LockerFault.NotThere("There is no locker in " + data() + " yet. Name the folder of one with --data, add a first unit with: "
                    + "pairwright locker add, or look at one that is full: pairwright demo");
        }
        return opened(work);
    }

    /** Does something with a locker that is made where it is not there. */
    int made(ToIntFunction<Locker> work) {
        try {
            Files.createDirectories(data());
        } catch (IOException refused) {
            throw new LockerFault.Unreachable("The data folder " + data().toAbsolutePath() + " cannot be made. Give another with --data");
        }
        return opened(work);
    }

    private int opened(ToIntFunction<Locker> work) {
        try (Locker locker = Locker.open(place(), this::catalogue, Clock.systemDefaultZone())) {
            return work.applyAsInt(locker);
        } finally {
            spec.commandLine().getOut().flush();
        }
    }

    /** What the locker's mic types are of, with the house folder of the data folder. Read only where it is needed: that takes longer than all else. */
    Catalogue catalogue() {
        return knowledge().catalogue();
    }

    /** All that is known, read likewise. */
    Knowledge knowledge() {
        if (knowledge == null) {
            Path house = data().resolve("house");
            knowledge = Files.isDirectory(house) ? KnowledgeStore.withHouse(house) : KnowledgeStore.builtIn();
        }
        return knowledge.current();
    }

    /** Writes a text where it is wanted, and says so; to standard output where that is nowhere. */
    void write(Path file, String text, String says) {
        if (file == null) {
            spec.commandLine().getOut().print(text);
            return;
        }
        try {
            Files.writeString(file, text);
        } catch (IOException refused) {
            throw new LockerFault.Unreachable("The file " + file + " cannot be written. Name one in a folder that is there");
        }
        say(says + file + ".");
    }

    /** Does something in one transaction and prints what is to be said of it. */
    void change(Locker locker, Function<Changes, String> work) {
        say(locker.change(Act.by(who()), work).text());
    }

    void say(String words) {
        AnswerText.wrapped("", "", words, AnswerText.WIDTH).forEach(spec.commandLine().getOut()::println);
    }

    /** Whoever sits at the terminal. */
    static String who() {
        String user = System.getProperty("user.name");
        return user == null || user.isBlank() || user.equals("?") ? "the command line" : user;
    }
}
