package pairwright.lab;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** An exercise for one bench, worked out. */
public interface Exercise {
    /** What the students get. */
    Handout handout();

    /** What is right, and why. */
    Key key();

    /** What an answer earns; what was left out or cannot be read earns nothing and says so. */
    Mark mark(Answer answer);

    /** Works out at once what several answers take to be marked, where that is less than one by one; what they earn is the same without. */
    default void ready(List<Answer> answers) {
    }

    /** What somebody answers who takes the most common type of the family at the nearest place, or whatever else comes to mind first. */
    Answer usual();

    /** What the bench needs in its hands, by type; none where it is done on paper. */
    List<Need> kit();

    /** Of an item whose options state rules, by the id of an option the id of its rule; an option that is not there states none. Of any other item nothing. */
    default Map<String, String> claims(String item) {
        return Map.of();
    }

    /** Ids of the rules and calculations that decide it. */
    Set<String> restsOn();
}
