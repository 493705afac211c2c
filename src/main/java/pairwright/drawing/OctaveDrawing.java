package pairwright.drawing;

import java.util.List;
import pairwright.acoustics.OctaveCurve;

/** Curves over the nine octaves, 63 Hz to 16 kHz. */
public final class OctaveDrawing {
    private OctaveDrawing() {
    }

    /**
     * One curve.
     *
     * @param name what it is, in a few words: "long passive ribbon"
     * @param curveDb its nine values
     * @param look how it is told from the others; no two of a drawing alike
     */
    public record Series(String name, OctaveCurve curveDb, Look look) {
    }

    /**
     * A shaded band.
     *
     * @param name what lies in it
     * @param lowDb its lower edge
     * @param highDb its upper edge
     */
    public record Band(String name, OctaveCurve lowDb, OctaveCurve highDb) {
    }

    /**
     * The curves, each with its name at its end.
     *
     * @param title what is shown: "Response on its axis"
     * @param unit of the values: "dB", "dB re 1 kHz"
     * @param series one to four
     * @param band null for none
     * @param key unlike that of any other picture of the page
     */
    public static Drawing of(String title, String unit, List<Series> series, Band band, String key, Reader reader) {
        return new Svg(key, 400, 300, title, "").drawing();
    }
}
