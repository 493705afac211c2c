package pairwright.bench;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Locale;
import pairwright.advice.Advisor;
import pairwright.advice.KnowledgeStore;
import pairwright.model.Request;

/** What is alive after ever more questions, or after reading the house folder ever again. Arguments: {@code questions 500000}, or {@code reload 200 FOLDER}. */
public final class LongRun {
    private static final int SAMPLES = 10;

    private LongRun() {
    }

    /** One line for each tenth: how many, MB alive; then how long it took. */
    public static void main(String[] arguments) {
        int all = Integer.parseInt(arguments[1]);
        long start = System.nanoTime();
        KnowledgeStore knowledge = arguments[0].equals("reload") ? KnowledgeStore.withHouse(Path.of(arguments[2])) : KnowledgeStore.builtIn();
        Advisor advisor = new Advisor(knowledge::current);
        for (int i = 0; i <= all; i++) {
            if (i % (all / SAMPLES) == 0) {
                System.out.printf(Locale.ROOT, "SAMPLE %d %.2f%n", i, aliveMb());
            }
            if (!arguments[0].equals("reload")) {
                advisor.ask(Request.of(DifferentQuestions.of(i)));
            } else {
                knowledge.reload();
                if (!knowledge.faults().isEmpty()) {
                    throw new IllegalStateException(knowledge.faults().toString());
                }
                advisor.ask(Request.of(DifferentQuestions.of(i)));
            }
        }
        System.out.printf(Locale.ROOT, "TOOK %.0f%n", (System.nanoTime() - start) / 1e9);
    }

    private static double aliveMb() {
        System.gc();
        System.gc();
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1e6;
    }
}
