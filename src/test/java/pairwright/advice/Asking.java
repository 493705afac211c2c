package pairwright.advice;

import java.util.List;
import pairwright.model.Answer;
import pairwright.model.Limits;
import pairwright.model.Neighbour;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.Question;
import pairwright.model.Request;

/** The one knowledge all advice tests share, and short ways to ask. */
final class Asking {
    static final KnowledgeStore KNOWLEDGE = KnowledgeStore.builtIn();
    static final Advisor ADVISOR = new Advisor(KNOWLEDGE::current);

    private Asking() {
    }

    static Answer ask(String words) {
        return ADVISOR.ask(Request.of(words));
    }

    static Answer ask(String source, String room, List<String> character, Limits limits, List<Neighbour> neighbours) {
        return ADVISOR.ask(new Request(null, source, null, null, room, character, limits, neighbours, null, null, null, null, null, null));
    }

    static Option first(Answer answer) {
        return answer.options().get(0);
    }

    static List<Placement> mics(Answer answer) {
        return answer.options().stream().flatMap(option -> option.mics().stream()).toList();
    }

    /** The question an answer says it answered, made ready again. */
    static Scene scene(Answer answer) {
        Question meant = answer.question().meant();
        return Scene.of(meant, KNOWLEDGE.current().catalogue());
    }
}
