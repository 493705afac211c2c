package pairwright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a single file may hold: every kind of fault with its exact place and words. */
class EntryFormTest {
    @TempDir
    Path folder;

    private SmallCatalogue small() {
        return SmallCatalogue.in(folder);
    }

    private static void thenFaults(SmallCatalogue spoilt, String... expected) {
        assertEquals(List.of(expected), spoilt.faults());
    }

    @Test
    void aSoundCatalogueHasNoFault() {
        assertEquals(List.of(), small().faults());
    }

    @Test
    void anUnknownFieldIsNamedWithTheNearestOne() {
        thenFaults(small()
                .change("mics/handheld-moving-coil.yaml", "tier: 1\n", "tier: 1\nspeeed: slow\n")
                .change("mics/handheld-moving-coil.yaml", "\nspeed: slow", ""),
                "mics/handheld-moving-coil.yaml:7:1: there is no field \"speeed\" here. Did you mean speed?");
    }

    @Test
    void anUnknownFieldFarFromAnyIsNamedWithTheFieldsThereAre() {
        thenFaults(small()
                .change("rooms/small-room.yaml", "kind: unflattering", "kind: unflattering\ncarpet: red"),
                "rooms/small-room.yaml:10:1: there is no field \"carpet\" here. Take it out; the fields here are "
                        + "id, name, says, words, widthM, depthM, heightM, reverbTimeS, noiseDba, kind, "
                                  + "outdoors, confidence, basis");
    }

    @Test
    void aMissingFieldIsSaidWithWhatItHolds() {
        thenFaults(small().change("mics/handheld-moving-coil.yaml", "power: none\n", ""),
                "mics/handheld-moving-coil.yaml:1:1: power is missing. Add it: where it takes its power from; "
                        + "one of none, phantom, own-supply, phantom-or-battery");
    }

    @Test
    void anUnknownWordIsNamedWithTheNearestOne() {
        thenFaults(small()
                .change("mics/small-condenser-cardioid.yaml", "power: phantom", "power: phantm"),
                "mics/small-condenser-cardioid.yaml:13:8: power is \"phantm\", which is not known. Did you mean phantom?");
    }

    @Test
    void anUnknownWordFarFromAnyIsNamedWithAllOfThem() {
        thenFaults(small()
                .change("mics/small-condenser-cardioid.yaml", "power: phantom", "power: mains"),
                "mics/small-condenser-cardioid.yaml:13:8: power is \"mains\", which is not known. Use one of none, "
                        + "phantom, own-supply, phantom-or-battery");
    }

    @Test
    void textWhereANumberIsWantedIsRefused() {
        thenFaults(small().change("mics/handheld-moving-coil.yaml", "tier: 1", "tier: cheap"),
                "mics/handheld-moving-coil.yaml:6:7: tier is \"cheap\", not a whole number. Give a whole number: "
                        + "price class, 1 cheapest to 5 dearest");
    }

    @Test
    void aNumberInQuotesIsText() {
        thenFaults(small()
                .change("mics/handheld-moving-coil.yaml", "ruggedness: 5", "ruggedness: \"5\""),
                "mics/handheld-moving-coil.yaml:19:13: ruggedness is \"5\", not a whole number. Give a whole "
                        + "number: 1 fragile to 5 takes a fall");
    }

    @Test
    void aFractionWhereAWholeNumberIsWantedIsRefused() {
        thenFaults(small().change("mics/handheld-moving-coil.yaml", "channels: 1", "channels: 1.5"),
                "mics/handheld-moving-coil.yaml:14:11: channels is 1.5, not a whole number. Give a whole number: "
                        + "how many preamplifier channels it takes");
    }

    @Test
    void aNumberAboveItsBoundIsRefused() {
        thenFaults(small().change("mics/handheld-moving-coil.yaml", "ruggedness: 5", "ruggedness: 7"),
                "mics/handheld-moving-coil.yaml:19:13: ruggedness is 7, above 5. Give 5 or less: 1 fragile to 5 "
                        + "takes a fall");
    }

    @Test
    void aNumberBelowItsBoundIsRefused() {
        thenFaults(small().change("mics/handheld-moving-coil.yaml", "tier: 1", "tier: 0"),
                "mics/handheld-moving-coil.yaml:6:7: tier is 0, below 1. Give 1 or more: price class, 1 cheapest "
                        + "to 5 dearest");
    }

    @Test
    void aRoomWithoutWidthIsRefused() {
        thenFaults(small().change("rooms/small-room.yaml", "widthM: 3.5", "widthM: 0"),
                "rooms/small-room.yaml:4:9: widthM is 0. Give more than 0: width, m");
    }

    @Test
    void anOctaveCurveOfEightIsRefused() {
        thenFaults(small()
                .change("mics/handheld-moving-coil.yaml", "responseDb: [-7, ", "responseDb: ["),
                "mics/handheld-moving-coil.yaml:10:13: responseDb has 8 values, but needs 9. Give one an octave "
                        + "from 63 Hz to 16 kHz");
    }

    @Test
    void anEmptyListIsRefusedWhereOneIsNeeded() {
        thenFaults(small()
                .change("mics/handheld-moving-coil.yaml", "handling: [Keep hands off the grille.]", "handling: []")
                .change("mics/handheld-moving-coil.yaml",
                        "patterns:\n  - pattern: cardioid\n    coefficient: [0.55, 0.5, 0.5, 0.5, 0.5, 0.5, 0.45, 0.4, 0.35]",
                                "patterns: []"),
                "mics/handheld-moving-coil.yaml:7:11: patterns has no entry. Give at least 1: the patterns it offers");
    }

    @Test
    void anEmptyValueIsRefused() {
        thenFaults(small()
                .change("mics/handheld-moving-coil.yaml", "name: Handheld moving coil", "name:"),
                "mics/handheld-moving-coil.yaml:2:6: name is empty, not text. Give text: what people call it");
    }

    @Test
    void aBlankTextIsRefused() {
        thenFaults(small()
                .change("mics/handheld-moving-coil.yaml", "name: Handheld moving coil", "name: \"  \""),
                "mics/handheld-moving-coil.yaml:2:7: name is blank. Write it: what people call it");
    }

    @Test
    void anIdWithCapitalsIsRefused() {
        thenFaults(small()
                .change("mics/handheld-moving-coil.yaml", "id: handheld-moving-coil", "id: Handheld Moving Coil"),
                "mics/handheld-moving-coil.yaml:1:5: id is \"Handheld Moving Coil\". Use small letters, digits and "
                        + "hyphens, such as snare-drum");
    }

    @Test
    void infinityIsNoNumber() {
        thenFaults(small().change("rooms/small-room.yaml", "noiseDba: 32", "noiseDba: .inf"),
                "rooms/small-room.yaml:8:11: noiseDba is \".inf\", not a number. Give a number: noise when nobody "
                        + "plays, dB(A)");
    }

    @Test
    void aFaultDeepInAnEntryHasItsPlace() {
        thenFaults(small().change("sources/drum-kit/snare-drum.yaml", "mount: boom", "mount: bom"),
                "sources/drum-kit/snare-drum.yaml:30:12: mount is \"bom\", which is not known. Did you mean boom?");
    }

    @Test
    void aLimitThatSetsNothingIsRefused() {
        thenFaults(small().change("words/limits.yaml", "{phantom: false}", "{}"),
                "words/limits.yaml:1:71: sets is empty. Give at least one of mics, phantom, preampGainDb, "
                        + "preampNoiseDbu, onlyFamilies, withoutFamilies, onlyMicTypes, withoutMicTypes");
    }

    @Test
    void aFieldTwiceIsRefused() {
        thenFaults(small().change("mics/handheld-moving-coil.yaml", "tier: 1\n", "tier: 1\ntier: 2\n"),
                "mics/handheld-moving-coil.yaml:7:1: the field tier stands here a second time, first in line 6. "
                        + "Keep one of the two");
    }

    @Test
    void anAnchorAndAnAliasAreRefused() {
        thenFaults(small()
                .change("mics/handheld-moving-coil.yaml", "words: [vocal dynamic]", "words: &w [vocal dynamic]")
                .change("mics/handheld-moving-coil.yaml", "handling: [Keep hands off the grille.]", "handling: *w"),
                "mics/handheld-moving-coil.yaml:5:8: an anchor, &w. Take it out and write values out where they are needed",
                "mics/handheld-moving-coil.yaml:22:11: an alias, *w. Write the value out");
    }

    @Test
    void aTagIsRefused() {
        thenFaults(small().change("mics/handheld-moving-coil.yaml", "tier: 1", "tier: !!int \"1\""),
                "mics/handheld-moving-coil.yaml:6:7: a tag, !!int. Take it out; put quotes around a value that is text");
    }

    @Test
    void aSecondDocumentIsRefused() {
        thenFaults(small()
                .change("mics/handheld-moving-coil.yaml", "    note: Typical shape.\n",
                        "    note: Typical shape.\n---\nid: another\n"),
                "mics/handheld-moving-coil.yaml:30:1: a second document starts here. Put one entry in one file");
    }

    @Test
    void anEmptyFileIsRefused() {
        thenFaults(small().write("rooms/small-room.yaml", "# nothing yet\n"),
                "rooms/small-room.yaml:1:1: the file is empty. Write the entry or remove the file");
    }

    @Test
    void brokenYamlIsRefusedWhereItBreaks() {
        thenFaults(small()
                .change("mics/handheld-moving-coil.yaml", "says: For the stage.", "says: For the stage: loud."),
                "mics/handheld-moving-coil.yaml:4:20: this is not YAML: mapping values are not allowed here. "
                        + "Check the indentation and the brackets, and put quotes around text with a colon or a "
                                  + "sign at its start");
    }

    @Test
    void aFileInAnotherEncodingIsRefused() {
        thenFaults(small().bytes("rooms/small-room.yaml", 0xC3, 0x28),
                "rooms/small-room.yaml:1:1: the file is not UTF-8. Save it as UTF-8");
    }
}
