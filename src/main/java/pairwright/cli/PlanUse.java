package pairwright.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import pairwright.advice.AtHand;
import pairwright.advice.HouseMemory;
import pairwright.advice.Knowledge;
import pairwright.advice.KnowledgeStore;
import pairwright.catalogue.FileFault;
import pairwright.catalogue.YamlFile;
import pairwright.http.SessionBody;
import pairwright.http.SessionGear;
import pairwright.http.SessionRequest;
import pairwright.model.Fault;
import pairwright.session.Gear;
import pairwright.session.HouseMarks;
import pairwright.session.Planner;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What the commands that plan a session share: the file, the locker, the time, and what is said of faults. */
final class PlanUse {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The line-up, as YAML or JSON; docs/session.md says what stands in it.")
    private Path file;

    @Option(names = "--no-locker", description = "Plan with every type of the catalogue; units, channels and stands are not counted.")
    private boolean noLocker;

    @Mixin
    private Times times;

    @Mixin
    private LockerAt at;

    @Mixin
    private House house;

    @Mixin
    private PlanPrinted printed;

    private YamlFile yaml;

    /** What a command does with what was read. */
    interface Work {
        int with(SessionRequest request, Gear gear, Planner planner, Knowledge known);
    }

    /** How what was planned is printed. */
    PlanPrinted printed() {
        return printed;
    }

    /** What is planned in words, for who reads it here. */
    static PlanText text(SessionRequest request, Knowledge known) {
        return new PlanText(request, known, Colour.wanted());
    }

    /** Told how far a plan is. */
    PlanProgress progress() {
        return new PlanProgress(err());
    }

    /** What was said of an option that cannot be. */
    ParameterException fault(String says) {
        return new ParameterException(spec.commandLine(), says);
    }

    /** What is known, with the house folder that was named; else with that of the data folder. */
    private KnowledgeStore knowledge() {
        return house.knowledge();
    }

    /**
     * Reads the line-up and does something with it.
     *
     * @param altered puts into the file what the command line says beside
     * @param read reads it
     * @param elsewhere the file a fault is in that is not of the line-up; null for those that are
     * @return the exit code
     */
    int with(Function<ObjectNode, ObjectNode> altered, BiFunction<JsonNode, Knowledge, SessionBody.Read> read, Function<Fault, String> elsewhere, boolean checkOnly, Work work) {
        if (noLocker && at.option().contains("--data")) {
            throw fault("--data and --no-locker go against each other. Leave one of them out");
        }
        if (times.start() != null && times.end() != null) {
            times.span(AtHand.USUAL_LENGTH); // says where the end is not after the start
        }
        KnowledgeStore store = checkOnly ? null : knowledge();
        Knowledge known = checkOnly ? house.toCheckWith() : store.current();
        JsonNode root = root();
        if (root == null) {
            return Main.UNUSABLE;
        }
        SessionBody.Read body = read.apply(altered.apply(timed((ObjectNode) root)), known);
        if (!body.faults().isEmpty()) {
            body.faults().forEach(fault -> err().println(AnswerText.harmless(told(fault, elsewhere))));
            err().println("pairwright: " + (body.faults().size() == 1 ? "a fault was" : body.faults().size() + " faults were") + " found. Mend "
                    + (body.faults().size() == 1 ? "it" : "them") + " and try again");
            return Main.UNUSABLE;
        }
        if (checkOnly) {
            spec.commandLine().getOut().println("No fault found.");
            return 0;
        }
        SessionRequest request = body.request();
        if (noLocker || request.gear() != null || !at.named()) {
            return work.with(request, SessionGear.of(request, null), new Planner(store::current, HouseMemory.NOTHING), known);
        }
        return at.with(locker -> work.with(request, SessionGear.of(request, locker), new Planner(store::current, new HouseMarks(locker.marks())), known));
    }

    private String told(Fault fault, Function<Fault, String> elsewhere) {
        String other = elsewhere.apply(fault);
        return other != null ? other + ": " + fault.at() + ": " + fault.says()
                : (fault.says().startsWith("there is no field") ? yaml.faultAtName(fault.at(), fault.says()) : yaml.fault(fault.at(), fault.says())).toString();
    }

    /** The tree of a file; null, and said why, where it is none. */
    private JsonNode root() {
        yaml = tree(file);
        return yaml == null ? null : yaml.root();
    }

    /** A file that holds an object; null where it holds none, which is said. */
    YamlFile tree(Path path) {
        List<FileFault> faults = new ArrayList<>();
        YamlFile read = YamlFile.read(path, faults).orElse(null);
        if (read != null && !read.root().isObject()) {
            faults.add(read.fault("", "there is no line-up here. Begin with fields such as room and lineUp"));
        }
        faults.forEach(fault -> err().println(AnswerText.harmless(fault.toString())));
        return faults.isEmpty() ? read : null;
    }

    /** A time on the command line wins over that of the file, and one that leaves the file's locker out does as well. */
    private ObjectNode timed(ObjectNode root) {
        put(root, "from", times.start());
        put(root, "until", times.end());
        if (noLocker) {
            root.put("locker", "any");
            root.remove("bookings");
        }
        return root;
    }

    private static void put(ObjectNode root, String name, OffsetDateTime time) {
        if (time != null) {
            root.put(name, DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time));
        }
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
