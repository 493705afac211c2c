package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.advice.Kept;
import pairwright.catalogue.CatalogueStore;
import pairwright.locker.Act;
import pairwright.locker.DocumentDraft;
import pairwright.locker.Locker;
import pairwright.locker.MarkDraft;
import pairwright.locker.Place;
import pairwright.model.Catalogue;

/** What was marked after sessions is remembered at once, counted as sessions, and told for each room and player apart. */
class HouseMarksTest {
    private static final Catalogue CATALOGUE = new CatalogueStore().builtIn();
    private static final MarkDraft RIBBON = MarkDraft.kept("bass", 1, "double-bass", "long-ribbon", "bridge");

    @TempDir
    Path folder;
    private Locker locker;
    private HouseMarks memory;

    @BeforeEach
    void open() {
        locker = Locker.open(Place.in(folder), () -> CATALOGUE, Clock.systemUTC());
        memory = new HouseMarks(locker.marks());
    }

    @AfterEach
    void close() {
        locker.close();
    }

    private void session(String id, MarkDraft... marks) {
        locker.change(Act.by("Wren"), changes -> {
            changes.put(DocumentDraft.lineUp(id, id, null, null, "{}"), null);
            changes.marks(id, List.of(marks), null);
            return "";
        });
    }

    private Set<Kept> of(String room, String player) {
        List<Kept> kept = memory.of("double-bass", room, player);
        assertEquals(kept.size(), Set.copyOf(kept).size(), "nothing is said twice, since it would be added up");
        return Set.copyOf(kept);
    }

    @Test
    void aHouseWithoutMarksRemembersNothing() {
        assertEquals(Set.of(), of("barn", "Oluchi"));
    }

    @Test
    void aMarkIsRememberedAtOnceAndForgottenWithItsSession() {
        assertEquals(Set.of(), of(null, null));
        session("a", RIBBON);
        assertEquals(Set.of(new Kept("long-ribbon", "bridge", 1, 1, null, null)), of(null, null));
        session("b", RIBBON.changed(null, "f-hole", "boomy"));
        assertEquals(Set.of(new Kept("long-ribbon", "bridge", 1, 2, null, null), new Kept("long-ribbon", "f-hole", 1, 1, null, null)), of(null, null));
        locker.change(Act.by("Wren"), changes -> {
            changes.removeDocument("b", null);
            return "";
        });
        assertEquals(Set.of(new Kept("long-ribbon", "bridge", 1, 1, null, null)), of(null, null));
    }

    @Test
    void roomAndPlayerAreToldApartAndTheOthersAreNotInThem() {
        session("a", RIBBON.by("Oluchi", "barn"));
        session("b", RIBBON.by("Oluchi", "church"));
        session("c", RIBBON.by("Bo", "barn").changed("compact-ribbon", null, null));
        session("d", RIBBON.by(null, "barn"));
        assertEquals(Set.of(new Kept("long-ribbon", "bridge", 3, 4, null, null), new Kept("long-ribbon", "bridge", 2, 3, "barn", null),
                new Kept("long-ribbon", "bridge", 2, 2, null, "Oluchi"), new Kept("long-ribbon", "bridge", 1, 1, "barn", "Oluchi"),
                new Kept("compact-ribbon", "bridge", 1, 1, null, null), new Kept("compact-ribbon", "bridge", 1, 1, "barn", null)), of("barn", "Oluchi"));
        assertEquals(2, of("moon", null).size(), "only what holds anywhere");
    }

    @Test
    void twoOfASourceInOneSessionAreOneSession() {
        session("a", RIBBON.by("Oluchi", "barn"), MarkDraft.kept("bass-2", 1, "double-bass", "long-ribbon", "bridge").by("Bo", "barn").changed(null, null, "no"));
        assertTrue(of("barn", "Oluchi").contains(new Kept("long-ribbon", "bridge", 0, 1, null, null)), "kept is what everybody kept");
        assertTrue(of("barn", "Oluchi").contains(new Kept("long-ribbon", "bridge", 1, 1, null, "Oluchi")));
    }

    @Test
    void aLockerThatIsAwayIsNotRememberedFrom() {
        session("a", RIBBON);
        locker.close();
        assertEquals(Set.of(), of(null, null));
    }
}
