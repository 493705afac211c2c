package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static pairwright.session.Sessions.at;

import java.util.List;
import org.junit.jupiter.api.Test;
import pairwright.advice.HouseMemory;
import pairwright.advice.KnowledgeStore;

class ReplanNobodyTest {
    @Test
    void whereEverybodyIsLostItIsSaidThatNobodyIsLeft() {
        Planner planner = new Planner(KnowledgeStore.builtIn()::current, HouseMemory.NOTHING);
        LineUp two = Sessions.of(new Floor(null, 8, 7, 3.5, 0.6), at("one", "violin", 3, 3, 0, 1), at("two", "viola", 5, 3, 0, 1)).lineUp();
        IllegalArgumentException none = assertThrows(IllegalArgumentException.class,
                () -> planner.again(two, Gear.ANYTHING, new Picks(List.of()), new Lost(List.of(), List.of(), List.of("one", "two")), 5, step -> { }));
        assertEquals("Nobody is left: everybody of the line-up is lost.", none.getMessage().substring(0, 49));
    }
}
