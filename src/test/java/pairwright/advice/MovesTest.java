package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
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
import pairwright.model.Answer;
import pairwright.model.Complaint;
import pairwright.model.Fault;
import pairwright.model.MoveKind;
import pairwright.model.Moves;
import pairwright.model.MovesRequest;
import pairwright.model.Neighbour;
import pairwright.model.Option;
import pairwright.model.Pattern;
import pairwright.model.Predicted;
import pairwright.model.Request;
import pairwright.model.Setup;
import pairwright.model.Severity;

class MovesTest {
    private static final MoveFinder FINDER = new MoveFinder(Asking.KNOWLEDGE::current);

    private static Moves ask(Request question, Setup setup, String heard) {
        return FINDER.find(new MovesRequest(question, setup, heard));
    }

    private static Setup one(String mic, Pattern pattern, String position, double distanceM) {
        return new Setup(null, List.of(new Setup.Put(mic, pattern, position, distanceM, null)));
    }

    /** A question, which of its options stands there, and what is heard. */
    record Case(Request question, int option, String heard) {
    }

    @Provide
    Arbitrary<Case> cases() {
        var catalogue = Asking.KNOWLEDGE.current().catalogue();
        Arbitrary<Request> questions = Combinators.combine(Arbitraries.of(catalogue.sources().keySet()),
                        Arbitraries.of(catalogue.rooms().keySet()).injectNull(0.5),
                        Arbitraries.of(List.<Neighbour>of(), List.of(new Neighbour("drum-kit", 2, 120))))
                .as((source, room, neighbours) -> new Request(null, source, null, null, room, null, null, neighbours, null, null, null, null, null, 0));
        return Combinators.combine(questions, Arbitraries.integers().between(0, 2), Arbitraries.of(catalogue.complaints().keySet())).as(Case::new);
    }

    private static Setup setup(Case one) {
        Answer answer = Asking.ADVISOR.ask(one.question());
        return answer.options().isEmpty() ? null : Setup.of(answer.options().get(Math.min(one.option(), answer.options().size() - 1)));
    }

    @Property(tries = 150, shrinking = ShrinkingMode.OFF)
    void whatAMoveDoesIsTheDifferenceOfTwoPredictions(@ForAll("cases") Case one) {
        Setup setup = setup(one);
        if (setup == null) {
            return;
        }
        Moves moves = ask(one.question(), setup, one.heard());
        for (Moves.Move move : moves.moves()) {
            if (move.changed() == null || move.by() == MoveKind.INSTRUMENT) {
                continue;
            }
            // both set-ups once more, each in a request of its own
            Moves now = ask(one.question(), setup, one.heard());
            Moves then = ask(one.question(), Setup.of(move.option()), one.heard());
            assertEquals(then.option().score() - now.option().score(), move.scorePoints(), 1e-9, move.says());
            Predicted before = now.option().mics().get(Math.max(0, move.mic() - 1)).predicted();
            Predicted after = then.option().mics().get(Math.max(0, move.mic() - 1)).predicted();
            for (int band = 0; band < 9; band++) {
                assertEquals(after.colourDb().at(band) - before.colourDb().at(band), move.changed().colourDb().at(band), 1e-9);
            }
            assertEquals(after.proximityDb() - before.proximityDb(), move.changed().proximityDb(), 1e-9);
            same(after.headroomDb(), before.headroomDb(), move.changed().headroomDb());
            same(after.directToReverbDb(), before.directToReverbDb(), move.changed().directToReverbDb());
            same(after.signalToNoiseDb(), before.signalToNoiseDb(), move.changed().signalToNoiseDb());
            same(after.separationDb(), before.separationDb(), move.changed().separationDb());
        }
    }

    private static void same(Double after, Double before, Double change) {
        if (after == null || before == null) {
            assertNull(change);
        } else {
            assertEquals(after - before, change, 1e-9);
        }
    }

    @Property(tries = 150, shrinking = ShrinkingMode.OFF)
    void noMoveThatIsSuggestedIsRuledOutOrBringsANewDanger(@ForAll("cases") Case one) {
        Setup setup = setup(one);
        if (setup == null) {
            return;
        }
        Moves moves = ask(one.question(), setup, one.heard());
        assertTrue(moves.moves().size() <= 3);
        assertEquals(moves.moves().size(), new HashSet<>(moves.moves()).size());
        for (Moves.Move move : moves.moves()) {
            assertTrue(move.newCautions().stream().noneMatch(caution -> caution.severity() == Severity.DANGER), move.toString());
            if (move.option() != null) {
                Moves then = ask(one.question(), Setup.of(move.option()), one.heard());
                if (move.by() != MoveKind.INSTRUMENT) {
                    assertEquals(List.of(), then.ruledOut(), move.says());
                }
                Set<String> dangers = new HashSet<>();
                moves.option().cautions().stream().filter(caution -> caution.severity() == Severity.DANGER).forEach(caution -> dangers.add(caution.rule()));
                move.option().cautions().stream().filter(caution -> caution.severity() == Severity.DANGER)
                        .forEach(caution -> assertTrue(dangers.contains(caution.rule()), caution.says()));
            }
        }
    }

    @Property(tries = 100, shrinking = ShrinkingMode.OFF)
    void movesComeInTheOrderOfTheCatalogue(@ForAll("cases") Case one) {
        Setup setup = setup(one);
        if (setup == null) {
            return;
        }
        Moves moves = ask(one.question(), setup, one.heard());
        List<String> order = Asking.KNOWLEDGE.current().catalogue().complaints().get(moves.heard()).moves().stream().map(remedy -> remedy.says()).toList();
        List<Integer> places = moves.moves().stream().map(move -> order.indexOf(move.says())).toList();
        assertEquals(places.stream().sorted().toList(), places);
    }

    @Test
    void aBoomyCloseMicrophoneGoesBackFirstAndTheLiftThatIsToldIsThatOfTheLaw() {
        Moves moves = ask(Request.of("double bass"), one("small-condenser-cardioid", Pattern.CARDIOID, "bridge", 0.1), "boomy");
        Moves.Move back = moves.moves().stream().filter(move -> move.by() == MoveKind.DISTANCE).findFirst().orElseThrow();
        assertTrue(back.changed().proximityDb() < -0.9, back.toString());
        assertTrue(back.effect().contains("less at 100 Hz"), back.effect());
        assertTrue(back.option().mics().get(0).distanceM() > 0.1);
        assertTrue(back.change().startsWith("10 -> "), back.change());
    }

    @Test
    void aDistanceOffTheGridIsPredictedAsItIs() {
        Moves moves = ask(Request.of("singing voice"), one("large-condenser-cardioid", Pattern.CARDIOID, "behind-screen", 0.137), "boomy");
        assertEquals(0.137, moves.option().mics().get(0).distanceM());
        Moves closer = ask(Request.of("singing voice"), one("large-condenser-cardioid", Pattern.CARDIOID, "behind-screen", 0.07), "boomy");
        assertTrue(closer.option().mics().get(0).predicted().proximityDb() > moves.option().mics().get(0).predicted().proximityDb() + 1);
    }

    @Test
    void anOptionOfAnAnswerIsPredictedAsInTheAnswer() {
        Answer answer = Asking.ask("grand piano, stereo, small room");
        for (Option option : answer.options()) {
            Moves moves = ask(Request.of("grand piano, stereo, small room"), Setup.of(option), "roomy");
            assertEquals(option.score(), moves.option().score(), 1e-9);
            assertEquals(option.mics(), moves.option().mics());
            assertEquals(option.together(), moves.option().together());
            assertEquals(option.cautions(), moves.option().cautions());
        }
    }

    @Test
    void anAmplifierTurnedDownLeavesMoreInHand() {
        Moves moves = ask(Request.of("driven guitar amp"), one("compact-ribbon", Pattern.FIGURE_8, "off-axis", 0.1), "clipping");
        Moves.Move down = moves.moves().stream().filter(move -> move.by() == MoveKind.INSTRUMENT).findFirst().orElseThrow();
        assertEquals(10, down.changed().headroomDb(), 1e-9);
        assertEquals(-10, down.changed().typicalDbSpl(), 1e-9);
    }

    @Test
    void aPairThatCombsIsToldItsFirstGap() {
        Answer answer = Asking.ask("kick drum, inside and outside");
        Option pair = answer.options().stream().filter(option -> option.together() != null && option.together().firstNullHz() != null).findFirst().orElseThrow();
        Moves moves = ask(Request.of("kick drum, inside and outside"), Setup.of(pair), "hollow");
        assertEquals(MoveKind.POLARITY, moves.moves().get(0).by());
        assertFalse(moves.moves().get(0).effect().isEmpty());
        assertTrue(moves.notes().get(0).contains("first gap"), moves.notes().toString());
    }

    @Test
    void withoutANeighbourNothingIsComputedOfOneAndThatIsSaid() {
        Moves moves = ask(Request.of("violin"), one("small-condenser-cardioid", Pattern.CARDIOID, "above-top-plate", 0.5), "bleed");
        assertTrue(moves.notes().get(0).contains("names no neighbour"), moves.notes().toString());
        assertTrue(moves.moves().stream().allMatch(move -> move.changed() == null));
    }

    @ParameterizedTest
    @CsvSource({"boomy,boomy", "BOOMY,boomy", "boomi,boomy", "muddy,boomy", "too much of a neighbour,neighbour", "bleed,neighbour", "hissy,noisy",
            "s sounds,sibilant", "essy,sibilant", "plosives,popping", "echoey,roomy", "it sounds tinny,thin", "muffled,dull", "clipping,distorted",
            "phasey,hollow", "cardboard,boxy", "key noise,clicky", "too dry,dead", "shrill,harsh"})
    void wordsThatPeopleUseFindTheirComplaint(String word, String id) {
        assertEquals(id, ask(Request.of("singing voice"), one("large-condenser-cardioid", Pattern.CARDIOID, "behind-screen", 0.1), word).heard());
    }

    @Test
    void noWordMeansTwoComplaints() {
        Set<String> seen = new HashSet<>();
        for (Complaint complaint : Asking.KNOWLEDGE.current().catalogue().complaints().values()) {
            assertTrue(seen.add(complaint.id()), complaint.id());
            complaint.words().forEach(word -> assertTrue(seen.add(word), word + " of " + complaint.id()));
        }
    }

    @Test
    void allFaultsAreFoundAtOnceEachAtItsPlace() {
        Setup setup = new Setup("single", List.of(new Setup.Put("long-ribon", null, "nowhere", -1.0, 400.0)));
        UnusableQuestion unusable = assertThrows(UnusableQuestion.class, () -> ask(Request.of("snare"), setup, "fantastic"));
        assertEquals(List.of("/option/mics/0/micType", "/option/mics/0/position", "/option/mics/0/distanceM", "/option/mics/0/aimDegrees", "/heard"),
                unusable.faults().stream().map(Fault::at).toList());
        assertTrue(unusable.faults().get(4).says().contains("boomy, boxy"), unusable.faults().toString());
        assertEquals(List.of("/question", "/option", "/heard"), assertThrows(UnusableQuestion.class, () -> ask(null, null, null))
                .faults().stream().map(Fault::at).toList());
        assertEquals(List.of("/option/mics/0/position"), assertThrows(UnusableQuestion.class,
                () -> ask(Request.of("snare"), one("passive-di", null, "over-rim", 0.05), "thin")).faults().stream().map(Fault::at).toList());
        assertEquals(List.of("/option/technique"), assertThrows(UnusableQuestion.class, () -> ask(Request.of("snare"), new Setup("mid-side", List.of(
                new Setup.Put("handheld-moving-coil", null, "over-rim", 0.05, null), new Setup.Put("handheld-moving-coil", null, "over-rim", 0.05, null))),
                "thin")).faults().stream().map(Fault::at).toList());
    }

    @Test
    void everyComplaintBringsAMoveAtSomeSource() {
        for (Complaint complaint : Asking.KNOWLEDGE.current().catalogue().complaints().values()) {
            Moves voice = ask(Request.of("singing voice next to the drums"), one("large-condenser-multi-pattern", Pattern.CARDIOID, "behind-screen", 0.15), complaint.id());
            Moves brass = ask(Request.of("trumpet next to the drums"), one("small-condenser-cardioid", Pattern.CARDIOID, "on-axis", 0.3), complaint.id());
            assertFalse(voice.moves().isEmpty() && brass.moves().isEmpty(), complaint.id());
        }
    }
}
