package pairwright.acoustics;

/** Phantom power: what reaches a microphone through the feed resistors, and what a supply has left. Source: IEC 61938. */
public final class Phantom {
    /** The three general systems of the standard. 12 V across the pair is another thing and not phantom power. */
    public enum System {
        P48(48, 4, 6800, 10),
        P24(24, 4, 1200, 10),
        P12(12, 1, 680, 15);

        private final double supplyV;
        private final double toleranceV;
        private final double feedOhm;
        private final double ratedMa;

        System(double supplyV, double toleranceV, double feedOhm, double ratedMa) {
            this.supplyV = supplyV;
            this.toleranceV = toleranceV;
            this.feedOhm = feedOhm;
            this.ratedMa = ratedMa;
        }

        /** Nominal supply, volts. */
        public double supplyV() {
            return supplyV;
        }

        /** How far the supply may be off either way, volts. */
        public double toleranceV() {
            return toleranceV;
        }

        /** The resistor in each of the two legs, ohm; the two must match within 0.4 %. */
        public double feedOhm() {
            return feedOhm;
        }

        /** The most a microphone may draw, milliamperes. */
        public double ratedMa() {
            return ratedMa;
        }

        /** What flows with both legs shorted to ground, milliamperes. */
        public double shortCircuitMa() {
            return 1000 * supplyV / (feedOhm / 2);
        }
    }

    private Phantom() {
    }

    /**
     * Volts left at a microphone that draws a current, {@code V - I R / 2}: both legs carry it in parallel. Milliamperes, from 0
     * to what flows into a short; nominal supply.
     */
    public static double voltsAtMic(System system, double currentMa) {
        return voltsAtMic(system.supplyV(), system.feedOhm(), currentMa);
    }

    /**
     * The same for a supply as measured and the resistor actually in each leg, {@code V - I R / 2} volts: small supplies run from
     * a bus often give less than they should.
     */
    public static double voltsAtMic(double supplyV, double feedOhm, double currentMa) {
        Check.positive("supplyV", supplyV, 100);
        Check.positive("feedOhm", feedOhm, 100_000);
        double bothLegsOhm = feedOhm / 2;
        Check.within("currentMa", currentMa, 0, 1000 * supplyV / bothLegsOhm);
        return Math.max(0, supplyV - currentMa / 1000 * bothLegsOhm);
    }

    /** Power left at the microphone, {@code I (V - I R / 2)} milliwatts; greatest where half the supply voltage is left. */
    public static double milliwattsAtMic(System system, double currentMa) {
        return currentMa * voltsAtMic(system, currentMa);
    }

    /** What a supply has left, {@code rating - sum of currents} milliamperes; negative if asked for too much. */
    public static double headroomMa(double supplyRatingMa, double... currentsMa) {
        double leftMa = Check.within("supplyRatingMa", supplyRatingMa, 0, 100_000);
        for (double currentMa : currentsMa) {
            leftMa -= Check.within("currentsMa", currentMa, 0, 1000);
        }
        return leftMa;
    }
}
