package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.advice.Asking.ask;
import static pairwright.advice.Asking.first;
import static pairwright.advice.Asking.mics;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pairwright.model.Answer;
import pairwright.model.Limits;
import pairwright.model.MicFamily;
import pairwright.model.Option;
import pairwright.model.Pattern;
import pairwright.model.Placement;
import pairwright.model.Reading;
import pairwright.model.Request;
import pairwright.model.Severity;

/** Real questions and what an engineer would expect of the answers. */
class AnswersTest {
    private static final Set<MicFamily> CONDENSERS = Set.of(MicFamily.SMALL_DIAPHRAGM_CONDENSER, MicFamily.LARGE_DIAPHRAGM_CONDENSER);

    @Test
    void aBrushedSnareInAQuietTrioGetsMicrophonesThatHearTheBrushes() {
        Answer answer = ask("brushed snare, quiet jazz trio, small room");
        assertEquals("snare-drum", answer.question().meant().source());
        assertEquals(List.of("brushed"), answer.question().meant().ways());
        assertEquals("small-room", answer.question().meant().room());
        assertEquals(3, answer.options().size());
        assertTrue(mics(answer).stream().anyMatch(mic -> CONDENSERS.contains(mic.family()) || mic.family() == MicFamily.RIBBON));
    }

    @Test
    void aHardRockKickWithoutCondensersIsAMovingCoilThatTakesIt() {
        Answer answer = ask("kik, hard rock, no condensers");
        assertEquals("kick-drum", answer.question().meant().source());
        assertEquals("low-source-moving-coil", first(answer).mics().get(0).micType());
        assertTrue(mics(answer).stream().noneMatch(mic -> CONDENSERS.contains(mic.family())));
    }

    @Test
    void aDoubleBassBesideTheDrumsHearsTheBassMoreThanTheDrums() {
        Answer answer = ask("contrabass next to the drums, warm");
        assertEquals("double-bass", answer.question().meant().source());
        assertEquals("drum-kit", answer.question().meant().neighbours().get(0).source());
        assertEquals(List.of("warm"), answer.question().meant().character());
        boolean wired = mics(answer).stream().anyMatch(mic -> mic.family() == MicFamily.PICKUP || mic.family() == MicFamily.LINE);
        boolean nulled = mics(answer).stream().anyMatch(mic -> mic.nullMissDegrees() != null && mic.nullMissDegrees() < 15);
        assertTrue(wired || nulled, "neither a lead nor a null is offered");
    }

    @Test
    void aCajonWithTwoChannelsAndNoPhantomKeepsToBoth() {
        Answer answer = ask("what do I put on a cajon with two channels and no phantom");
        assertEquals("cajon", answer.question().meant().source());
        assertFalse(answer.options().isEmpty());
        for (Option option : answer.options()) {
            assertTrue(option.mics().stream().noneMatch(Placement::phantom), option.toString());
            assertTrue(option.mics().stream().mapToInt(Placement::channels).sum() <= 2);
        }
        assertTrue(answer.options().stream().anyMatch(option -> option.mics().size() == 2), "two channels allow a pair");
    }

    @Test
    void aVerySoftNylonGuitarOnACheapPreampIsNotGivenAPassiveRibbon() {
        Answer answer = ask("nylon guitr fingerpicked very soft, cheap preamp");
        assertEquals("nylon-guitar", answer.question().meant().source());
        assertTrue(mics(answer).stream().noneMatch(mic -> mic.micType().equals("long-ribbon")));
        assertTrue(CONDENSERS.contains(first(answer).mics().get(0).family()), first(answer).mics().get(0).micType());
    }

    @Test
    void aTrumpetThatIsTooBrightGetsARibbon() {
        Answer answer = ask("trumpet too bright, dark please");
        assertEquals(List.of("dark"), answer.question().meant().character());
        assertTrue(first(answer).mics().stream().anyMatch(mic -> mic.family() == MicFamily.RIBBON), first(answer).toString());
    }

    @Test
    void aSingerWithAGuitarGetsTwoNullsApart() {
        Answer answer = ask("singer and guitar at once, one player");
        assertEquals("voice-and-guitar", answer.question().meant().source());
        Option nulls = answer.options().stream().filter(option -> option.technique().equals("nulls-apart")).findFirst().orElseThrow();
        assertTrue(nulls.mics().stream().allMatch(mic -> mic.pattern() == Pattern.FIGURE_8));
    }

    @Test
    void aWhisperIsGivenALowNoiseMicrophoneClose() {
        Answer answer = ask("whispered voice");
        assertEquals("whispered-voice", answer.question().meant().source());
        assertEquals("large-condenser-cardioid", first(answer).mics().get(0).micType());
    }

    @Test
    void aGrandPianoInABadRoomIsTakenClose() {
        Answer answer = ask("grand piano for pop in a bad room");
        assertEquals("grand-piano", answer.question().meant().source());
        assertTrue(first(answer).mics().stream().allMatch(mic -> mic.distanceM() < 1), first(answer).mics().toString());
    }

    @Test
    void aHornHasTwoReadings() {
        Answer answer = ask("horn");
        Set<String> readings = answer.question().otherReadings().stream().map(Reading::id).collect(Collectors.toSet());
        assertTrue(readings.containsAll(Set.of("french-horn", "horn-section")), readings.toString());
        assertFalse(answer.options().isEmpty());
    }

    @Test
    void nonsenseIsSaidToBeNotUnderstood() {
        Answer answer = ask("xyzzy");
        assertNull(answer.question().meant().source());
        assertEquals(List.of("xyzzy"), answer.question().notUnderstood());
        assertEquals(List.of(), answer.options());
    }

    @Test
    void anEmptySentenceIsRefusedWithWhatToDo() {
        UnusableQuestion refused = assertThrows(UnusableQuestion.class, () -> ask(""));
        assertEquals("/words", refused.faults().get(0).at());
        assertTrue(refused.getMessage().contains("Say what is recorded"), refused.getMessage());
    }

    @Test
    void tenThousandCharactersAreRefusedWithTheirNumber() {
        UnusableQuestion refused = assertThrows(UnusableQuestion.class, () -> ask("snare ".repeat(1667).substring(0, 10_000)));
        assertTrue(refused.getMessage().contains("10000 characters"), refused.getMessage());
    }

    @Test
    void everyFaultOfAQuestionIsSaidAtOnce() {
        Limits limits = new Limits(0, null, 400.0, null, null, null, List.of("no-such-mic"), null);
        UnusableQuestion refused = assertThrows(UnusableQuestion.class,
                () -> Asking.ADVISOR.ask(new Request(null, "snare-drumm", null, null, "nowhere", null, limits, null, null, null, 99, null, null, null)));
        assertEquals(List.of("/source", "/room", "/options", "/limits/mics", "/limits/preampGainDb", "/limits/onlyMicTypes/0"),
                refused.faults().stream().map(fault -> fault.at()).toList());
        assertTrue(refused.faults().get(0).says().contains("Maybe snare-drum"), refused.faults().get(0).says());
    }

    @Test
    void anIdNothingComesNearToIsAnsweredWithThoseThatAreKnown() {
        UnusableQuestion refused = assertThrows(UnusableQuestion.class, () -> Asking.ADVISOR.ask(
                new Request(null, "qwzx", null, List.of("huge"), null, null, null, null, null, null, null, null, null, null)));
        assertEquals(List.of("there is no source \"qwzx\". All ids are at /api/sources",
                "there is no dynamic \"huge\". Known: loud, medium, soft, very-loud, very-soft"),
                refused.faults().stream().map(fault -> fault.says()).toList());
    }

    @Test
    void aWayTheSourceDoesNotKnowIsSaidToBeNotUnderstood() {
        Answer answer = Asking.ADVISOR.ask(new Request(null, "trumpet", List.of("bowed"), null, null, null, null, null, null, null, null, null, null, null));
        assertEquals(List.of("bowed"), answer.question().notUnderstood());
    }

    @Test
    void aFamilyThatIsOnlyNamedIsAWishThatCountsAndIsNoLimit() {
        Answer answer = Asking.ask("trumpet, ribbon please");
        assertEquals(List.of(MicFamily.RIBBON), answer.question().meant().wishes());
        assertEquals(Limits.NONE, answer.question().meant().limits());
        assertTrue(answer.question().understood().contains(new Reading("ribbon", "wish", "ribbons", "Ribbon microphones")),
                answer.question().understood().toString());
        assertEquals(MicFamily.RIBBON, mics(answer).get(0).family());
        assertTrue(first(answer).reasons().stream().anyMatch(reason -> reason.rule().equals("WSH-001")), first(answer).reasons().toString());
        assertEquals(List.of(MicFamily.RIBBON), Advisor.question(answer.question().meant(), Limits.NONE).wishes());
    }

    @Test
    void aWishOfAFieldWinsOverThatOfTheWords() {
        Answer answer = Asking.ADVISOR.ask(wishing("trumpet, ribbon please", List.of(MicFamily.MOVING_COIL)));
        assertEquals(List.of(MicFamily.MOVING_COIL), answer.question().meant().wishes());
        assertEquals(List.of(new Reading("", "wish", "moving-coil", "Moving-coil microphones")),
                answer.question().understood().stream().filter(reading -> reading.as().equals("wish")).toList());
        UnusableQuestion unusable = assertThrows(UnusableQuestion.class,
                () -> Asking.ADVISOR.ask(wishing("trumpet", Arrays.asList(MicFamily.RIBBON, null))));
        assertEquals(List.of("/wishes/1"), unusable.faults().stream().map(fault -> fault.at()).toList());
    }

    private static Request wishing(String words, List<MicFamily> wishes) {
        return new Request(words, null, null, null, null, null, null, null, null, null, null, null, null, wishes, 0);
    }

    @Test
    void whenNothingFitsTheLimitInTheWayIsNamed() {
        Limits onlyShotguns = new Limits(1, false, null, null, List.of(MicFamily.SHOTGUN), null, null, null);
        Answer answer = ask("snare-drum", null, null, onlyShotguns, null);
        assertEquals(List.of(), answer.options());
        assertTrue(answer.instead().stream().anyMatch(way -> way.limit().equals("/limits/onlyFamilies") && way.says().contains("Without it: ")),
                answer.instead().toString());
    }

    @Test
    void aUsualFirstChoiceThatALimitTakesAwayIsShownAsRuledOut() {
        Answer answer = ask("snare-drum", null, null,
                new Limits(null, null, null, null, null, List.of(MicFamily.MOVING_COIL), null, null), null);
        assertTrue(answer.ruledOut().stream().anyMatch(out -> out.micType().equals("handheld-moving-coil") && out.rule().equals("limit")),
                answer.ruledOut().toString());
    }

    @Test
    void aBassLeadGetsALineBox() {
        Answer answer = ask("bass-lead", null, null, null, null);
        assertEquals(MicFamily.LINE, first(answer).mics().get(0).family());
    }

    @Test
    void onlyRibbonsMeansOnlyRibbons() {
        Answer answer = ask("flugelhorn, only ribbons");
        assertFalse(answer.options().isEmpty());
        assertTrue(mics(answer).stream().allMatch(mic -> mic.family() == MicFamily.RIBBON));
    }

    @ParameterizedTest
    @CsvSource({"'drum kit, mid-side', mid-side", "snare top & bottom, top-and-bottom", "'kick in and out, hard rock', inside-and-outside",
            "'grand piano, spaced pair', spaced-pair"})
    void aTechniqueThatIsNamedComesFirst(String words, String technique) {
        Answer answer = ask(words);
        assertEquals(List.of(technique), answer.question().meant().techniques());
        assertEquals(technique, first(answer).technique());
    }

    @Test
    void aTechniqueNobodyUsesThereIsSaidToBeLeftAside() {
        Answer answer = ask("violin, top and bottom");
        assertTrue(answer.question().assumed().contains("Top and bottom is not known for violin: left aside."),
                answer.question().assumed().toString());
    }

    @Test
    void theSideOfMidAndSideFacesAcross() {
        Option pair = first(ask("drum kit, mid-side"));
        assertEquals(0, pair.mics().get(0).aimDegrees());
        assertEquals(90, pair.mics().get(1).aimDegrees());
        assertEquals(Pattern.FIGURE_8, pair.mics().get(1).pattern());
        assertEquals(pair.mics().get(0).distanceM(), pair.mics().get(1).distanceM());
    }

    @Test
    void aPlaceThatHearsHalfOfAPerformanceIsNeverTheOnlyOne() {
        Set<String> halves = Set.of("mouth", "body-join");
        for (Option option : Asking.ADVISOR.ask(new Request(null, "voice-and-guitar", null, null, null, null, null, null, null, null, 6, null, null, null)).options()) {
            assertTrue(option.mics().size() > 1 || !halves.contains(option.mics().get(0).position()), option.toString());
        }
    }

    @Test
    void whatScoresBelowNothingIsShownOnlyWhereNothingIsBetter() {
        assertTrue(ask("whispered voice").options().stream().allMatch(option -> option.score() > 0));
        assertTrue(first(ask("snare, only condensers, no phantom")).score() < 0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"snare drum", "kick drum", "grand piano", "trumpet", "singing voice", "double bass", "driven guitar amplifier"})
    void severeCautionsComeFirst(String words) {
        for (Option option : ask(words).options()) {
            List<Severity> severities = option.cautions().stream().map(caution -> caution.severity()).toList();
            List<Severity> sorted = severities.stream().sorted((one, other) -> other.compareTo(one)).toList();
            assertEquals(sorted, severities);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"snare next to the drums at 0 m", "snare 1 cm from the drums", "snare next to the drums, 99999 metres away",
            "snare, 64 channels", "snare, 999999 dB of gain"})
    void aNumberThatCannotBeIsNotUnderstoodRatherThanReckonedWith(String words) {
        Answer answer = ask(words);
        assertFalse(answer.question().notUnderstood().isEmpty());
        assertEquals(Limits.NONE, answer.question().meant().limits());
        assertTrue(answer.question().meant().neighbours().stream().allMatch(beside -> beside.distanceM() >= 1 && beside.distanceM() < 10));
    }

    @Test
    void theHeightACautionNamesIsThatOfTheMicrophoneAndNotOfTheRoom() {
        Option high = ask("pipe organ in a church").options().stream()
                .filter(option -> option.cautions().stream().anyMatch(caution -> caution.rule().equals("SAF-004"))).findFirst().orElseThrow();
        var caution = high.cautions().stream().filter(one -> one.rule().equals("SAF-004")).findFirst().orElseThrow();
        assertTrue(high.mics().stream().anyMatch(mic -> mic.heightM() != null && mic.heightM() == caution.values().get(0).value()),
                caution + " " + high.mics());
    }

    @ParameterizedTest
    @ValueSource(strings = {"singer gets a shock from the vocal mic", "bass amp, I get zapped by the strings", "snare, the stand tingles"})
    void whoeverFeltAShockIsToldFirstToLetGo(String words) {
        Answer answer = ask(words);
        assertEquals(List.of("shock"), answer.question().meant().circumstances());
        assertFalse(answer.options().isEmpty());
        for (Option option : answer.options()) {
            assertEquals("SAF-000", option.cautions().get(0).rule());
        }
    }

    @Test
    void closedHandsTakeTheProximityOfADirectionalMicrophone() {
        Answer answer = Asking.ADVISOR.ask(new Request(null, "harmonica", List.of("cupped"), null, null, null,
                new Limits(1, null, null, null, null, null, List.of("handheld-moving-coil"), null), null, null, null, null, null, null, null));
        Placement cupped = answer.options().stream().flatMap(option -> option.mics().stream())
                .filter(mic -> mic.position().equals("cupped")).findFirst().orElseThrow();
        assertEquals(0, cupped.predicted().proximityDb());
    }

    @Test
    void aHornKeepsItsCapitalWhereATechniqueIsLeftAside() {
        assertTrue(ask("French horn, top and bottom").question().assumed().contains("Top and bottom is not known for French horn: left aside."));
    }
}
