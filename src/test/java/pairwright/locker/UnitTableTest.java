package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pairwright.catalogue.CatalogueStore;
import pairwright.model.Catalogue;

class UnitTableTest {
    private static final Catalogue CATALOGUE = new CatalogueStore().builtIn();

    @TempDir
    Path folder;

    private Locker locker() {
        return Locker.open(Place.in(folder), () -> CATALOGUE, Clock.systemUTC());
    }

    private static TablePreview preview(String text, Unit... units) {
        return UnitTable.preview(text, List.of(units), CATALOGUE);
    }

    private static UnitDraft first(String text) {
        TablePreview preview = preview(text);
        assertEquals(List.of(), preview.faults());
        return preview.rows().get(0).unit();
    }

    private static List<String> faults(String text, Unit... units) {
        return preview(text, units).faults().stream().map(TableFault::sentence).toList();
    }

    private static Unit unit(UnitDraft draft) {
        return new UnitChecks(CATALOGUE.mics()).read(draft, null);
    }

    private static Unit ribbon(String id, String tag) {
        return unit(UnitDraft.mic(id, "long-ribbon", "Ribbon " + id).tagged(tag));
    }

    private static String imported(Locker locker, String text) {
        return locker.change(Act.by("Ida"), changes -> UnitTable.importInto(changes, text, CATALOGUE).sum()).text();
    }

    @Test
    void readsEveryKindWithAllItsColumnsInAnyOrder() {
        TablePreview preview = preview("""
                label,id,micType,kind,response,bank,leastGainDb,mostGainDb,inputOhm,noiseDbu,phantom,phantomMa,massKg,reachM,footRadiusM,legs,heightM,lossDb,boosterGainDb,boosterPhantomMa,passesPhantom
                Ribbon,ribbon-1,long-ribbon,,63:-1.2 1000:0 8000:-3,,,,,,,,,,,,,,,,
                Channel,channel-1,,channel,,A,10,65,2400,-128,bank,40,,,,,,,,,
                Stand,stand-1,,stand,,,,,,,,,12.5,1.8,0.45,3,2.4,,,,
                Pad,pad-1,,pad,,,,,,,,,,,,,,20,,,
                Booster,booster-1,,booster,,,,,,,,,,,,,,,25,3,no
                """);
        assertEquals(List.of(), preview.faults());
        List<UnitDraft> units = preview.rows().stream().map(TablePreview.Row::unit).toList();
        assertEquals(UnitKind.MIC, units.get(0).kind());
        assertEquals(List.of(new ResponsePoint(63, -1.2), new ResponsePoint(1000, 0), new ResponsePoint(8000, -3)), units.get(0).response());
        assertEquals(new ChannelData("A", 10.0, 65.0, 2400.0, -128.0, PhantomSwitch.BANK, 40.0), units.get(1).channel());
        assertEquals(new StandData(12.5, 1.8, 0.45, 3, 2.4), units.get(2).stand());
        assertEquals(new PadData(20.0, null), units.get(3).pad());
        assertEquals(new BoosterData(25.0, 3.0, false), units.get(4).booster());
        assertEquals(List.of(2, 3, 4, 5, 6), preview.rows().stream().map(TablePreview.Row::line).toList());
    }

    @Test
    void semicolonsBringDecimalCommas() {
        UnitDraft stand = first("\uFEFFkind;label;massKg;reachM\r\nstand;Tall, dark;12,5;1.8\r\n");
        assertEquals("Tall, dark", stand.label());
        assertEquals(new StandData(12.5, 1.8, null, null, null), stand.stand());
        assertEquals(List.of("line 2, column inputOhm, \"2.400\": may be meant either way. Write decimals with a comma and thousands without a point, such as 2,400 or 2400"),
                faults("kind;label;inputOhm\nchannel;A;2.400"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void aNoteHasItsLinesHoweverTheyEndAndNoOtherControlCharacter(String end) {
        assertEquals("two\nlines", first(String.join(end, "id,micType,note", "a-1,long-ribbon,\"two" + end + "lines" + end + "\"")).note());
        assertEquals(List.of("note"), preview("id,micType,note\na-1,long-ribbon,\"a" + '\u0007' + "b\"").faults().stream().map(TableFault::column).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void linesEndInAnyWayAndAreCounted(String end) {
        TablePreview preview = preview(String.join(end, "id,micType,storedAt", "a-1,long-ribbon,\"two" + end + "lines\"", "", "b-1,nothing-like-it,", ",,", "c-1,long-ribbon,"));
        assertEquals(List.of(2, 5), preview.faults().stream().map(TableFault::line).toList(), preview.faults().toString());
        assertEquals(List.of("storedAt", "micType"), preview.faults().stream().map(TableFault::column).toList());
        assertEquals(List.of(7), preview.rows().stream().map(TablePreview.Row::line).toList());
    }

    @Test
    void everyFaultIsToldWithItsPlace() {
        assertEquals(List.of(
                "line 1, column lable: there is no such column. Did you mean label?",
                "line 2, column massKg, \"heavy\": is not a number. Write only the number, without its unit, decimals with a point, such as 1.5",
                "line 2, column legs, \"2.5\": is not a whole number. Write one such as 3",
                "line 3, column kind, \"stnad\": is none of the words for it. Did you mean stand?",
                "line 3, column passesPhantom, \"perhaps\": is neither yes nor no. Write one of them"),
                faults("id,kind,lable,massKg,legs,passesPhantom\nx-1,stand,X,heavy,2.5,\nx-2,stnad,Y,1,3,perhaps\n"));
        String typo = faults("id,micType,response\nx-1,long-riban,63:1 8000:0\n").get(0);
        assertTrue(typo.startsWith("line 2, column micType, \"long-riban\": ") && typo.endsWith("Did you mean long-ribbon?"), typo);
        assertTrue(faults("id,micType,response\nx-1,long-ribbon,63:1 8000\n").get(0).startsWith("line 2, column response, \"63:1 8000\": has \"8000\" in it"));
        String falling = faults("id,micType,response\nx-1,long-ribbon,63:1 50:0 8000:0\n").get(0);
        assertTrue(falling.startsWith("line 2, column response, ") && falling.contains("not above the 63.0 Hz"), falling);
        String tooHeavy = faults("id,kind,massKg\nx-1,stand,900\n").get(0);
        assertTrue(tooHeavy.startsWith("line 2, column massKg, \"900\": is 900.0 kg."), tooHeavy);
        String foreign = faults("id,kind,reachM\nx-1,pad,2\n").get(0);
        assertTrue(foreign.startsWith("line 2, column reachM, \"2\": only a stand has this"), foreign);
    }

    @Test
    void theSameIdOrTagTwiceIsRefused() {
        assertEquals(List.of(
                "line 3, column id, \"x-1\": stands in line 2 as well. Keep one of the two rows, or give this one an id of its own",
                "line 5, column tag, \"t1\": stands in line 4 as well. Give every unit a tag of its own, or none",
                "line 6, column tag, \"T9\": is on unit old (Ribbon old). Give every unit a tag of its own, or bring that unit in as well with another tag"),
                faults("id,micType,tag\nx-1,long-ribbon,\nx-1,long-ribbon,\nx-2,long-ribbon,T1\nx-3,long-ribbon,t1\nx-4,long-ribbon,T9\n", ribbon("old", "t9")));
    }

    @Test
    void aRowWithoutIdIsNeverTakenForTheUnitOfThatName() {
        assertTrue(faults("micType,label\nlong-ribbon,ribbon OLD\n", ribbon("old", null)).get(0).contains("is what unit old is called"));
    }

    @Test
    void brokenQuotesAndStrayCellsAreFaultsAndNoMore() {
        assertTrue(faults("id,micType,note\nx-1,long-ribbon,\"open\n").get(0).contains("the quotes do not match up"));
        assertTrue(faults("id,micType,note\nx-1,long-ribbon,\"a\"b\n").get(0).contains("the quotes do not match up"));
        assertTrue(faults("id,micType,note\nx-1,long-ribbon,one, two\n").get(0).contains("stands in cell 4"));
        assertTrue(faults("").get(0).contains("there is nothing in the file"));
        assertTrue(faults("id,id,micType\n").get(0).contains("the column is there twice"));
    }

    @Test
    void whatIsTooMuchIsRefused() {
        String rows = IntStream.rangeClosed(0, TableFile.MOST_ROWS).mapToObj(i -> "u-" + i + ",long-ribbon").collect(Collectors.joining("\n"));
        TablePreview many = preview("id,micType\n" + rows);
        assertEquals(List.of("line " + (TableFile.MOST_ROWS + 2) + ": the file has more than the 10000 rows that are read at once. Split it"),
                many.faults().stream().map(TableFault::sentence).toList());
        assertTrue(faults("x".repeat(TableFile.MOST_CHARACTERS + 1)).get(0).contains("Split it"));
        TablePreview wrong = preview("id,micType\n" + rows.replace("long-ribbon", "nothing"));
        assertEquals(1000, wrong.faults().size());
        assertEquals(TableFile.MOST_ROWS - 1000 + 1, wrong.more());
    }

    @Test
    void textThatIsNotUtf8IsRefused() {
        assertEquals("Bändchen", UnitTable.text("Bändchen".getBytes(StandardCharsets.UTF_8)));
        assertThrows(LockerFault.Unusable.class, () -> UnitTable.text("Bändchen".getBytes(StandardCharsets.ISO_8859_1)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@x", "'=1", "''@x", " =1", "'60s ribbon", "'", "\uFF1D1", "plain", "1;2", "a,b", "say \"so\"", "--", "'-"})
    void noTextIsLeftForASpreadsheetToRunAndEachComesBack(String text) {
        String cell = CellText.of(text, false);
        assertTrue(!cell.matches("[ \\u00A0]*[=+\\-@\\uFF1D\\uFF0B\\uFF0D\\uFF20].*"), cell);
        assertEquals(text, CellText.unguarded(cell));
        Unit unit = unit(UnitDraft.mic("x-1", "long-ribbon", "X").in(Condition.LIMITED, text));
        assertEquals(unit.note(), preview(UnitTable.write(List.of(unit))).rows().get(0).unit().note());
        assertEquals(unit.note(), preview(UnitTable.writeWithDecimalComma(List.of(unit))).rows().get(0).unit().note());
    }

    @Test
    void aNameThatOnlyLooksGuardedIsLeftAlone() {
        assertEquals("'60s ribbon", first("micType,label\nlong-ribbon,'60s ribbon\n").label());
        assertEquals("=x", first("micType,label\nlong-ribbon,=x\n").label());
    }

    @Test
    void thePreviewSaysWhatChangesAndWhatTheFileDoesNotSayStays() {
        Unit old = unit(new UnitDraft("x-1", null, "long-ribbon", "X", "77", "t1", null, null, "hums", "shelf", null, null, null, null, null));
        TablePreview preview = preview("id,note,condition\nx-1,,in-repair\n", old);
        assertEquals(List.of(new TablePreview.Change("condition", "good", "in-repair"), new TablePreview.Change("note", "hums", "")), preview.rows().get(0).changes());
        assertEquals("77", preview.rows().get(0).unit().serial());
        assertEquals(TablePreview.Effect.SAME, preview("id,note,label\nx-1, hums ,\n", old).rows().get(0).effect());
        assertEquals("0 new, 1 changed, 0 the same", preview.sum());
    }

    @Test
    void aFileComesInWholeOrNotAtAll() {
        try (Locker locker = locker()) {
            assertEquals("2 new, 0 changed, 0 the same", imported(locker, "id,micType,pairMate\na-1,long-ribbon,a-2\na-2,long-ribbon,\n"));
            long revision = locker.revision();
            LockerFault.Unusable refused = assertThrows(LockerFault.Unusable.class, () -> imported(locker, "id,micType\nb-1,long-ribbon\nb-2,no-such-type\n"));
            assertEquals("/lines/3/micType", refused.faults().get(0).at());
            assertEquals(revision, locker.revision());
            assertEquals(List.of("a-1", "a-2"), locker.units().stream().map(Unit::id).toList());
            assertEquals("1 new, 1 changed, 0 the same", imported(locker, "id,micType,note\na-1,long-ribbon,soft\nb-1,long-ribbon,\n"));
            assertEquals("a-2", locker.unit("a-1").orElseThrow().pairMate());
            assertEquals(3, locker.units().size());
            assertEquals("0 new, 0 changed, 3 the same", imported(locker, UnitTable.write(locker.units())));
        }
    }

    @Test
    void unitsMayTradeTheirTags() {
        try (Locker locker = locker()) {
            imported(locker, "id,micType,tag\na-1,long-ribbon,T1\na-2,long-ribbon,T2\na-3,long-ribbon,T3\n");
            imported(locker, "id,tag\na-1,T2\na-2,T3\na-3,t1\n");
            assertEquals(List.of("T2", "T3", "t1"), List.of("a-1", "a-2", "a-3").stream().map(id -> locker.unit(id).orElseThrow().tag()).toList());
        }
    }

    @Test
    void aTypeTheCatalogueLostDoesNotKeepTheFileOut() {
        Unit lost = new Unit("x-1", UnitKind.MIC, "gone-type", "X", null, null, null, Condition.GOOD, null, null, null, null, null, null, List.of(), 3);
        assertEquals(TablePreview.Effect.SAME, preview(UnitTable.write(List.of(lost)), lost).rows().get(0).effect());
        assertEquals(TablePreview.Effect.CHANGED, preview("id,note\nx-1,odd\n", lost).rows().get(0).effect());
    }
}
