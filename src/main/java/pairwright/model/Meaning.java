package pairwright.model;

import java.util.List;

/**
 * A sentence, understood as far as it goes.
 *
 * @param question what it asks
 * @param understood word by word
 * @param notUnderstood the words that said nothing to the program
 * @param otherReadings what else it may have meant, best first
 * @param ask questions back, in the order they matter
 */
public record Meaning(Question question, List<Reading> understood, List<String> notUnderstood, List<Reading> otherReadings,
        List<Ask> ask) {
}
