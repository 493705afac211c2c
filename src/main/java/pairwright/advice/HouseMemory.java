package pairwright.advice;

import java.util.List;

/** Says what was kept in this house before, of what stood at a source. */
@FunctionalInterface
public interface HouseMemory {
    /** Nothing was written down. */
    HouseMemory NOTHING = (source, room, player) -> List.of();

    /**
     * What concerns a question. Of several for one type and place the narrowest counts: this player in this room, else this player, else this room, else
     * all there is of the source; several that are as narrow are added up.
     *
     * @param source id of the catalogue
     * @param room id; null where none was named
     * @param player as they were named; null where nobody was
     * @return only what holds for that room and that player, each saying by its own how narrow it is
     */
    List<Kept> of(String source, String room, String player);
}
