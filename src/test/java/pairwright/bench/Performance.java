package pairwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import pairwright.rules.RulesBenchmark;

/**
 * Measures everything that is promised of speed and memory and writes docs/performance.md. Not a test: machines differ. Run it with
 * {@code mvn -q -DskipTests package exec:exec@performance}, and {@code -Dperformance=full} for the long form.
 */
public final class Performance {
    private static final String HEAP = "-Xmx96m";
    private static final double LEAST_RATIO = 0.3;
    private static final double MOST_TAIL = 6;
    private static final double LINEAR = 1.1;
    private static final double MOST_GROWTH = 1.05;

    private static final List<String> PARTS = List.of("parts", "load", "start", "growth", "memory", "work");
    /** Of logging, and what to do instead where a locker has too few units: none of it a figure. */
    private static final Pattern NO_FIGURE = Pattern.compile("SLF4J.*|.*\\. Instead: .*");

    private final boolean full;
    private final StringBuilder page = new StringBuilder();
    private final List<String> goals = new ArrayList<>();

    private Performance(boolean full) {
        this.full = full;
    }

    /** {@code quick} or {@code full}; after it the parts that are wanted, all where none is named. */
    public static void main(String[] arguments) throws Exception {
        boolean full = arguments.length > 0 && arguments[0].equals("full");
        new Performance(full).write(Path.of("docs", "performance.md"), arguments.length > 1 ? List.of(arguments).subList(1, arguments.length) : PARTS);
        System.exit(0);
    }

    private interface Part {
        void measure() throws Exception;
    }

    private void write(Path file, List<String> wanted) throws IOException {
        Map<String, Part> parts = new LinkedHashMap<>();
        parts.put("parts", this::parts);
        parts.put("load", this::load);
        parts.put("start", this::start);
        parts.put("growth", this::growth);
        parts.put("memory", this::memory);
        parts.put("work", this::work);
        for (Map.Entry<String, Part> part : parts.entrySet()) {
            if (wanted.contains(part.getKey())) {
                System.out.println("measuring: " + part.getKey());
                try {
                    part.getValue().measure();
                } catch (Exception broken) {
                    line("Not measured: " + broken.getMessage());
                    goal(part.getKey(), "not measured", false);
                }
            }
        }
        Files.writeString(file, head() + page);
        System.out.println("written: " + file);
    }

    private String head() {
        return String.format(Locale.ROOT, """
                # How fast it is

                Generated; do not edit. Measured on %s in the %s form, on %d processors with %.0f GB of memory, Java %s (%s), %s. Other programs may have been running. Times differ from
                machine to machine and from day to day; ratios were taken in one run and differ less.

                To measure again, with `wrk` installed: `mvn -q -DskipTests package exec:exec@performance`, which takes some minutes; with `-Dperformance=full` it takes hours and asks
                500,000 questions. What is counted and does not depend on the machine (memory made, facts, firings, statements, bytes) is held by `AskCostTest` and `RequestCostTest` at every build.
                Where the time of an ask goes: `mvn -q test-compile exec:java@ask-profile`.

                ## Goals

                | goal | measured | |
                |---|---|---|
                %s
                """, LocalDate.now(), full ? "full" : "quick", Runtime.getRuntime().availableProcessors(),
                ((com.sun.management.OperatingSystemMXBean) java.lang.management.ManagementFactory.getOperatingSystemMXBean()).getTotalMemorySize() / 1e9,
                System.getProperty("java.version"), System.getProperty("java.vm.name"), System.getProperty("os.name"), String.join("\n", goals));
    }

    private void goal(String goal, String measured, boolean reached) {
        goals.add("| " + goal + " | " + measured + " | " + (reached ? "reached" : "**not reached**") + " |");
    }

    private void line(String text, Object... values) {
        page.append(String.format(Locale.ROOT, text, values)).append('\n');
    }

    private void heading(String text) {
        page.append("\n## ").append(text).append("\n\n");
    }

    private void parts() throws Exception {
        Map<String, Double> us = new LinkedHashMap<>();
        for (RunResult result : new Runner(new OptionsBuilder().include(RulesBenchmark.class.getName()).forks(1).warmupIterations(full ? 5 : 2).measurementIterations(full ? 10 : 3)
                .warmupTime(TimeValue.seconds(2)).measurementTime(TimeValue.seconds(full ? 3 : 1)).jvmArgsAppend("-Xmx1g").build()).run()) {
            us.put(result.getPrimaryResult().getLabel(), result.getPrimaryResult().getScore());
        }
        heading("Parts of an ask");
        line("Each call another question, one thread, warm (JMH).%n");
        line("| part | µs | share of an ask |%n|---|--:|--:|");
        Map<String, String> names = new LinkedHashMap<>();
        names.put("ask", "the whole ask");
        names.put("search", "the sentence is read");
        names.put("predicted", "the sentence is read, placements are listed and predicted");
        names.put("loop", "all rules that score asked of all placements, conditions and consequences in a plain loop");
        names.put("judged", "the same, findings in order: as an ask has it done");
        names.put("engine", "the same by the rule engine");
        names.forEach((key, name) -> line("| %s | %.0f | %.2f |", name, us.get(key), us.get(key) / us.get("ask")));
        line("%nThe engine takes %.1f times the plain loop; what an ask uses takes %.2f times.", us.get("engine") / us.get("loop"), us.get("judged") / us.get("loop"));
    }

    private void load() throws Exception {
        Children.Said said;
        try (Children.Served server = new Children.Served(null)) {
            said = Children.run(List.of("bash", "src/test/load/load.sh", String.valueOf(server.port), full ? "20" : "5", full ? "5" : "2"));
        }
        if (said.exit() != 0) {
            throw new IOException(said.end());
        }
        heading("Over HTTP");
        line("`POST /api/ask`, every question another, against an address of the same server that reads the body and sends as many bytes; by turns, by `wrk` on the same machine, so that"
                + " client and server share its processors. Middle of %d rounds.%n", full ? 5 : 2);
        line("| clients | what | requests/s | to nothing | p50 ms | p99 ms | p99 / p50 | failed |%n|--:|---|--:|--:|--:|--:|--:|--:|");
        for (String clients : List.of("1", "32")) {
            double[] nothing = middle(said, clients, "nothing");
            double[] ask = middle(said, clients, "ask");
            row(clients, "nothing", nothing, nothing);
            row(clients, "ask, 200 draws: what is done where a question does not say", ask, nothing);
            row(clients, "ask, no draws: what a page does first", middle(said, clients, "undrawn"), nothing);
            goal("requests/s of an ask to those of nothing, " + clients + " at once: 0.3 or more", String.format(Locale.ROOT, "%.4f", ask[0] / nothing[0]), ask[0] / nothing[0] >= LEAST_RATIO);
            goal("p99 of an ask under 6 times its p50, " + clients + " at once", String.format(Locale.ROOT, "%.1f", ask[2] / ask[1]), ask[2] < MOST_TAIL * ask[1] && ask[3] == 0);
        }
    }

    private void row(String clients, String what, double[] one, double[] nothing) {
        line("| %s | %s | %.1f | %.4f | %.2f | %.2f | %.1f | %.0f |", clients, what, one[0], one[0] / nothing[0], one[1], one[2], one[2] / one[1], one[3]);
    }

    private static double[] middle(Children.Said said, String clients, String address) {
        List<double[]> rounds = said.all(clients + " " + address).stream().map(words -> Arrays.stream(words).mapToDouble(Double::parseDouble).toArray()).toList();
        double[] middle = new double[4];
        for (int i = 0; i < middle.length; i++) {
            int which = i;
            double[] sorted = rounds.stream().mapToDouble(round -> round[which]).sorted().toArray();
            middle[i] = i == 3 ? Arrays.stream(sorted).sum() : sorted[sorted.length / 2];
        }
        return middle;
    }

    private void start() throws Exception {
        Start start = new Start(Path.of("target", "pairwright.jar"), full ? 9 : 3);
        double hello = start.hello();
        double ask = start.ask();
        double serve = start.serve();
        heading("Start");
        line("Seconds of processor time of a program begun cold, the middle of %d.%n", full ? 9 : 3);
        line("| program | s | to a program that only says hello |%n|---|--:|--:|%n| hello | %.2f | 1 |%n| `ask` | %.2f | %.1f |%n| `serve` until its first answer of status 200 | %.2f | %.1f |",
                hello, ask, ask / hello, serve, serve / hello);
        goal("`ask` under 1 s of processor time", String.format(Locale.ROOT, "%.2f s", ask), ask < 1);
        goal("`serve` ready under 1.5 s of processor time", String.format(Locale.ROOT, "%.2f s", serve), serve < 1.5);
    }

    private void growth() {
        List<Growth.Grown> all = new Growth(full).measured();
        heading("Growth");
        line("Milliseconds of an ask where there is as much of something; of a plan in the last line. The exponent is fitted by least squares through the logarithms of all four sizes, the last one%n"
                + "from the last two alone, where what is the same at every size counts least. At most linear is held to be an exponent of up to %.1f in both.%n", LINEAR);
        line("| what | 1 | 3 | 10 | 30 | exponent | last |%n|---|--:|--:|--:|--:|--:|--:|");
        for (Growth.Grown one : all) {
            line("| %s | %.2f | %.2f | %.2f | %.2f | %.2f | %.2f |", one.what(), one.ms()[0], one.ms()[1], one.ms()[2], one.ms()[3], one.exponent(), one.lastExponent());
            if (one.ofAnAsk()) {
                goal("an ask grows at most linearly with: " + one.what(), String.format(Locale.ROOT, "%.2f, last %.2f", one.exponent(), one.lastExponent()),
                        one.exponent() <= LINEAR && one.lastExponent() <= LINEAR);
            }
        }
    }

    private void memory() throws Exception {
        heading("Memory");
        SmallHeap.Worked worked = new SmallHeap().work(HEAP, full ? 20_000 : 2_000);
        line("A server with %s and the locker of the demo: %d requests, of them every address that is read without a name three times, the rest questions, eight at once, every fiftieth with 200 draws."
                + " %s%n", HEAP, worked.requests(), worked.faults().isEmpty() ? "All were answered." : "Faults: " + worked.faults().stream().distinct().limit(5).toList());
        goal("all of `serve` within " + HEAP, worked.faults().isEmpty() ? "all answered" : worked.faults().size() + " faults", worked.faults().isEmpty());
        line("MB alive after a collection, with %s:%n", HEAP);
        line("| what | at each tenth, from 0 | last to second | took s |%n|---|---|--:|--:|");
        run((full ? "500,000" : "10,000 (not the 500,000 of the full form)") + " questions in a row", "questions", full ? 500_000 : 10_000);
        run((full ? "200" : "20 (not the 200 of the full form)") + " readings of a house folder", "reload", full ? 200 : 20);
    }

    private void run(String what, String kind, int times) throws Exception {
        Children.Said said = Children.run(Children.java(HEAP, "pairwright.bench.LongRun", kind, String.valueOf(times), "docs/house-example"));
        if (said.exit() != 0) {
            goal(what + " without growth", "ended: " + said.end(), false);
            return;
        }
        List<String> mb = said.all("SAMPLE").stream().map(words -> words[1]).toList();
        double growth = Double.parseDouble(mb.get(mb.size() - 1)) / Double.parseDouble(mb.get(1));
        line("| %s | %s | %.3f | %s |", what, String.join(", ", mb), growth, said.all("TOOK").get(0)[0]);
        goal(what + " without growth (under 5 %% after the first tenth)".replace("%%", "%"), String.format(Locale.ROOT, "%.3f times", growth), growth < MOST_GROWTH);
    }

    /** What takes longer than an ask; each of these has a command of its own, see DEVELOPERS.md. */
    private void work() throws Exception {
        heading("Plans, exercises and recordings");
        line("As each of their own commands prints it.");
        work("A session planned and planned again, phase by phase", "pairwright.session.SessionBenchmark", full ? "7" : "3");
        work("Exercises drawn, allotted and marked", "pairwright.lab.LabBenchmark");
        work("Recordings measured", "pairwright.listen.ListenBenchmark", full ? "60" : "15");
    }

    private void work(String what, String main, String... arguments) throws Exception {
        Children.Said said = Children.run(Children.java(null, main, arguments));
        line("%n%s:%n%n```", what);
        said.lines().stream().filter(one -> !NO_FIGURE.matcher(one).matches()).forEach(one -> page.append(one.replace("```", "")).append('\n'));
        line("```");
        if (said.exit() != 0) {
            goal(what, "ended with " + said.exit(), false);
        }
    }
}
