package pairwright.catalogue;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.model.Catalogue;
import pairwright.model.MicFamily;
import pairwright.model.MicType;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.model.PowerNeed;
import pairwright.model.Tolerance;

/** The catalogue the program ships with. */
class BuiltInCatalogueTest {
    private static final Path FOLDER = Path.of("catalogue");
    private static final int AT_1_KHZ = 4;

    private final Catalogue builtIn = new CatalogueStore().builtIn();

    @Test
    void whatIsPackedIsWhatStandsInTheFiles() {
        CatalogueReader.Result read = CatalogueReader.read(FOLDER);
        assertEquals(List.of(), read.faults());
        assertEquals(read.catalogue(), builtIn);
    }

    @Test
    void packingTwiceGivesTheSameBytes(@TempDir Path one, @TempDir Path other) throws IOException {
        PackMain.main(new String[] {FOLDER.toString(), one.toString()});
        PackMain.main(new String[] {FOLDER.toString(), other.toString()});
        assertArrayEquals(Files.readAllBytes(one.resolve(CatalogueStore.PACKED)),
                Files.readAllBytes(other.resolve(CatalogueStore.PACKED)));
    }

    @Test
    void aFaultyCatalogueEndsTheBuildWithEveryFault(@TempDir Path folder, @TempDir Path output) {
        SmallCatalogue.in(folder).change("mics/shotgun.yaml", "tier: 3", "tier: 8").change("rooms/small-room.yaml", "kind: un",
                "kind: on");
        String says = assertThrows(IllegalStateException.class,
                () -> PackMain.main(new String[] {folder.toString(), output.toString()})).getMessage();
        assertTrue(says.startsWith("2 faults in the catalogue:"), says);
        assertTrue(says.contains("shotgun.yaml:5:7: tier is 8, above 5."), says);
        assertTrue(says.contains("small-room.yaml:9:7: kind is \"onflattering\", which is not known. Did you mean unflattering?"),
                says);
        assertTrue(Files.notExists(output.resolve(CatalogueStore.PACKED)));
    }

    @Test
    void anEmptyHouseFolderChangesNothing(@TempDir Path house) {
        assertEquals(List.of(), CatalogueCheck.faults(house));
        CatalogueStore store = new CatalogueStore();
        assertEquals(builtIn, store.with(house).catalogue());
    }

    @Test
    void theMicTypesOfTheContractAreAllThere() {
        assertEquals(new TreeSet<>(Set.of("handheld-moving-coil", "handheld-moving-coil-supercardioid", "low-source-moving-coil",
                "wide-body-moving-coil", "compact-drum-moving-coil", "flat-front-moving-coil", "omni-moving-coil",
                "low-frequency-moving-coil", "long-ribbon", "compact-ribbon", "hypercardioid-ribbon", "active-ribbon",
                "small-condenser-cardioid", "small-condenser-omni", "small-condenser-wide-cardioid",
                        "small-condenser-supercardioid",
                "small-condenser-figure-8", "large-condenser-cardioid", "large-condenser-multi-pattern", "large-valve-condenser",
                "handheld-condenser", "boundary-half-omni", "boundary-half-cardioid", "miniature-omni", "miniature-cardioid",
                        "shotgun",
                "stereo-coincident", "stereo-mid-side", "baffled-omni-pair", "tetrahedral", "measurement-omni", "lo-fi",
                        "piezo-pickup",
                "contact-pickup-active", "passive-di", "active-di", "re-amp-box")), new TreeSet<>(builtIn.mics().keySet()));
    }

    @Test
    void theRoomsCharactersAndTechniquesThatRulesSpeakOfAreAllThere() {
        assertEquals(new TreeSet<>(Set.of("vocal-booth", "small-room", "small-treated-room", "medium-live-room",
                "large-live-room",
                "dead-room", "barn", "church", "concert-hall", "stage", "stairwell", "open-air")),
                        new TreeSet<>(builtIn.rooms().keySet()));
        assertEquals(new TreeSet<>(Set.of("natural", "dark", "warm", "bright", "airy", "forward", "punchy", "gritty", "roomy",
                "dry",
                "intimate", "smooth", "full", "lean", "aged", "clear")), new TreeSet<>(builtIn.characters().keySet()));
        assertEquals(new TreeSet<>(Set.of("contrast-on-one-spot", "clean-and-character", "top-and-bottom", "front-and-back",
                "inside-and-outside", "near-and-far", "two-spots", "two-ends", "low-octave-helper", "mic-and-line",
                        "coincident-pair",
                "crossed-figure-8", "near-coincident-pair", "spaced-pair", "mid-side", "nulls-apart")),
                new TreeSet<>(builtIn.techniques().keySet()));
    }

    @Test
    void patternsHaveTheCoefficientTheirNameStandsForAt1Khz() {
        Map<Pattern, double[]> bounds = Map.of(
                Pattern.OMNI, new double[] {0.7, 1}, Pattern.WIDE_CARDIOID, new double[] {0.62, 0.78},
                Pattern.CARDIOID, new double[] {0.44, 0.56}, Pattern.SUPERCARDIOID, new double[] {0.33, 0.42},
                Pattern.HYPERCARDIOID, new double[] {0.2, 0.3}, Pattern.FIGURE_8, new double[] {0, 0.05});
        List<String> off = new ArrayList<>();
        for (MicType mic : builtIn.mics().values()) {
            for (PatternData data : mic.patterns()) {
                double[] bound = bounds.getOrDefault(data.pattern(), new double[] {0, 1});
                if (data.coefficient() != null
                        && (data.coefficient().at(AT_1_KHZ) < bound[0] || data.coefficient().at(AT_1_KHZ) > bound[1])) {
                    off.add(mic.id() + " " + data.pattern().id() + " " + data.coefficient().at(AT_1_KHZ));
                }
            }
        }
        assertEquals(List.of(), off);
    }

    @Test
    void onlyPassiveRibbonsAndBareContactsAskForALoadAndNoRibbonStandsABlast() {
        List<String> loaded = builtIn.mics().values().stream().filter(mic -> mic.needsLoadOhm() != null)
                .map(MicType::id).toList();
        assertEquals(List.of("compact-ribbon", "hypercardioid-ribbon", "lo-fi", "long-ribbon", "piezo-pickup"), loaded);
        assertTrue(builtIn.mics().values().stream().filter(mic -> mic.family() == MicFamily.RIBBON)
                .allMatch(mic -> mic.blastTolerance() == Tolerance.LOW));
        assertEquals(PowerNeed.PHANTOM, builtIn.mics().get("active-ribbon").power());
    }

    @Test
    void aWordNamesOneRoomOneCharacterOneMicTypeOrOneTechnique() {
        List<String> shared = new ArrayList<>();
        shared(builtIn.mics(), mic -> mic.words(), shared);
        shared(builtIn.rooms(), room -> room.words(), shared);
        shared(builtIn.characters(), character -> character.words(), shared);
        shared(builtIn.techniques(), technique -> technique.words(), shared);
        assertEquals(List.of(), shared);
    }

    private static <T> void shared(Map<String, T> entries, Function<T, List<String>> words, List<String> shared) {
        Map<String, String> taken = new HashMap<>();
        entries.forEach((id, entry) -> words.apply(entry).forEach(word -> {
            String before = taken.put(word.toLowerCase(Locale.ROOT), id);
            if (before != null) {
                shared.add(word + ": " + before + ", " + id);
            }
        }));
    }

    @Test
    void charactersContradictEachOtherBothWays() {
        List<String> oneSided = new ArrayList<>();
        builtIn.characters().values().forEach(character -> character.against().forEach(other -> {
            if (!builtIn.characters().get(other).against().contains(character.id())) {
                oneSided.add(character.id() + " is against " + other + ", not the other way");
            }
        }));
        assertEquals(List.of(), oneSided);
    }

    @Test
    void charactersStayWithinSixDecibels() {
        builtIn.characters().values().forEach(character -> {
            for (double band : character.toneDb().toArray()) {
                assertTrue(Math.abs(band) <= 6, () -> character.id() + " " + band);
            }
        });
    }
}
