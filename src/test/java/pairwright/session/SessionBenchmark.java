package pairwright.session;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import pairwright.advice.HouseMemory;
import pairwright.advice.KnowledgeStore;
import pairwright.locker.PhantomSwitch;
import pairwright.model.Limits;
import pairwright.model.MicType;
import pairwright.model.Stock;

/**
 * How long a whole session takes to plan and to plan again, from a line-up to plans that say everything, phase by phase. Not a test: machines differ. Run it with
 * {@code mvn -q test-compile exec:java@session-benchmark}; the argument is how often each is measured, 7 unless given.
 */
public final class SessionBenchmark {
    private static final List<String> WHO = List.of("singing-voice", "violin", "tenor-saxophone", "double-bass", "cajon", "nylon-guitar", "trumpet", "drum-kit", "clarinet", "cello",
            "accordion", "trombone", "steel-string-guitar", "flute", "upright-piano", "congas", "viola", "alto-saxophone", "mandolin", "backing-voices", "banjo", "clean-guitar-amplifier",
            "bass-amplifier", "harp");
    private static final double ROOM_EACH_M = 2.4;
    /** In a smaller session there is no screen and nobody is to stay together. */
    private static final int LAST_TOGETHER = 17;
    private static final double PRICE_POINTS = 5;
    private static final KnowledgeStore KNOWLEDGE = KnowledgeStore.builtIn();

    private final LineUp lineUp;
    private final Gear gear;
    private final int times;

    private SessionBenchmark(int seats, int ofEachType, int times) {
        this.lineUp = lineUp(seats);
        this.gear = gear(ofEachType);
        this.times = times;
    }

    /** Prints the figures. */
    public static void main(String[] arguments) {
        KNOWLEDGE.current().rules().plan(true, List.of()); // here, since under the build tool only this thread knows where the rules' engine is
        int times = arguments.length == 0 ? 7 : Integer.parseInt(arguments[0]);
        new SessionBenchmark(24, 3, times).measure();
        new SessionBenchmark(60, 10, times).measure();
    }

    /** Milliseconds that a plan takes which nobody asked for before, the middle of a few. */
    public static double planMs(int seats, int ofEachType, int times) {
        SessionBenchmark bench = new SessionBenchmark(seats, ofEachType, times);
        double[] ms = new double[times];
        for (int i = -1; i < times; i++) {
            long start = System.nanoTime();
            planner().plan(bench.lineUp, bench.gear, progress -> { });
            ms[Math.max(i, 0)] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(ms);
        return ms[times / 2];
    }

    private void measure() {
        System.out.printf(Locale.ROOT, "%d sources, %d units of %d types%n", lineUp.seats().size(), gear.stock().units().size(), KNOWLEDGE.current().catalogue().mics().size());
        Phases first = new Phases();
        Plan plan = first.of(progress -> planner().plan(lineUp, gear, progress)).plans().get(0);
        first.print("the first since the program started, or of this size");
        Phases anew = new Phases();
        for (int i = 0; i < times; i++) {
            anew.of(progress -> planner().plan(lineUp, gear, progress));
        }
        anew.print("a plan that nobody asked for before");
        Planner planner = planner();
        planner.plan(lineUp, gear, step -> { });
        Phases warm = new Phases();
        for (int i = 0; i < times; i++) {
            warm.of(progress -> planner.plan(lineUp, gear, progress));
        }
        warm.print("a plan of what was judged before");
        LineUp timed = new LineUp(lineUp.name(), lineUp.floor(), lineUp.seats(), lineUp.gobos(), lineUp.contrast(), lineUp.keep(), null, null, lineUp.plans(), new SetUpTime(240, 2));
        again(planner, plan, "again without a microphone", seat -> new Lost(List.of(plan.linesOf(seat).get(0).unit().id()), null, null));
        again(planner, plan, "again without a channel", seat -> new Lost(null, List.of(plan.linesOf(seat).get(0).channel()), null));
        again(planner, plan, "again without a seat", seat -> new Lost(null, null, List.of(seat)));
        again(planner, timed, plan, "again with an hour less", seat -> new Lost(null, null, null, 60));
        again(planner, timed, plan, "again with an hour less, without a microphone", seat -> new Lost(List.of(plan.linesOf(seat).get(0).unit().id()), null, null, 60));
    }

    private interface Loss {
        Lost of(String seat);
    }

    private void again(Planner planner, Plan plan, String name, Loss loss) {
        again(planner, lineUp, plan, name, loss);
    }

    private void again(Planner planner, LineUp lineUp, Plan plan, String name, Loss loss) {
        Phases again = new Phases();
        for (int i = -times; i < times; i++) {
            Lost lost = loss.of(lineUp.seats().get((i + times) % lineUp.seats().size()).id());
            Phases counted = i < 0 ? new Phases() : again;
            counted.of(progress -> planner.again(lineUp, gear, Picks.of(plan), lost, PRICE_POINTS, progress));
        }
        again.print(name);
    }

    private static Planner planner() {
        return new Planner(KNOWLEDGE::current, HouseMemory.NOTHING);
    }

    /** In rows; every third of them with a limit of one microphone, every fourth to be told from the one before. */
    private static LineUp lineUp(int seats) {
        int columns = (int) Math.ceil(Math.sqrt(seats));
        int rows = (seats + columns - 1) / columns;
        List<Seat> all = new ArrayList<>();
        List<List<String>> apart = new ArrayList<>();
        for (int i = 0; i < seats; i++) {
            String id = "seat-" + (i + 1);
            all.add(new Seat(id, null, WHO.get(i % WHO.size()), (i % columns + 0.5) * ROOM_EACH_M, (i / columns + 0.5) * ROOM_EACH_M, i * 47 % 360, null, null, null, null,
                    new Limits(i % 3 == 0 ? 1 : 2, null, null, null, null, null, null, null), i % 4 != 3, null, false));
            if (i % 4 == 1) {
                apart.add(List.of("seat-" + i, id));
            }
        }
        boolean large = seats >= LAST_TOGETHER;
        List<Gobo> gobos = large ? List.of(new Gobo("screen", 2, 2.4, 5, 2.4, 1.5)) : List.of();
        List<List<String>> together = large ? List.of(List.of("seat-10", "seat-" + LAST_TOGETHER)) : List.of();
        return new LineUp("Benchmark", new Floor(null, columns * ROOM_EACH_M, rows * ROOM_EACH_M, 5, 0.8), all, gobos, apart, together, null, null, 3);
    }

    /** So many units of every type, the first two of them matched; channels and stands enough for one and a half for each seat of it. */
    private static Gear gear(int ofEachType) {
        List<Stock.Held> units = new ArrayList<>();
        for (MicType type : KNOWLEDGE.current().catalogue().mics().values()) {
            for (int i = 1; i <= ofEachType; i++) {
                String id = type.id() + "-" + i;
                units.add(new Stock.Held(id, type.id(), type.name() + " " + i, null, null, null, i == 1 ? type.id() + "-2" : i == 2 ? type.id() + "-1" : null, null, null));
            }
        }
        List<Gear.Channel> channels = new ArrayList<>();
        List<Gear.Stand> stands = new ArrayList<>();
        for (int i = 0; i < ofEachType * 12; i++) {
            int bank = i / 8;
            channels.add(new Gear.Channel("channel-" + (i + 1), "Channel " + (i + 1), "Rack " + (bank + 1), bank % 2 == 0 ? PhantomSwitch.CHANNEL : PhantomSwitch.BANK,
                    null, bank % 3 == 0 ? 72.0 : 60.0, 2400.0, -127.0, bank % 2 == 0 ? null : Double.valueOf(60)));
            stands.add(new Gear.Stand("stand-" + (i + 1), "Stand " + (i + 1), StandKind.values()[i % 4 == 0 ? 0 : i % 8 == 1 ? 3 : 2], i % 8 == 1 ? 9.0 : 4.0, i % 4 == 0 ? 0.4 : 0.9, 0.35, 3,
                    i % 4 == 0 ? 0.7 : i % 8 == 1 ? 3.0 : 2.1));
        }
        return new Gear(new Stock(true, units), channels, stands, List.of(new Gear.Booster("booster", "Booster", 25, 4, false)), null);
    }

    /** What is told of progress, and how long after. */
    private static final class Phases {
        private static final Pattern SEATS = Pattern.compile("Looking for a better seat.*");
        private final Map<String, List<Times>> byPhase = new LinkedHashMap<>();
        private final List<Times> whole = new ArrayList<>();

        private interface Work<T> {
            T with(Consumer<Progress> progress);
        }

        <T> T of(Work<T> work) {
            Map<String, Times> begun = new LinkedHashMap<>();
            Times start = Times.now();
            T made = work.with(progress -> {
                synchronized (begun) {
                    begun.putIfAbsent(SEATS.matcher(progress.doing()).replaceFirst("Looking for better seats"), Times.now());
                }
            });
            Times end = Times.now();
            whole.add(end.minus(start));
            List<Map.Entry<String, Times>> all = new ArrayList<>(begun.entrySet());
            for (int i = 0; i < all.size(); i++) {
                Times until = i + 1 < all.size() ? all.get(i + 1).getValue() : end;
                byPhase.computeIfAbsent(all.get(i).getKey(), any -> new ArrayList<>()).add(until.minus(all.get(i).getValue()));
            }
            return made;
        }

        void print(String name) {
            System.out.printf(Locale.ROOT, "  %-50s %s%n", name, middle(whole));
            byPhase.forEach((phase, times) -> System.out.printf(Locale.ROOT, "    %-48s %s, %2.0f %%%n", phase, middle(times), 100.0 * clockNs(times) / clockNs(whole)));
        }

        private static long clockNs(List<Times> times) {
            return times.stream().mapToLong(Times::clockNs).sum();
        }

        private static String middle(List<Times> times) {
            List<Long> clock = times.stream().map(Times::clockNs).sorted().toList();
            List<Long> processor = times.stream().map(Times::processorNs).sorted().toList();
            return String.format(Locale.ROOT, "%6.0f ms (worst %6.0f, processors %6.0f)", clock.get(clock.size() / 2) / 1e6, clock.get(clock.size() - 1) / 1e6,
                    processor.get(processor.size() / 2) / 1e6);
        }
    }

    /** On the clock, and of all processors that worked for this program. */
    private record Times(long clockNs, long processorNs) {
        static Times now() {
            return new Times(System.nanoTime(), ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime());
        }

        Times minus(Times before) {
            return new Times(clockNs - before.clockNs, processorNs - before.processorNs);
        }
    }
}
