package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.List;
import org.junit.jupiter.api.Test;
import pairwright.acoustics.OctaveCurve;
import pairwright.catalogue.Json;
import pairwright.model.Answer;
import pairwright.model.Catalogue;
import pairwright.model.FromLocker;
import pairwright.model.Given;
import pairwright.model.Moves;
import pairwright.model.MovesRequest;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.Question;
import pairwright.model.Request;
import pairwright.model.Setup;
import pairwright.model.Stock;
import pairwright.model.Stock.Held;
import pairwright.model.WhyNot;
import pairwright.model.WhyNotRequest;
import pairwright.rules.Placed;

/** Answers from a locker. */
class LockerAnswersTest {
    private static final Held DYNAMIC = Stocks.unit("dyn-1", "handheld-moving-coil");
    private static final Held RIBBON = Stocks.unit("rib-1", "long-ribbon");
    private static final Held OTHER_RIBBON = Stocks.unit("rib-2", "long-ribbon");
    private static final Request TRUMPET = request("trumpet", null);

    private static Request request(String source, List<String> circumstances) {
        return new Request(null, source, null, null, null, null, null, null, circumstances, null, null, null, null, null);
    }

    private static Answer ask(Request request, Held... units) {
        return Stocks.advisor(Stocks.of(units)).ask(request);
    }

    private static List<String> units(Option option) {
        return option.mics().stream().flatMap(mic -> mic.units().stream()).map(Given::id).toList();
    }

    @Test
    void anAnswerWithoutALockerSaysNothingOfIt() throws JsonProcessingException {
        for (AtHand none : List.<AtHand>of(AtHand.EVERYTHING, (from, until) -> new Stock(true, List.of()))) {
            String json = Json.mapper().writeValueAsString(Stocks.advisor(none).ask(TRUMPET));
            assertEquals(Json.mapper().writeValueAsString(Asking.ADVISOR.ask(TRUMPET)), json);
            assertFalse(json.contains("\"free\"") || json.contains("\"stock\"") || json.contains("\"out\"") || json.contains("\"units\""), json);
        }
    }

    @Test
    void onlyWhatIsFreeIsRankedAndNamed() {
        Answer answer = ask(TRUMPET, Stocks.noted(DYNAMIC, "shelf 3", "grille dented"), Stocks.out(RIBBON));
        assertEquals(List.of("handheld-moving-coil"), answer.options().stream().flatMap(option -> option.mics().stream()).map(Placement::micType).distinct().toList());
        assertEquals(1, answer.options().size());
        Placement mic = answer.options().get(0).mics().get(0);
        assertEquals(1, mic.free());
        assertEquals(List.of(new Given("dyn-1", "dyn-1", null, "shelf 3", "grille dented", null, null, null)), mic.units());
        assertEquals(new Answer.Stocked(FromLocker.FREE, null, null, true), answer.stock());
        assertTrue(answer.question().assumed().toString().contains("as it is now and for 4 hours"), answer.question().assumed().toString());
    }

    @Test
    void whatIsBetterButOutIsSaidWithWhoHasItAndUntilWhen() {
        Answer answer = ask(TRUMPET, DYNAMIC, Stocks.out(RIBBON));
        assertEquals(1, answer.out().size());
        Answer.Missed missed = answer.out().get(0);
        assertEquals("long-ribbon", missed.micType());
        assertEquals(ask(TRUMPET, DYNAMIC, RIBBON).options().get(0).score(), missed.score());
        assertEquals(missed.score() - answer.options().get(0).score(), missed.betterPoints(), 1e-9);
        assertEquals(List.of(new Answer.Taken("rib-1", "rib-1", "session", "the barn trio", "Ada", Stocks.MONDAY)), missed.units());
        assertTrue(missed.says().endsWith("more. rib-1 is out for the barn trio with Ada, free again Mon 1 Mar 2027, 14:00."), missed.says());
        assertEquals(List.of(), ask(TRUMPET, DYNAMIC, RIBBON).out());
    }

    @Test
    void everythingThatIsOwnedMayBeAskedForAndSaysWhenItIsFreeAgain() {
        Request owned = TRUMPET.at(null, null, FromLocker.OWNED);
        Answer answer = ask(owned, DYNAMIC, Stocks.out(RIBBON), Stocks.out(OTHER_RIBBON, new Stock.Out("lost", null, null, null)));
        Placement first = answer.options().get(0).mics().get(0);
        assertEquals("long-ribbon", first.micType());
        assertEquals(0, first.free());
        assertEquals("rib-1", first.units().get(0).id());
        assertEquals(Stocks.MONDAY, first.units().get(0).freeFrom());
        assertEquals("session", first.units().get(0).out());
        assertEquals(List.of(), answer.out());
    }

    @Test
    void whatIsLostCountsForNothing() {
        Request owned = TRUMPET.at(null, null, FromLocker.OWNED);
        Answer answer = ask(owned, DYNAMIC, Stocks.out(RIBBON, new Stock.Out("lost", null, null, null)));
        assertTrue(answer.options().stream().flatMap(option -> option.mics().stream()).noneMatch(mic -> mic.micType().equals("long-ribbon")));
    }

    @Test
    void aLockerThatDoesNotAnswerIsSaidAndHidesNothing() {
        Answer answer = Stocks.advisor((from, until) -> Stock.OUT_OF_REACH).ask(TRUMPET);
        Answer without = Asking.ADVISOR.ask(TRUMPET);
        assertEquals(without.options(), answer.options());
        assertFalse(answer.stock().reachable());
        assertNull(answer.options().get(0).mics().get(0).free());
        assertTrue(answer.question().assumed().stream().anyMatch(line -> line.startsWith("The locker does not answer just now")));
    }

    @Test
    void twoThatWereMatchedAreTakenForAStereoPairAndCountForIt() {
        Request piano = request("grand-piano", List.of("stereo"));
        String type = "small-condenser-cardioid";
        Held a = Stocks.unit("a", type);
        Held b = Stocks.mated(Stocks.unit("b", type), "c");
        Held c = Stocks.mated(Stocks.unit("c", type), "b");
        Option matched = stereo(ask(piano, a, b, c));
        assertEquals(List.of("b", "c"), units(matched));
        assertEquals("c", matched.mics().get(0).units().get(0).mate());
        assertEquals("b", matched.mics().get(1).units().get(0).mate());
        Option not = stereo(ask(piano, a, Stocks.out(b), c));
        assertEquals(List.of("a", "c"), units(not));
        assertNull(not.mics().get(0).units().get(0).mate());
        assertTrue(matched.reasons().stream().anyMatch(reason -> reason.rule().equals("STE-017")));
        assertTrue(not.reasons().stream().anyMatch(reason -> reason.rule().equals("STE-018")));
        assertTrue(not.cautions().stream().anyMatch(caution -> caution.rule().equals("STE-019")));
        Answer.Missed missed = ask(piano, a, Stocks.out(b), c).out().get(0);
        assertTrue(missed.says().startsWith("A matched pair of the "), missed.says());
        Option unknown = stereo(Asking.ADVISOR.ask(piano));
        assertTrue(unknown.reasons().stream().noneMatch(reason -> reason.rule().equals("STE-017") || reason.rule().equals("STE-018")));
    }

    private static Option stereo(Answer answer) {
        return answer.options().stream().filter(option -> option.mics().size() == 2 && option.mics().get(0).micType().equals(option.mics().get(1).micType()))
                .findFirst().orElseThrow(() -> new AssertionError(answer.options().stream().map(Option::techniqueName).toList().toString()));
    }

    @Test
    void aSingleMicrophoneLeavesAMatchedPairWhole() {
        Held first = Stocks.mated(Stocks.unit("a", "long-ribbon"), "b");
        Held second = Stocks.mated(Stocks.unit("b", "long-ribbon"), "a");
        Held alone = Stocks.unit("c", "long-ribbon");
        Request one = TRUMPET;
        assertEquals(List.of("c"), single(ask(one, first, second, alone)));
        assertEquals(List.of("a"), single(ask(one, first, second)));
    }

    private static List<String> single(Answer answer) {
        return units(answer.options().stream().filter(option -> option.mics().size() == 1).findFirst().orElseThrow());
    }

    @Test
    void aUnitWithAResponseOfItsOwnIsPredictedByIt() {
        OctaveCurve type = Asking.KNOWLEDGE.current().catalogue().mics().get("long-ribbon").responseDb();
        OctaveCurve brighter = type.plus(OctaveCurve.of(0, 0, 0, 0, 0, 0, 1, 3, 6));
        Held measured = Stocks.measured(RIBBON, brighter);
        Question question = Asking.ADVISOR.ask(TRUMPET).question().meant();
        Catalogue catalogue = Asking.KNOWLEDGE.current().catalogue();
        List<Placed> placed = Placements.of(Scene.of(question, catalogue, Supply.of(Stocks.of(measured), question, catalogue)));
        int compared = 0;
        for (Placed one : placed) {
            for (Placed other : placed) {
                if (one.mic() == catalogue.mics().get("long-ribbon") && other.mic() != one.mic() && one.position() == other.position()
                        && one.distanceM() == other.distanceM() && one.aimDegrees() == other.aimDegrees()) {
                    assertTrue(other.predicted().airDb() > one.predicted().airDb() + 2, other.position().id());
                    compared++;
                }
            }
        }
        assertTrue(compared > 3, compared + " places");
        Option own = ask(TRUMPET, measured).options().get(0);
        assertEquals("rib-1", own.mics().get(0).units().get(0).id());
        assertFalse(own.mics().get(0).predicted().colourDb().equals(ask(TRUMPET, RIBBON).options().get(0).mics().get(0).predicted().colourDb()));
    }

    @Test
    void whereNothingFreeFitsItIsSaidWhatWould() {
        Answer answer = ask(request("acoustic-pickup-lead", null), DYNAMIC);
        assertNotNull(answer);
        assertEquals(List.of(), answer.options());
        assertEquals("/locker", answer.instead().get(0).limit());
        assertTrue(answer.instead().get(0).says().startsWith("Nothing in the locker fits. With the whole catalogue: "), answer.instead().toString());
        Answer out = ask(TRUMPET, Stocks.out(RIBBON));
        assertTrue(out.instead().get(0).says().startsWith("Nothing that is free for that time fits. With all that the locker owns: "), out.instead().toString());
        assertEquals("long-ribbon", out.out().get(0).micType());
    }

    @Test
    void whyNotSaysFirstThatItIsOutOrNotThere() {
        WhyNotFinder finder = new WhyNotFinder(Asking.KNOWLEDGE::current, Stocks.of(DYNAMIC, Stocks.out(RIBBON)));
        WhyNot out = finder.find(new WhyNotRequest(TRUMPET, "long-ribbon", null, null));
        assertEquals(WhyNot.Standing.LIMITED, out.standing());
        assertTrue(out.says().contains("is left out. rib-1 is out for the barn trio with Ada, free again Mon 1 Mar 2027, 14:00."), out.says());
        assertTrue(out.changes().stream().anyMatch(change -> change.at().equals("/question/locker") && change.to().equals("owned")), out.changes().toString());
        WhyNot absent = finder.find(new WhyNotRequest(TRUMPET, "compact-ribbon", null, null));
        assertTrue(absent.says().contains("is left out. The locker has none."), absent.says());
    }

    @Test
    void movesExchangeOnlyForWhatIsFree() {
        Setup setup = new Setup(null, List.of(new Setup.Put("handheld-moving-coil", null,
                Asking.KNOWLEDGE.current().catalogue().sources().get("trumpet").positions().get(0).id(), 0.3, 0.0)));
        MoveFinder everything = new MoveFinder(Asking.KNOWLEDGE::current);
        List<String> heard = Asking.KNOWLEDGE.current().catalogue().complaints().keySet().stream().toList();
        int exchanged = 0;
        for (String complaint : heard) {
            exchanged += exchanges(everything.find(new MovesRequest(TRUMPET, setup, complaint)));
            assertEquals(0, exchanges(new MoveFinder(Asking.KNOWLEDGE::current, Stocks.of(DYNAMIC, Stocks.out(RIBBON)))
                    .find(new MovesRequest(TRUMPET, setup, complaint))), complaint);
        }
        assertTrue(exchanged > 0, "no complaint is answered with another microphone");
    }

    private static int exchanges(Moves moves) {
        return (int) moves.moves().stream().filter(move -> move.by() == pairwright.model.MoveKind.MIC && !move.effect().isEmpty()).count();
    }
}
