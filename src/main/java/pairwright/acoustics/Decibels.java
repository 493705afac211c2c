package pairwright.acoustics;

/** Between ratios and decibels. */
final class Decibels {
    private Decibels() {
    }

    static double ofRatio(double amplitudeRatio) {
        // adding zero turns -0.0 into 0.0
        return 20 * Math.log10(amplitudeRatio) + 0.0;
    }

    static double ofPowerRatio(double powerRatio) {
        return 10 * Math.log10(powerRatio) + 0.0;
    }

    static double toRatio(double levelDb) {
        return Math.pow(10, levelDb / 20);
    }

    static double toPowerRatio(double levelDb) {
        return Math.pow(10, levelDb / 10);
    }
}
