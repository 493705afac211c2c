package pairwright.session.allocation;

/**
 * What one more of something is worth.
 *
 * @param kind of a cap or of a group of channels
 * @param name of the cap or the group
 * @param moreServed how many more of the seats that must be served would be; 0 where all are anyway
 * @param centipoints by how much the best plan is worth more, hundredths of a point; where more are served, compared with the best plan that serves as many as can be now, and
 *     then it may be below 0
 * @param proven whether both are proven
 */
public record Gain(Shortage.Kind kind, String name, int moreServed, long centipoints, boolean proven) {
}
