package pairwright.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pairwright.model.Fault;

/** Slips of the pen, which are told and not marked. */
class AnswerCheckTest {
    private static final AnswerCheck CHECK = new AnswerCheck(new Handout("Two questions", List.of(), List.of(), List.of(), List.of(
            new Item.Amount("wait", "How long is the wait?", "ms", 0.1, 100), new Item.Amount("ratio", "What ratio is that?", "1", 0.1, 100),
            new Item.SomeOf("which", "Which two?", Item.Opt.lettered(List.of("near", "far", "low")), 2), new Item.SomeOf("any", "Which of them?", Item.Opt.lettered(List.of("near", "far")), null))));

    private static List<String> told(Answer answer) {
        return CHECK.faults(answer).stream().map(Fault::says).toList();
    }

    @Test
    void aNumberInAUnitOfAnotherKindIsToldAndOneInAnotherUnitOfItsKindIsRead() {
        assertEquals(List.of(), told(Answer.NOTHING.with("wait", "0.0242 s").with("ratio", "2,5")));
        List<String> told = told(Answer.NOTHING.with("wait", "24.2 m").with("ratio", "2.5 dB"));
        assertEquals(2, told.size(), told.toString());
        assertTrue(told.get(0).contains("\"24.2 m\" is no number in ms") && told.get(1).contains("without a unit"), told.toString());
    }

    @Test
    void moreThanAreAskedForIsToldAndFewerAreLeftOut() {
        assertEquals(List.of(), told(Answer.NOTHING.with("which", List.of("a")).with("any", List.of("a", "b"))));
        assertEquals(List.of("3 options are named for which, where 2 are asked for. Leave 1 out"), told(Answer.NOTHING.with("which", List.of("a", "b", "c"))));
    }
}
