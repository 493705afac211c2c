package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pairwright.model.Answer;
import pairwright.model.Fault;
import pairwright.model.Option;
import pairwright.model.Pattern;
import pairwright.model.Request;
import pairwright.model.Setup;

class SetUpJudgeTest {
    private static final SetUpJudge JUDGE = new SetUpJudge(Asking.KNOWLEDGE::current);

    @ParameterizedTest
    @ValueSource(strings = {"tenor saxophone next to the drums, dark", "snare", "grand piano in stereo", "bass guitar by its lead", "kick drum"})
    void anOptionOfAnAnswerIsJudgedAsTheAnswerJudgesIt(String words) {
        Answer answer = Asking.ask(words);
        for (Option option : answer.options()) {
            SetUpJudge.Judgement judged = JUDGE.judge(Request.of(words), Setup.of(option));
            assertEquals(answer.question(), judged.question());
            assertEquals(new Option(1, option.score(), option.technique(), option.techniqueName(), option.mics(), option.together(), option.reasons(),
                    option.cautions(), null), judged.option());
            assertEquals(List.of(), judged.ruledOut());
        }
    }

    @Test
    void whatARuleForbidsIsJudgedAndSaid() {
        SetUpJudge.Judgement judged = JUDGE.judge(Request.of("snare"), new Setup(null, List.of(new Setup.Put("long-ribbon", Pattern.FIGURE_8, "over-rim", 0.05, 0.0))));
        assertFalse(judged.ruledOut().isEmpty());
    }

    @Test
    void everyFaultIsFoundAtOnce() {
        UnusableQuestion unusable = assertThrows(UnusableQuestion.class, () -> JUDGE.judge(new Request("snare", null, null, null, "barm", null, null, null, null,
                null, null, null, null, null), new Setup(null, List.of(new Setup.Put("no-such", null, "over-rim", null, 999.0)))));
        assertEquals(List.of("/question/room", "/option/mics/0/micType", "/option/mics/0/distanceM", "/option/mics/0/aimDegrees"),
                unusable.faults().stream().map(Fault::at).toList());
    }

    @Test
    void aLimitOfTheWordsCanBeLifted() {
        Request request = new Request("snare, no phantom, one channel", null, null, null, null, null, null, null, null, null, null, null, null, null,
                List.of("phantom", "mics"), null);
        assertEquals(Asking.ask("snare").question().meant().limits(), Asking.ADVISOR.ask(request).question().meant().limits());
    }
}
