package pairwright.model;

import java.util.List;

/**
 * A number of the trade that plans of a session go by, and that a house may see otherwise.
 *
 * @param id high-pass-loss, low-stand and so on
 * @param name in a few words
 * @param says what the number says
 * @param value the number
 * @param unit dB, Hz, m, ms, degrees, or 1 for none
 * @param why why it is what it is
 * @param confidence how sure
 * @param basis what it rests on
 */
public record Custom(String id, String name, String says, double value, String unit, String why, Confidence confidence, List<Rests> basis) {
}
