package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.catalogue.Json;
import pairwright.model.Answer;
import pairwright.model.Effect;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.Reason;
import pairwright.model.Request;
import pairwright.model.Setup;
import pairwright.model.WhyNotRequest;

/** What was kept in this house before, in the next answer. */
class HouseMemoryTest {
    private static final String SOURCE = "tenor-saxophone";
    private static final Request ASKED = Request.of("tenor saxophone").withDraws(0);
    private static final Answer WITHOUT = Asking.ADVISOR.ask(ASKED);

    @Test
    void aHouseThatRemembersNothingAnswersAsBefore() throws Exception {
        Request drawn = Request.of("tenor saxophone next to drums, small room").withDraws(20);
        Advisor forgetful = new Advisor(Asking.KNOWLEDGE::current, AtHand.EVERYTHING, (source, room, player) -> List.of());
        assertEquals(Json.mapper().writeValueAsString(Asking.ADVISOR.ask(drawn)), Json.mapper().writeValueAsString(forgetful.ask(drawn)));
        Kept never = kept(single(WITHOUT), 0, 0, null, null);
        assertEquals(WITHOUT.options(), remembering(never).ask(ASKED).options(), "it never stood there");
        Kept elsewhere = new Kept("no-such-type", "nowhere", 3, 3, null, null);
        assertEquals(WITHOUT.options(), remembering(elsewhere).ask(ASKED).options());
    }

    @Test
    void whatWasKeptIsWorthWhatItsReasonSaysAndNoMore() {
        Option before = single(WITHOUT);
        Option after = same(before, remembering(kept(before, 6, 7, null, null)).ask(ASKED));
        Reason reason = reason(after, "MEM-001");
        assertEquals("Kept in 6 of 7 sessions here.", reason.says());
        assertEquals(Effect.FOR, reason.effect());
        assertEquals(1.39, reason.points(), 0, "2.5 times 5 ninths");
        assertEquals(before.score() + reason.points(), after.score(), 1e-9);
        List<Reason> others = new ArrayList<>(after.reasons());
        others.remove(reason);
        assertEquals(before.reasons(), others);
        assertEquals("house", Asking.KNOWLEDGE.current().rules().rule("MEM-001").on().id());
    }

    @Test
    void whatWasChangedHasItAgainstItButIsNotRuledOut() {
        Option before = single(WITHOUT);
        Option after = judged(before, kept(before, 1, 4, null, null));
        Reason reason = reason(after, "MEM-002");
        assertEquals("It was more often changed than left: it stood through only 1 of 4 sessions here.", reason.says());
        assertEquals(-0.83, reason.points(), 0);
        assertEquals(before.score() + reason.points(), after.score(), 1e-9);
    }

    @Test
    void aMicrophoneOfAPairBringsHalf() {
        Option pair = WITHOUT.options().stream().filter(option -> option.mics().size() == 2
                && !option.mics().get(0).position().equals(option.mics().get(1).position())).findFirst().orElseThrow();
        Option after = same(pair, remembering(kept(pair, 8, 8, null, null)).ask(ASKED));
        assertEquals(1, reason(after, "MEM-001").points(), 0, "2.5 times 8 tenths, by two");
        assertEquals(pair.score() + 1, after.score(), 1e-9);
    }

    @Test
    void theNarrowestCountsFirst() {
        Option best = single(WITHOUT);
        Kept anywhere = kept(best, 1, 9, null, null);
        Kept room = kept(best, 2, 3, "church", null);
        Kept player = kept(best, 3, 4, null, "Ines");
        Kept both = kept(best, 5, 5, "church", "Ines");
        assertEquals("Kept in 5 of 5 sessions with this player in this room.", says(anywhere, room, both, player));
        assertEquals("Kept in 3 of 4 sessions with this player.", says(anywhere, player, room));
        assertEquals("Kept in 2 of 3 sessions in this room.", says(room, anywhere));
        assertEquals("It was more often changed than left: it stood through only 1 of 9 sessions here.", says(anywhere));
        assertEquals("Kept in 4 of 6 sessions in this room.", says(room, room), "as narrow, so added up");
    }

    private static String says(Kept... kept) {
        return judged(single(WITHOUT), kept).reasons().stream().filter(reason -> reason.rule().startsWith("MEM")).findFirst().orElseThrow().says();
    }

    @Test
    void theHouseIsAskedForTheSourceTheRoomAndThePlayerOfTheQuestion() {
        List<String> asked = new ArrayList<>();
        Advisor advisor = new Advisor(Asking.KNOWLEDGE::current, AtHand.EVERYTHING, (source, room, player) -> {
            asked.add(source + " " + room + " " + player);
            return List.of();
        });
        Answer answer = advisor.ask(Request.of("tenor saxophone in a church").by(" Ines "));
        assertEquals("Ines", answer.question().meant().player());
        advisor.ask(ASKED);
        assertEquals(List.of(SOURCE + " church Ines", SOURCE + " null null"), asked);
        assertNull(WITHOUT.question().meant().player());
    }

    @Test
    void aPlayerWithoutANameAndOneWithTooLongANameAreRefused() {
        assertEquals(List.of("/player"), faults(Request.of("tenor saxophone").by("  ")));
        assertEquals(List.of("/player"), faults(Request.of("tenor saxophone").by("x".repeat(81))));
        assertFalse(Asking.ADVISOR.ask(Request.of("tenor saxophone").by("x".repeat(80))).options().isEmpty());
    }

    private static List<String> faults(Request request) {
        return assertThrows(UnusableQuestion.class, () -> Asking.ADVISOR.ask(request)).faults().stream().map(fault -> fault.at()).toList();
    }

    @Test
    void whoeverAsksAfterAnAnswerRemembersTheSame() {
        Option best = single(WITHOUT);
        AtHand house = AtHand.EVERYTHING.with((source, room, player) -> List.of(kept(best, 6, 7, null, null)));
        Option after = same(best, new Advisor(Asking.KNOWLEDGE::current, house).ask(ASKED));
        assertEquals(after.score(), new SetUpJudge(Asking.KNOWLEDGE::current, house).judge(ASKED, Setup.of(after)).option().score(), 1e-9);
        Placement mic = after.mics().get(0);
        assertTrue(new WhyNotFinder(Asking.KNOWLEDGE::current, house).find(new WhyNotRequest(ASKED, mic.micType(), mic.pattern(), mic.position())).toString()
                .contains("MEM-001"));
        assertEquals(after.score(), Offers.of(WITHOUT.question().meant(), Asking.KNOWLEDGE.current().catalogue(), Asking.KNOWLEDGE.current().rules(), null, null,
                house.memory()).all().stream().filter(offer -> offer.mics().size() == 1 && offer.mics().get(0).micType().id().equals(mic.micType())
                        && offer.mics().get(0).position().id().equals(mic.position())).findFirst().orElseThrow().centipoints() / 100.0, 0);
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 0", "1, 1, 0.3333333333", "0, 1, -0.3333333333", "2, 4, 0", "6, 7, 0.5555555556", "10, 10, 0.8333333333"})
    void theShareIsTheChanceOfTheRuleOfSuccessionTwiceLessOne(int kept, int tried, double share) {
        assertEquals(share, new Kept("type", "place", kept, tried, null, null).share(), 1e-9);
        assertEquals(2.0 * (kept + 1) / (tried + 2) - 1, new Kept("type", "place", kept, tried, null, null).share(), 1e-9);
    }

    @Property
    void noHistoryIsWorthAWholeRuleAndOneMoreTimeKeptIsNeverWorthLess(@ForAll @IntRange(max = 1000) int kept, @ForAll @IntRange(max = 1000) int changed) {
        double share = new Kept("type", "place", kept, kept + changed, null, null).share();
        assertTrue(Math.abs(share) < 1);
        assertTrue(new Kept("type", "place", kept + 1, kept + changed + 1, null, null).share() > share);
        assertTrue(new Kept("type", "place", kept, kept + changed + 1, null, null).share() < share);
    }

    @Test
    void moreKeptThanTriedIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Kept("type", "place", 3, 2, null, null));
        assertThrows(IllegalArgumentException.class, () -> new Kept("type", "place", -1, 2, null, null));
    }

    private static Advisor remembering(Kept... kept) {
        return new Advisor(Asking.KNOWLEDGE::current, AtHand.EVERYTHING, (source, room, player) -> source.equals(SOURCE) ? List.of(kept) : List.of());
    }

    /** The same set-up, whether or not it would still be shown. */
    private static Option judged(Option option, Kept... kept) {
        return new SetUpJudge(Asking.KNOWLEDGE::current, AtHand.EVERYTHING.with((source, room, player) -> List.of(kept))).judge(ASKED, Setup.of(option)).option();
    }

    /** Of the first microphone of an option. */
    private static Kept kept(Option option, int kept, int tried, String room, String player) {
        return new Kept(option.mics().get(0).micType(), option.mics().get(0).position(), kept, tried, room, player);
    }

    private static Option single(Answer answer) {
        return answer.options().stream().filter(option -> option.mics().size() == 1).findFirst().orElseThrow();
    }

    private static Option same(Option option, Answer in) {
        return in.options().stream().filter(other -> other.technique().equals(option.technique()) && other.mics().equals(option.mics())).findFirst()
                .orElseThrow(() -> new AssertionError(Explainer.oneLine(option) + " is not among " + in.options().stream().map(Explainer::oneLine).toList()));
    }

    private static Reason reason(Option option, String rule) {
        return option.reasons().stream().filter(reason -> reason.rule().equals(rule)).findFirst().orElseThrow();
    }
}
