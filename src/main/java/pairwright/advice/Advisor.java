package pairwright.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import pairwright.model.Answer;
import pairwright.model.Limits;
import pairwright.model.Meaning;
import pairwright.model.Option;
import pairwright.model.Question;
import pairwright.model.Request;
import pairwright.model.RuledOut;
import pairwright.model.Sureness;
import pairwright.rules.Finding;
import pairwright.rules.Paired;
import pairwright.rules.Placed;
import pairwright.rules.RuleBase;

/** Answers questions. Safe to share between threads; every call uses one catalogue and one rule base throughout. */
public final class Advisor {
    private final Supplier<Knowledge> knowledge;
    private final AtHand atHand;

    /**
     * An advisor on what is known at the moment of each question.
     *
     * @param knowledge asked once per question
     */
    public Advisor(Supplier<Knowledge> knowledge) {
        this(knowledge, AtHand.EVERYTHING);
    }

    /**
     * The same with the microphones of a locker.
     *
     * @param atHand asked once per question that does not want the whole catalogue
     */
    public Advisor(Supplier<Knowledge> knowledge, AtHand atHand) {
        this.knowledge = knowledge;
        this.atHand = atHand;
    }

    /**
     * The same in a house that remembers what was kept.
     *
     * @param memory asked once per question
     */
    public Advisor(Supplier<Knowledge> knowledge, AtHand atHand, HouseMemory memory) {
        this(knowledge, atHand.with(memory));
    }

    /**
     * The answer to a question. A question no source answers has no options and says what was near.
     *
     * @param request a sentence, explicit fields, or both
     * @throws UnusableQuestion with every fault of the request
     */
    public Answer ask(Request request) {
        return Knowledge.answered(knowledge, now -> ask(request, now));
    }

    private Answer ask(Request request, Knowledge now) {
        Meaning meaning = Questions.of(request, now.catalogue(), now.reader());
        Question question = meaning.question();
        if (question.source() == null) {
            return answer(now, meaning, null, List.of(), null, List.of(), List.of(), null, null);
        }
        Scene scene = Scene.of(question, now.catalogue(), Supply.of(atHand, question, now.catalogue()), atHand.memory());
        Verdict verdict = judge(scene, now.rules());
        List<Candidate> chosen = Choice.of(verdict.candidates(), question.options());
        Draws draws = request.draws() == null || request.draws() == 0 || chosen.isEmpty() ? null
                : Draws.of(scene, now.rules(), verdict.candidates(), chosen, request.draws());
        List<Option> options = verdict.explained(now.rules(), chosen, draws);
        return answer(now, meaning, scene, options, draws == null ? null : draws.sureness(), RuledOutList.of(scene, verdict.judged(), now.rules()),
                options.isEmpty() ? WaysOut.of(scene, now) : List.of(), OutList.of(scene, now.rules(), verdict.judged(), verdict.candidates()), heard(scene, now, chosen));
    }

    /** Null where nobody was heard before; else the same question is asked without it as well. */
    private static Answer.Heard heard(Scene scene, Knowledge now, List<Candidate> chosen) {
        Question question = scene.question();
        if (question.heard() == null) {
            return null;
        }
        Scene usual = Scene.of(question.unheard(), now.catalogue(), scene.supply(), scene.remembered().memory());
        List<Candidate> before = Choice.of(judge(usual, now.rules()).candidates(), question.options());
        return HeardAndUsual.of(usual.setting().source(), question.heard(), chosen, before);
    }

    private static Answer answer(Knowledge now, Meaning meaning, Scene scene, List<Option> options, Sureness sureness,
            List<RuledOut> ruledOut, List<Answer.Instead> instead, List<Answer.Missed> out, Answer.Heard heard) {
        return new Answer(
                asked(meaning, scene),
                options,
                sureness,
                ruledOut,
                instead,
                scene == null ? null : scene.supply().stocked(),
                out,
                heard,
                now.rules().version(),
                now.catalogue().version());
    }

    /** The question as it was understood; without a scene when no source was. */
    static Answer.Asked asked(Meaning meaning, Scene scene) {
        return new Answer.Asked(meaning.question().words(), meaning.question(), meaning.understood(), meaning.notUnderstood(),
                meaning.otherReadings(), meaning.ask(), scene == null ? List.of() : scene.assumed(), scene == null ? null : scene.numbers());
    }

    /** All placements as judged, and all candidates that stand, best first. */
    record Verdict(Scene scene, List<Judged> judged, List<Candidate> candidates) {
        List<Option> options(RuleBase rules, int wanted) {
            return explained(rules, Choice.of(candidates, wanted), null);
        }

        List<Option> explained(RuleBase rules, List<Candidate> chosen, Draws draws) {
            Explainer explainer = new Explainer(scene, rules, chosen);
            List<Option> options = new ArrayList<>();
            for (int i = 0; i < chosen.size(); i++) {
                options.add(explainer.option(i + 1, chosen.get(i), draws == null ? null : draws.sure(i)));
            }
            return List.copyOf(options);
        }
    }

    static Verdict judge(Scene scene, RuleBase rules) {
        return judge(scene, rules, Placements.of(scene));
    }

    /** The verdict on some placements only, numbered from 0 in the order of the list. */
    static Verdict judge(Scene scene, RuleBase rules, List<Placed> placed) {
        List<Judged> judged = judged(scene, rules, placed);
        List<Candidate> candidates = new ArrayList<>();
        Rack atHand = scene.supply().atHand();
        judged.stream().filter(one -> !one.ruledOut() && Placements.standsAlone(one.placed()) && atHand.alone(one.placed().mic())).map(Candidate::of).forEach(candidates::add);
        candidates.addAll(pairs(scene, rules, Pairs.of(scene, judged)));
        candidates.sort(Candidate.bestFirst());
        return new Verdict(scene, judged, candidates);
    }

    /**
     * What the rules find of single placements.
     *
     * @param placed numbered from 0 in the order of the list
     */
    static List<Judged> judged(Scene scene, RuleBase rules, List<Placed> placed) {
        List<List<Finding>> findings = new ArrayList<>(placed.size());
        placed.forEach(one -> findings.add(new ArrayList<>(8)));
        for (Finding finding : rules.score(scene.setting(), placed)) {
            if (finding.subject() instanceof Placed subject) {
                findings.get(subject.index()).add(finding);
            }
        }
        List<Judged> judged = new ArrayList<>(placed.size());
        placed.forEach(one -> judged.add(Judged.of(one, findings.get(one.index()))));
        return judged;
    }

    /** What the locker owns and cannot give, best first. */
    static List<Candidate> wanting(Scene scene, RuleBase rules, List<Judged> judged) {
        Supply supply = scene.supply();
        if (!supply.missesSomething()) {
            return List.of();
        }
        List<Candidate> candidates = new ArrayList<>();
        judged.stream().filter(one -> !one.ruledOut() && Placements.standsAlone(one.placed()) && !supply.atHand().alone(one.placed().mic())
                && supply.owned().alone(one.placed().mic())).map(Candidate::of).forEach(candidates::add);
        candidates.addAll(pairs(scene, rules, Pairs.of(scene, judged, supply.owned()).stream()
                .filter(pair -> !supply.atHand().serves(pair.paired())).toList()));
        candidates.sort(Candidate.bestFirst());
        return candidates;
    }

    static List<Candidate> pairs(Scene scene, RuleBase rules, List<Pairs.Pair> pairs) {
        if (pairs.isEmpty()) {
            return List.of();
        }
        Map<Paired, List<Finding>> findings = new LinkedHashMap<>();
        pairs.forEach(pair -> findings.put(pair.paired(), new ArrayList<>()));
        for (Finding finding : rules.score(scene.setting(), pairs.stream().map(Pairs.Pair::paired).toList())) {
            if (finding.subject() instanceof Paired subject) {
                findings.get(subject).add(finding);
            }
        }
        return pairs.stream()
                .map(pair -> Candidate.of(pair.first(), pair.second(), pair.paired(), findings.get(pair.paired())))
                .filter(candidate -> !candidate.ruledOut())
                .toList();
    }

    static Question question(Question question, Limits limits) {
        return question.altered(question.ways(), question.room(), question.character(), limits, question.neighbours(), question.circumstances());
    }
}
