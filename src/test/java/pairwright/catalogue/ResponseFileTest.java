package pairwright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Basis;
import pairwright.model.Catalogue;
import pairwright.model.MicType;
import pairwright.model.Rests;

/** A measured response beside a mic type. */
class ResponseFileTest {
    private static final String GOOD = "63,-6\n125,-2\n250,0\n500,0\n1000,1\n2000,3\n4000,5\n8000,2\n16000,-4\n";
    private static final OctaveCurve OCTAVES = OctaveCurve.of(-7, -3, -1, -1, 0, 2, 4, 1, -5);

    @TempDir
    private Path folder;
    @TempDir
    private Path house;

    private List<String> faults(byte[] bytes) throws Exception {
        Path file = Files.write(house.resolve("x.csv"), bytes);
        List<FileFault> faults = new ArrayList<>();
        ResponseFile.read(file, faults);
        return faults.stream().map(fault -> fault.toString().replace(house + "/", "")).toList();
    }

    private List<String> faults(String text) throws Exception {
        return faults(text.getBytes(StandardCharsets.UTF_8));
    }

    private OctaveCurve octaves(String text) throws Exception {
        Path file = Files.writeString(house.resolve("x.csv"), text);
        List<FileFault> faults = new ArrayList<>();
        ResponseFile read = ResponseFile.read(file, faults).orElseThrow(() -> new AssertionError(faults.toString()));
        return read.responseDb();
    }

    @Test
    void headingsRemarksQuotesEveryUsualSeparatorAndEndOfLineAreRead() throws Exception {
        assertEquals(OCTAVES, octaves(GOOD));
        assertEquals(OCTAVES, octaves("\uFEFF# Swept\n\nfrequency (Hz), level (dB)\n" + GOOD));
        assertEquals(OCTAVES, octaves("Frequency;dB\r\n" + GOOD.replace(',', ';').replace("\n", "\r\n")));
        assertEquals(OCTAVES, octaves(GOOD.replace(',', '\t')));
        assertEquals(OCTAVES, octaves(GOOD.replace(",", "   ")));
        assertEquals(OCTAVES, octaves(GOOD.replaceAll("(.+),(.+)", "\"$1\", \"$2\"")));
        assertEquals(OCTAVES, octaves(GOOD.replace("1000,", "1.0e3,").replace(",-2\n", ",-2.00\n")));
    }

    @ParameterizedTest(name = "{0} -> {1}: {2}")
    @CsvSource(delimiter = '|', value = {
        "250,0 | 250 | x.csv:3:1: there is 1 value in this line. Give two: the frequency in Hz, and the level in dB, such as 63, -2.5",
        "250,0 | 250;0;12 | x.csv:3:1: there are 3 values in this line. Give two",
        "250,0 | 250,low | x.csv:3:5: the level is \"low\", not a number. Give it in dB, decimals with a point",
        "250,0 | 250,NaN | x.csv:3:5: the level is \"NaN\", not a number",
        "250,0 | 250,1e999 | x.csv:3:5: the level is 1e999 dB. Give -200 to 200",
        "250,0 | 250,-201 | x.csv:3:5: the level is -201 dB. Give -200 to 200",
        "250,0 | 125,0 | x.csv:3:1: the frequency is 125 Hz, not above the 125 Hz before it. Put each frequency once, in rising order",
        "63,-6 | 0,-6 | x.csv:1:1: the frequency is 0 Hz. Give more than 0 and at most 200000",
        "16000,-4 | 999999,0 | x.csv:9:1: the frequency is 999999 Hz. Give more than 0 and at most 200000",
        "250,0 | 250,-1,5 | x.csv:3:1: \"250,-1,5\" is not two numbers. Write frequency, level, and decimals with a point, such as 63, -2.5",
        "250,0 | 250;-1,5 | x.csv:3:1: \"250;-1,5\" is not two numbers",
        "8000,2 | 8000,90 | x.csv:1:1: the octave at 8000 Hz is 89 dB against that at 1 kHz. A microphone stays between -80 and 30: check the levels"})
    void whatCannotBeUsedIsSaidWithLineAndColumn(String good, String bad, String fault) throws Exception {
        List<String> faults = faults(GOOD.replace(good, bad));
        assertEquals(1, faults.size(), faults.toString());
        assertTrue(faults.get(0).startsWith(fault), faults.toString());
    }

    @Test
    void whatIsNotCoveredIsRefusedBeyondAnOctaveAndSaidWithinOne() throws Exception {
        assertEquals(List.of("x.csv:1:1: the response begins at 250 Hz, more than an octave above 63 Hz. Measure from 126 Hz or lower, better from 40",
                "x.csv:5:1: the response ends at 4000 Hz, more than an octave below 16 kHz. Measure up to 8 kHz or higher, better to 20"),
                faults("250,0\n500,0\n1000,1\n2000,3\n4000,5\n"));
        assertEquals(List.of("x.csv:2:1: from 63 to 500 Hz there is no point. Give at least one an octave, better three"),
                faults(GOOD.replace("125,-2\n250,0\n", "")));
        assertEquals(List.of("x.csv:1:1: there is no point in this file. Give frequency and level, one point a line, such as 63, -2.5"), faults("# nothing yet\n"));
        assertEquals(OctaveCurve.of(-3, -3, -1, -1, 0, 2, 4, 1, 1), octaves(GOOD.replace("63,-6\n", "").replace("16000,-4\n", "")));
    }

    @Test
    void allWrongLinesAreToldAtOnceButNotWithoutEnd() throws Exception {
        List<String> faults = faults(IntStream.range(0, 500).mapToObj(i -> "a,1,2\n").collect(Collectors.joining("", "f,dB\n", "")));
        assertEquals(11, faults.size());
        assertTrue(faults.get(10).contains("490 more lines cannot be used"), faults.get(10));
    }

    @Test
    void aFileThatIsNoTextOrFarTooLargeIsRefused() throws Exception {
        assertEquals(List.of("x.csv:1:1: the file is not UTF-8. Save it as plain text in UTF-8"), faults(new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1}));
        assertEquals(List.of("x.csv:1:1: the file has 1000001 bytes, more than any response needs. Make it smaller"), faults(new byte[1_000_001]));
        assertTrue(faults("\0\0\0\0").size() > 0);
    }

    @Test
    void theFileAloneCorrectsTheResponseOfABuiltInTypeAndSaysWhatItRestsOn() {
        Catalogue builtIn = SmallCatalogue.in(folder).read().catalogue();
        SmallCatalogue at = SmallCatalogue.at(house).write("mics/small-condenser-cardioid.csv", "# Swept in our hall\n" + GOOD.replace("63,-6\n", ""));
        CatalogueReader.Result read = CatalogueReader.readOver(builtIn, house);
        assertEquals(List.of(), at.printed(read.faults()));
        assertEquals(1, read.files());
        MicType before = builtIn.mics().get("small-condenser-cardioid");
        MicType measured = read.catalogue().mics().get("small-condenser-cardioid");
        assertEquals(OctaveCurve.of(-3, -3, -1, -1, 0, 2, 4, 1, -5), measured.responseDb());
        assertEquals(before.patterns(), measured.patterns());
        assertEquals(new Rests(List.of("responseDb"), Basis.MEASURED, "Swept in our hall; below 125 Hz taken as at 125 Hz."),
                measured.basis().get(measured.basis().size() - 1));
        assertEquals(1, measured.basis().stream().filter(rests -> rests.of().contains("responseDb")).count());
        assertTrue(measured.basis().stream().anyMatch(rests -> rests.of().contains("patterns")));
    }

    @Test
    void anEntryOfTheHouseMayLeaveItsResponseToTheFile() {
        Catalogue builtIn = SmallCatalogue.in(folder).read().catalogue();
        String own = SmallCatalogue.at(folder).text("mics/small-condenser-cardioid.yaml").replace("id: small-condenser-cardioid", "id: our-condenser");
        String without = own.replaceFirst("(?m)^responseDb:.*\n", "");
        SmallCatalogue at = SmallCatalogue.at(house).write("mics/our-condenser.yaml", without).write("mics/our-condenser.csv", GOOD);
        CatalogueReader.Result read = CatalogueReader.readOver(builtIn, house);
        assertEquals(List.of(), at.printed(read.faults()));
        assertEquals(OCTAVES, read.catalogue().mics().get("our-condenser").responseDb());
        assertTrue(read.catalogue().mics().get("our-condenser").basis().toString().contains("Measured by the house"));

        at.write("mics/our-condenser.yaml", own);
        List<String> both = at.printed(CatalogueReader.readOver(builtIn, house).faults());
        assertEquals(1, both.size(), both.toString());
        assertTrue(both.get(0).contains("responseDb is given here, and measured in the .csv file of the same name. Keep one of the two"), both.toString());

        at.write("mics/our-condenser.yaml", without).write("mics/our-condenser.csv", "63;x\n");
        List<String> onlyTheFile = at.printed(CatalogueReader.readOver(builtIn, house).faults());
        assertTrue(onlyTheFile.stream().allMatch(fault -> fault.startsWith("mics/our-condenser.csv:")), onlyTheFile.toString());
        assertNull(CatalogueReader.readOver(builtIn, house).catalogue());
    }

    @ParameterizedTest
    @ValueSource(strings = {"small-condenser-cardiod", "../small-condenser-cardioid", "nothing-like-it-at-all"})
    void aResponseBelongsToATypeThatIsThere(String name) throws Exception {
        Catalogue builtIn = SmallCatalogue.in(folder).read().catalogue();
        Files.createDirectories(house.resolve("mics"));
        SmallCatalogue at = SmallCatalogue.at(house).write("mics/" + name + ".csv", GOOD);
        List<String> faults = at.printed(CatalogueReader.readOver(builtIn, house).faults());
        if (name.startsWith("..")) {
            assertEquals(List.of(), faults, "what lies beside the folder of mic types is none of its business");
            assertEquals(builtIn.mics(), CatalogueReader.readOver(builtIn, house).catalogue().mics());
        } else {
            assertEquals(1, faults.size());
            assertTrue(faults.get(0).startsWith("mics/" + name + ".csv:1:1: there is no mic type \"" + name + "\". "), faults.toString());
        }
    }
}
