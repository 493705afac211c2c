package pairwright.lab;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import pairwright.advice.Knowledge;
import pairwright.advice.KnowledgeStore;
import pairwright.locker.Act;
import pairwright.locker.ExerciseSet;
import pairwright.locker.Locker;
import pairwright.locker.Place;
import pairwright.locker.Role;
import pairwright.locker.Span;
import pairwright.locker.UnitDraft;

/** How long it takes, in time of the processor (of this thread, so that what else runs on the machine counts little), to draw and to allot the exercises of six benches, to mark two hundred answers, and to sum them up. */
public final class LabBenchmark {
    private static final ThreadMXBean CPU = ManagementFactory.getThreadMXBean();
    private static final int TIMES = 10;
    private static final int BENCHES = 6;
    private static final int ANSWERS = 200;
    private static final int BENCHES_MARKED = 50;
    private static final int HANDS_ON_MARKED = 20;
    private static final int UNITS_MADE_OF = 1;
    /** Twenty benches of what needs two of a type, or seven types, want more than one unit of each. */
    private static final int UNITS_MARKED_OF = 6;

    private LabBenchmark() {
    }

    /** Prints the figures. */
    public static void main(String[] arguments) throws IOException {
        Knowledge now = KnowledgeStore.builtIn().current();
        now.rules().plan(true, List.of()); // here, since under the build tool only this thread knows where the rules' engine is
        with(UNITS_MADE_OF, now, (desk, locker) -> desk.kinds().forEach(kind -> made(kind, desk, locker, now)));
        with(UNITS_MARKED_OF, now, (desk, locker) -> desk.kinds().forEach(kind -> marked(kind, desk, locker)));
    }

    private interface Work {
        void at(LabDesk desk, Locker locker);
    }

    /** In a locker with so many units of every type. */
    private static void with(int units, Knowledge now, Work work) throws IOException {
        try (Locker locker = Locker.open(Place.in(Files.createTempDirectory("lab-benchmark-")), now::catalogue, Clock.systemUTC())) {
            locker.change(Act.by("Ida"), changes -> {
                now.catalogue().mics().values().forEach(type -> {
                    for (int i = 0; i < units; i++) {
                        changes.add(UnitDraft.mic(type.id() + "-" + i, type.id(), type.id() + " " + i));
                    }
                });
                return "";
            });
            System.out.println("with " + units + (units == 1 ? " unit" : " units") + " of each of " + now.catalogue().mics().size() + " types");
            work.at(new LabDesk(locker, () -> now), locker);
        }
    }

    /** Drawing is done before the locker is locked, allotting and booking within. */
    private static void made(KindInfo kind, LabDesk desk, Locker locker, Knowledge now) {
        List<Double> drawnS = new ArrayList<>();
        List<Double> allottedS = new ArrayList<>();
        List<Double> keptS = new ArrayList<>();
        double spread = 0;
        int made = 0;
        for (int i = 0; i < TIMES; i++) {
            // what another kind has booked by then would be missing here
            Instant from = locker.now().plus(Duration.ofDays(10 + desk.kinds().indexOf(kind) * TIMES + i));
            Wanted wanted = new Wanted(kind.id(), "benchmark " + i, 1 + i % KindInfo.LEVELS, BENCHES, from, from.plusSeconds(3600), null);
            long start = CPU.getCurrentThreadCpuTime();
            Candidates drawn = desk.draw(wanted);
            drawnS.add(since(start));
            start = CPU.getCurrentThreadCpuTime();
            Benches benches = new MadeSet(new Kinds().kind(kind.id()).orElseThrow(), now).benches(drawn, locker.stock(new Span(from, from.plusSeconds(3600))));
            allottedS.add(since(start));
            start = CPU.getCurrentThreadCpuTime();
            try {
                locker.change(Act.by("Ida"), changes -> desk.make(changes, drawn, "Ida").id());
                keptS.add(since(start));
                spread = Math.max(spread, Variants.spread(benches.chosen()));
                made++;
            } catch (DoesNotFit few) {
                tell(desk, few);
            }
        }
        System.out.printf(Locale.ROOT, "%s: %d benches made %d of %d times; drawn %s, allotted %s, allotted, booked and kept %s; widest spread %.3f%n", kind.id(), BENCHES, made, TIMES,
                shown(drawnS), shown(allottedS), shown(keptS), spread);
    }

    /** As they come in with a table: each bench of a set anew, looked through and marked. */
    private static void marked(KindInfo kind, LabDesk desk, Locker locker) {
        ExerciseSet set;
        try {
            set = desk.make(new Wanted(kind.id(), "benchmark", 1, kind.handsOn() ? HANDS_ON_MARKED : BENCHES_MARKED, null, null, null), "Ida");
        } catch (DoesNotFit few) {
            tell(desk, few);
            return;
        }
        Map<Integer, Answer> best = desk.key(set, Role.INSTRUCTOR).stream().collect(Collectors.toMap(BenchKey::bench, key -> key.key().best()));
        long start = CPU.getCurrentThreadCpuTime();
        int marked = 0;
        while (marked < ANSWERS) {
            marked += desk.handings(set, best, Role.INSTRUCTOR).size();
        }
        double markedS = since(start);
        List<Handing> handings = desk.handings(set, best, Role.INSTRUCTOR);
        locker.change(Act.by("Ida"), changes -> {
            handings.forEach(handing -> desk.handIn(changes, handing));
            return "";
        });
        start = CPU.getCurrentThreadCpuTime();
        desk.summary(set, Role.INSTRUCTOR);
        System.out.printf(Locale.ROOT, "%s: %d answers of %d benches marked in %.2f s; summed up in %.2f s%n", kind.id(), marked, set.benches().size(), markedS, since(start));
    }

    private static void tell(LabDesk desk, DoesNotFit few) {
        System.out.println("  " + few.getMessage() + ". Instead: " + desk.instead(few).stream().map(Fits::says).collect(Collectors.joining("; ")));
    }

    private static double since(long start) {
        return (CPU.getCurrentThreadCpuTime() - start) / 1e9;
    }

    private static String shown(List<Double> timesS) {
        double[] sorted = timesS.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        return sorted.length == 0 ? "never" : String.format(Locale.ROOT, "%.3f s (at most %.3f)", sorted[sorted.length / 2], Arrays.stream(sorted).max().orElse(0));
    }
}
