package pairwright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CatalogueStoreTest {
    @TempDir
    Path folder;
    @TempDir
    Path house;

    private final String roomText = SmallCatalogue
            .at(Path.of("src/test/resources/catalogue/small")).text("rooms/small-room.yaml");

    private CatalogueStore givenAStore() {
        return new CatalogueStore(SmallCatalogue.in(folder).read().catalogue());
    }

    private void givenAHouseRoom(String from, String to) {
        SmallCatalogue.at(house).write("rooms/small-room.yaml", roomText).change("rooms/small-room.yaml", from, to);
    }

    @Test
    void aSoundHouseFolderIsLaidOverWhatIsBuiltIn() {
        CatalogueStore store = givenAStore();
        givenAHouseRoom("reverbTimeS: 0.5", "reverbTimeS: 0.4");
        assertEquals(List.of(), store.with(house).faults());
        assertEquals(0.4, store.with(house).catalogue().rooms().get("small-room").reverbTimeS());
        assertEquals(0.5, store.builtIn().rooms().get("small-room").reverbTimeS());
    }

    @Test
    void aFaultyHouseFolderGivesItsFaultsAndNoCatalogue() {
        givenAHouseRoom("reverbTimeS: 0.5", "reverbTimeS: long");
        CatalogueReader.Result faulty = givenAStore().with(house);
        assertEquals(List.of("rooms/small-room.yaml:7:14: reverbTimeS is \"long\", not a number. Give a number: mid-band "
                + "reverberation "
                + "time, s"), SmallCatalogue.at(house).printed(faulty.faults()));
        assertNull(faulty.catalogue());
    }

    @Test
    void anEntryTakenOutOfTheHouseFolderIsGone() {
        CatalogueStore store = givenAStore();
        givenAHouseRoom("reverbTimeS: 0.5", "reverbTimeS: 0.4");
        store.with(house);
        SmallCatalogue.at(house).remove("rooms/small-room.yaml");
        assertEquals(0.5, store.with(house).catalogue().rooms().get("small-room").reverbTimeS());
    }

    @Test
    void withoutAHouseFolderThereIsWhatIsBuiltIn() {
        CatalogueStore store = givenAStore();
        assertSame(store.builtIn(), store.with(house.resolve("nothing-here")).catalogue());
    }
}
