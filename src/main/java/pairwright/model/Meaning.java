package pairwright.model;

import java.util.List;

/**
 * A sentence, understood as far as it goes.
 *
 * @param question what it asks
 * @param understood word by word
 * @param notUnderstood the words that said nothing to the program
 * @param otherReadings what else it may have meant, best first
 */
public record Meaning(Question question, List<Reading> understood, List<String> notUnderstood, List<Reading> otherReadings) {
}
