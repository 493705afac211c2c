package pairwright.acoustics;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/**
 * Nine finite values, one an octave from 63 Hz to 16 kHz: decibels, or a coefficient that changes with frequency. Immutable and
 * compared by value. Nothing is infinitely quiet here: whoever fills a curve caps it first.
 */
public final class OctaveCurve {
    /** 0 in every band. */
    public static final OctaveCurve ZERO = flat(0);

    private final double[] values;

    private OctaveCurve(double[] values) {
        if (values.length != Octaves.COUNT) {
            throw new IllegalArgumentException("nine must hold 9 values, one for each octave, but held " + values.length);
        }
        for (int band = 0; band < values.length; band++) {
            if (!Double.isFinite(values[band])) {
                Check.finite("nine[" + band + "]", values[band]); // the name is made only for a fault: curves are made by the thousand
            }
            values[band] += 0.0; // makes -0.0 equal to 0.0
        }
        this.values = values;
    }

    /** The curve with these values for 63, 125, 250, 500, 1000, 2000, 4000, 8000 and 16000 Hz; exactly nine, all finite. */
    public static OctaveCurve of(double... nine) {
        return new OctaveCurve(nine.clone());
    }

    /** The same finite value in every band. */
    public static OctaveCurve flat(double everyBand) {
        double[] nine = new double[Octaves.COUNT];
        Arrays.fill(nine, Check.finite("everyBand", everyBand));
        return new OctaveCurve(nine);
    }

    /** The value in one band, 0 (63 Hz) to 8 (16 kHz). */
    public double at(int band) {
        return values[Octaves.checked("band", band)];
    }

    /** The band with the greatest value; the lowest of equals. */
    public int highestBand() {
        int highest = 0;
        for (int band = 1; band < values.length; band++) {
            highest = values[band] > values[highest] ? band : highest;
        }
        return highest;
    }

    /** Band by band sum. */
    public OctaveCurve plus(OctaveCurve other) {
        return combine(other, Double::sum);
    }

    /** Band by band difference. */
    public OctaveCurve minus(OctaveCurve other) {
        return combine(other, (mine, theirs) -> mine - theirs);
    }

    /** The same finite shift in every band. */
    public OctaveCurve plus(double shiftDb) {
        Check.finite("shiftDb", shiftDb);
        return map(value -> value + shiftDb);
    }

    /** Every band multiplied by a finite number of either sign. */
    public OctaveCurve scaled(double multiplier) {
        Check.finite("multiplier", multiplier);
        return map(value -> value * multiplier);
    }

    /** Every value put through a function, which must give a finite number. */
    public OctaveCurve map(DoubleUnaryOperator operator) {
        double[] mapped = new double[values.length];
        for (int band = 0; band < mapped.length; band++) {
            mapped[band] = operator.applyAsDouble(values[band]);
        }
        return new OctaveCurve(mapped);
    }

    /** The curve moved so that one band reads 0. */
    public OctaveCurve relativeToBand(int band) {
        return plus(-at(band));
    }

    /** The plain average of the values of some neighbouring bands, both ends included. Not an energy average. */
    public double meanDb(int fromBand, int toBandInclusive) {
        Octaves.checked("fromBand", fromBand);
        Check.within("toBandInclusive", toBandInclusive, fromBand, Octaves.COUNT - 1);
        return Arrays.stream(values, fromBand, toBandInclusive + 1).average().orElseThrow();
    }

    /** {@code sum(w v) / sum(w)}; weights are linear, none negative, not all 0. */
    public double weightedMean(OctaveCurve weights) {
        return weighted(weights, value -> value);
    }

    /** {@code sqrt(sum(w v^2) / sum(w))}, deviation from 0; weights are linear, none negative, not all 0. */
    public double weightedRms(OctaveCurve weights) {
        return Math.sqrt(weighted(weights, value -> value * value));
    }

    /** A copy of the nine values. */
    public double[] toArray() {
        return values.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof OctaveCurve curve && Arrays.equals(values, curve.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return Arrays.toString(values);
    }

    private OctaveCurve combine(OctaveCurve other, DoubleBinaryOperator operator) {
        double[] nine = new double[Octaves.COUNT];
        for (int band = 0; band < nine.length; band++) {
            nine[band] = operator.applyAsDouble(values[band], other.values[band]);
        }
        return new OctaveCurve(nine);
    }

    private double weighted(OctaveCurve weights, DoubleUnaryOperator term) {
        double total = 0;
        double weightTotal = 0;
        for (int band = 0; band < Octaves.COUNT; band++) {
            double weight = weights.values[band];
            if (weight < 0) {
                throw Check.refused("weights[" + band + "]", "must be at least 0", weight);
            }
            total += weight * term.applyAsDouble(values[band]);
            weightTotal += weight;
        }
        if (weightTotal == 0) {
            throw Check.refused("weights", "must not all be 0", weightTotal);
        }
        return total / weightTotal;
    }
}
