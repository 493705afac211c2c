package pairwright.lab;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import pairwright.lab.ReckonProblem.Drawn;
import pairwright.lab.ReckonProblem.Of;
import pairwright.lab.ReckonProblem.Some;
import pairwright.lab.ReckonProblem.Span;

/** All problems there are; every calculation has one at least. */
final class ReckonProblems {
    private static final Of PATTERNS = new Of(List.of("cardioid", "supercardioid", "hypercardioid", "figure-8"));

    static final List<ReckonProblem> ALL = List.of(
            absolute("later", 1, "level-at-distance", "A source gives {levelDbSpl} dB SPL at 1 m. How loud is it at {distanceM} m, with no room around it?",
                    inputs("levelDbSpl", new Span(70, 110, 1), "distanceM", new Of(List.of("0.25", "0.5", "2", "3", "4", "6", "8"))),
                    "levelDbSpl", "dB SPL", 0.5, 40, 140, level -> level - 3, "Twice the distance is 6 dB, not 3: level follows pressure, which halves."),
            relative("how-late", 1, "delay", "A room microphone stands {distanceM} m farther from the player than the near one. How much later does it hear the player?",
                    inputs("distanceM", new Span(0.5, 9, 0.1)), "delayMs", "ms", 0.03, 0.2, 60, ms -> ms / 2, "The way counts once: nothing travels back."),
            absolute("what-is-left", 1, "phantom-budget", "Microphones that draw {currentsMa} mA hang on one supply that gives {supplyRatingMa} mA to all channels together. "
                    + "How many milliamperes are left?", inputs("currentsMa", new Some(3, 6, new Span(2, 6, 0.5)), "supplyRatingMa", new Of(List.of("40", "50", "60"))),
                    "headroomMa", "mA", 0.1, 1, 60, left -> left + 4, "One microphone was left out of the sum."),
            relative("in-samples", 1, "delay", "Two microphones on one source stand {distanceM} m apart in depth. How many samples is that at {sampleRateHz} Hz?",
                    inputs("distanceM", new Span(0.2, 3, 0.1), "sampleRateHz", new Of(List.of("44100", "48000", "96000"))),
                    "samples", "samples", 0.03, 5, 2000, samples -> samples / 2, "The way counts once: nothing travels back."),
            relative("first-null", 2, "comb", "One sound comes to a microphone twice, the second time by a way that is {pathDifferenceM} m longer. At which frequency is the first null?",
                    inputs("pathDifferenceM", new Span(0.05, 1.5, 0.05)), "firstNullHz", "Hz", 0.03, 50, 8000, hz -> hz * 2, "The first null is where the way is longer by half a "
                            + "wavelength; a whole one is the first peak."),
            absolute("room-above", 2, "headroom", "A microphone is stated to stand {maxDbSpl} dB SPL, for a sine. The true peak at its place is {truePeakDbSpl} dB SPL, and its pad of "
                    + "{padDb} dB is in. How many decibels are left?", inputs("maxDbSpl", new Span(125, 140, 1), "truePeakDbSpl", new Span(120, 140, 1), "padDb", new Of(List.of("10", "15", "20"))),
                    "headroomDb", "dB", 0.5, 1, 50, left -> left - 3, "A sine of so many dB SPL peaks 3 dB above its level: the peak of the source counts 3 dB less."),
            absolute("deaf-angle", 2, "null-angles", "At how many degrees off its axis does a {pattern} hear least?", inputs("pattern", PATTERNS), "nullDegrees", "degrees", 3, 60, 180,
                    degrees -> degrees > 150 ? 90 : 180, "Only the cardioid is deaf straight behind, and only the figure-8 at its side."),
            relative("how-far-apart", 2, "spacing", "An omni stands {distanceM} m from its source. How far from the omni must a second player be, who is just as loud, to come {separationDb} dB quieter?",
                    inputs("distanceM", new Span(0.2, 0.8, 0.1), "separationDb", new Of(List.of("6", "8", "10", "12", "14"))), "otherDistanceM", "m", 0.04, 0.3, 10,
                    metres -> metres * 1.5, "The ratio of the distances is ten to the power of decibels over twenty."),
            absolute("how-much-gain", 3, "gain", "A microphone of {sensitivityMvPerPa} mV/Pa stands in {levelDbSpl} dB SPL. A full-scale sine is +22 dBu at the converter, and the running level shall sit "
                    + "at -18 dBFS. How much gain is that?", inputs("sensitivityMvPerPa", new Of(List.of("1.2", "1.8", "2.5", "8", "12", "20", "30")), "levelDbSpl", new Span(74, 100, 2)),
                    "gainDb", "dB", 0.7, 1, 75, gain -> gain + 18, "-18 dBFS is 18 dB under +22 dBu; the gain goes up to there, not to full scale."),
            absolute("above-the-noise", 3, "noise", "A microphone of {sensitivityMvPerPa} mV/Pa and {selfNoiseDba} dB(A) of its own noise hears {levelDba} dB(A). The preamplifier's noise is -128 dBu. "
                    + "How far above all noise is the source?", inputs("sensitivityMvPerPa", new Of(List.of("8", "12", "20", "30")), "selfNoiseDba", new Span(6, 22, 1), "levelDba", new Span(40, 80, 2)),
                    "signalToNoiseDb", "dB", 0.8, 10, 80, ratio -> ratio + 4, "The preamplifier's noise adds to the microphone's."),
            absolute("mid-and-side", 3, "mid-side", "A cardioid in the middle and a figure-8 at the side; the side is {sideToMidDb} dB against the middle. What angle is between the two crossed "
                    + "microphones that this makes?", inputs("sideToMidDb", new Span(-9, 3, 1)), "includedDegrees", "degrees", 4, 30, 180, degrees -> degrees / 2, "That is the angle from the "
                            + "middle to one of the two; between them it is twice that."),
            absolute("on-the-ribbon", 3, "ribbon-loading", "A ribbon of {midOhm} ohm hangs on an input of {loadOhm} ohm. By how much does its level change against an input that takes "
                    + "no current? A loss is below 0.", inputs("midOhm", new Of(List.of("200", "250", "300")), "loadOhm", new Of(List.of("300", "500", "600", "800"))), "midChangeDb", "dB", 0.3, -12, 0,
                    db -> db / 2, "It is a voltage that is divided: 20 times the logarithm, not 10."),
            absolute("close-and-full", 4, "proximity", "A small source is {distanceM} m in front of a {pattern}. How many decibels does 100 Hz rise against a far source?",
                    inputs("pattern", PATTERNS, "distanceM", new Of(List.of("0.1", "0.15", "0.2", "0.3", "0.5"))), "boostDb", "dB", 0.8, 0.1, 25, db -> db / 2,
                    "The part of the pickup that follows the pressure gradient rises, and it adds to the rest before the logarithm is taken."),
            relative("as-loud-as-the-room", 4, "critical-distance", "A room of {volumeM3} cubic metres rings for {reverbTimeS} s. At which distance does a {pattern} hear a source that sounds "
                    + "evenly to all sides as loud as the room?", inputs("volumeM3", new Of(List.of("60", "100", "150", "250", "400", "1200")), "reverbTimeS", new Span(0.3, 1.8, 0.1), "pattern", PATTERNS),
                    "criticalDistanceM", "m", 0.05, 0.2, 6, metres -> metres / 1.7, "That is the distance for an omni; a pattern that hears less of the room reaches farther."),
            relative("will-it-tip", 4, "stand-stability", "A stand of {standMassKg} kg with three legs of {footRadiusM} m holds a microphone of {micMassKg} kg at {reachM} m, the arm between two legs "
                    + "and half a kilogram by itself. How many times stronger is what holds it than what tips it?", inputs("standMassKg", new Of(List.of("2.5", "4", "8", "12")), "footRadiusM", new Of(List.of("0.3", "0.35", "0.4", "0.5")),
                            "micMassKg", new Of(List.of("0.2", "0.4", "0.6", "1")), "reachM", new Of(List.of("0.6", "0.8", "1"))), "holdingRatio", "1", 0.06, 0.1, 30,
                    ratio -> ratio * 2, "Between two legs the edge to tip over is only half as far from the column as a foot."),
            absolute("turned", 4, "null-angles", "A {pattern} hears a singer on its axis; a loud neighbour is {otherDegrees} degrees off it. By how many degrees must it be turned away for its null to face the neighbour?",
                    inputs("pattern", new Of(List.of("cardioid", "supercardioid", "hypercardioid")), "otherDegrees", new Of(List.of("90", "100", "140", "150", "160"))), "turnDegrees", "degrees", 4, 1, 90,
                    degrees -> degrees / 2, "The null keeps its angle to the axis: the microphone turns by the whole difference."),
            absolute("ripple", 5, "comb", "A sound comes a second time by a way {pathDifferenceM} m longer, {levelDifferenceDb} dB quieter. How many decibels are between the peaks and the dips?",
                    inputs("pathDifferenceM", new Span(0.2, 1.5, 0.1), "levelDifferenceDb", new Span(2, 14, 1)), "rippleDb", "dB", 0.6, 1, 30, db -> db / 2,
                    "That is how far the peaks stand over one arrival alone; the dips go deeper than the peaks go up."),
            absolute("how-wide", 5, "recording-angle", "Two {pattern}s stand {spacingM} m apart with {includedDegrees} degrees between their axes. How wide a scene fills the space between the loudspeakers? "
                    + "Use a table, or take 15 dB or 1.12 ms for a sound all the way at one side. Give the whole angle, from edge to edge.", inputs("pattern", new Of(List.of("cardioid", "hypercardioid", "supercardioid")), "spacingM", new Of(List.of("0.12", "0.17", "0.2", "0.3")),
                            "includedDegrees", new Of(List.of("80", "90", "100", "110", "120"))), "recordingAngleDegrees", "degrees", 8, 30, 240, degrees -> degrees / 2,
                    "That is the half angle, from the middle to one edge."),
            absolute("dose", 5, "exposure", "Somebody works in {levelDba} dB(A) for {hours} hours and has quiet for the rest of the day. What is the exposure level over eight hours?",
                    inputs("levelDba", new Some(1, 1, new Span(84, 100, 1)), "hours", new Some(1, 1, new Of(List.of("1", "2", "4", "6")))), "dailyExposureDba", "dB(A)", 0.6, 60, 120,
                    level -> level + 3, "Half the time is 3 dB less: the same energy over eight hours."));

    private ReckonProblems() {
    }

    private static ReckonProblem absolute(String id, int level, String calculation, String says, Map<String, Drawn> inputs, String result, String unit, double tolerance,
            double least, double most, DoubleUnaryOperator slip, String slipSays) {
        return new ReckonProblem(id, level, calculation, says, inputs, result, unit, tolerance, false, least, most, slip, slipSays);
    }

    private static ReckonProblem relative(String id, int level, String calculation, String says, Map<String, Drawn> inputs, String result, String unit, double tolerance,
            double least, double most, DoubleUnaryOperator slip, String slipSays) {
        return new ReckonProblem(id, level, calculation, says, inputs, result, unit, tolerance, true, least, most, slip, slipSays);
    }

    private static Map<String, Drawn> inputs(Object... namesAndHow) {
        Map<String, Drawn> inputs = new LinkedHashMap<>();
        for (int i = 0; i < namesAndHow.length; i += 2) {
            inputs.put((String) namesAndHow[i], (Drawn) namesAndHow[i + 1]);
        }
        return inputs;
    }
}
