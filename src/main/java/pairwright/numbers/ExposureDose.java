package pairwright.numbers;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.acoustics.Exposure;
import pairwright.acoustics.Exposure.Part;
import pairwright.acoustics.Exposure.Scheme;
import pairwright.acoustics.Level;

/** How much of a day's noise people have had, by both schemes in use. */
final class ExposureDose implements Calculation {
    private static final Input LEVEL = Input.numbers("levelDba", "dB(A)", 40, 140, "The average level at the ear, one for each part of the day.");
    private static final Input HOURS = Input.numbers("hours", "h", 0.001, 24, "How long each part lasts.");
    private static final double DAY_HOURS = 24;
    private static final double ACTION_DBA = 80;
    private static final double LIMIT_DBA = 90;
    private static final double FULL_PERCENT = 100;

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("exposure", "Noise exposure", "How long is a level allowed, and how large is the dose of a day?",
                "allowed = 8 h / 2^((L - 85) / 3), or 8 h / 2^((L - 90) / 5); dose = 100 sum(hours / allowed) %; average = 10 lg(dose / 100) + 85, or "
                        + "16.61 lg(dose / 100) + 90; LEX,8h = 10 lg sum (hours / 8) 10^(L / 10)",
                List.of(LEVEL, HOURS), Map.of("levelDba", List.of(100.0, 90.0, 85.0), "hours", List.of(1.0, 4.0, 3.0)));
    }

    @Override
    public void check(Inputs in) {
        double[] levels = in.numbers(LEVEL);
        double[] hours = in.numbers(HOURS);
        if (levels.length != hours.length) {
            in.refuse(HOURS, "hours has " + hours.length + " entries and levelDba " + levels.length + ". Give one of each for each part of the day");
        }
        double sum = DoubleStream.of(hours).sum();
        if (sum > DAY_HOURS) {
            in.refuse(HOURS, "hours add up to " + Figures.of(sum) + ", more than a day has. Give the parts of one day");
        }
    }

    @Override
    public void work(Inputs in, Working out) {
        double[] levels = in.numbers(LEVEL);
        double[] hours = in.numbers(HOURS);
        Part[] parts = IntStream.range(0, levels.length).mapToObj(i -> new Part(levels[i], hours[i])).toArray(Part[]::new);
        double stricter = scheme(out, "85", Scheme.CRITERION_85_EXCHANGE_3, parts);
        double laxer = scheme(out, "90", Scheme.CRITERION_90_EXCHANGE_5, parts);
        counted(out, "dose90From80Percent", ACTION_DBA, parts);
        counted(out, "dose90From90Percent", LIMIT_DBA, parts);
        daily(out, parts);
        out.says("The dose is {} % by 85 dB(A) and 3 dB, {} % by 90 dB(A) and 5 dB; 100 % is all a day allows.", stricter, laxer);
        out.holds("For average levels at the ear, A-weighted. Two schemes are in wide use and differ up to fivefold; neither says that less is "
                + "harmless, and peaks count besides: 135, 137 and 140 dB(C) are limits in wide use.");
        if (stricter > FULL_PERCENT) {
            out.danger("{} % is more than a day's dose by the stricter scheme: make it quieter, shorter, or farther away.", stricter);
        }
        out.danger("Lost hearing does not come back. Plan by the stricter figure, take breaks, wear protection, and warn players and guests. "
                + "Which limit binds, whom it protects and how it is measured is for the law of the place and a competent person with a "
                + "calibrated meter to say; this is arithmetic, not a measurement.");
    }

    private static double scheme(Working out, String name, Scheme scheme, Part[] parts) {
        for (int i = 0; i < parts.length; i++) {
            double levelDba = parts[i].levelDba();
            double hours = out.step("Part {}, allowed by {} dB(A) and {} dB: 8 / 2^(({} - {}) / {})", Exposure.allowedHours(scheme, levelDba), "h",
                    i + 1, scheme.criterionDba(), scheme.exchangeDb(), levelDba, scheme.criterionDba(), scheme.exchangeDb());
            if (parts.length == 1) {
                out.result("allowed" + name + "Minutes", out.step("In minutes: 60 × {}", 60 * hours, "min", hours), "min");
            }
        }
        double dose = out.step("Dose: 100 × " + shares(scheme, Stream.of(parts)), Exposure.dosePercent(scheme, parts), "%");
        double average = out.step("As a steady level over 8 hours: {} lg({} / 100) + {}", Exposure.timeWeightedAverageDba(scheme, dose), "dB(A)",
                scheme.averageSlopeDb(), dose, scheme.criterionDba());
        out.result("dose" + name + "Percent", dose, "%");
        out.result("average" + name + "Dba", average, "dB(A)");
        return dose;
    }

    /** The US rule leaves quiet parts out: below 80 dB(A) for its action level, below 90 dB(A) for its limit. */
    private static void counted(Working out, String name, double fromDba, Part[] parts) {
        Scheme scheme = Scheme.CRITERION_90_EXCHANGE_5;
        String shares = shares(scheme, Stream.of(parts).filter(part -> part.levelDba() >= fromDba));
        out.result(name, out.step("Dose by 90 dB(A) and 5 dB, counting only parts from {} dB(A) up: 100 × " + shares,
                Exposure.dosePercentFrom(scheme, fromDba, parts), "%", fromDba), "%");
    }

    private static void daily(Working out, Part[] parts) {
        double[] each = new double[parts.length];
        for (int i = 0; i < parts.length; i++) {
            each[i] = out.step("Part {} over 8 hours: {} + 10 lg({} / 8)", Exposure.dailyExposureDb(parts[i].levelDba(), parts[i].hours()), "dB(A)",
                    i + 1, parts[i].levelDba(), parts[i].hours());
        }
        String powers = DoubleStream.of(each).mapToObj(level -> Figures.in("10^({} / 10)", level)).collect(Collectors.joining(" + "));
        out.result("dailyExposureDba", out.step("LEX,8h: 10 lg(" + powers + ")", Level.sumIncoherentDb(each), "dB(A)"), "dB(A)");
    }

    private static String shares(Scheme scheme, Stream<Part> parts) {
        return "(" + parts.map(part -> Figures.in("{} / {}", part.hours(), Exposure.allowedHours(scheme, part.levelDba())))
                .reduce((one, other) -> one + " + " + other).orElse("0") + ")";
    }
}
