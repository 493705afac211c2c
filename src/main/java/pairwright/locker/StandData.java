package pairwright.locker;

/**
 * A stand.
 *
 * @param massKg without what it carries
 * @param reachM how far its boom reaches from the column; 0 for a straight stand
 * @param footRadiusM from the column to a foot, or to the edge of a round base
 * @param legs 3 to 12; 0 for a round base
 * @param heightM the most it is good for; null for unknown
 */
public record StandData(Double massKg, Double reachM, Double footRadiusM, Integer legs, Double heightM) {
}
