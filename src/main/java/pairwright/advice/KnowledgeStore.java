package pairwright.advice;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import pairwright.catalogue.CatalogueReader;
import pairwright.catalogue.CatalogueStore;
import pairwright.model.Catalogue;
import pairwright.model.Mount;
import pairwright.model.Neighbour;
import pairwright.model.Request;
import pairwright.model.Room;
import pairwright.model.Signal;
import pairwright.model.Source;
import pairwright.rules.HouseRuleStopped;
import pairwright.rules.RuleBase;
import pairwright.rules.RuleBases;
import pairwright.rules.RuleInfo;
import pairwright.search.SentenceReader;

/**
 * What is known now: what ships with the program, and a house folder laid over it. A faulty house folder changes nothing; its faults
 * are kept to be shown, and the last good set keeps serving. A house rule that fails on a question is put aside until the folder changes.
 */
public final class KnowledgeStore {
    /** A stamp no folder has. */
    private static final long CHANGED = Long.MIN_VALUE;
    /** A folder that changes all the time is read at last, and read again when it changed meanwhile, but not for ever. */
    private static final int MOST_LOOKS = 10;
    private static final int MOST_READINGS = 3;
    private static final int MOST_TRIALS = 100;

    private final HouseFolder house;
    private final CatalogueStore catalogues = new CatalogueStore();
    private final RuleBases rules = new RuleBases();
    private final AtomicReference<Status> status;
    private long seen = CHANGED;
    private long changing = CHANGED;
    private int looks;

    /**
     * All that is told of one moment.
     *
     * @param knowledge in use
     * @param house how the house folder is
     */
    public record Status(Knowledge knowledge, HouseState house) {
    }

    private KnowledgeStore(Path house) {
        this.house = house == null ? null : new HouseFolder(house);
        boolean toRead = this.house != null && this.house.isThere();
        this.status = new AtomicReference<>(new Status(knowledge(catalogues.builtIn(), rules.builtIn()),
                new HouseState(toRead ? HouseState.State.LOADING : HouseState.State.NONE, 0, 0, List.of())));
        if (this.house != null && !toRead) {
            seen = this.house.stamp();
        }
    }

    /** Only what ships with the program. */
    public static KnowledgeStore builtIn() {
        return new KnowledgeStore(null);
    }

    /** What ships with the program without its rules, which are null: for who only looks whether something is well put, and is not to wait for them. */
    public static Knowledge unjudging() {
        return knowledge(new CatalogueStore().builtIn(), null);
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

    /** The same, but the house folder is not read until {@link #reloadIfChanged()}: meanwhile what ships with the program answers. */
    public static KnowledgeStore beforeHouse(Path house) {
        return new KnowledgeStore(house);
    }

    /** The knowledge of this moment. */
    public Knowledge current() {
        return status.get().knowledge();
    }

    /** The knowledge of this moment, and how the house folder is. */
    public Status status() {
        return status.get();
    }

    /** What is wrong with the house folder as it is now; empty for nothing. */
    public List<String> faults() {
        return status.get().house().faults();
    }

    /** The same as they stand in the folder, for those who need not know where on this machine it lies. */
    public List<String> faultsInside() {
        return faults().stream().map(fault -> house.inside(fault)).toList();
    }

    /** The version of the program. */
    public String programVersion() {
        String version = KnowledgeStore.class.getPackage().getImplementationVersion();
        return version == null ? "development" : version;
    }

    /**
     * Reads the house folder again if any file in it changed since the last time, and then came to rest: what is being written is looked at when it
     * is the same at two looks. The first time it is read at once.
     */
    public synchronized void reloadIfChanged() {
        if (house == null) {
            return;
        }
        long stamp = house.stamp();
        if (stamp == seen) {
            looks = 0;
            changing = CHANGED;
            return;
        }
        boolean first = status.get().house().state() == HouseState.State.LOADING;
        if (!first && stamp != changing && looks < MOST_LOOKS) {
            changing = stamp;
            looks++;
            return;
        }
        reload();
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
        looks = 0;
        changing = CHANGED;
        for (int i = 0; i < MOST_READINGS; i++) {
            seen = house.stamp();
            Read read = read();
            if (house.stamp() == seen || i == MOST_READINGS - 1) { // else it was written to while it was read: half old, half new
                take(read);
                return read.faults.isEmpty();
            }
        }
        throw new IllegalStateException("not reached");
    }

    /** What came of reading: sound knowledge or faults. */
    private record Read(Knowledge knowledge, int entries, List<String> faults) {
    }

    private Read read() {
        if (!house.isThere()) {
            return status.get().house().state() == HouseState.State.NONE
                    ? new Read(current(), 0, List.of())
                    : new Read(null, 0, house.faults());
        }
        List<String> found = new ArrayList<>(house.faults());
        if (!found.isEmpty()) {
            return new Read(null, 0, found);
        }
        try {
            CatalogueReader.Result entries = catalogues.with(house.catalogue());
            RuleBases.Result judging = rules.with(house.rules(), this::stopped);
            entries.faults().forEach(fault -> found.add(fault.toString()));
            judging.problems().forEach(problem -> found.add(problem.toString()));
            if (found.isEmpty()) {
                Knowledge both = knowledge(entries.catalogue(), judging.rules());
                found.addAll(tryOut(both));
                return new Read(both, entries.files(), List.copyOf(found));
            }
        } catch (RuntimeException | LinkageError | StackOverflowError broken) {
            seen = CHANGED; // a file that went away while it was read: look again next time
            found.add(house.catalogue().getParent() + ": cannot be read just now: " + broken.getMessage() + ". It is read again at the next look");
        }
        return new Read(null, 0, List.copyOf(found));
    }

    /** Takes what is sound as a whole; of what is not, only the faults. */
    private void take(Read read) {
        if (!read.faults.isEmpty()) {
            status.updateAndGet(before -> new Status(before.knowledge(),
                    new HouseState(HouseState.State.FAULTS, before.house().entries(), before.house().rules(), read.faults)));
            return;
        }
        int own = (int) read.knowledge.rules().rules().stream().filter(KnowledgeStore::isOfTheHouse).count();
        status.set(new Status(read.knowledge, new HouseState(house.isThere() ? HouseState.State.IN_USE : HouseState.State.NONE,
                read.entries, own, List.of())));
    }

    private static boolean isOfTheHouse(RuleInfo rule) {
        return rule.concern().equals(RuleBases.HOUSE);
    }

    /** A house rule failed on a question: from now on the rest answers. Other questions may have found the same at this moment. */
    private void stopped(HouseRuleStopped stopped) {
        status.updateAndGet(before -> {
            if (before.knowledge().rules() != stopped.base()) {
                return before;
            }
            Set<String> faults = new LinkedHashSet<>(before.house().faults());
            stopped.problems().forEach(problem -> faults.add(problem + ". The rule is left out until the house folder changes"));
            return new Status(before.knowledge().with(stopped.without()),
                    new HouseState(HouseState.State.FAULTS, before.house().entries(), before.house().rules() - stopped.problems().size(),
                            List.copyOf(faults)));
        });
    }

    /**
     * Rules that compile may still trip over a number that is not there for a lead or in the open air. A source of each kind of signal,
     * with a contact or a lead among its places, indoors and out, with and without a neighbour, and every source of the house shows it before anybody asks.
     */
    private List<String> tryOut(Knowledge knowledge) {
        List<String> found = new ArrayList<>();
        AtomicReference<Knowledge> left = new AtomicReference<>(knowledge); // less each rule that failed, so that all are found
        Catalogue catalogue = knowledge.catalogue();
        for (Request request : trials(catalogue)) {
            try {
                boolean again = true;
                while (again) {
                    try {
                        new Advisor(left::get).ask(request);
                        again = false;
                    } catch (HouseRuleStopped stopped) {
                        stopped.problems().forEach(problem -> found.add(problem.toString()));
                        left.set(knowledge.with(stopped.without()));
                    }
                }
            } catch (RuntimeException tripped) {
                found.add(house.catalogue().getParent() + ": a question about " + request.source() + " cannot be answered with what is there: "
                        + tripped.getMessage() + ". Look at what was written last");
                return found;
            }
        }
        return found;
    }

    private List<Request> trials(Catalogue catalogue) {
        String outdoors = catalogue.rooms().values().stream().filter(Room::outdoors).map(Room::id).findFirst().orElse(null);
        List<Request> trials = new ArrayList<>();
        for (Signal signal : Signal.values()) {
            catalogue.sources().values().stream().filter(one -> one.signal() == signal)
                    .max(Comparator.comparing(KnowledgeStore::isWiredToo).thenComparing(one -> one.positions().size())).ifPresent(source -> {
                        trials.add(trial(source, null, List.of()));
                        trials.add(trial(source, outdoors, List.of(new Neighbour(source.id(), 1, 90))));
                    });
        }
        catalogue.sources().values().stream().filter(source -> source != catalogues.builtIn().sources().get(source.id())).limit(MOST_TRIALS)
                .forEach(source -> trials.add(trial(source, null, List.of())));
        return trials;
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
}
