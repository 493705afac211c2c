package pairwright.advice;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import pairwright.catalogue.CatalogueStore;
import pairwright.model.Catalogue;
import pairwright.rules.RuleBases;
import pairwright.search.SentenceReader;

/**
 * What is known now: what ships with the program, and a house folder laid over it. A faulty house folder changes nothing; its faults
 * are kept to be shown, and the last good set keeps serving.
 */
public final class KnowledgeStore {
    private final Path house;
    private final CatalogueStore catalogues;
    private final RuleBases rules;
    private volatile Knowledge current;
    private volatile List<String> faults = List.of();
    private long seen;

    private KnowledgeStore(Path house) {
        this.house = house;
        this.catalogues = new CatalogueStore();
        this.rules = new RuleBases(house == null ? null : house.resolve("rules"));
        this.current = knowledge(catalogues.builtIn());
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
        Path entries = house.resolve("catalogue");
        boolean own = Files.isDirectory(entries);
        if (own) {
            catalogues.reload(entries).forEach(fault -> found.add(fault.toString()));
        }
        if (!rules.reload()) {
            rules.problems().forEach(problem -> found.add(problem.toString()));
        }
        if (found.isEmpty()) {
            current = knowledge(own ? catalogues.current() : catalogues.builtIn());
        }
        faults = List.copyOf(found); // after the set is in use, so that who reads that all is well gets the new one
        return found.isEmpty();
    }

    private Knowledge knowledge(Catalogue catalogue) {
        return new Knowledge(catalogue, new SentenceReader(catalogue), rules.current());
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
