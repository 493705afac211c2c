package pairwright.lab;

import java.util.HashMap;
import java.util.Map;
import pairwright.model.Naming;
import pairwright.model.Question;
import pairwright.model.Room;
import pairwright.model.Source;
import pairwright.rules.Claim;

/** The words of a case, for reasons to choose among. */
final class Claims {
    private static final String ANYBODY = "another player";

    private Claims() {
    }

    /** Of one source by itself, or beside another. */
    static Claim of(Question question, Lab lab) {
        Map<String, String> words = words(lab.source(question.source()), question.room() == null ? null : lab.room(question.room()));
        question.neighbours().stream().findFirst().ifPresent(next -> words.put("neighbour", Naming.the(lab.source(next.source()).name())));
        question.character().stream().findFirst().ifPresent(wanted -> words.put("wanted", wanted(wanted, lab)));
        return new Claim(words);
    }

    /**
     * Of one among several players.
     *
     * @param character that is wanted; null for none
     */
    static Claim of(Source source, Room room, String character, Lab lab) {
        Map<String, String> words = words(source, room);
        words.put("neighbour", ANYBODY);
        if (character != null) {
            words.put("wanted", wanted(character, lab));
        }
        return new Claim(words);
    }

    private static String wanted(String character, Lab lab) {
        return Naming.small(lab.catalogue().characters().get(character).name());
    }

    private static Map<String, String> words(Source source, Room room) {
        Map<String, String> words = new HashMap<>(Map.of("source", Naming.the(source.name())));
        if (room != null) {
            words.put("room", Naming.the(room.name()));
            if (room.outdoors()) {
                words.put("wind", "wind");
            }
            if (room.id().equals("stage")) {
                words.put("stage", "stage");
            }
        }
        return words;
    }
}
