package pairwright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Catalogue;
import pairwright.model.Pattern;
import pairwright.model.Range;

/** What a folder is read into, and how a house folder lies over what is built in. */
class CatalogueReaderTest {
    @TempDir
    Path folder;
    @TempDir
    Path house;

    private SmallCatalogue small() {
        return SmallCatalogue.in(folder);
    }

    @Test
    void entriesAreReadByIdInOrder() {
        Catalogue read = small().read().catalogue();
        assertEquals(List.of("handheld-moving-coil", "passive-di", "shotgun", "small-condenser-cardioid"),
                List.copyOf(read.mics().keySet()));
        assertEquals(List.of("bass-lead", "snare-drum"), List.copyOf(read.sources().keySet()));
        assertEquals(new Range(1.2, 1.8, 2.5), read.mics().get("handheld-moving-coil").sensitivityMvPerPa());
        assertEquals(Pattern.LOBAR, read.mics().get("shotgun").patterns().get(0).pattern());
        assertEquals(OctaveCurve.of(1, 1, 1, 0.5, 0, -1.5, -3, -4.5, -6), read.characters().get("dark").toneDb());
    }

    @Test
    void listsLeftOutAreEmptyAndNothingCanBeChanged() {
        Catalogue read = small().read().catalogue();
        assertEquals(List.of(), read.mics().get("shotgun").words());
        assertEquals(List.of(), read.sources().get("snare-drum").positions().get(0).dangers());
        assertEquals(List.of(), read.sources().get("snare-drum").habits().get(0).patterns());
        assertThrows(UnsupportedOperationException.class, () -> read.sources().clear());
        assertThrows(UnsupportedOperationException.class, () -> read.sources().get("snare-drum").words().clear());
    }

    @Test
    void wordsSuchAsOnStayWords() {
        Catalogue read = small().write("words/ignored.yaml", "- on\n- no\n- 12:30\n- yes\n").read().catalogue();
        assertEquals(List.of("on", "no", "12:30", "yes"), read.words().ignored());
    }

    @Test
    void allFaultsOfAllFilesAreReportedAtOnceInOrder() {
        SmallCatalogue spoilt = small()
                .change("mics/handheld-moving-coil.yaml", "tier: 1", "tier: 9")
                .change("mics/handheld-moving-coil.yaml", "speed: slow", "speed: lazy")
                .change("mics/handheld-moving-coil.yaml", "power: none\n", "")
                .change("rooms/small-room.yaml", "id: small-room", "id: tiny-room")
                .change("sources/drum-kit/snare-drum.yaml", "micType: handheld-moving-coil", "micType: ribbon")
                .change("words/limits.yaml", "[shotgun]", "[shotgan]");
        assertEquals(List.of(
                "mics/handheld-moving-coil.yaml:1:1: power is missing. Add it: where it takes its power from; one of none, "
                        + "phantom, "
                        + "own-supply, phantom-or-battery",
                "mics/handheld-moving-coil.yaml:6:7: tier is 9, above 5. Give 5 or less: price class, 1 cheapest to 5 dearest",
                "mics/handheld-moving-coil.yaml:16:8: speed is \"lazy\", which is not known. Use one of slow, medium, fast, "
                        + "fastest",
                "rooms/small-room.yaml:1:5: id is \"tiny-room\", but the file is small-room.yaml. Give both the same name",
                "sources/drum-kit/snare-drum.yaml:33:14: there is no mic type \"ribbon\". Use one of handheld-moving-coil, "
                        + "passive-di, "
                        + "shotgun, small-condenser-cardioid",
                "words/limits.yaml:2:84: there is no mic type \"shotgan\". Did you mean shotgun?"), spoilt.faults());
        assertNull(spoilt.read().catalogue());
    }

    @Test
    void anEntryWithFaultsDoesNotDragOthersBehindIt() {
        List<String> faults = small().write("mics/handheld-moving-coil.yaml", "id: [").faults();
        assertEquals(1, faults.size(), () -> String.join("\n", faults));
        assertTrue(faults.get(0).startsWith("mics/handheld-moving-coil.yaml:1:6: this is not YAML: "), faults.get(0));
    }

    @Test
    void aValueNestedWithoutEndIsRefused() {
        List<String> faults = small().write("rooms/small-room.yaml", "id: " + "[".repeat(30_000)).faults();
        assertEquals(List.of("rooms/small-room.yaml:1:25: this is not YAML: values are nested more than 20 deep. Check the "
                + "indentation "
                + "and the brackets, and put quotes around text with a colon or a sign at its start"), faults);
    }

    @Test
    void aFolderThatIsNotThereIsSaid() {
        assertEquals("there is no such folder. Name a folder that holds mics/, sources/ ...",
                CatalogueReader.read(folder.resolve("nowhere")).faults().get(0).says());
    }

    @Test
    void aCatalogueWithoutWordsYetIsRead() {
        SmallCatalogue unfinished = small().remove("words/ways.yaml").remove("words/ambiguities.yaml").remove("words/limits.yaml")
                .remove("words/combinations.yaml")
                .change("sources/direct/bass-lead.yaml", "drum", "bass guitar on a lead");
        assertEquals(List.of(), unfinished.faults());
    }

    @Test
    void theVersionChangesWithAnyFigureAndOnlyThen() {
        String before = small().read().catalogue().version();
        assertTrue(before.matches("[0-9a-f]{12}"), before);
        assertEquals(before, CatalogueReader.read(folder).catalogue().version());
        SmallCatalogue changed = SmallCatalogue.at(folder).change("rooms/small-room.yaml", "0.5", "0.6");
        assertNotEquals(before, changed.read().catalogue().version());
    }

    @Test
    void aHouseEntryReplacesTheOneOfItsIdAndMayReferToWhatIsBuiltIn() {
        Catalogue builtIn = small().read().catalogue();
        SmallCatalogue at = SmallCatalogue.at(house)
                .write("rooms/small-room.yaml", SmallCatalogue.at(folder).text("rooms/small-room.yaml").replace("0.5", "0.4"))
                .write("characters/moody.yaml", SmallCatalogue.at(folder).text("characters/dark.yaml")
                        .replace("id: dark", "id: moody").replace("name: Dark", "name: Moody"));
        Catalogue both = CatalogueReader.readOver(builtIn, at.folder).catalogue();
        assertEquals(0.4, both.rooms().get("small-room").reverbTimeS());
        assertEquals(List.of("bright", "dark", "moody"), List.copyOf(both.characters().keySet()));
        assertEquals(builtIn.sources(), both.sources());
        assertNotEquals(builtIn.version(), both.version());
    }

    @Test
    void houseWordsSayAnItemAnewByItsIdAndAddToItsWordsAndToTheRest() {
        Catalogue builtIn = small().read().catalogue();
        SmallCatalogue at = SmallCatalogue.at(house).write("words/limits.yaml",
                "- {id: no-phantom, name: without phantom, words: [ribbons only], sets: {phantom: false}}\n"
                        + "- {id: two, name: two at most, words: [two mics], sets: {mics: 2}}\n");
        var limits = CatalogueReader.readOver(builtIn, at.folder).catalogue().words().limits();
        assertEquals(List.of("no-phantom", "no-shotgun", "two"), limits.stream().map(limit -> limit.id()).toList());
        assertEquals("without phantom", limits.get(0).name());
        assertFalse(limits.get(0).sets().phantom());
        List<String> words = new ArrayList<>(builtIn.words().limits().get(0).words());
        words.add("ribbons only");
        assertEquals(words, limits.get(0).words(), "what was understood before still is");
    }

    @Test
    void aHouseWordMayNotTakeTheNameOfABuiltInSource() {
        Catalogue builtIn = small().read().catalogue();
        SmallCatalogue at = SmallCatalogue.at(house).write("sources/direct/my-lead.yaml",
                SmallCatalogue.at(folder).text("sources/direct/bass-lead.yaml").replace("id: bass-lead", "id: my-lead")
                        .replace("name: Bass on a lead", "name: My lead").replace("[bass DI, drum]", "[snare]"));
        assertEquals(List.of("sources/direct/my-lead.yaml:5:9: \"snare\" already means snare-drum. Take it out of one of the "
                + "two, "
                + "or list it in words/ambiguities.yaml with both"), at.printed(CatalogueCheck.houseFaults(builtIn, house)));
    }

    @Test
    void aHouseWordMayNotMeanSomethingElseThanABuiltInOneOfItsKind() {
        Catalogue builtIn = small().read().catalogue();
        String taken = builtIn.words().limits().get(1).words().get(0);
        SmallCatalogue at = SmallCatalogue.at(house).write("words/limits.yaml",
                "- {id: two, name: two at most, words: [\"" + taken + "\"], sets: {mics: 2}}\n");
        assertEquals(List.of("words/limits.yaml:1:40: \"" + taken + "\" already means no-shotgun, which is built in. Take it out here"),
                at.printed(CatalogueCheck.houseFaults(builtIn, house)));
    }

    @Test
    void aMarkAtTheStartAndOtherEndsOfLinesAreRead() {
        SmallCatalogue at = small();
        assertEquals(List.of(), at.write("rooms/small-room.yaml", "\uFEFF" + at.text("rooms/small-room.yaml").replace("\n", "\r\n")).faults());
    }
}
