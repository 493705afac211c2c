package pairwright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Catalogue;
import pairwright.model.Pattern;

class PackedTest {
    record Everything(String text, double plain, Double boxed, int count, Integer boxedCount, boolean yes, Boolean boxedYes,
            Pattern pattern, OctaveCurve curve, List<List<String>> lists, Map<String, Inner> map) {
    }

    record Inner(String text) {
    }

    record Odd(List<Long> numbers) {
    }

    private static byte[] packed(Record record) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Packed.write(record, out);
        return out.toByteArray();
    }

    private static <T extends Record> T thereAndBack(T record, Class<T> type) throws IOException {
        return Packed.read(new ByteArrayInputStream(packed(record)), type);
    }

    @Test
    void theWholeCatalogueReadsBackEqual() throws IOException {
        Catalogue read = CatalogueReader.read(Path.of("catalogue")).catalogue();
        Catalogue back = thereAndBack(read, Catalogue.class);
        assertEquals(read, back);
        assertEquals(read.version(), back.version());
        assertEquals(List.copyOf(read.sources().keySet()), List.copyOf(back.sources().keySet()));
    }

    @Test
    void everyKindOfValueReadsBackEqual() throws IOException {
        Everything all = new Everything("caf\u00e9 \uD83C\uDFB8", -0.1, Double.MIN_VALUE, Integer.MIN_VALUE, 7, true, false,
                Pattern.LOBAR, OctaveCurve.of(1, 2, 3, 4, 5, 6, 7, 8, 9.5), List.of(List.of(), List.of("one", "one", "two")),
                new TreeMap<>(Map.of("b", new Inner("one"), "a", new Inner(null))));
        assertEquals(all, thereAndBack(all, Everything.class));
    }

    @Test
    void nothingReadsBackAsNothing() throws IOException {
        Everything none = new Everything(null, 0, null, 0, null, false, null, null, null, null, null);
        assertEquals(none, thereAndBack(none, Everything.class));
    }

    @Test
    void theOrderOfAMapIsKept() throws IOException {
        Map<String, Inner> map = new LinkedHashMap<>();
        List.of("z", "a", "m").forEach(key -> map.put(key, new Inner(key)));
        Everything all = new Everything(null, 0, null, 0, null, false, null, null, null, null, map);
        assertEquals(List.of("z", "a", "m"), new ArrayList<>(thereAndBack(all, Everything.class).map().keySet()));
    }

    @Test
    void whatIsReadCannotBeChanged() throws IOException {
        Everything back = thereAndBack(new Everything(null, 0, null, 0, null, false, null, null, null, List.of(List.of("one")),
                Map.of("a", new Inner("one"))), Everything.class);
        assertThrows(UnsupportedOperationException.class, () -> back.lists().clear());
        assertThrows(UnsupportedOperationException.class, () -> back.lists().get(0).clear());
        assertThrows(UnsupportedOperationException.class, () -> back.map().clear());
    }

    @Test
    void aTypeItDoesNotKnowIsRefusedByName() {
        assertEquals("java.lang.Long cannot be packed. Add it to Packed",
                assertThrows(IllegalArgumentException.class, () -> packed(new Odd(List.of(7L)))).getMessage());
    }

    @Test
    void bytesThatEndTooSoonAreNoCatalogue() throws IOException {
        byte[] whole = packed(SmallCatalogue.at(Path.of("src/test/resources/catalogue/small")).read().catalogue());
        for (int length : new int[] {0, 3, 100, whole.length / 2, whole.length - 1}) {
            assertThrows(EOFException.class,
                    () -> Packed.read(new ByteArrayInputStream(Arrays.copyOf(whole, length)), Catalogue.class));
        }
    }
}
