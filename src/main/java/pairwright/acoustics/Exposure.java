package pairwright.acoustics;

/**
 * Noise exposure of people, for cautions only. Two schemes are in wide use and can differ fivefold; which of them binds, and
 * from what level on, national law decides.
 */
public final class Exposure {
    /** A way of trading level against time. */
    public enum Scheme {
        /** 85 dBA for 8 hours, half the time for every 3 dB: the recommendation in NIOSH publication 98-126. */
        CRITERION_85_EXCHANGE_3(85, 3, 10),
        /** 90 dBA for 8 hours, half the time for every 5 dB: the US rule in 29 CFR 1910.95. */
        CRITERION_90_EXCHANGE_5(90, 5, 16.61);

        private final double criterionDba;
        private final double exchangeDb;
        // the constant as printed in the source, so that results agree with its tables
        private final double averageSlopeDb;

        Scheme(double criterionDba, double exchangeDb, double averageSlopeDb) {
            this.criterionDba = criterionDba;
            this.exchangeDb = exchangeDb;
            this.averageSlopeDb = averageSlopeDb;
        }

        /** The level allowed for 8 hours, dBA. */
        public double criterionDba() {
            return criterionDba;
        }

        /** What a tenfold dose adds to the average level, dB. */
        public double averageSlopeDb() {
            return averageSlopeDb;
        }

        /** The rise that halves the time, dB. */
        public double exchangeDb() {
            return exchangeDb;
        }
    }

    /** A part of the day: an average level in dBA and how many hours of it, 0 to 24. */
    public record Part(double levelDba, double hours) {
        public Part {
            Check.levelDb("levelDba", levelDba);
            checkHours(hours);
        }
    }

    private static final double DAY_HOURS = 8;

    private Exposure() {
    }

    /** Hours until the day's dose is used up, {@code 8 / 2^((L - criterion) / exchange)}; may exceed 24 for a low level. */
    public static double allowedHours(Scheme scheme, double levelDba) {
        Check.levelDb("levelDba", levelDba);
        return DAY_HOURS / Math.pow(2, (levelDba - scheme.criterionDba) / scheme.exchangeDb);
    }

    /** Dose of a day's parts, {@code 100 sum(hours / allowed hours)} percent, every part counted however quiet. */
    public static double dosePercent(Scheme scheme, Part... parts) {
        double dose = 0;
        for (Part part : parts) {
            dose += part.hours / allowedHours(scheme, part.levelDba);
        }
        return 100 * dose;
    }

    /**
     * The same, leaving out parts below a threshold in dBA. Under 29 CFR 1910.95 that is 90 for the limit and 80 for the action
     * level.
     */
    public static double dosePercentFrom(Scheme scheme, double thresholdDba, Part... parts) {
        Check.levelDb("thresholdDba", thresholdDba);
        double percent = 0;
        for (Part part : parts) {
            percent += part.levelDba < thresholdDba ? 0 : dosePercent(scheme, part);
        }
        return percent;
    }

    /**
     * The steady 8-hour level with the same dose, dBA: {@code 10 lg(D/100) + 85}, or {@code 16.61 lg(D/100) + 90}; the dose in
     * percent, more than 0.
     */
    public static double timeWeightedAverageDba(Scheme scheme, double dosePercent) {
        Check.positive("dosePercent", dosePercent, Double.MAX_VALUE);
        return scheme.averageSlopeDb * Math.log10(dosePercent / 100) + scheme.criterionDba;
    }

    /**
     * Daily exposure level, {@code L + 10 lg(hours / 8)} dB, hours more than 0 and at most 24. Source: Directive 2003/10/EC, with
     * action values of 80 and 85 and a limit of 87 that counts hearing protection.
     */
    public static double dailyExposureDb(double levelDba, double hours) {
        Check.levelDb("levelDba", levelDba);
        return levelDba + Decibels.ofPowerRatio(Check.positive("hours", hours, 24) / DAY_HOURS);
    }

    private static double checkHours(double hours) {
        return Check.within("hours", hours, 0, 24);
    }
}
