package pairwright.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.drools.model.Model;
import org.kie.api.KieBase;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import pairwright.advice.Advisor;
import pairwright.advice.AskCase;
import pairwright.advice.Knowledge;
import pairwright.advice.KnowledgeStore;
import pairwright.bench.DifferentQuestions;
import pairwright.model.Request;

/** Parts of an ask and the whole, each call another question. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class RulesBenchmark {
    private static final int CASES = 95;

    private final Knowledge now = KnowledgeStore.builtIn().current();
    private final Advisor advisor = new Advisor(() -> now);
    private final List<AskCase> cases = new ArrayList<>();
    private Engine rules;
    private KieBase engine;
    private int asked;

    /** What the rules are given is made before. */
    @Setup
    public void prepare() {
        for (int i = 0; i < CASES; i++) {
            cases.add(AskCase.of(Request.of(DifferentQuestions.of(i)), now));
        }
        rules = RuleBase.builtIn().engine();
        engine = rules.byTheEngine(false);
    }

    private AskCase next() {
        return cases.get(asked++ % CASES);
    }

    /** The conditions and consequences of the rules in a plain loop. */
    @Benchmark
    public Object loop() {
        AskCase one = next();
        Out out = new Out(rules.rules(), null);
        rules.judge(false, one.setting(), one.placed(), out);
        return out.findings();
    }

    /** The same by the rule engine. */
    @Benchmark
    public Object engine() {
        AskCase one = next();
        Out out = new Out(rules.rules(), null);
        List<Object> facts = new ArrayList<>(one.placed());
        facts.add(0, one.setting());
        Engine.judge(engine, facts, out);
        return out.findings();
    }

    /** As an ask has it done: the loop, and the findings in their order. */
    @Benchmark
    public Object judged() {
        AskCase one = next();
        return now.rules().score(one.setting(), one.placed());
    }

    /** A sentence is read. */
    @Benchmark
    public Object search() {
        return now.reader().read(DifferentQuestions.of(asked++));
    }

    /** From the sentence to the placements with all their predictions. */
    @Benchmark
    public Object predicted() {
        return AskCase.of(Request.of(DifferentQuestions.of(asked++)), now);
    }

    /** The whole. */
    @Benchmark
    public Object ask() {
        return advisor.ask(Request.of(DifferentQuestions.of(asked++)));
    }

    /** Microseconds for the placements of a question, where there are so many times as many rules; the middle of some. */
    public static double judgedUs(int times) {
        RulesBenchmark bench = new RulesBenchmark();
        bench.prepare();
        List<Model> models = Collections.nCopies(times, bench.rules.models()).stream().flatMap(List::stream).toList();
        bench.rules = new Engine(models, List.copyOf(bench.rules.rules().values()));
        double[] us = new double[5];
        for (int round = -2; round < us.length; round++) {
            long start = System.nanoTime();
            for (int i = 0; i < CASES; i++) {
                bench.loop();
            }
            us[Math.max(0, round)] = (System.nanoTime() - start) / 1e3 / CASES;
        }
        Arrays.sort(us);
        return us[us.length / 2];
    }
}
