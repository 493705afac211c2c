package pairwright.advice;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import pairwright.catalogue.CatalogueReader;
import pairwright.catalogue.CatalogueStore;
import pairwright.model.Catalogue;
import pairwright.model.Mount;
import pairwright.model.Neighbour;
import pairwright.model.Request;
import pairwright.model.Room;
import pairwright.model.Signal;
import pairwright.model.Source;
import pairwright.rules.RuleBase;
import pairwright.rules.RuleBases;
import pairwright.search.SentenceReader;

/**
 * What is known now: what ships with the program, and a house folder laid over it. A faulty house folder changes nothing; its faults
 * are kept to be shown, and the last good set keeps serving.
 */
public final class KnowledgeStore {
    /** A stamp no folder has. */
    private static final long CHANGED = Long.MIN_VALUE;

    private final Path house;
    private final CatalogueStore catalogues = new CatalogueStore();
    private final RuleBases rules = new RuleBases();
    private volatile Knowledge current = knowledge(catalogues.builtIn(), rules.builtIn());
    private volatile List<String> faults = List.of();
    private long seen;

    private KnowledgeStore(Path house) {
        this.house = house;
    }

    /** Only what ships with the program. */
    public static KnowledgeStore builtIn() {
        return new KnowledgeStore(null);
    }

    /**
     * What ships with the program, and a house folder over it.
     *
     * @param house a folder with catalogue/ and rules/ of its own, either of which may be missing
     */
    public static KnowledgeStore withHouse(Path house) {
        KnowledgeStore store = new KnowledgeStore(house);
        store.reload();
        return store;
    }

    /** The knowledge of this moment. */
    public Knowledge current() {
        return current;
    }

    /** What is wrong with the house folder as it is now; empty for nothing. */
    public List<String> faults() {
        return faults;
    }

    /** The version of the program. */
    public String programVersion() {
        String version = KnowledgeStore.class.getPackage().getImplementationVersion();
        return version == null ? "development" : version;
    }

    /** Reads the house folder again if any file in it changed since the last time. */
    public synchronized void reloadIfChanged() {
        if (house != null && stamp() != seen) {
            reload();
        }
    }

    /**
     * Reads the house folder again.
     *
     * @return whether what is there is now in use
     */
    public synchronized boolean reload() {
        if (house == null) {
            return true;
        }
        seen = stamp();
        List<String> found = new ArrayList<>();
        try {
            CatalogueReader.Result entries = catalogues.with(house.resolve("catalogue"));
            RuleBases.Result judging = rules.with(house.resolve("rules"));
            entries.faults().forEach(fault -> found.add(fault.toString()));
            judging.problems().forEach(problem -> found.add(problem.toString()));
            if (found.isEmpty()) {
                Knowledge both = knowledge(entries.catalogue(), judging.rules());
                found.addAll(tryOut(both));
                current = found.isEmpty() ? both : current;
            }
        } catch (RuntimeException broken) {
            seen = CHANGED; // a file that went away while it was read: look again next time
            found.add(house + ": cannot be read just now: " + broken.getMessage() + ". It is read again at the next look");
        }
        faults = List.copyOf(found); // after the set is in use, so that who reads that all is well gets the new one
        return found.isEmpty();
    }

    /**
     * Rules that compile may still trip over a number that is not there for a lead or in the open air, and that would end every question.
     * A source of each kind of signal, with a contact or a lead among its places, indoors and out, with and without a neighbour, shows it
     * before anybody asks.
     */
    private List<String> tryOut(Knowledge knowledge) {
        Advisor advisor = new Advisor(() -> knowledge);
        Catalogue catalogue = knowledge.catalogue();
        String outdoors = catalogue.rooms().values().stream().filter(Room::outdoors).map(Room::id).findFirst().orElse(null);
        try {
            for (Signal signal : Signal.values()) {
                Source source = catalogue.sources().values().stream().filter(one -> one.signal() == signal)
                        .max(Comparator.comparing(KnowledgeStore::isWiredToo).thenComparing(one -> one.positions().size())).orElse(null);
                if (source != null) {
                    advisor.ask(trial(source, null, List.of()));
                    advisor.ask(trial(source, outdoors, List.of(new Neighbour(source.id(), 1, 90))));
                }
            }
            return List.of();
        } catch (RuntimeException tripped) {
            return List.of(house + ": no question can be answered with what is there: " + tripped.getMessage()
                    + ". Maybe a rule reads a number that does not always apply: ask first whether it is there, as in predicted.headroomDb != null");
        }
    }

    /** A contact or a lead has no sound pressure: numbers that are there for every place in the air are missing there. */
    private static boolean isWiredToo(Source source) {
        return source.positions().stream().anyMatch(position -> position.mount() == Mount.CONTACT || position.mount() == Mount.LEAD);
    }

    private static Request trial(Source source, String room, List<Neighbour> neighbours) {
        return new Request(null, source.id(), null, null, room, null, null, neighbours, null, null, null, null, null, null);
    }

    private static Knowledge knowledge(Catalogue catalogue, RuleBase rules) {
        return new Knowledge(catalogue, new SentenceReader(catalogue), rules);
    }

    /** Changes when any file is added, removed or written. */
    private long stamp() {
        try (Stream<Path> files = Files.walk(house)) {
            return files.filter(Files::isRegularFile).sorted()
                    .mapToLong(file -> file.hashCode() * 31L + file.toFile().lastModified() + file.toFile().length())
                    .reduce(17, (hash, one) -> hash * 31 + one);
        } catch (IOException | UncheckedIOException gone) {
            return -1;
        }
    }
}
