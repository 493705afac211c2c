package pairwright.model;

/**
 * How loud a source is, at one metre on its axis in the open.
 *
 * @param typicalDbSpl running level at mezzo-forte to forte
 * @param peakDbSpl true peak of loud playing
 * @param toleranceDb how far a player may differ
 * @param centreOffsetM how far behind the surface it seems to start, from how its level grows close up
 */
public record Level(double typicalDbSpl, double peakDbSpl, double toleranceDb, double centreOffsetM) {
}
