package pairwright.locker;

/**
 * An inline booster.
 *
 * @param gainDb what it adds
 * @param phantomMa what it draws from the channel
 * @param passesPhantom whether phantom power reaches the microphone through it
 */
public record BoosterData(Double gainDb, Double phantomMa, Boolean passesPhantom) {
}
