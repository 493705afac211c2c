package pairwright.model;

/**
 * What can harm a microphone at a position.
 *
 * @param kind what it is
 * @param withinM up to which distance it reaches
 * @param says in a sentence
 */
public record Danger(DangerKind kind, double withinM, String says) {
}
