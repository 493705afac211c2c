package pairwright.listen;

import java.util.Arrays;

/** How fast notes start: from a tenth to nine tenths of their height, by the height of every millisecond. */
final class Onsets {
    private static final double HOP_S = 0.001;
    private static final int AHEAD = 300;
    private static final int QUIET_BEFORE = 20;
    private static final double START = 0.1;
    private static final double UP = 0.9;
    /** What is softer than the loudest note by more is no note. */
    private static final double LEAST_HEIGHT_SHARE = 0.05;
    private static final int MOST = 20_000;

    private final int hopFrames;
    private final double[] heights = new double[2 * AHEAD + QUIET_BEFORE];
    private int count;
    private double height;
    private int filled;
    private double loudest;
    private int blockedFor;
    private float[] risesMs = new float[64];
    private int found;

    Onsets(double rateHz) {
        this.hopFrames = (int) Math.round(rateHz * HOP_S);
    }

    void add(double[][] channels, int frames) {
        for (int i = 0; i < frames; i++) {
            for (double[] channel : channels) {
                height = Math.max(height, Math.abs(channel[i]));
            }
            if (++filled == hopFrames) {
                take(height);
                height = 0;
                filled = 0;
            }
        }
    }

    /** The note is looked for where as much is known before as after. */
    private void take(double newest) {
        loudest = Math.max(loudest, newest);
        if (count == heights.length) {
            System.arraycopy(heights, 1, heights, 0, heights.length - 1);
            count--;
        }
        heights[count++] = newest;
        if (blockedFor > 0) {
            blockedFor--;
        } else if (count == heights.length && found < MOST) {
            look(heights.length - AHEAD);
        }
    }

    private void look(int at) {
        double before = heights[at - 1];
        if (heights[at] <= before * 1.05 || heights[at] < loudest * LEAST_HEIGHT_SHARE * START) {
            return;
        }
        double top = 0;
        for (int i = at; i < heights.length; i++) {
            top = Math.max(top, heights[i]);
        }
        if (top < loudest * LEAST_HEIGHT_SHARE || heights[at] < START * top) {
            return;
        }
        for (int i = at - QUIET_BEFORE; i < at; i++) {
            if (heights[i] >= START * top) {
                return;
            }
        }
        int up = at;
        while (heights[up] < UP * top) {
            up++;
        }
        double start = at - 1 + crossing(before, heights[at], START * top);
        double end = up == at ? at - 1 + crossing(before, heights[at], UP * top) : up - 1 + crossing(heights[up - 1], heights[up], UP * top);
        if (found == risesMs.length) {
            risesMs = Arrays.copyOf(risesMs, 2 * found);
        }
        risesMs[found++] = (float) (Math.max(0, end - start) * HOP_S * 1000);
        blockedFor = up - at + QUIET_BEFORE;
    }

    private static double crossing(double from, double to, double wanted) {
        return to <= from ? 1 : Math.max(0, Math.min(1, (wanted - from) / (to - from)));
    }

    int count() {
        return found;
    }

    /** The middle one of all; null where there are fewer than three. */
    Double riseMs() {
        float[] all = Arrays.copyOf(risesMs, found);
        Arrays.sort(all);
        return found < 3 ? null : Double.valueOf(all[found / 2]);
    }
}
