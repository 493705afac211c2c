package pairwright.advice;

import pairwright.rules.Figure;

/** Decibels as people read them. */
final class Decibels {
    private Decibels() {
    }

    /** Without the unit. */
    static String figure(double db) {
        String shown = Figure.forPeople(db, "dB");
        return shown.substring(0, shown.length() - " dB".length());
    }

    /** One sound against another. */
    static String over(double db) {
        return figure(Math.abs(db)) + " dB " + (db < 0 ? "under" : "over");
    }
}
