package pairwright.locker;

/** A pad that goes into a line and takes {@code lossDb} away. */
public record PadData(Double lossDb) {
}
