package pairwright.listen;

import java.util.Locale;

/** Moments of a recording for people. */
final class Clock {
    private Clock() {
    }

    static String of(long frame, double rateHz) {
        return of(frame / rateHz);
    }

    /** 0:03.2 or 1:02:03.0. */
    static String of(double momentS) {
        long tenths = Math.round(momentS * 10);
        long hours = tenths / 36_000;
        long minutes = tenths / 600 % 60;
        double seconds = tenths % 600 / 10.0;
        return hours > 0 ? String.format(Locale.ROOT, "%d:%02d:%04.1f", hours, minutes, seconds) : String.format(Locale.ROOT, "%d:%04.1f", minutes, seconds);
    }
}
