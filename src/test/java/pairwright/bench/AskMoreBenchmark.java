package pairwright.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import pairwright.advice.Advisor;
import pairwright.advice.KnowledgeStore;
import pairwright.advice.MoveFinder;
import pairwright.advice.WhyNotFinder;
import pairwright.model.Answer;
import pairwright.model.MovesRequest;
import pairwright.model.Request;
import pairwright.model.Setup;
import pairwright.model.WhyNotRequest;

/** How long the questions after an answer take once warm. Not a test: machines differ. Its argument is how often each is asked. */
public final class AskMoreBenchmark {
    private static final List<String> QUESTIONS = List.of("brushed snare, quiet jazz trio, small room", "contrabass next to the drums, warm",
            "trumpet too bright, dark please", "grand piano for pop in a bad room", "singing voice", "driven guitar amp, gritty", "cello, church", "accordion");
    private static final List<String> TYPES = List.of("small-condenser-cardioid", "long-ribbon", "handheld-moving-coil");
    private static final List<String> HEARD = List.of("boomy", "harsh", "roomy", "distorted", "thin", "hollow");

    private AskMoreBenchmark() {
    }

    /** Prints the figures. */
    public static void main(String[] arguments) {
        int counted = arguments.length == 0 ? 200 : Integer.parseInt(arguments[0]);
        KnowledgeStore knowledge = KnowledgeStore.builtIn();
        Advisor advisor = new Advisor(knowledge::current);
        WhyNotFinder whyNot = new WhyNotFinder(knowledge::current);
        MoveFinder moves = new MoveFinder(knowledge::current);
        List<Answer> answers = QUESTIONS.stream().map(words -> advisor.ask(Request.of(words))).toList();
        time("ask", counted, i -> advisor.ask(Request.of(QUESTIONS.get(i % QUESTIONS.size()))));
        time("why not", counted, i -> whyNot.find(new WhyNotRequest(Request.of(QUESTIONS.get(i % QUESTIONS.size())),
                TYPES.get(i / QUESTIONS.size() % TYPES.size()), null, null)));
        time("moves", counted, i -> moves.find(new MovesRequest(Request.of(QUESTIONS.get(i % QUESTIONS.size())),
                Setup.of(answers.get(i % QUESTIONS.size()).options().get(0)), HEARD.get(i / QUESTIONS.size() % HEARD.size()))));
    }

    private interface Task {
        void run(int i);
    }

    private static void time(String name, int counted, Task task) {
        double[] ms = new double[counted];
        for (int i = -counted / 2; i < counted; i++) {
            long start = System.nanoTime();
            task.run(i + counted);
            if (i >= 0) {
                ms[i] = (System.nanoTime() - start) / 1e6;
            }
        }
        Arrays.sort(ms);
        System.out.printf(Locale.ROOT, "%-8s median %.1f ms, 90 %% %.1f ms (%d calls)%n", name, ms[counted / 2], ms[counted * 9 / 10], counted);
    }
}
