package pairwright.model;

/**
 * How an option does when what is not known for certain is drawn anew: how loud this player is, how this room rings, how this unit of
 * a type differs from its class. Counted for its idea: its technique with whichever types, or for a single its family.
 *
 * @param firstShare how often its idea comes first, 0 to 1
 * @param firstThreeShare how often its idea is among the three that would be shown, 0 to 1
 */
public record Sure(double firstShare, double firstThreeShare) {
}
