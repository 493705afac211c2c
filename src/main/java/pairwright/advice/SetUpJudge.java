package pairwright.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import pairwright.model.Answer;
import pairwright.model.Fault;
import pairwright.model.Meaning;
import pairwright.model.Option;
import pairwright.model.Request;
import pairwright.model.RuledOut;
import pairwright.model.Setup;

/** Predicts and judges microphones as they stand, whether or not they are what would be advised. Safe to share between threads. */
public final class SetUpJudge {
    private final Supplier<Knowledge> knowledge;
    private final AtHand atHand;

    /**
     * A judge on what is known at the moment of each request.
     *
     * @param knowledge asked once per request
     */
    public SetUpJudge(Supplier<Knowledge> knowledge) {
        this(knowledge, AtHand.EVERYTHING);
    }

    /** The same with the microphones of a locker. */
    public SetUpJudge(Supplier<Knowledge> knowledge, AtHand atHand) {
        this.knowledge = knowledge;
        this.atHand = atHand;
    }

    /**
     * A set-up, judged.
     *
     * @param question what was asked and how it was understood
     * @param option the set-up as an option of rank 1
     * @param ruledOut what rules it out; empty for nothing
     * @param stock what of the locker it may use; null without a locker
     */
    public record Judgement(Answer.Asked question, Option option, List<RuledOut> ruledOut, Answer.Stocked stock) {
    }

    /**
     * What a set-up gives, what speaks for and against it, and what to mind.
     *
     * @param request the question it answers
     * @param setup how the microphones stand
     * @throws UnusableQuestion with every fault, the question's under /question, the set-up's under /option
     */
    public Judgement judge(Request request, Setup setup) {
        return Knowledge.answered(knowledge, now -> judge(request, setup, now));
    }

    private Judgement judge(Request request, Setup setup, Knowledge now) {
        List<Fault> faults = new ArrayList<>();
        Meaning meaning = Nested.question(request, now, faults);
        Standing standing = Standing.of(setup, meaning, now, faults);
        if (!faults.isEmpty()) {
            throw new UnusableQuestion(faults);
        }
        Scene scene = Scene.of(meaning.question(), now.catalogue(), Supply.of(atHand, meaning.question(), now.catalogue()), atHand.memory());
        Candidate candidate = new Bench(now, standing, scene).trial(null, 0, standing.mics()).candidate();
        Option option = new Explainer(scene, now.rules(), List.of(candidate)).option(1, candidate, null);
        return new Judgement(Advisor.asked(meaning, scene), option, ruledOut(candidate, scene, now), scene.supply().stocked());
    }

    /** What the rules forbid of a set-up; told once where both microphones have it. */
    static List<RuledOut> ruledOut(Candidate candidate, Scene scene, Knowledge now) {
        List<RuledOut> out = new ArrayList<>();
        List<Judged> judged = candidate.isSingle() ? List.of(candidate.first()) : List.of(candidate.first(), candidate.second());
        for (Judged one : judged) {
            one.findings().stream().filter(WhyNotCase::rulesOut).forEach(finding -> out.add(new RuledOut(one.placed().mic().id(),
                    one.placed().pattern(), one.placed().position().id(), finding.rule().id(), now.rules().says(finding, scene.setting()),
                    finding.values())));
        }
        return out.stream().distinct().toList();
    }
}
