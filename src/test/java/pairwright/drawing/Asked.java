package pairwright.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import pairwright.advice.Advisor;
import pairwright.advice.KnowledgeStore;
import pairwright.model.Answer;
import pairwright.model.Catalogue;
import pairwright.model.Option;
import pairwright.model.Question;
import pairwright.model.Request;

/** Answers to draw. */
final class Asked {
    private static final KnowledgeStore KNOWLEDGE = KnowledgeStore.builtIn();
    private static final Advisor ADVISOR = new Advisor(KNOWLEDGE::current);
    private static final Map<String, Answer> EVERY_SOURCE = everySource();

    private Asked() {
    }

    /** An option and the question it answers. */
    record One(Question question, Option option) {
    }

    static Catalogue catalogue() {
        return KNOWLEDGE.current().catalogue();
    }

    static Answer ask(String words) {
        return ADVISOR.ask(Request.of(words));
    }

    static One first(String words) {
        Answer answer = ask(words);
        return new One(answer.question().meant(), answer.options().get(0));
    }

    /** Every option of an answer for every source, each with another character. */
    static void everyOption(Consumer<One> check) {
        EVERY_SOURCE.values().forEach(answer -> answer.options().forEach(option -> check.accept(new One(answer.question().meant(), option))));
    }

    private static Map<String, Answer> everySource() {
        Map<String, Answer> answers = new LinkedHashMap<>();
        List<String> characters = List.copyOf(catalogue().characters().keySet());
        int i = 0;
        for (String source : catalogue().sources().keySet()) {
            answers.put(source, ADVISOR.ask(new Request(null, source, null, null, null, List.of(characters.get(i++ % characters.size())), null, null, null, null, null,
                    null, null, null)));
        }
        return answers;
    }
}
