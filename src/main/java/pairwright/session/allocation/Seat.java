package pairwright.session.allocation;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Who gets exactly one of several choices.
 *
 * @param id unlike that of any other seat
 * @param must whether it must be served
 * @param choices what it can get; a seat that need not be served has a choice {@link Choice.Use#OUT}, or always gets something
 */
public record Seat(String id, boolean must, List<Choice> choices) {
    /** @throws IllegalArgumentException for no choice, or two with one id */
    public Seat {
        choices = List.copyOf(choices);
        if (choices.isEmpty()) {
            throw new IllegalArgumentException("Seat " + id + " has nothing to choose from");
        }
        Set<String> ids = new HashSet<>();
        for (Choice choice : choices) {
            if (!ids.add(choice.id())) {
                throw new IllegalArgumentException("Seat " + id + " has two choices " + choice.id());
            }
        }
    }

    /** Whether a choice may be in a plan where nothing is short. */
    boolean allows(Choice choice) {
        return choice.use() == Choice.Use.FULL || choice.use() == Choice.Use.OUT && !must;
    }
}
