package pairwright.numbers;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.acoustics.Phantom;

/** Whether a phantom supply carries several microphones, and what reaches each. */
final class PhantomBudget implements Calculation {
    private static final Input CURRENTS = Input.numbers("currentsMa", "mA", 0, 50, "What each microphone draws.");
    private static final Input RATING = Input.number("supplyRatingMa", "mA", 0.1, 10_000, "What the supply gives to all channels together.");
    private static final Input SYSTEM = Input.word("system", "The supply, by the names of IEC 61938.",
            Stream.of(Phantom.System.values()).map(Enum::name).toArray(String[]::new)).usually(Phantom.System.P48.name());

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("phantom-budget", "Phantom power budget", "Does the supply carry these microphones, and what reaches each?",
                "left = rating - sum of currents, V at microphone = V - I R / 2", List.of(CURRENTS, RATING, SYSTEM),
                Map.of("currentsMa", List.of(3.0, 4.5), "supplyRatingMa", 20.0));
    }

    @Override
    public void check(Inputs in) {
        Phantom.System system = Phantom.System.valueOf(in.word(SYSTEM));
        double[] currentsMa = in.numbers(CURRENTS);
        for (int i = 0; i < currentsMa.length; i++) {
            if (currentsMa[i] > system.shortCircuitMa()) {
                in.refuseEntry(CURRENTS, i, "microphone " + (i + 1) + " cannot draw " + Figures.of(currentsMa[i]) + " mA: " + system
                        + " gives " + Figures.of(system.shortCircuitMa()) + " mA into a short. Look the current up again");
            }
        }
    }

    @Override
    public void work(Inputs in, Working out) {
        Phantom.System system = Phantom.System.valueOf(in.word(SYSTEM));
        double[] currentsMa = in.numbers(CURRENTS);
        double ratingMa = in.number(RATING);
        // asked of an empty supply, what is missing is the sum
        double sumMa = out.step("All together: " + DoubleStream.of(currentsMa).mapToObj(Figures::of).collect(Collectors.joining(" + ")),
                0.0 - Phantom.headroomMa(0, currentsMa), "mA");
        double leftMa = out.step("Left: {} - {}", Phantom.headroomMa(ratingMa, currentsMa), "mA", ratingMa, sumMa);
        out.result("headroomMa", leftMa, "mA");
        out.result("totalMa", sumMa, "mA");
        for (int i = 0; i < currentsMa.length; i++) {
            double volts = out.step("Microphone {} gets: {} - {} / 1000 × {} / 2", Phantom.voltsAtMic(system, currentsMa[i]), "V",
                    i + 1, system.supplyV(), currentsMa[i], system.feedOhm());
            double milliwatts = out.step("Microphone {} takes: {} × {}", Phantom.milliwattsAtMic(system, currentsMa[i]), "mW",
                    i + 1, currentsMa[i], volts);
            out.result("mic" + (i + 1) + "V", volts, "V");
            out.result("mic" + (i + 1) + "Mw", milliwatts, "mW");
        }
        out.says(leftMa < 0 ? "{} microphones draw {} mA, {} mA more than the supply has."
                : "{} microphones draw {} mA; {} mA are left.", currentsMa.length, sumMa, Math.abs(leftMa));
        out.holds("For {}: {} V within {} V, {} ohm in each leg, at most {} mA a microphone. Supplies run from a bus or a battery often give less "
                + "voltage and current than that: measure, or look them up.", system, system.supplyV(), system.toleranceV(), system.feedOhm(),
                system.ratedMa());
        String greedy = IntStream.range(0, currentsMa.length).filter(i -> currentsMa[i] > system.ratedMa())
                .mapToObj(i -> Integer.toString(i + 1)).collect(Collectors.joining(", "));
        if (!greedy.isEmpty()) {
            out.care("More than the {} mA the standard allows is drawn by microphone {}: it may starve or distort. Give it its own supply.",
                    system.ratedMa(), greedy);
        }
        if (leftMa < 0) {
            out.care("The supply is overloaded by {} mA: all microphones on it lose voltage and headroom. Move some to another supply.", -leftMa);
        }
        out.care("Switch phantom power off, with channels muted, before anything is plugged or patched, and keep it away from passive ribbons. 12 V "
                + "across the pair (T-power) is another thing: never mix the two.");
    }
}
