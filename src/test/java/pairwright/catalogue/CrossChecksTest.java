package pairwright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whether entries agree with themselves and each other: every kind of fault with its exact place and words. */
class CrossChecksTest {
    @TempDir
    Path folder;

    private SmallCatalogue small() {
        return SmallCatalogue.in(folder);
    }

    private static void thenFaults(SmallCatalogue spoilt, String... expected) {
        assertEquals(List.of(expected), spoilt.faults());
    }

    @Test
    void theIdMustBeTheNameOfTheFile() {
        thenFaults(small()
                .change("mics/handheld-moving-coil.yaml", "id: handheld-moving-coil", "id: stage-moving-coil"),
                "mics/handheld-moving-coil.yaml:1:5: id is \"stage-moving-coil\", but the file is "
                        + "handheld-moving-coil.yaml. Give both the same name");
    }

    @Test
    void theFamilyMustBeTheFolder() {
        thenFaults(small()
                .change("sources/drum-kit/snare-drum.yaml", "family: drum-kit", "family: hand-percussion"),
                "sources/drum-kit/snare-drum.yaml:3:9: family is hand-percussion, but the file lies in "
                        + "drum-kit/. Move the file to hand-percussion/ or correct the family");
    }

    @Test
    void aHabitMustNameAKnownMicType() {
        thenFaults(small()
                .change("sources/drum-kit/snare-drum.yaml", "micType: handheld-moving-coil", "micType: handheld-moving-coli"),
                "sources/drum-kit/snare-drum.yaml:33:14: there is no mic type \"handheld-moving-coli\". Did you "
                        + "mean handheld-moving-coil?");
    }

    @Test
    void aHabitMustNameAPositionOfItsSource() {
        thenFaults(small()
                .change("sources/drum-kit/snare-drum.yaml", "positions: [over-rim]", "positions: [under-head]"),
                "sources/drum-kit/snare-drum.yaml:34:17: there is no position \"under-head\" at this source. Use "
                        + "one of over-rim");
    }

    @Test
    void aHabitMustNameAPatternItsTypeHas() {
        thenFaults(small()
                .change("sources/drum-kit/snare-drum.yaml", "patterns: [cardioid]", "patterns: [omni]"),
                "sources/drum-kit/snare-drum.yaml:38:16: small-condenser-cardioid has no pattern omni. It has "
                        + "cardioid. Correct one of the two");
    }

    @Test
    void aHabitMustBeAbleToHold() {
        thenFaults(small().change("sources/drum-kit/snare-drum.yaml", "beyondM: 0.1", "beyondM: 0.4"),
                "sources/drum-kit/snare-drum.yaml:40:14: beyondM is 0.4, not closer than withinM, so the habit "
                        + "never holds. Swap or correct the two");
    }

    @Test
    void aComplaintOfToneSaysWhereAndItsMovesNameKnownSources() {
        thenFaults(small().write("complaints/boomy.yaml", """
                id: boomy
                name: Boomy
                says: Too much below.
                words: [muddy]
                gauge: tone
                fromHz: 63
                more: false
                leastDb: 1
                moves:
                  - {by: instrument, says: Damp it., why: It rings., sources: [snare-drun]}
                confidence: low
                basis:
                  - {of: [fromHz, leastDb], on: estimate}
                """),
                "complaints/boomy.yaml:5:8: gauge is tone, but toHz is missing. Say in which octaves it is heard",
                "complaints/boomy.yaml:10:64: there is no source \"snare-drun\". Did you mean snare-drum?");
    }

    @Test
    void aPairMustNameAKnownTechnique() {
        thenFaults(small()
                .change("sources/drum-kit/snare-drum.yaml", "technique: near-coincident-pair", "technique: far-and-near"),
                "sources/drum-kit/snare-drum.yaml:43:16: there is no technique \"far-and-near\". Use one of "
                        + "near-coincident-pair");
    }

    @Test
    void aPairMustNameKnownMicTypesAndPositions() {
        thenFaults(small()
                .change("sources/drum-kit/snare-drum.yaml", "first: {position: over-rim, micTypes: [small-condenser-cardioid]}",
                        "first: {position: over-rin, micTypes: [small-condensor-cardioid, small-condenser-cardioid]}"),
                "sources/drum-kit/snare-drum.yaml:44:23: there is no position \"over-rin\" at this source. Did you "
                        + "mean over-rim?",
                "sources/drum-kit/snare-drum.yaml:44:44: there is no mic type \"small-condensor-cardioid\". Did "
                        + "you mean small-condenser-cardioid?");
    }

    @Test
    void aPairMustNameTypesThatHaveThePattern() {
        thenFaults(small()
                .change("sources/drum-kit/snare-drum.yaml", "first: {position: over-rim, micTypes: [small",
                        "first: {position: over-rim, micTypes: [shotgun, small"),
                "sources/drum-kit/snare-drum.yaml:44:44: near-coincident-pair wants cardioid here, but shotgun "
                        + "has only lobar. Name another type");
    }

    @Test
    void aPairOfOneTypeMustNameATypeTwice() {
        thenFaults(small()
                .change("sources/drum-kit/snare-drum.yaml", "first: {position: over-rim, micTypes: [small-condenser-cardioid]}",
                        "first: {position: over-rim, micTypes: [handheld-moving-coil]}"),
                "sources/drum-kit/snare-drum.yaml:43:5: near-coincident-pair wants two of one type, but first "
                        + "and second name none in common. Name the same types");
    }

    @Test
    void aPairMustNameTypesThatThePositionTakes() {
        thenFaults(small().change("sources/drum-kit/snare-drum.yaml", "    mount: boom\n",
                        "    mount: boom\n    onlyFamilies: [small-diaphragm-condenser, moving-coil]\n")
                .change("sources/drum-kit/snare-drum.yaml", "second: {position: over-rim, micTypes: [small",
                        "second: {position: over-rim, micTypes: [shotgun, small")
                .change("techniques/near-coincident-pair.yaml", "secondPatterns: [cardioid]",
                        "secondPatterns: [cardioid, lobar]"),
                "sources/drum-kit/snare-drum.yaml:46:45: over-rim takes only small-diaphragm-condenser, moving-coil, but shotgun "
                        + "is of the family shotgun. Name another type, or add shotgun to the onlyFamilies of over-rim");
    }

    @Test
    void aBoxGoesOnlyWhereThePositionSaysSo() {
        thenFaults(small().change("sources/drum-kit/snare-drum.yaml", "first: {position: over-rim, micTypes: [small",
                        "first: {position: over-rim, micTypes: [passive-di, small")
                .change("techniques/near-coincident-pair.yaml", "firstPatterns: [cardioid]",
                        "firstPatterns: [cardioid, electrical]"),
                "sources/drum-kit/snare-drum.yaml:44:44: over-rim is a place for microphones, but passive-di is of the family "
                        + "line. Name another type, or give over-rim onlyFamilies with line in it");
    }

    @Test
    void aHabitMustNameAPositionThatTakesItsType() {
        thenFaults(small().change("sources/drum-kit/snare-drum.yaml", "    mount: boom\n",
                        "    mount: boom\n    onlyFamilies: [small-diaphragm-condenser]\n"),
                "sources/drum-kit/snare-drum.yaml:35:17: over-rim takes only small-diaphragm-condenser, but handheld-moving-coil "
                        + "is of the family moving-coil. Name another position, or add moving-coil to the onlyFamilies of "
                        + "over-rim");
    }

    @Test
    void positionsAndHabitsNameWaysOfTheirSource() {
        thenFaults(small().change("sources/drum-kit/snare-drum.yaml", "    mount: boom\n",
                        "    mount: boom\n    onlyWays: [brushed, brush]\n")
                .change("sources/drum-kit/snare-drum.yaml", "    why: It takes the peak.",
                        "    onlyWays: [mallets]\n    why: It takes the peak."),
                "sources/drum-kit/snare-drum.yaml:31:25: there is no way \"brush\" among the ways of this source. Did you mean "
                        + "brushed?",
                "sources/drum-kit/snare-drum.yaml:36:16: there is no way \"mallets\" among the ways of this source. Use one of "
                        + "brushed");
    }

    @Test
    void aWayMustBeInTheListOfWays() {
        thenFaults(small().change("sources/drum-kit/snare-drum.yaml", "id: brushed", "id: brush"),
                "sources/drum-kit/snare-drum.yaml:15:9: there is no way \"brush\" in words/ways.yaml. Did you mean brushed?");
    }

    @Test
    void aCharacterMustContradictAKnownOne() {
        thenFaults(small().change("characters/dark.yaml", "against: [bright]", "against: [brite, dark]"),
                "characters/dark.yaml:6:11: there is no character \"brite\". Use one of bright, dark",
                "characters/dark.yaml:6:18: dark contradicts itself. Take it out of against");
    }

    @Test
    void aWordMayNotMeanTwoSources() {
        thenFaults(small()
                .change("sources/direct/bass-lead.yaml", "words: [bass DI, drum]", "words: [bass DI, Snare]"),
                "sources/drum-kit/snare-drum.yaml:5:9: \"snare\" already means bass-lead. Take it out of one of "
                        + "the two, or list it in words/ambiguities.yaml with both");
    }

    @Test
    void anAmbiguousWordMustReadAsKnownSources() {
        thenFaults(small().change("words/ambiguities.yaml", "bass-lead", "bass-led"),
                "words/ambiguities.yaml:1:48: there is no source \"bass-led\". Did you mean bass-lead?");
    }

    @Test
    void aWordMayMeanTwoWaysUnlessASourceKnowsBoth() {
        SmallCatalogue shared = small().change("words/ways.yaml", "brushes]}\n",
                "brushes]}\n- {id: mallets, name: with mallets, words: [soft, brushes]}\n");
        assertEquals(List.of(), shared.faults());
        thenFaults(shared.change("sources/drum-kit/snare-drum.yaml", "positions:\n", "  - id: mallets\n    says: Rounder.\n"
                + "    levelDb: -6\n    peakDb: -8\n    toneDb: [0, 0, 0, 0, 0, -2, -4, -6, -6]\npositions:\n"),
                "words/ways.yaml:2:51: \"brushes\" already means brushed. Take it out of one of the two");
    }

    @Test
    void moreNamesBelongToAKnownSource() {
        thenFaults(small().change("words/names.yaml", "source: bass-lead", "source: bas-lead"),
                "words/names.yaml:2:12: there is no source \"bas-lead\". Did you mean bass-lead?");
    }

    @Test
    void aFurtherNameMayNotBeTheNameOfAnotherSource() {
        thenFaults(small().change("words/names.yaml", "[bass by its lead]", "[bass by its lead, Caisse Claire, bass, bass DI]"),
                "words/names.yaml:2:49: \"Caisse Claire\" already means snare-drum. Take it out of one of the two, or list "
                        + "it in words/ambiguities.yaml with both");
    }

    @Test
    void aHouseSourceMayNotTakeAFurtherNameOfAnotherSource() {
        var builtIn = small().read().catalogue();
        SmallCatalogue house = SmallCatalogue.at(folder.resolve("house")).write("sources/drum-kit/field-drum.yaml",
                SmallCatalogue.at(folder).text("sources/drum-kit/snare-drum.yaml")
                        .replace("id: snare-drum", "id: field-drum").replace("name: Snare drum", "name: Field drum")
                        .replace("[snare, caisse claire]", "[snare drummer]"));
        assertEquals(List.of("sources/drum-kit/field-drum.yaml:5:9: \"snare drummer\" already means snare-drum. Take it out "
                + "of one of the two, or list it in words/ambiguities.yaml with both"),
                house.printed(CatalogueReader.readOver(builtIn, house.folder).faults()));
    }

    @Test
    void anOppositeIsOfAndAmongKnownCharacters() {
        thenFaults(small()
                .change("words/opposites.yaml",
                        "{character: bright, faults: [harsh, shrill], wants: dark, ratherThanTooMuch: dark}",
                        "{character: brigth, faults: [harsh, shrill], wants: drak, ratherThanTooMuch: natural}"),
                "words/opposites.yaml:1:15: there is no character \"brigth\". Did you mean bright?",
                "words/opposites.yaml:1:55: there is no character \"drak\". Did you mean dark?",
                "words/opposites.yaml:1:80: there is no character \"natural\". Use one of bright, dark");
    }

    @Test
    void aCharacterIsNotItsOwnOpposite() {
        thenFaults(small().change("words/opposites.yaml", "wants: bright", "wants: dark"),
                "words/opposites.yaml:2:44: too much dark wants dark again. Name another character");
    }

    @Test
    void aFaultComplainsOfOneCharacter() {
        thenFaults(small().change("words/opposites.yaml", "[dull]", "[dull, Harsh]"),
                "words/opposites.yaml:2:36: \"Harsh\" already means bright. Take it out of one of the two");
    }

    @Test
    void aCombinationNamesKnownSourcesAndAKnownWayOrCircumstance() {
        thenFaults(small()
                .change("words/combinations.yaml", "{of: [[snare-drum], [bass-lead]], with: live, source: snare-drum}",
                        "{of: [[snare], [bass-lead, bass-led]], with: stereo, source: snare-drun}"),
                "words/combinations.yaml:1:10: there is no source \"snare\". Use one of bass-lead, snare-drum",
                "words/combinations.yaml:1:30: there is no source \"bass-led\". Did you mean bass-lead?",
                "words/combinations.yaml:1:48: there is no way or circumstance \"stereo\". Use one of brushed, live",
                "words/combinations.yaml:1:64: there is no source \"snare-drun\". Did you mean snare-drum?");
    }

    @Test
    void aListOfWaysThatCannotBeReadDragsNoOtherFaultBehindIt() {
        thenFaults(small().change("words/ways.yaml", "words:", "word:"),
                "words/ways.yaml:1:37: there is no field \"word\" here. Did you mean words?");
    }

    @Test
    void aCombinationAModifierANumberAndAQuantityStandOnce() {
        thenFaults(small()
                .change("words/combinations.yaml", "{of: [[bass-lead]], with: brushed",
                        "{of: [[snare-drum], [bass-lead]], with: live")
                .change("words/modifiers.yaml", "id: without", "id: too")
                .change("words/numbers.yaml", "value: 2,", "value: 0.5,")
                .change("words/quantities.yaml", "id: centimetres", "id: channels"),
                "words/combinations.yaml:2:3: snare-drum, bass-lead, live stands in this list twice. Keep one of the two",
                "words/modifiers.yaml:2:3: too stands in this list twice. Keep one of the two",
                "words/numbers.yaml:2:3: 0.5 stands in this list twice. Keep one of the two",
                "words/quantities.yaml:2:3: channels stands in this list twice. Keep one of the two");
    }

    @Test
    void aModifierANumberAndAQuantityHaveWordsOfTheirOwn() {
        thenFaults(small()
                .change("words/modifiers.yaml", "[\"no\", without]", "[\"no\", without, too]")
                .change("words/numbers.yaml", "[half a]", "[half a, two]")
                .change("words/quantities.yaml", "[cm]", "[cm, cm]"),
                "words/modifiers.yaml:2:40: \"too\" already means too. Take it out of one of the two",
                "words/numbers.yaml:2:22: \"two\" already means 0.5. Take it out of one of the two",
                "words/quantities.yaml:2:64: \"cm\" stands here twice. Take one out");
    }

    @Test
    void aLimitMustNameKnownMicTypes() {
        thenFaults(small().change("words/limits.yaml", "[shotgun]", "[shotgan]"),
                "words/limits.yaml:2:84: there is no mic type \"shotgan\". Did you mean shotgun?");
    }

    @Test
    void aRangeMustRise() {
        thenFaults(small()
                .change("mics/handheld-moving-coil.yaml", "{low: 1.2, typical: 1.8, high: 2.5}",
                        "{low: 1.2, typical: 2.8, high: 2.5}"),
                "mics/handheld-moving-coil.yaml:11:21: sensitivityMvPerPa runs from 1.2 over 2.8 to 2.5. Put "
                        + "low, typical and high in rising order");
    }

    @Test
    void theStrongestOctaveIsZero() {
        thenFaults(small()
                .change("sources/drum-kit/snare-drum.yaml", "spectrumDb: [-24, -8, 0,", "spectrumDb: [-24, -8, -1,"),
                "sources/drum-kit/snare-drum.yaml:8:13: the strongest octave of spectrumDb is -1 dB. Shift all "
                        + "nine so that the strongest is 0");
    }

    @Test
    void aPeakIsNotBelowTheRunningLevel() {
        thenFaults(small().change("sources/drum-kit/snare-drum.yaml", "peakDbSpl: 124", "peakDbSpl: 94"),
                "sources/drum-kit/snare-drum.yaml:7:39: peakDbSpl is 94, below typicalDbSpl. Give the peak of loud playing");
    }

    @Test
    void aLobeHasADirectivityIndex() {
        thenFaults(small()
                .change("mics/shotgun.yaml", "    directivityIndexDb: [5, 5, 5.5, 6, 6.5, 7.5, 9, 11, 12]\n", ""),
                "mics/shotgun.yaml:7:5: the pattern lobar has no directivityIndexDb. Give its directivity index, "
                        + "one value an octave");
    }

    @Test
    void aPatternThatIsNoLobeHasACoefficientOnly() {
        thenFaults(small()
                .change("mics/handheld-moving-coil.yaml", "    coefficient: [0.55",
                        "    directivityIndexDb: [5, 5, 5, 5, 5, 5, 5, 5, 5]\n    coefficient: [0.55"),
                "mics/handheld-moving-coil.yaml:9:5: the pattern cardioid has a directivityIndexDb, which only "
                        + "lobar has. Take it out");
    }

    @Test
    void aPatternStandsOnce() {
        thenFaults(small()
                .change("mics/shotgun.yaml", "patterns:\n",
                        "patterns:\n  - pattern: lobar\n    directivityIndexDb: [5, 5, 5, 5, 5, 5, 5, 5, 5]\n"),
                "mics/shotgun.yaml:9:5: the pattern lobar stands here twice. Keep one of the two");
    }

    @Test
    void aPhantomTypeTakesACurrent() {
        thenFaults(small()
                .change("mics/shotgun.yaml", "currentMa: {low: 2, typical: 4, high: 6}\n", "")
                .change("mics/shotgun.yaml", "of: [currentMa, ", "of: ["),
                "mics/shotgun.yaml:10:8: power is phantom, but currentMa is missing. Give the current a channel takes");
    }

    @Test
    void aPassiveTypeTakesNoCurrent() {
        thenFaults(small()
                .change("mics/handheld-moving-coil.yaml", "power: none", "power: none\ncurrentMa: {low: 1, typical: 2, high: 3}")
                .change("mics/handheld-moving-coil.yaml", "massKg, tier", "massKg, currentMa, tier"),
                "mics/handheld-moving-coil.yaml:13:1: currentMa is given, but power is none. Take it out or correct power");
    }

    @Test
    void anActiveTypeHasNoiseOfItsOwn() {
        thenFaults(small()
                .change("mics/small-condenser-cardioid.yaml", "selfNoiseDba: {low: 12, typical: 15, high: 20}\n", "")
                .change("mics/small-condenser-cardioid.yaml", "selfNoiseDba, ", ""),
                "mics/small-condenser-cardioid.yaml:12:8: power is phantom, so the type is active, but "
                        + "selfNoiseDba is missing. Give its equivalent noise");
    }

    @Test
    void padsRise() {
        thenFaults(small()
                .change("mics/small-condenser-cardioid.yaml", "padsDb: [10, 20]", "padsDb: [20, 10]"),
                "mics/small-condenser-cardioid.yaml:15:14: the pad 10 does not exceed the one before it. Put the "
                        + "smallest first and each once");
    }

    @Test
    void aLineBoxHasAnInput() {
        thenFaults(small()
                .change("mics/passive-di.yaml", "inputOhm: {low: 130000, typical: 200000, high: 400000}\n", "")
                .change("mics/passive-di.yaml", "of: [inputOhm, ", "of: ["),
                "mics/passive-di.yaml:3:9: a line box needs inputOhm and maxInputDbu, but has only one. Give both");
    }

    @Test
    void anAcousticSourceHasALevel() {
        thenFaults(small()
                .change("sources/drum-kit/snare-drum.yaml",
                        "level: {typicalDbSpl: 100, peakDbSpl: 124, toleranceDb: 5, centreOffsetM: 0.04}\n", "")
                .change("sources/drum-kit/snare-drum.yaml", "of: [level, ", "of: ["),
                "sources/drum-kit/snare-drum.yaml:6:9: signal is acoustic, but level is missing. Say how loud the source is");
    }

    @Test
    void aSourceOnALeadHasNoLevel() {
        thenFaults(small()
                .change("sources/direct/bass-lead.yaml", "lead: {",
                        "level: {typicalDbSpl: 100, peakDbSpl: 124, toleranceDb: 5, centreOffsetM: 0.04}\nlead: {")
                .change("sources/direct/bass-lead.yaml", "of: [lead,", "of: [level, lead,"),
                "sources/direct/bass-lead.yaml:7:1: signal is instrument, but level is given. Take it out or correct signal");
    }

    @Test
    void aFigureWithoutABasisIsNamed() {
        thenFaults(small().change("mics/handheld-moving-coil.yaml", "massKg, tier", "tier"),
                "mics/handheld-moving-coil.yaml:18:1: massKg is not named in basis. Say what its figures rest on");
    }

    @Test
    void aFigureRestsOnOneThing() {
        thenFaults(small()
                .change("mics/handheld-moving-coil.yaml", "of: [patterns, ", "of: [tier, patterns, "),
                "mics/handheld-moving-coil.yaml:27:10: basis names tier twice, first in line 25. Keep the one it rests on");
    }

    @Test
    void aBasisOfNoFieldIsNamed() {
        thenFaults(small()
                .change("mics/handheld-moving-coil.yaml", "of: [patterns, ", "of: [massKG, weather, words, padsDb, patterns, "),
                "mics/handheld-moving-coil.yaml:27:10: basis names \"massKG\", which is no field. Did you mean massKg?",
                "mics/handheld-moving-coil.yaml:27:18: basis names \"weather\", which is no field. Take it out",
                "mics/handheld-moving-coil.yaml:27:34: basis names padsDb, which this entry does not have. Take it out");
    }

    @Test
    void positionsHaveDifferentIds() {
        thenFaults(small()
                .change("sources/drum-kit/snare-drum.yaml", "positions:\n",
                        "positions:\n  - id: over-rim\n    name: Again\n    side: above\n    distanceM: {low: 1, typical: 1, "
                                + "high: 1}\n    offAxisDegrees: {low: 0, typical: 0, high: 0}\n    aimDegrees: {low: 0, "
                                        + "typical: 0, high: 0}\n    levelDb: 0\n    toneDb: [0, 0, 0, 0, 0, 0, 0, 0, 0]\n    "
                                                + "brings: more\n    mount: boom\n"),
                "sources/drum-kit/snare-drum.yaml:31:9: the position over-rim stands here twice. Give one another id");
    }

    @Test
    void aWordStandsOnceInAnEntry() {
        thenFaults(small()
                .change("sources/drum-kit/snare-drum.yaml", "words: [snare, ", "words: [snare, Snare, "),
                "sources/drum-kit/snare-drum.yaml:5:16: \"Snare\" stands in words twice. Take one out");
    }

    @Test
    void aWordStandsOnceInAList() {
        thenFaults(small()
                .change("words/limits.yaml", "words: [no shotgun]", "words: [no phantom]")
                .change("words/ignored.yaml", "- please\n", "- please\n- please\n"),
                "words/ignored.yaml:2:3: please stands in this list twice. Keep one of the two",
                "words/limits.yaml:2:46: \"no phantom\" already means no-phantom. Take it out of one of the two");
    }

    @Test
    void anIdStandsOnceInAList() {
        thenFaults(small().change("words/limits.yaml", "id: no-shotgun", "id: no-phantom"),
                "words/limits.yaml:2:3: no-phantom stands in this list twice. Keep one of the two");
    }

    @Test
    void aSourceStandsInOneFolderOnly() {
        thenFaults(small()
                .copy("sources/direct/bass-lead.yaml", "sources/hand-percussion/bass-lead.yaml"),
                "sources/hand-percussion/bass-lead.yaml:1:5: the source bass-lead stands in "
                        + "sources/direct/bass-lead.yaml too. Keep one of the two files",
                "sources/hand-percussion/bass-lead.yaml:3:9: family is direct, but the file lies in "
                        + "hand-percussion/. Move the file to direct/ or correct the family");
    }

    @Test
    void aFolderThatIsNoKindIsNamed() {
        thenFaults(small().write("mic/long-ribbon.yaml", "id: long-ribbon\n"),
                "mic:1:1: no kind of entry has a folder named mic. Did you mean mics?");
    }

    @Test
    void aFileWithAnotherEndingIsNamed() {
        thenFaults(small().write("rooms/barn.yml", "id: barn\n"),
                "rooms/barn.yml:1:1: a file that does not end in .yaml is not read. Rename it or move it away");
    }

    @Test
    void aPassiveTypeHasAnImpedanceItsNoiseComesFrom() {
        thenFaults(small()
                .change("mics/handheld-moving-coil.yaml", "impedanceOhm: {low: 150, typical: 200, high: 300}\n", "")
                .change("mics/handheld-moving-coil.yaml", "  - of: [impedanceOhm]\n    on: practice\n", ""),
                "mics/handheld-moving-coil.yaml:12:8: power is none, so the type is passive, but impedanceOhm is missing."
                        + " Give its source impedance, which its noise is computed from");
    }

    @Test
    void aFigureThatIsDividedByOrTakenTheLogarithmOfIsAboveZero() {
        thenFaults(small()
                .change("mics/handheld-moving-coil.yaml", "sensitivityMvPerPa: {low: 1.2", "sensitivityMvPerPa: {low: 0"),
                "mics/handheld-moving-coil.yaml:11:21: sensitivityMvPerPa starts at 0. Give figures above 0");
    }

    @Test
    void aPlaceLiesAwayFromTheSurfaceAndItsAnglesEndBehind() {
        thenFaults(small()
                .change("sources/drum-kit/snare-drum.yaml", "distanceM: {low: 0.03", "distanceM: {low: 0")
                .change("sources/drum-kit/snare-drum.yaml", "aimDegrees: {low: 0", "aimDegrees: {low: -20"),
                "sources/drum-kit/snare-drum.yaml:24:16: distanceM starts at 0. Give figures above 0",
                "sources/drum-kit/snare-drum.yaml:26:17: aimDegrees runs from -20 to 15. Give angles from 0 to 180 degrees");
    }
}
