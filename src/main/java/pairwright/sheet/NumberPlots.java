package pairwright.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import pairwright.acoustics.Delay;
import pairwright.acoustics.Level;
import pairwright.drawing.FunctionDrawing.Axis;
import pairwright.drawing.FunctionDrawing.Here;
import pairwright.drawing.FunctionDrawing.Mark;
import pairwright.drawing.FunctionDrawing.Series;
import pairwright.drawing.Reader;
import pairwright.numbers.Numbers;
import pairwright.numbers.Worked;

/** The pictures of the calculations: what comes out as the input one is most likely to move moves. */
final class NumberPlots {
    private static final int COMB_POINTS = 480;
    private static final double HEARD_HZ = 20_000;
    private static final double MINUTES = 60;
    private static final double TURN_DEGREES = 360;
    private static final int MOST_PARTS = 4;

    private final Worked worked;
    private final Reader reader;
    private final Sweep sweep;

    private NumberPlots(Numbers numbers, Worked worked, Reader reader) {
        this.worked = worked;
        this.reader = reader;
        this.sweep = new Sweep(numbers, worked.id(), worked.inputs());
    }

    /** Those of a worked calculation. */
    static List<NumberPlot> of(Numbers numbers, Worked worked, Reader reader) {
        return new NumberPlots(numbers, worked, reader).all();
    }

    private List<NumberPlot> all() {
        return switch (worked.id()) {
            case "level-at-distance" -> List.of(curve("Level over distance", "distanceM", log("Distance", "m"), around("distanceM", 10, 0.01, 500),
                    linear("Level", "dB SPL"), "levelDbSpl"));
            case "proximity" -> List.of(proximity());
            case "comb" -> List.of(comb(), curve("First null over difference in path", "pathDifferenceM", log("Difference in path", "m"),
                    around("pathDifferenceM", 10, 0.001, 100), log("First null", "Hz"), "firstNullHz"));
            case "critical-distance" -> List.of(criticalDistance());
            case "noise" -> List.of(curve("Noise over sensitivity", "sensitivityMvPerPa", log("Sensitivity", "mV/Pa"), around("sensitivityMvPerPa", 10, 0.05, 500),
                    linear("Noise at the microphone", "dB(A)"), "noiseDba"));
            case "gain" -> List.of(curve("Gain over level", "levelDbSpl", linear("Running level", "dB SPL"), span("levelDbSpl", 40, 130), linear("Gain", "dB"), "gainDb"));
            case "headroom" -> List.of(headroom());
            case "ribbon-loading" -> List.of(loading());
            case "phantom-budget" -> List.of(phantom());
            case "recording-angle" -> List.of(in("spacingM") > 0 ? recordingAngle("spacingM", "Spacing", "m", 0, Math.min(10, Math.max(0.6, 2 * in("spacingM"))))
                    : recordingAngle("includedDegrees", "Angle between the two", "degrees", 0, 180));
            case "mid-side" -> List.of(midSide());
            case "exposure" -> List.of(exposure());
            case "stand-stability" -> List.of(stand());
            case "null-angles" -> List.of(nullAngles());
            case "delay" -> List.of(curve("Delay over distance", "distanceM", linear("Distance", "m"), Sweep.across(0.001, Math.min(1000, 3 * in("distanceM")), false,
                    in("distanceM")), linear("Delay", "ms"), "delayMs"));
            case "spacing" -> List.of(curve("Distance of the other source over separation", "separationDb", linear("Wanted separation", "dB"),
                    span("separationDb", 0, 30), log("Distance of the other source", "m"), "otherDistanceM"));
            default -> List.of();
        };
    }

    /** One curve without a name, with the point of the inputs on it. */
    private NumberPlot curve(String title, String varied, Axis across, double[] xs, Axis up, String result) {
        return new NumberPlot(title, across, up, sweep.curves(varied, xs, List.of(result), List.of("")), here(varied, result, up), List.of());
    }

    private NumberPlot proximity() {
        Axis across = log("Distance", "m");
        Axis up = linear("Rise", "dB");
        double[] xs = Sweep.across(Math.min(0.02, in("distanceM")), Math.max(2, in("distanceM")), true, in("distanceM"));
        return new NumberPlot("Rise over distance at " + reader.frequency(in("frequencyHz")), across, up,
                sweep.curves("distanceM", xs, List.of("boostDb", "plannedBoostDb"), List.of("rise", "to plan with")), here("distanceM", "boostDb", up), List.of());
    }

    private NumberPlot comb() {
        double pathM = in("pathDifferenceM");
        boolean inverted = "inverted".equals(worked.inputs().get("polarity"));
        double topHz = Math.min(HEARD_HZ, Delay.peakHz(pathM, 4));
        double[] nullsHz = IntStream.rangeClosed(1, 3).mapToDouble(order -> inverted ? Delay.peakHz(pathM, order) : Delay.nullHz(pathM, order)).toArray();
        double[] xs = DoubleStream.concat(IntStream.rangeClosed(1, COMB_POINTS).mapToDouble(i -> topHz * i / COMB_POINTS), Arrays.stream(nullsHz))
                .filter(hz -> hz <= topHz).sorted().distinct().toArray();
        double secondDb = -in("levelDifferenceDb");
        double turnedDegrees = inverted ? 180 : 0;
        double[] ys = Arrays.stream(xs).map(hz -> Level.sumWithPhaseDb(0, secondDb, (Delay.phaseDegrees(hz, Delay.timeMs(pathM)) + turnedDegrees) % TURN_DEGREES)).toArray();
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < nullsHz.length; i++) {
            if (nullsHz[i] <= topHz) {
                marks.add(new Mark(nullsHz[i], List.of("first null ", "second ", "third ").get(i) + hertz(nullsHz[i])));
            }
        }
        double peakDb = Math.max(Delay.ripplePeakDb(in("levelDifferenceDb")), 6);
        return new NumberPlot("Response over frequency", linear("Frequency", "Hz").within(0, topHz), linear("Against the first arrival alone", "dB")
                .within(Math.max(-30, Math.floor(Delay.rippleDipDb(-secondDb) / 6 - 0.5) * 6), Math.ceil(peakDb / 6) * 6), List.of(new Series("", xs, ys)), null, marks);
    }

    private NumberPlot criticalDistance() {
        Axis across = log("Distance", "m");
        Axis up = linear("Against the room alone", "dB");
        double[] xs = around("distanceM", 10, 0.01, 200);
        List<Series> direct = sweep.curves("distanceM", xs, List.of("directToReverbDb"), List.of("direct sound"));
        double[] ratiosDb = direct.get(0).y();
        if (Arrays.stream(ratiosDb).noneMatch(Double::isFinite)) { // the source is in the null
            ratiosDb = new double[xs.length];
            Arrays.fill(ratiosDb, Double.NEGATIVE_INFINITY);
        }
        List<Series> series = new ArrayList<>(direct);
        series.add(new Series("room", new double[] {xs[0], xs[xs.length - 1]}, new double[] {0, 0}));
        series.add(new Series("both", xs, Arrays.stream(ratiosDb).map(db -> Double.isInfinite(db) ? 0 : Level.sumIncoherentDb(db, 0)).toArray()));
        double hereDb = Sweep.result(worked, "directToReverbDb");
        double equalM = in("distanceM") * Math.pow(10, hereDb / 20);
        return new NumberPlot("Direct sound and room over distance", across, up, series, here("distanceM", "directToReverbDb", up),
                Double.isFinite(equalM) && equalM >= xs[0] && equalM <= xs[xs.length - 1] ? List.of(new Mark(equalM, "equal at " + reader.distance(equalM))) : List.of());
    }

    private NumberPlot headroom() {
        Axis across = linear("True peak", "dB SPL");
        Axis up = linear("Headroom", "dB");
        double[] xs = span("truePeakDbSpl", Math.min(100, in("truePeakDbSpl")), Math.max(150, in("truePeakDbSpl")));
        List<Series> series = new ArrayList<>(sweep.curves("truePeakDbSpl", xs, List.of("headroomDb"), List.of(in("padDb") > 0 ? "with the pad" : "")));
        if (in("padDb") > 0) {
            series.addAll(sweep.with("padDb", 0).curves("truePeakDbSpl", xs, List.of("headroomDb"), List.of("without")));
        }
        return new NumberPlot("Headroom over peak level", across, up, series, here("truePeakDbSpl", "headroomDb", up), List.of());
    }

    private NumberPlot loading() {
        Axis across = log("Input impedance", "ohm");
        Axis up = linear("Change", "dB");
        double wantedOhm = Sweep.result(worked, "wantedLoadOhm");
        double[] xs = Sweep.across(Math.max(10, Math.min(in("loadOhm"), wantedOhm) / 10), Math.min(10_000_000, Math.max(in("loadOhm"), wantedOhm) * 10), true, in("loadOhm"));
        return new NumberPlot("What the input takes", across, up, sweep.curves("loadOhm", xs, List.of("bassChangeDb", "midChangeDb"), List.of("bass against middle", "middle")),
                here("loadOhm", "bassChangeDb", up), List.of(new Mark(wantedOhm, "wanted " + reader.value(wantedOhm, "ohm"))));
    }

    private NumberPlot phantom() {
        List<Double> currentsMa = list("currentsMa");
        double mostMa = Math.min(14, Math.max(10, 1.25 * currentsMa.stream().mapToDouble(Double::doubleValue).max().orElse(0)));
        double[] xs = Sweep.across(0, mostMa, false);
        List<Mark> marks = IntStream.range(0, Math.min(MOST_PARTS, currentsMa.size())).mapToObj(i -> new Mark(currentsMa.get(i), "mic " + (i + 1))).toList();
        return new NumberPlot("Voltage at a microphone over its current", linear("Current", "mA"), linear("At the microphone", "V"),
                sweep.curves("currentsMa", xs, List.of("mic1V"), List.of("")), null, marks);
    }

    private NumberPlot recordingAngle(String varied, String called, String unit, double from, double to) {
        Axis across = linear(called, unit).within(from, to);
        Axis up = linear("Recording angle", "degrees");
        return new NumberPlot("Recording angle over " + called.toLowerCase(Locale.ROOT), across, up,
                sweep.curves(varied, Sweep.across(from, to, false, in(varied)), List.of("recordingAngleDegrees", "otherModelDegrees"), List.of("usual model", "other model")),
                here(varied, "recordingAngleDegrees", up), List.of());
    }

    private NumberPlot midSide() {
        Axis across = linear("Side over mid", "dB");
        Axis up = linear("Angle", "degrees");
        return new NumberPlot("Angles over the level of the side", across, up, sweep.curves("sideToMidDb", span("sideToMidDb", -15, 10),
                List.of("recordingAngleDegrees", "includedDegrees"), List.of("recording angle", "between the two")), here("sideToMidDb", "recordingAngleDegrees", up), List.of());
    }

    private NumberPlot exposure() {
        List<Double> levelsDba = list("levelDba");
        double least = Math.min(80, levelsDba.stream().mapToDouble(Double::doubleValue).min().orElse(80));
        double most = Math.max(115, levelsDba.stream().mapToDouble(Double::doubleValue).max().orElse(115));
        double[] xs = Sweep.across(least, most, false);
        List<Series> hours = sweep.with("hours", 1).curves("levelDba", xs, List.of("allowed85Minutes", "allowed90Minutes"), List.of("by 85 dB(A)", "by 90 dB(A)")).stream()
                .map(one -> new Series(one.name(), one.x(), Arrays.stream(one.y()).map(minutes -> minutes / MINUTES).toArray())).toList();
        List<Mark> marks = IntStream.range(0, Math.min(MOST_PARTS, levelsDba.size()))
                .mapToObj(i -> new Mark(levelsDba.get(i), (levelsDba.size() == 1 ? "" : "part " + (i + 1) + ": ") + reader.figure(levelsDba.get(i), 3))).toList();
        return new NumberPlot("Hours that use up a day's dose, over level", linear("Level", "dB(A)"), log("Hours a day", "h").within(0.01, 24), hours, null, marks);
    }

    private NumberPlot stand() {
        Axis across = linear("Reach", "m");
        Axis up = linear("Holding over tipping", "").within(0, Math.max(4, Math.min(10, Math.ceil(1.5 * ratio()))));
        double most = Math.min(6, Math.max(1.5, 1.5 * in("reachM")));
        double[] xs = Sweep.across(0, most, false, in("reachM"));
        List<Series> series = new ArrayList<>(sweep.curves("reachM", xs, List.of("holdingRatio"), List.of("this stand")));
        series.add(new Series("2 is wanted", new double[] {0, most}, new double[] {2, 2}));
        series.add(new Series("below 1 it falls", new double[] {0, most}, new double[] {1, 1}));
        return new NumberPlot("Stability over reach", across, up, series, here("reachM", "holdingRatio", up), List.of());
    }

    private double ratio() {
        double ratio = Sweep.result(worked, "holdingRatio");
        return Double.isFinite(ratio) ? ratio : 4;
    }

    private NumberPlot nullAngles() {
        Axis across = linear("Off the front", "degrees").within(0, 180);
        Axis up = linear("Heard", "dB").within(-24, 0);
        double nullDegrees = Sweep.result(worked, "nullDegrees");
        double otherDegrees = worked.inputs().get("otherDegrees") instanceof Double other ? Math.abs(other) : Double.NaN;
        double[] xs = Sweep.across(0, 180, false, nullDegrees, otherDegrees);
        double otherDb = Sweep.result(worked, "otherDb");
        return new NumberPlot("What is heard from where", across, up, sweep.curves("otherDegrees", xs, List.of("otherDb"), List.of("")),
                Double.isFinite(otherDb) ? new Here(otherDegrees, otherDb, "the other: " + reader.value(otherDb, "dB")) : null,
                Double.isFinite(nullDegrees) ? List.of(new Mark(nullDegrees, "null " + reader.value(nullDegrees, "degrees"))) : List.of());
    }

    private Here here(String varied, String result, Axis up) {
        double x = in(varied);
        double y = Sweep.result(worked, result);
        return Double.isFinite(y) ? new Here(x, y, "here: " + told(y, up.unit())) : null;
    }

    private String told(double value, String unit) {
        return switch (unit) {
            case "m" -> reader.distance(value);
            case "Hz" -> hertz(value);
            case "ohm" -> reader.value(value, unit);
            case "" -> reader.figure(value, 2);
            case "degrees" -> reader.number(value, 0) + "\u00b0";
            default -> reader.number(value, 1) + " " + unit;
        };
    }

    private String hertz(double hertz) {
        return hertz < 1000 ? reader.figure(hertz, 3) + " Hz" : reader.figure(hertz / 1000, 3) + " kHz";
    }

    private double in(String name) {
        return worked.inputs().get(name) instanceof Double number ? number : 0;
    }

    private List<Double> list(String name) {
        return worked.inputs().get(name) instanceof List<?> many ? many.stream().map(one -> (Double) one).toList() : List.of();
    }

    /** From an input over a factor to as many times it, within what is allowed. */
    private double[] around(String name, double factor, double least, double most) {
        return Sweep.across(Math.max(least, in(name) / factor), Math.min(most, in(name) * factor), true, in(name));
    }

    private double[] span(String name, double from, double to) {
        return Sweep.across(Math.min(from, in(name)), Math.max(to, in(name)), false, in(name));
    }

    private static Axis linear(String name, String unit) {
        return Axis.linear(name, unit);
    }

    private static Axis log(String name, String unit) {
        return Axis.logarithmic(name, unit);
    }
}
