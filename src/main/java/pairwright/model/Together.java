package pairwright.model;

/**
 * What two placements are predicted to do together.
 *
 * @param delayMs how much later the sound reaches the later one
 * @param firstNullHz first cancellation of their sum, same polarity; null when they stand in one plane
 * @param levelDifferenceDb level of the first over the second, as picked up and brought to equal gain for equal sensitivity; 0 where one is a wire
 * @param rippleDb peak to dip of the sum at that difference, at equal gain
 * @param contrastDb how much their tone differs, level apart
 * @param distanceRatio farther over nearer
 * @param recordingAngleDegrees for a stereo pair: the angle that fills the picture, plus or minus 10; else null
 * @param sourceAngleDegrees the angle the source takes, seen from there
 * @param spacingM between the capsules, where the technique sets it; else 0
 */
public record Together(
        double delayMs,
        Double firstNullHz,
        double levelDifferenceDb,
        double rippleDb,
        double contrastDb,
        double distanceRatio,
        Double recordingAngleDegrees,
        double sourceAngleDegrees,
        double spacingM) {

    /** Recording angle less the angle the source takes: below 0 the edges crowd, above 0 the source sits narrow; 0 for no stereo pair. */
    public double angleMissDegrees() {
        return recordingAngleDegrees == null ? 0 : recordingAngleDegrees - sourceAngleDegrees;
    }
}
