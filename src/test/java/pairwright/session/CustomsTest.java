package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.Sessions.at;
import static pairwright.session.Sessions.channel;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.acoustics.HighPass;
import pairwright.advice.HouseMemory;
import pairwright.advice.KnowledgeStore;

/** What plans take for granted is in the catalogue, and a house that sees it otherwise gets other plans. */
class CustomsTest {
    private static final Floor ROOM = new Floor(null, 8, 7, 3.5, 0.6);
    private static final Planner BUILT_IN = new Planner(KnowledgeStore.builtIn()::current, HouseMemory.NOTHING);

    @TempDir
    Path house;
    private Path customs;

    @BeforeEach
    void folder() throws IOException {
        customs = Files.createDirectories(house.resolve("catalogue/customs"));
    }

    private void custom(String id, String before, String after) throws IOException {
        String builtIn = Files.readString(Path.of("catalogue/customs", id + ".yaml"));
        assertTrue(builtIn.contains(before), builtIn);
        Files.writeString(customs.resolve(id + ".yaml"), builtIn.replace(before, after));
    }

    private Planner planner() {
        KnowledgeStore store = KnowledgeStore.withHouse(house);
        assertEquals(List.of(), store.faults());
        return new Planner(store::current, HouseMemory.NOTHING);
    }

    private static Planned plan(Planner planner, Sessions session) {
        return planner.plan(session.lineUp(), session.gear(), step -> { });
    }

    @Test
    void aHighPassMayTakeAsMuchAsTheHouseSays() throws IOException {
        custom("high-pass-loss", "value: 1\n", "value: 3\n");
        Sessions tenor = Sessions.of(ROOM, at("tenor", "tenor-saxophone", 4, 4, 0, 1, "small-condenser-cardioid"));
        double lowestHz = Rooms.CATALOGUE.sources().get("tenor-saxophone").fundamentalHz().low();
        assertEquals(Math.floor(HighPass.cornerHz(lowestHz, 1)), plan(BUILT_IN, tenor).plans().get(0).lines().get(0).highPassHz());
        assertEquals(Math.floor(HighPass.cornerHz(lowestHz, 3)), plan(planner(), tenor).plans().get(0).lines().get(0).highPassHz());
    }

    @Test
    void aLowStandReachesAsHighAsTheHouseSays() throws IOException {
        custom("low-stand", "value: 0.7\n", "value: 0.9\n");
        Sessions guitar = Sessions.of(ROOM, at("guitar", "nylon-guitar", 4, 4, 0, 1, "small-condenser-cardioid"))
                .stands(new Gear.Stand("low", "low", StandKind.SHORT, null, null, null, null, null));
        assertEquals(List.of(), plan(BUILT_IN, guitar).plans());
        assertEquals("low", plan(planner(), guitar).plans().get(0).lines().get(0).stand());
    }

    @Test
    void borrowingCostsWhatTheHouseSays() throws IOException {
        custom("borrowed-channel", "value: 2\n", "value: 7\n");
        Sessions two = Sessions.of(ROOM, at("one", "violin", 3, 3, 0, 1, "small-condenser-cardioid"), at("two", "viola", 5, 3, 0, 1, "small-condenser-cardioid"))
                .channels(channel("a"));
        assertEquals(2, borrowing(plan(BUILT_IN, two)));
        assertEquals(7, borrowing(plan(planner(), two)));
    }

    private static double borrowing(Planned planned) {
        return planned.waysOut().stream().filter(way -> way.kind().equals("borrow")).mapToDouble(Planned.WayOut::pricePoints).findFirst().orElseThrow();
    }

    @Test
    void aDifferenceInToneIsAsClearAsTheHouseSays() throws IOException {
        custom("clear-contrast", "value: 6\n", "value: 60\n");
        Sessions two = Sessions.of(ROOM, at("one", "violin", 3, 3, 0, 1, "small-condenser-cardioid"), at("two", "double-bass", 5, 3, 0, 1, "small-condenser-cardioid")).apart();
        assertTrue(contrast(plan(planner(), two)) < contrast(plan(BUILT_IN, two)) / 2);
    }

    private static double contrast(Planned planned) {
        return planned.plans().get(0).reasons().stream().filter(said -> said.rule().equals("PLN-011")).mapToDouble(Said::points).findFirst().orElseThrow();
    }

    @Test
    void playersArePutAsFarApartAsTheHouseSays() throws IOException {
        custom("between-players", "value: 2\n", "value: 1.5\n");
        double usualM = apartM(KnowledgeStore.builtIn());
        assertEquals(2, usualM, 0.1);
        assertEquals(1.5, apartM(KnowledgeStore.withHouse(house)), 0.1);
    }

    /** The nearest two of six in a large room. */
    private static double apartM(KnowledgeStore store) {
        List<Seating.Told> told = Stream.of("violin", "cello", "flute", "oboe", "clarinet", "trumpet").map(source -> new Seating.Told(at(source, source, 0, 0, 0, 1), false, false)).toList();
        List<Seat> seats = Seating.of(new Floor(null, 14, 12, 4, 0.5), told, store.current().catalogue()).seats();
        return seats.stream().flatMapToDouble(one -> seats.stream().filter(other -> other != one).mapToDouble(other -> Math.hypot(one.xM() - other.xM(), one.yM() - other.yM())))
                .min().orElseThrow();
    }

    @Test
    void noMoveIsSuggestedNearerToAWallThanTheHouseSays() throws IOException {
        custom("player-from-wall", "value: 0.5\n", "value: 2.5\n");
        LineUp lineUp = Rooms.lineUp(new Floor(null, 8, 7, 3.5, 0.3), List.of(), at("guitar", "nylon-guitar", 3.5, 3.5, 0, 1), at("trumpet", "trumpet", 4.7, 3.5, 270, 1));
        Seat atTheWall = lineUp.seats().get(0).at(1, 3.5, 0);
        assertTrue(new FloorSpace(lineUp, KnowledgeStore.builtIn().current().catalogue()).fits(atTheWall, List.of()));
        assertFalse(new FloorSpace(lineUp, KnowledgeStore.withHouse(house).current().catalogue()).fits(atTheWall, List.of()));
    }

    @Test
    void aCustomInAnotherUnitIsRefused() throws IOException {
        custom("low-stand", "unit: m\n", "unit: Hz\n");
        List<String> faults = KnowledgeStore.withHouse(house).faults();
        assertEquals(1, faults.size(), faults.toString());
        assertTrue(faults.get(0).endsWith("unit is Hz, but low-stand is in m. Give the value in that"), faults.toString());
    }
}
