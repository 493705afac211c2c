package pairwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pairwright.advice.KnowledgeStore;
import pairwright.model.Catalogue;
import pairwright.session.Floor;
import pairwright.session.LineUp;
import pairwright.session.Seat;
import pairwright.session.SmallPlan;

class CrowdingTest {
    private static final Catalogue CATALOGUE = KnowledgeStore.builtIn().current().catalogue();

    private static Seat seat(String source, String player, double xM, double yM, double facingDegrees) {
        return new Seat(source, player, source, xM, yM, facingDegrees, null, null, null, null, null, true, null, false);
    }

    private static List<String> told(Seat... seats) {
        return Crowding.of(new LineUp(null, new Floor(null, 10, 8, 4, 0.6), List.of(seats), null, null, null, null, null, 1), CATALOGUE);
    }

    @Test
    void whoSitsInsideAGrandPianoIsTold() {
        // its case reaches 1.4 m to the left of whoever plays it, and a metre forward
        List<String> told = told(seat("grand-piano", null, 5, 4, 0), seat("violin", "Mirre", 4.3, 4.2, 0));
        assertEquals(1, told.size(), told.toString());
        assertTrue(told.get(0).matches("Grand piano and Mirre, violin lie .* on top of each other as they are drawn\\. Put them further apart, or turn one\\."), told.get(0));
        assertEquals(List.of(), told(seat("grand-piano", null, 5, 4, 0), seat("violin", "Mirre", 7, 4.2, 0)));
    }

    @Test
    void aKitAcrossTheWallIsTold() {
        assertTrue(told(seat("drum-kit", null, 0.2, 4, 90)).get(0).matches("Drum kit reaches .* across a wall as it is drawn\\. Move it into the room, or turn it\\."));
        assertEquals(List.of(), told(seat("drum-kit", null, 4, 4, 90)));
    }

    @Test
    void onePlayerAndTheDrumsOfOneKitMayShareAPlace() {
        assertEquals(List.of(), told(seat("singing-voice", "Al", 4, 4, 0), seat("nylon-guitar", "Al", 4.1, 4, 0)));
        assertEquals(List.of(), told(seat("snare-drum", null, 4, 4, 0), seat("kick-drum", null, 4.3, 4.2, 0)));
        assertEquals(List.of(), Crowding.of(SmallPlan.lineUp(), CATALOGUE), "who sits as bands do");
    }
}
