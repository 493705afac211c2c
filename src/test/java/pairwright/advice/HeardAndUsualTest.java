package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Answer;
import pairwright.model.Attack;
import pairwright.model.HeardBefore;
import pairwright.model.Request;
import pairwright.model.Source;

/** A player who was heard before: reckoned with, and said what it changed. */
class HeardAndUsualTest {
    private static final OctaveCurve BRIGHT = OctaveCurve.of(new double[] {0, 0, 0, 0, 0, 3, 6, 6, 4});
    private final Knowledge knowledge = Asking.KNOWLEDGE.current();
    private final Advisor advisor = new Advisor(() -> knowledge);

    @Test
    void whoWasHeardAsTheEntrySaysChangesNothing() {
        for (Source source : knowledge.catalogue().sources().values()) {
            HeardBefore heard = new HeardBefore(source.level() == null ? null : source.level().typicalDbSpl(), source.level() == null ? null : source.level().peakDbSpl(), OctaveCurve.ZERO,
                    source.fundamentalHz().low(), source.fundamentalHz().high(), source.crestDb() == null ? null : source.crestDb().high(), source.attack(), null);
            Answer with = advisor.ask(Request.of(null).of(source.id(), heard));
            assertEquals(advisor.ask(Request.of(null).of(source.id(), null)).options(), with.options(), source.id());
            assertEquals(List.of(with.options().isEmpty() ? "It changes nothing: nothing fits with or without it." : "It changes nothing of the order."), with.heard().changed(), source.id());
        }
    }

    @Test
    void theAnswerIsThatOfACatalogueWhoseEntryHasWhatWasHeard() {
        HeardBefore heard = new HeardBefore(96.0, 126.0, BRIGHT, 50.0, null, 28.0, Attack.IMPULSIVE, null);
        for (String id : List.of("double-bass", "violin", "trumpet", "flute", "accordion")) {
            Knowledge other = new Knowledge(knowledge.catalogue().with(heard.over(knowledge.catalogue().sources().get(id))), knowledge.reader(), knowledge.rules());
            Answer with = advisor.ask(Request.of("small room, warm").of(id, heard));
            assertEquals(new Advisor(() -> other).ask(Request.of("small room, warm").of(id, null)).options(), with.options(), id);
        }
    }

    @Test
    void itSaysWhatWasHeardAndWhatIsOtherwiseForIt() {
        Answer loud = advisor.ask(Request.of(null).of("violin", new HeardBefore(110.0, 138.0, BRIGHT, null, null, null)));
        assertTrue(loud.heard().noted().get(0).startsWith("It plays at 110 dB SPL at one metre, peaks 138 dB SPL; of its kind "), loud.heard().toString());
        assertEquals("Against the usual violin it has 3 dB more at 2 kHz, 6 dB more at 4 kHz, 6 dB more at 8 kHz and 4 dB more at 16 kHz.", loud.heard().noted().get(1));
        assertFalse(loud.heard().changed().contains("It changes nothing of the order.") && loud.heard().changed().size() == 1, loud.heard().toString());

        Answer shape = advisor.ask(Request.of(null).of("violin", new HeardBefore(null, null, BRIGHT, 180.0, null, null)));
        assertTrue(shape.heard().noted().get(0).startsWith("How loud it is was not read from a meter: the levels are those of its kind, "), shape.heard().toString());
        assertTrue(shape.heard().noted().get(2).startsWith("Its lowest note is 180 Hz in place of "), shape.heard().toString());
        assertNull(advisor.ask(Request.of("violin")).heard());
    }

    @Test
    void peaksThatStandFurtherOutAreReckonedWithAndThoseThatStandLessFarAreOnlyTold() {
        Source violin = knowledge.catalogue().sources().get("violin");
        double moreDb = 6;
        HeardBefore hard = new HeardBefore(null, null, null, null, null, violin.crestDb().high() + moreDb, Attack.IMPULSIVE, null);
        assertEquals(violin.level().peakDbSpl() + moreDb, hard.over(violin).level().peakDbSpl());
        assertEquals(violin.level().typicalDbSpl(), hard.over(violin).level().typicalDbSpl());
        Answer answer = advisor.ask(Request.of(null).of("violin", hard));
        assertTrue(answer.heard().noted().get(0).contains("the running level is that of its kind"), answer.heard().toString());
        assertTrue(answer.heard().noted().get(1).endsWith("The peaks are reckoned higher by what is more."), answer.heard().toString());
        assertEquals("Its notes start impulsive; of its kind " + violin.attack().id() + " is usual.", answer.heard().noted().get(2));
        assertEquals(violin.level().peakDbSpl() + moreDb, answer.question().numbers().peakDbSpl(), 0.001);

        HeardBefore soft = new HeardBefore(null, null, null, null, null, violin.crestDb().low() - moreDb / 2, null, null);
        assertEquals(violin.level(), soft.over(violin).level());
        assertEquals(130.0, new HeardBefore(null, 130.0, null, null, null, 50.0, null, null).over(violin).level().peakDbSpl());
    }

    @Test
    void whatIsToldToChangeIsFoundInBothAnswers() {
        boolean changed = false;
        for (String id : knowledge.catalogue().sources().keySet()) {
            Answer with = advisor.ask(Request.of(null).of(id, new HeardBefore(null, null, OctaveCurve.of(new double[] {0, 0, 3, 0, 0, -4, -6, -6, -6}), null, null, null)));
            Answer without = advisor.ask(Request.of(null).of(id, null));
            assertNotNull(with.heard(), id);
            boolean told = with.heard().changed().stream().anyMatch(says -> says.startsWith("First comes "));
            if (!with.options().isEmpty()) {
                boolean other = !with.options().get(0).technique().equals(without.options().get(0).technique())
                        || !with.options().get(0).mics().get(0).micType().equals(without.options().get(0).mics().get(0).micType());
                assertTrue(told || !other, id + ": " + with.heard());
                changed |= other;
            }
        }
        assertTrue(changed, "nothing ever came first for it");
    }

    @Test
    void whatNobodyCanBeIsRefusedAtItsPlace() {
        UnusableQuestion refused = assertThrows(UnusableQuestion.class, () -> advisor.ask(Request.of(null).of("violin",
                new HeardBefore(300.0, 200.0, null, 400.0, 300.0, 70.0, null, List.of("sways")))));
        assertEquals(List.of("/heard/typicalDbSpl", "/heard/peakDbSpl", "/heard/peakDbSpl", "/heard/highestHz", "/heard/crestDb", "/heard/habits"), refused.faults().stream().map(fault -> fault.at()).toList());
    }
}
