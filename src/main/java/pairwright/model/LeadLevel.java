package pairwright.model;

/**
 * How strong the signal on a lead is.
 *
 * @param typicalDbu running level
 * @param peakDbu loudest peak
 * @param sourceOhm impedance of what drives the lead
 */
public record LeadLevel(double typicalDbu, double peakDbu, double sourceOhm) {
}
