package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pairwright.advice.Advisor;
import pairwright.advice.UnusableQuestion;
import pairwright.model.Answer;
import pairwright.model.Fault;
import pairwright.model.Request;

/** Where one asks, and the answer. */
public final class AskPage {
    private static final List<String> EXAMPLES = List.of("Brushed snare, small room", "Tenor saxophone, dark, next to the drums",
            "Singer with acoustic guitar, one player, intimate", "Upright piano in stereo, no phantom power");

    private AskPage() {
    }

    /**
     * The page, or with {@code part=answer} what changes on it when a part of the question is edited, or with {@code part=sure} how sure the
     * answer is.
     *
     * @return 200, or 400 with every fault and every field as it was typed
     */
    public static Page of(AtQuestion at) {
        Visit visit = at.visit();
        Html html = at.html();
        String part = visit.first("part");
        List<Fault> strange = Strange.values(visit);
        if (!strange.isEmpty()) {
            return fault(at, strange, null);
        }
        Optional<String> stray = Strange.names(visit);
        if (AskQuery.FIELDS.keySet().stream().allMatch(name -> visit.first(name) == null)) {
            return new Page(200, html.fill("ask.jte", Map.of("shell", html.shell("What do you record?", "ask", visit), "examples", examples(visit), "stray", stray)));
        }
        AskQuery query = at.query();
        Used used = new Used(at.knowledge());
        List<Fault> faults = new ArrayList<>(query.faults());
        Answer answer = null;
        try {
            answer = new Advisor(used, at.atHand()).ask("sure".equals(part) ? query.request().withDraws(Request.USUAL_DRAWS) : query.request());
        } catch (UnusableQuestion unusable) {
            faults.addAll(unusable.faults());
        }
        if (!faults.isEmpty()) {
            return fault(at, faults, part);
        }
        AnswerView view = AnswerViews.of(used.last(), query.request(), answer, at);
        stray = told(stray, view.stock() == null ? StockViews.inVain(answer.question().meant()) : "");
        if ("sure".equals(part)) {
            return new Page(200, html.fill("sure.jte", Map.of("answer", view)));
        }
        if ("answer".equals(part)) {
            return new Page(200, html.fill("answer-part.jte", Map.of("answer", view, "visit", visit, "stray", stray)));
        }
        return new Page(200, html.fill("answer.jte", Map.of("shell", html.shell(view.heading(), "ask", visit), "answer", view, "stray", stray)));
    }

    private static Optional<String> told(Optional<String> stray, String inVain) {
        return inVain.isEmpty() ? stray : Optional.of((stray.orElse("") + " " + inVain).strip());
    }

    private static List<AnswerView.Link> examples(Visit visit) {
        return EXAMPLES.stream().map(words -> new AnswerView.Link(words, visit.to(Param.address("/", List.of(new Param("words", words)))))).toList();
    }

    /** What is wrong with a question, as a page or as the part of one. */
    static Page fault(AtQuestion at, List<Fault> faults, String part) {
        FaultView view = FaultView.of(at.visit(), faults);
        return new Page(400, part == null
                ? at.html().fill("ask-fault.jte", Map.of("shell", at.html().shell("This cannot be asked as it is", "ask", at.visit()), "fault", view))
                : at.html().fill("fault-part.jte", Map.of("fault", view)));
    }
}
