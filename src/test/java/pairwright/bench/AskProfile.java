package pairwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import jdk.jfr.Recording;
import jdk.jfr.consumer.RecordedEvent;
import jdk.jfr.consumer.RecordedFrame;
import jdk.jfr.consumer.RecordingFile;
import pairwright.advice.Advisor;
import pairwright.advice.KnowledgeStore;
import pairwright.model.Request;

/**
 * Where the time and the memory of an ask go, from samples of the JDK's own recorder. A sample counts for the innermost class of ours (what our code was doing,
 * whichever library it did it with) and for every class of ours on the way (what that step costs in all).
 * Run it with {@code mvn -q test-compile exec:java@ask-profile}; with the name of a recording as argument that one is read instead.
 */
public final class AskProfile {
    private static final int WARM_UP = 3_000;
    private static final int COUNTED = 6_000;
    private static final int SHOWN = 18;

    private AskProfile() {
    }

    /** Prints the shares. */
    public static void main(String[] arguments) throws Exception {
        if (arguments.length > 0) {
            print(Path.of(arguments[0]));
            return;
        }
        Path file = Files.createTempFile("ask", ".jfr");
        try {
            record(file);
            print(file);
        } finally {
            Files.deleteIfExists(file);
        }
    }

    private static void record(Path file) throws Exception {
        KnowledgeStore knowledge = KnowledgeStore.builtIn();
        Advisor advisor = new Advisor(knowledge::current);
        for (int i = 0; i < WARM_UP; i++) {
            advisor.ask(Request.of(DifferentQuestions.of(i)));
        }
        try (Recording recording = new Recording()) {
            recording.enable("jdk.ExecutionSample").withPeriod(Duration.ofMillis(10));
            recording.enable("jdk.ObjectAllocationSample").with("throttle", "2000/s");
            recording.start();
            long start = System.nanoTime();
            for (int i = 0; i < COUNTED; i++) {
                advisor.ask(Request.of(DifferentQuestions.of(WARM_UP + i)));
            }
            System.out.printf(Locale.ROOT, "%d different questions, %.2f ms each%n", COUNTED, (System.nanoTime() - start) / 1e6 / COUNTED);
            recording.stop();
            recording.dump(file);
        }
    }

    private static void print(Path file) throws IOException {
        Shares time = new Shares();
        Shares memory = new Shares();
        try (RecordingFile events = new RecordingFile(file)) {
            while (events.hasMoreEvents()) {
                RecordedEvent event = events.readEvent();
                switch (event.getEventType().getName()) {
                    case "jdk.ExecutionSample" -> time.add(event, 1, null);
                    case "jdk.ObjectAllocationSample" -> memory.add(event, event.getLong("weight"), event.getClass("objectClass").getName());
                    default -> { }
                }
            }
        }
        time.print("time");
        memory.print("memory");
    }

    /** What samples add up to, seen four ways. */
    private static final class Shares {
        private final Map<String, Double> whole = new HashMap<>();
        private final Map<String, Double> innermost = new HashMap<>();
        private final Map<String, Double> top = new HashMap<>();
        private final Map<String, Double> kinds = new HashMap<>();
        private double all;

        void add(RecordedEvent event, double weight, String kind) {
            if (event.getStackTrace() == null) {
                return;
            }
            all += weight;
            List<String> ours = new ArrayList<>();
            List<RecordedFrame> frames = event.getStackTrace().getFrames();
            for (RecordedFrame frame : frames) {
                String name = name(frame);
                if (name.startsWith("pairwright.") && !name.contains(".bench.") && !ours.contains(name)) {
                    ours.add(name);
                }
            }
            ours.forEach(name -> whole.merge(name, weight, Double::sum));
            innermost.merge(ours.isEmpty() ? "none of ours" : ours.get(0), weight, Double::sum);
            top.merge(name(frames.get(0)), weight, Double::sum);
            if (kind != null) {
                kinds.merge(kind, weight, Double::sum);
            }
        }

        private static String name(RecordedFrame frame) {
            return frame.getMethod().getType().getName().replaceAll("\\$\\$Lambda.*|0x[0-9a-f]+|/.*", "") + "." + frame.getMethod().getName();
        }

        void print(String what) {
            print(what + ", each method of ours with all it calls", whole);
            print(what + ", by the innermost method of ours", innermost);
            print(what + ", by the method itself", top);
            print(what + ", by what was made", kinds);
        }

        private void print(String title, Map<String, Double> shares) {
            if (shares.isEmpty()) {
                return;
            }
            System.out.println();
            System.out.println(title);
            shares.entrySet().stream().sorted(Map.Entry.<String, Double>comparingByValue().reversed()).limit(SHOWN)
                    .forEach(one -> System.out.printf(Locale.ROOT, "%6.1f %%  %s%n", 100 * one.getValue() / all, one.getKey()));
        }
    }
}
