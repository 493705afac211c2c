package pairwright.acoustics;

import java.util.Arrays;

/** Nine values, one an octave from 63 Hz to 16 kHz. */
public final class OctaveCurve {
    private final double[] values;

    private OctaveCurve(double[] values) {
        this.values = values;
    }

    public static OctaveCurve of(double... nine) {
        return new OctaveCurve(nine.clone());
    }

    public double at(int band) {
        return values[band];
    }

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
}
