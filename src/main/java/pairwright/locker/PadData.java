package pairwright.locker;

/**
 * A pad that goes into a line.
 *
 * @param lossDb what it takes away
 * @param passesPhantom whether phantom power reaches the microphone through it; null for unknown
 */
public record PadData(Double lossDb, Boolean passesPhantom) {
}
