package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.catalogue.Json;
import pairwright.model.Answer;
import pairwright.model.Fault;
import pairwright.model.Limits;
import pairwright.model.Moves;
import pairwright.model.MovesRequest;
import pairwright.model.Neighbour;
import pairwright.model.Option;
import pairwright.model.Pattern;
import pairwright.model.Question;
import pairwright.model.Request;
import pairwright.model.Setup;
import pairwright.model.WhyNot;
import pairwright.model.WhyNotRequest;

class WhyNotTest {
    private static final WhyNotFinder FINDER = new WhyNotFinder(Asking.KNOWLEDGE::current);
    private static final ObjectMapper JSON = Json.mapper();

    private static WhyNot ask(String words, String micType) {
        return FINDER.find(new WhyNotRequest(Request.of(words), micType, null, null));
    }

    /** Real questions of every kind, each with a type that does something else in it. */
    @Provide
    Arbitrary<WhyNotRequest> requests() {
        var catalogue = Asking.KNOWLEDGE.current().catalogue();
        Arbitrary<Limits> limits = Arbitraries.of(Limits.NONE, Limits.NONE, new Limits(1, null, null, null, null, null, null, null),
                new Limits(null, false, null, null, null, null, null, null), new Limits(null, null, 40.0, null, null, null, null, null));
        return Combinators.combine(Arbitraries.of(catalogue.sources().keySet()), Arbitraries.of(catalogue.mics().keySet()),
                        Arbitraries.of(catalogue.rooms().keySet()).injectNull(0.5),
                        Arbitraries.of(catalogue.characters().keySet()).list().ofMaxSize(1), limits,
                        Arbitraries.of(List.<Neighbour>of(), List.of(new Neighbour("drum-kit", 2, 120))))
                .as((source, mic, room, character, limit, neighbours) -> new WhyNotRequest(new Request(null, source, null, null, room, character, limit,
                        neighbours, null, null, null, null, null, 0), mic, null, null));
    }

    @Property(tries = 60, shrinking = ShrinkingMode.OFF)
    void whatIsLostRuleByRuleAddsUpToTheDifferenceOfTheScores(@ForAll("requests") WhyNotRequest request) {
        WhyNot whyNot = FINDER.find(request);
        if (whyNot.first() != null && whyNot.score() != null) {
            long sum = whyNot.losses().stream().mapToLong(loss -> Math.round(loss.lossPoints() * 100)).sum();
            assertEquals(Math.round(whyNot.first().score() * 100) - Math.round(whyNot.score() * 100), sum);
            whyNot.losses().forEach(loss -> assertEquals(loss.therePoints() - loss.herePoints(), loss.lossPoints(), 1e-9));
            assertEquals(Math.round(whyNot.score() * 100), whyNot.reasons().stream().mapToLong(reason -> Math.round(reason.points() * 100)).sum());
        }
    }

    @Property(tries = 40, shrinking = ShrinkingMode.OFF)
    void aChangeOfTheQuestionComesTrueWhenItIsAskedAnew(@ForAll("requests") WhyNotRequest request) throws Exception {
        WhyNot whyNot = FINDER.find(request);
        for (WhyNot.Change change : whyNot.changes()) {
            if (change.at().startsWith("/question/")) {
                comesTrue(whyNot, change);
            }
        }
    }

    /** Makes the change in the question as it was understood, and asks it through the usual way in. */
    private static void comesTrue(WhyNot whyNot, WhyNot.Change change) throws Exception {
        Question meant = whyNot.question().meant();
        var question = (com.fasterxml.jackson.databind.node.ObjectNode) JSON.valueToTree(meant);
        question.remove("words");
        question.put("options", 3);
        String at = change.at().substring("/question".length());
        switch (change.alters()) {
            case CHARACTER, WAY, CIRCUMSTANCE -> {
                var list = (com.fasterxml.jackson.databind.node.ArrayNode) question.at(at);
                if (change.alters() == WhyNot.Alters.CIRCUMSTANCE || change.to().isEmpty()) {
                    list.removeAll(); // these questions name at most one
                } else {
                    list.add(change.to());
                }
            }
            case ROOM -> question.put("room", change.to());
            case NEIGHBOURS -> question.putArray("neighbours");
            case GAIN, LIMIT -> {
                var limits = (com.fasterxml.jackson.databind.node.ObjectNode) question.path("limits");
                String field = at.substring(at.lastIndexOf('/') + 1);
                if (change.to().isEmpty()) {
                    limits.remove(field);
                } else {
                    limits.set(field, JSON.readTree(change.to()));
                }
            }
            default -> throw new AssertionError(change.toString());
        }
        Answer answer = Asking.ADVISOR.ask(JSON.treeToValue(question, Request.class));
        List<Option> having = answer.options().stream()
                .filter(option -> option.mics().stream().anyMatch(mic -> mic.micType().equals(whyNot.micType()))).toList();
        if (change.outcome() != WhyNot.Outcome.ALLOWED) {
            assertFalse(having.isEmpty(), change.says());
            assertEquals(change.score(), having.get(0).score(), 1e-9, change.says());
            assertEquals(change.technique(), having.get(0).technique());
        }
        if (change.outcome() == WhyNot.Outcome.FIRST) {
            assertEquals(1, having.get(0).rank(), change.says());
        }
    }

    @Test
    void theQuestionsOfTheseTestsReachChangesOfSeveralKindsAndOutcomes() {
        List<WhyNot.Change> changes = new ArrayList<>();
        for (String mic : List.of("small-condenser-omni", "long-ribbon", "handheld-moving-coil", "large-condenser-cardioid")) {
            for (String words : List.of("brushed snare, small room", "trumpet", "singing voice next to the drums, small room", "cello, no phantom")) {
                changes.addAll(ask(words, mic).changes());
            }
        }
        assertTrue(changes.stream().map(WhyNot.Change::alters).distinct().count() >= 3, changes.toString());
        assertTrue(changes.stream().map(WhyNot.Change::outcome).distinct().count() >= 2, changes.toString());
    }

    /** Found by asking for the types of the first answers of every source; most claims of a distance are of few types. */
    @ParameterizedTest
    @CsvSource({"audience, 1, small-condenser-cardioid, FIRST", "bassoon, 1, compact-ribbon, SHOWN"})
    void aDistanceOrAnAimThatIsSaidToWinWinsWhenItIsSetUpAndJudged(String source, int mics, String micType, WhyNot.Outcome outcome) {
        Request question = new Request(null, source, null, null, null, null, new Limits(mics, null, null, null, null, null, null, null), null, null, null, 3,
                null, null, 0);
        WhyNot whyNot = FINDER.find(new WhyNotRequest(question, micType, null, null));
        List<WhyNot.Change> changes = whyNot.changes().stream()
                .filter(change -> change.alters() == WhyNot.Alters.DISTANCE || change.alters() == WhyNot.Alters.ANGLE).toList();
        assertTrue(changes.stream().anyMatch(change -> change.outcome() == outcome), whyNot.changes().toString());
        List<Option> shown = Asking.ADVISOR.ask(question).options();
        for (WhyNot.Change change : changes) {
            boolean distance = change.alters() == WhyNot.Alters.DISTANCE;
            Setup altered = new Setup(null, List.of(new Setup.Put(micType, whyNot.placement().pattern(), whyNot.placement().position(),
                    distance ? Double.parseDouble(change.to()) : whyNot.placement().distanceM(),
                    distance ? whyNot.placement().aimDegrees() : Double.parseDouble(change.to()))));
            Moves judged = new MoveFinder(Asking.KNOWLEDGE::current).find(new MovesRequest(question, altered, "dull"));
            assertEquals(List.of(), judged.ruledOut(), change.says());
            assertEquals(change.score(), judged.option().score(), 1e-9, change.says());
            double beaten = shown.get(change.outcome() == WhyNot.Outcome.FIRST ? 0 : shown.size() - 1).score();
            assertTrue(judged.option().score() > beaten, change.says() + " against " + beaten);
        }
        assertEquals(changes.size(), changes.stream().map(change -> change.alters() + " " + change.outcome()).distinct().count(), changes.toString());
    }

    @Test
    void theFirstAnswerIsSaidToBeThat() {
        Option first = Asking.first(Asking.ask("trumpet"));
        WhyNot whyNot = ask("trumpet", first.mics().get(0).micType());
        assertEquals(WhyNot.Standing.FIRST, whyNot.standing());
        assertEquals(List.of(), whyNot.changes());
        assertTrue(whyNot.says().contains("first answer already"), whyNot.says());
    }

    @Test
    void whatALimitLeavesOutIsJudgedAsIfItDidNotAndTheLimitIsNamed() {
        WhyNot whyNot = ask("kick drum, only ribbons", "low-source-moving-coil");
        assertEquals(WhyNot.Standing.LIMITED, whyNot.standing());
        assertEquals("/question/limits/onlyFamilies", whyNot.limits().get(0).limit());
        assertNotNull(whyNot.score());
        assertNull(whyNot.rank());
        assertEquals(WhyNot.Alters.LIMIT, whyNot.changes().get(0).alters());
        assertEquals(WhyNot.Outcome.FIRST, whyNot.changes().get(0).outcome(), whyNot.changes().toString());
    }

    @Test
    void phantomThatIsMissingIsALimitAndARule() {
        WhyNot whyNot = ask("trumpet, no phantom", "small-condenser-cardioid");
        assertEquals(WhyNot.Standing.LIMITED, whyNot.standing());
        assertEquals("/question/limits/phantom", whyNot.limits().get(0).limit());
        assertEquals("PWR-001", whyNot.ruledOut().get(0).rule());
        assertTrue(whyNot.changes().stream().anyMatch(change -> change.at().equals("/question/limits/phantom")));
    }

    @Test
    void whatFitsNowhereSaysWhatItWouldNeed() {
        WhyNot line = ask("singing voice", "passive-di");
        assertEquals(WhyNot.Standing.NOWHERE, line.standing());
        assertNull(line.placement());
        assertTrue(line.says().contains("needs a lead"), line.says());
        assertTrue(ask("flute", "re-amp-box").says().contains("plays back"));
    }

    @Test
    void whatARuleRulesOutEverywhereNamesTheRuleAndItsNumbers() {
        WhyNot whyNot = FINDER.find(new WhyNotRequest(Request.of("snare drum"), "long-ribbon", null, "over-rim"));
        assertEquals(WhyNot.Standing.RULED_OUT, whyNot.standing());
        assertFalse(whyNot.ruledOut().get(0).values().isEmpty());
        assertTrue(whyNot.says().contains(whyNot.ruledOut().get(0).says()), whyNot.says());
    }

    @Test
    void aPlaceThatHearsOnlyAPartIsToldApart() {
        WhyNot whyNot = FINDER.find(new WhyNotRequest(Request.of("snare drum, one mic"), "small-condenser-cardioid", null, "under-head"));
        assertEquals(WhyNot.Standing.PART, whyNot.standing());
        assertNull(whyNot.rank());
    }

    @Test
    void allFaultsAreFoundAtOnceEachAtItsPlace() {
        UnusableQuestion unusable = assertThrows(UnusableQuestion.class, () -> FINDER.find(new WhyNotRequest(new Request(null, "snare-drum", null, null,
                "nowhere", null, new Limits(0, null, null, null, null, null, null, null), null, null, null, null, null, null, 0),
                "handheld-moving-coil", Pattern.FIGURE_8, null)));
        assertEquals(List.of("/question/room", "/question/limits/mics", "/pattern"), unusable.faults().stream().map(Fault::at).toList());
        assertEquals(List.of("/question", "/micType"), assertThrows(UnusableQuestion.class,
                () -> FINDER.find(new WhyNotRequest(null, null, null, null))).faults().stream().map(Fault::at).toList());
        assertEquals(List.of("/position"), assertThrows(UnusableQuestion.class,
                () -> FINDER.find(new WhyNotRequest(Request.of("snare"), "long-ribbon", null, "bell"))).faults().stream().map(Fault::at).toList());
        assertEquals(List.of("/question/words"), assertThrows(UnusableQuestion.class,
                () -> FINDER.find(new WhyNotRequest(Request.of("qwzx blorp"), "long-ribbon", null, null))).faults().stream().map(Fault::at).toList());
    }

    @Test
    void theSameRequestHasTheSameAnswerToTheByte() throws Exception {
        assertEquals(JSON.writeValueAsString(ask("cello, warm", "small-condenser-omni")), JSON.writeValueAsString(ask("cello, warm", "small-condenser-omni")));
    }
}
