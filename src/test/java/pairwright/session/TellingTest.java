package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pairwright.advice.KnowledgeStore;
import pairwright.model.Caution;
import pairwright.model.Effect;
import pairwright.model.Option;
import pairwright.model.Pattern;
import pairwright.model.Severity;
import pairwright.rules.RuleInfo;

class TellingTest {
    private static final List<RuleInfo> RULES = KnowledgeStore.builtIn().current().rules().rules();
    private static final Seat FIDDLE = seat("fiddle", "Mirre on fiddle", "violin");
    private static final Seat VOICE = seat("voice", "Ines singing", "singing-voice");
    private static final LineUp LINE_UP = new LineUp(null, new Floor(null, 8, 6, 3, 0.5), List.of(FIDDLE, VOICE), null, List.of(), List.of(), null, null, 1);

    private static Seat seat(String id, String player, String source) {
        return new Seat(id, player, source, 1, 1, 0, null, null, null, null, null, true, null, false);
    }

    private static Said said(String rule, Severity severity, int line, String seat, String says) {
        return new Said(rule, List.of(seat), List.of(line), Effect.CAUTION, 0, severity, says, List.of(), "");
    }

    private static Caution caution(String rule, Severity severity, String says) {
        return new Caution(rule, 0, severity, says, List.of(), "");
    }

    /** Neither a line nor a channel: what is told rests on what was said. */
    private static Telling telling(List<Said> whole, List<Caution> fiddle, List<Caution> voice) {
        return Telling.of(new Plan(1, 0, true, 0, List.of(served("fiddle", fiddle), served("voice", voice)), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), new Plan.SetUp(null, null, 0), List.of(), List.of(), whole), LINE_UP, RULES);
    }

    private static Plan.Served served(String seat, List<Caution> cautions) {
        return new Plan.Served(seat, new Option(1, 12, "single", "Single", List.of(), null, List.of(), cautions, null));
    }

    @Test
    void aRuleThatSpeaksOfThreeLinesIsOneEntryThatNamesThem() {
        List<Told> told = telling(List.of(said("PLN-054", Severity.NOTE, 2, "voice", "Line 2 shares."), said("PLN-054", Severity.NOTE, 3, "voice", "Line 3 shares."),
                said("PLN-054", Severity.NOTE, 7, "fiddle", "Line 7 shares.")), List.of(), List.of()).notes();
        assertEquals(List.of("Line 2 shares. The same goes for line 3 and line 7."), told.stream().map(Told::says).toList());
    }

    @Test
    void oneSentenceOfTwoSeatsNamesBothAndAddsNothing() {
        Caution clutch = caution("HND-018", Severity.CARE, "The clutch gives way.");
        List<Told> told = telling(List.of(), List.of(clutch), List.of(clutch)).grave();
        assertEquals(List.of(new Told("HND-018", Severity.CARE, "The clutch gives way.", List.of("fiddle", "voice"), false)), told);
    }

    @Test
    void dangersComeFirstAndNoneOfThemIsLost() {
        List<Told> told = telling(List.of(said("PLN-071", Severity.CARE, 1, "voice", "Louder.")),
                List.of(caution("SAF-005", Severity.DANGER, "89 dB(A) loud."), caution("PWR-002", Severity.DANGER, "Off.")),
                List.of(caution("SAF-005", Severity.DANGER, "95 dB(A) loud."))).grave();
        assertEquals(List.of("89 dB(A) loud.", "Off.", "95 dB(A) loud.", "Louder."), told.stream().map(Told::says).toList());
    }

    @Test
    void whatHoldsAtOnePlaceOnlyIsToldAtEach() {
        List<Told> told = telling(List.of(said("PLN-055", Severity.NOTE, 2, "voice", "Hums."), said("PLN-055", Severity.NOTE, 3, "fiddle", "Rattles.")),
                List.of(), List.of()).notes();
        assertEquals(List.of("Hums.", "Rattles."), told.stream().map(Told::says).toList());
    }

    @Test
    void whatThePlanHasSettledIsNotAskedForAgain() {
        List<Caution> asked = List.of(caution("PAI-016", Severity.CARE, "Put them on different groups."), caution("PWR-002", Severity.CARE, "Power off first."));
        Telling planned = telling(List.of(said("PLN-092", Severity.CARE, 1, "voice", "In this order.")), asked, List.of());
        assertEquals(Set.of("PLN-092"), planned.grave().stream().map(Told::rule).collect(Collectors.toSet()));
        assertTrue(planned.settled("PAI-016", "fiddle"));
        Telling unpatched = telling(List.of(), asked, List.of());
        assertFalse(unpatched.settled("PWR-002", "fiddle"), "nobody has said it yet");
        assertEquals(List.of("PWR-002"), unpatched.grave().stream().map(Told::rule).toList());
    }

    @Test
    void whatIsSaidOfOneSeatSettlesNothingOfAnother() {
        Plan plan = SmallPlan.plan(1);
        Line line = plan.lines().get(0);
        String other = plan.lines().stream().map(Line::seat).filter(seat -> !seat.equals(line.seat())).findFirst().orElseThrow();
        Line spoken = new Line(line.number(), line.channel(), line.channelLabel(), line.bank(), line.unit(), line.seat(), line.name(), line.source(), line.mic(), line.placement(), line.spot(),
                line.stand(), line.standLabel(), line.standKind(), line.standRatio(), line.sharesStandWith(), line.booster(), line.boosterGainDb(), line.phantom(), line.phantomWanted(), line.currentMa(),
                line.gainDb(), line.highPassHz(), line.between(), List.of(said("PLN-071", Severity.CARE, line.number(), line.seat(), "Louder.")));
        Telling telling = Telling.of(new Plan(1, 0, true, 0, List.of(), List.of(), List.of(spoken), List.of(), List.of(), List.of(), List.of(), plan.setUp(), List.of(), List.of(), List.of()), LINE_UP, RULES);
        assertTrue(telling.settled("NEI-010", line.seat()));
        assertFalse(telling.settled("NEI-010", other));
    }

    private static Line saying(int number, int mic, Said... said) {
        Line line = Lines.line(LINE_UP, number, "fiddle", "small-condenser-cardioid", Pattern.CARDIOID, Rooms.CATALOGUE.sources().get("violin").positions().get(0).id(), 0.5, 0);
        return new Line(number, line.channel(), line.channelLabel(), line.bank(), line.unit(), line.seat(), line.name(), line.source(), mic, line.placement(), line.spot(), line.stand(),
                line.standLabel(), line.standKind(), line.standRatio(), line.sharesStandWith(), line.booster(), line.boosterGainDb(), line.phantom(), line.phantomWanted(), line.currentMa(),
                line.gainDb(), line.highPassHz(), line.between(), List.of(said));
    }

    private static Set<String> dangers(Caution light, Line... lines) {
        return Telling.of(new Plan(1, 0, true, 0, List.of(served("fiddle", List.of(light))), List.of(), List.of(lines), List.of(), List.of(), List.of(), List.of(),
                new Plan.SetUp(null, null, 0), List.of(), List.of(), List.of()), LINE_UP, RULES).grave().stream().map(Told::rule).collect(Collectors.toSet());
    }

    @Test
    void aLightStandIsNotSpokenOfWhereTheStandThatIsGivenIsKnown() {
        Said heavy = said("PLN-058", Severity.DANGER, 1, "fiddle", "On the tall one.");
        Caution light = new Caution("SAF-001", 1, Severity.DANGER, "An ordinary light stand tips over here.", List.of(), "");
        assertEquals(Set.of("PLN-058"), dangers(light, saying(1, 1, heavy)));
        assertEquals(Set.of("PLN-058"), dangers(light, saying(1, 1, heavy), saying(2, 2)), "the other microphone was not spoken of");
        Caution both = new Caution("SAF-001", 0, Severity.DANGER, "An ordinary light stand tips over here.", List.of(), "");
        assertEquals(Set.of("PLN-058", "SAF-001"), dangers(both, saying(1, 1, heavy), saying(2, 2)), "nobody knows the stand of the second");
        assertEquals(Set.of("SAF-001"), dangers(light, saying(1, 1)));
        Caution hung = new Caution("SAF-004", 1, Severity.DANGER, "Hung above people.", List.of(), "");
        assertEquals(Set.of("PLN-058", "SAF-004"), dangers(hung, saying(1, 1, heavy)), "it says nothing of what hangs");
    }

    @Test
    void allThatIsSaidOfASeatIsToldWithIt() {
        Telling telling = telling(List.of(), List.of(caution("HND-015", Severity.NOTE, "Keep 30 cm free.")), List.of(caution("ROO-016", Severity.NOTE, "A window.")));
        List<String> rules = Stream.of("fiddle", "voice").map(seat -> telling.ofSeat(served(seat, seat.equals("fiddle")
                ? List.of(caution("HND-015", Severity.NOTE, "Keep 30 cm free.")) : List.of()))).flatMap(List::stream).map(Told::rule).toList();
        assertEquals(List.of("HND-015"), rules);
    }
}
