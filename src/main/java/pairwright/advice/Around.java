package pairwright.advice;

import pairwright.acoustics.Octaves;

/**
 * What comes straight of all neighbours, by octave, summed up with what lies along the line to the source and across it: from these sums
 * alone follows what a turned pattern of the first order would take up, were its nulls without a floor.
 */
final class Around {
    private final double[] all = new double[Octaves.COUNT];
    private final double[] along = new double[Octaves.COUNT];
    private final double[] across = new double[Octaves.COUNT];
    private final double[] alongAlong = new double[Octaves.COUNT];
    private final double[] alongAcross = new double[Octaves.COUNT];
    private final double[] acrossAcross = new double[Octaves.COUNT];

    void add(Arriving neighbour) {
        double x = neighbour.alongShare();
        double y = neighbour.who().acrossShare();
        for (int band = 0; band < Octaves.COUNT; band++) {
            double power = neighbour.straight()[band];
            all[band] += power;
            along[band] += x * power;
            across[band] += y * power;
            alongAlong[band] += x * x * power;
            alongAcross[band] += x * y * power;
            acrossAcross[band] += y * y * power;
        }
    }

    /** @param cosine of the turn, as the sine */
    double pickedUp(double[] coefficients, double cosine, double sine) {
        double sum = 0;
        for (int band = 0; band < Octaves.COUNT; band++) {
            double omni = coefficients[band];
            double eight = 1 - omni;
            sum += omni * omni * all[band] + 2 * omni * eight * (cosine * along[band] + sine * across[band])
                    + eight * eight * (cosine * cosine * alongAlong[band] + 2 * cosine * sine * alongAcross[band] + sine * sine * acrossAcross[band]);
        }
        return sum;
    }
}
