package pairwright.advice;

import java.util.List;

/** Says what was kept in this house before. */
@FunctionalInterface
public interface HouseMemory {
    /** Nothing is remembered. */
    HouseMemory NOTHING = (source, room, player) -> List.of();

    List<Kept> of(String source, String room, String player);

    record Kept(String micType, String position, int kept, int tried, String room, String player) {
    }
}
