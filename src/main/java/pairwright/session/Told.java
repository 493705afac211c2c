package pairwright.session;

import java.util.List;
import pairwright.model.Severity;

/**
 * What a rule says of a plan, once.
 *
 * @param rule id
 * @param severity how grave
 * @param says the sentence, and of what else the same goes
 * @param seats whom the sentence is about, by id; empty for the whole plan
 * @param named whether the sentence names them itself
 */
public record Told(String rule, Severity severity, String says, List<String> seats, boolean named) {
    public Told {
        seats = List.copyOf(seats);
    }
}
