package pairwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import pairwright.advice.Advisor;
import pairwright.advice.AtHand;
import pairwright.advice.HouseMemory;
import pairwright.advice.KnowledgeStore;
import pairwright.locker.Act;
import pairwright.locker.DocumentDraft;
import pairwright.locker.Locker;
import pairwright.locker.MarkDraft;
import pairwright.locker.Place;
import pairwright.model.Position;
import pairwright.model.Request;
import pairwright.model.Source;
import pairwright.session.HouseMarks;

/**
 * How much more an answer takes in a house that remembers 5,000 marks than in one that remembers nothing, asked by turns, so that both have the same
 * machine. Not a test: machines differ. Run it with {@code mvn -q test-compile exec:java@memory-benchmark}.
 */
public final class MemoryBenchmark {
    private static final int SESSIONS = 500;
    private static final int MARKS_EACH = 10;
    private static final int WARM_UP = 60;
    private static final int COUNTED = 300;
    private static final List<String> MICS = List.of("small-condenser-cardioid", "large-condenser-cardioid", "long-ribbon", "handheld-moving-coil", "compact-ribbon");
    private static final List<String> ROOMS = List.of("barn", "church", "small-room", "medium-live-room");
    private static final List<String> PLAYERS = List.of("Ines", "Bram", "Wren", "Mirre", "Oluchi");

    private MemoryBenchmark() {
    }

    /** Prints the figures. */
    public static void main(String[] arguments) throws IOException {
        KnowledgeStore knowledge = KnowledgeStore.builtIn();
        List<String> ten = List.of("violin", "double-bass", "trumpet", "drum-kit", "nylon-guitar", "tenor-saxophone", "singing-voice", "cello", "flute", "accordion");
        compare("5,000 marks of ten sources", knowledge, ten, new String[] {null, "barn"}, new String[] {null, "Wren"});
        compare("5,000 marks of one source", knowledge, List.of("double-bass"), new String[] {null, "barn"}, new String[] {null, "Wren"});
    }

    private static void compare(String name, KnowledgeStore knowledge, List<String> sources, String[] rooms, String[] players) throws IOException {
        Path folder = Files.createTempDirectory("memory-benchmark");
        try (Locker locker = Locker.open(Place.in(folder), () -> knowledge.current().catalogue(), Clock.systemUTC())) {
            fill(locker, knowledge, sources);
            Advisor without = new Advisor(knowledge::current, AtHand.EVERYTHING, HouseMemory.NOTHING);
            Advisor with = new Advisor(knowledge::current, AtHand.EVERYTHING, new HouseMarks(locker.marks()));
            double[] withoutMs = new double[COUNTED];
            double[] withMs = new double[COUNTED];
            for (int i = -WARM_UP; i < COUNTED; i++) {
                Request request = request(sources.get(Math.floorMod(i, sources.size())), rooms[Math.floorMod(i / 2, 2)], players[Math.floorMod(i / 4, 2)]);
                double oneMs = timeMs(without, request);
                double otherMs = timeMs(with, request);
                if (i >= 0) {
                    withoutMs[i] = oneMs;
                    withMs[i] = otherMs;
                }
            }
            print(name, withoutMs, withMs);
        }
    }

    private static Request request(String source, String room, String player) {
        return new Request(null, source, null, null, room, null, null, null, null, null, 3, null, null, null, null, null, player, 0);
    }

    private static double timeMs(Advisor advisor, Request request) {
        long start = System.nanoTime();
        advisor.ask(request);
        return (System.nanoTime() - start) / 1e6;
    }

    private static void fill(Locker locker, KnowledgeStore knowledge, List<String> sources) {
        for (int session = 0; session < SESSIONS; session++) {
            List<MarkDraft> marks = new ArrayList<>();
            for (int i = 0; i < MARKS_EACH; i++) {
                Source source = knowledge.current().catalogue().sources().get(sources.get(i % sources.size()));
                Position position = source.positions().get((session + i) % source.positions().size());
                MarkDraft kept = MarkDraft.kept("seat-" + i, 1, source.id(), MICS.get((session + 2 * i) % MICS.size()), position.id());
                marks.add((session % 3 == 0 ? kept.changed(MICS.get(session % MICS.size()), null, null) : kept)
                        .by(PLAYERS.get((session + i) % PLAYERS.size()), ROOMS.get(session % ROOMS.size())));
            }
            String id = "session-" + session;
            locker.change(Act.by("Wren"), changes -> {
                changes.put(DocumentDraft.lineUp(id, id, null, null, "{}"), null);
                changes.marks(id, marks, null);
                return "";
            });
        }
    }

    private static void print(String name, double[] withoutMs, double[] withMs) {
        Arrays.sort(withoutMs);
        Arrays.sort(withMs);
        double without = withoutMs[COUNTED / 2];
        double with = withMs[COUNTED / 2];
        System.out.printf(Locale.ROOT, "%s: median %.2f ms with none, %.2f ms with all, %.2f times; 90 %% %.2f and %.2f ms%n", name, without, with, with / without,
                withoutMs[COUNTED * 9 / 10], withMs[COUNTED * 9 / 10]);
    }
}
