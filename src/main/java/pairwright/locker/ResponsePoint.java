package pairwright.locker;

/** One point of a response that was measured of this very unit; levels are re anything, as long as it is the same for all. */
public record ResponsePoint(double frequencyHz, double levelDb) {
}
