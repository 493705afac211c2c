package pairwright.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import pairwright.acoustics.Delay;
import pairwright.acoustics.Level;
import pairwright.model.Arrangement;
import pairwright.model.Catalogue;
import pairwright.model.Option;
import pairwright.model.Position;
import pairwright.model.Question;
import pairwright.model.Technique;
import pairwright.model.Together;

/** What two microphones do when they are added: where their sum cancels. Of a sound both hear alike; their own tones are another picture. */
public final class SumDrawing {
    private static final double LEAST_HZ = 50;
    private static final double MOST_HZ = 16_000;
    private static final double LEFT = 34;
    private static final double TOP = 46;
    private static final double BOTTOM = 226;
    private static final double HEIGHT = 260;
    private static final double DEEPEST_DB = -30;
    private static final double MOST_DB = 7;
    private static final double WIDEST_NAME = 84;
    /** From point to point across, in units of the picture. */
    private static final double STEP = 0.8;
    /** Teeth closer than this are shaded rather than drawn. */
    private static final double CLOSEST_TEETH = 5;

    private SumDrawing() {
    }

    /** The sum over frequency, with its first null; null for one microphone, a stereo pair, or two without a difference of path. */
    public static Drawing of(Catalogue catalogue, Question question, Option option, String key, Reader reader) {
        Technique technique = catalogue.techniques().get(option.technique());
        Together together = option.together();
        if (technique == null || technique.stereo() || together == null || together.firstNullHz() == null || together.delayMs() == 0) {
            return null;
        }
        return draw(option, new Comb(together, against(catalogue, question, option, technique)), key, reader);
    }

    /**
     * Whether the two work against each other at the lowest frequencies: one of them stands where the surface moves the other way, or is
     * inverted at the desk, but not both.
     */
    private static boolean against(Catalogue catalogue, Question question, Option option, Technique technique) {
        boolean opposite = technique.arrangement() == Arrangement.TWO_SIDES
                || opposite(catalogue, question, option, 0) != opposite(catalogue, question, option, 1);
        return opposite != (option.mics().get(0).invertPolarity() != option.mics().get(1).invertPolarity());
    }

    private static boolean opposite(Catalogue catalogue, Question question, Option option, int i) {
        String id = option.mics().get(i).position();
        return catalogue.sources().get(question.source()).positions().stream().filter(position -> position.id().equals(id)).anyMatch(Position::opposite);
    }

    /** The sum against the louder of the two alone. */
    private static final class Comb {
        final double delayMs;
        final double quieterDb;
        final double levelDifferenceDb;
        final double rippleDb;
        final double peakDb;
        final double dipDb;
        final double firstNullHz;
        final double everyHz;
        final boolean against;

        Comb(Together together, boolean against) {
            delayMs = together.delayMs();
            levelDifferenceDb = together.levelDifferenceDb();
            quieterDb = -Math.abs(levelDifferenceDb);
            rippleDb = together.rippleDb();
            peakDb = Delay.ripplePeakDb(-quieterDb);
            dipDb = peakDb - rippleDb;
            everyHz = 2 * together.firstNullHz();
            firstNullHz = against ? everyHz : together.firstNullHz();
            this.against = against;
        }

        double sumDb(double hertz) {
            double phaseDegrees = (Delay.phaseDegrees(hertz, delayMs) + (against ? 180 : 0)) % 360;
            return Math.max(dipDb, Level.sumWithPhaseDb(0, quieterDb, phaseDegrees));
        }
    }

    private static Drawing draw(Option option, Comb comb, String key, Reader reader) {
        List<List<String>> names = List.of(Type.lines(Mics.name(option, 0), Type.SIZE, WIDEST_NAME), Type.lines(Mics.name(option, 1), Type.SIZE, WIDEST_NAME),
                List.of("their sum"));
        double right = Svg.PLOT_WIDTH - 2 - Plot.margin(names);
        Scale x = new Scale(true, LEAST_HZ, MOST_HZ, LEFT, right);
        Scale y = new Scale(false, Math.max(DEEPEST_DB, Math.min(-12, 6 * Math.floor(comb.dipDb / 6))), MOST_DB, BOTTOM, TOP);
        Svg svg = new Svg(key, Svg.PLOT_WIDTH, HEIGHT, "What their sum does", says(option, comb, reader));
        Plot plot = new Plot(svg, x, y, LEFT, TOP, right, BOTTOM);
        plot.frame(octaves(x, reader), y.ticks(7, "dB", reader), "Hz", "dB against the louder alone");

        double lastTooth = Math.max(LEAST_HZ, Math.min(MOST_HZ, comb.everyHz * (right - LEFT) / Math.log(MOST_HZ / LEAST_HZ) / CLOSEST_TEETH));
        if (lastTooth < MOST_HZ) {
            double[] ends = {lastTooth, MOST_HZ};
            plot.between(ends, new double[]{comb.dipDb, comb.dipDb}, new double[]{comb.peakDb, comb.peakDb}, "sum", Look.SUM.colour());
        }
        boolean firstLouder = comb.levelDifferenceDb >= 0;
        double[] whole = {LEAST_HZ, MOST_HZ};
        double firstDb = firstLouder ? 0 : comb.quieterDb;
        double secondDb = firstLouder ? comb.quieterDb : 0;
        plot.curve(Look.ONE, whole, new double[]{firstDb, firstDb}, false);
        plot.curve(Look.TWO, whole, new double[]{secondDb, secondDb}, false);
        double[] hertz = hertz(comb, x, lastTooth);
        plot.curve(Look.SUM, hertz, Arrays.stream(hertz).map(comb::sumDb).toArray(), false);
        firstNull(svg, plot, comb, x, y, reader);
        plot.ends(List.of(new Plot.End(Look.ONE, names.get(0), plot.lastHeight(whole, new double[]{firstDb, firstDb})),
                new Plot.End(Look.TWO, names.get(1), plot.lastHeight(whole, new double[]{secondDb, secondDb})),
                new Plot.End(Look.SUM, names.get(2), y.at(Math.max(y.least(), comb.dipDb + 2)))));
        return svg.drawing();
    }

    private static List<Scale.Tick> octaves(Scale x, Reader reader) {
        List<Scale.Tick> ticks = new ArrayList<>(Scale.octaveTicks(reader));
        ticks.removeIf(tick -> !x.holds(tick.value()));
        return ticks;
    }

    /** Even steps across, and every null in its place, so that none is cut short between two steps. */
    private static double[] hertz(Comb comb, Scale x, double lastTooth) {
        DoubleStream steps = DoubleStream.iterate(x.at(LEAST_HZ), at -> at < x.at(lastTooth), at -> at + STEP).map(x::value);
        DoubleStream nulls = DoubleStream.iterate(comb.firstNullHz, hertz -> hertz < lastTooth, hertz -> hertz + comb.everyHz).filter(x::holds);
        return DoubleStream.concat(DoubleStream.concat(steps, nulls), DoubleStream.of(lastTooth)).map(hertz -> Math.min(MOST_HZ, Math.max(LEAST_HZ, hertz)))
                .sorted().toArray();
    }

    private static void firstNull(Svg svg, Plot plot, Comb comb, Scale x, Scale y, Reader reader) {
        if (!x.holds(comb.firstNullHz)) {
            return;
        }
        plot.upright(comb.firstNullHz, "null");
        String words = "first null " + Words.hertz(comb.firstNullHz, reader) + ", " + depth(comb, reader);
        double width = Type.width(words, Type.SIZE);
        svg.leafText("text", words, "class", "label", "x", Math.max(2, Math.min(Svg.PLOT_WIDTH - 2 - width, x.at(comb.firstNullHz) - width / 2)), "y", TOP - 6,
                "font-size", Type.SIZE, "fill", "#1d1d1b");
        svg.leaf("circle", "class", "sum", "cx", x.at(comb.firstNullHz), "cy", y.at(Math.max(y.least(), comb.dipDb)), "r", 4, "fill", Look.SUM.colour());
    }

    private static String depth(Comb comb, Reader reader) {
        return Words.number(comb.dipDb, comb.dipDb > -10 ? 1 : 0, reader) + " dB";
    }

    private static String says(Option option, Comb comb, Reader reader) {
        boolean firstLouder = comb.levelDifferenceDb >= 0;
        String difference = comb.quieterDb > -0.1 ? "both equally loud"
                : "the " + (firstLouder ? "second" : "first") + " " + Words.number(-comb.quieterDb, 1, reader) + " dB quieter";
        StringBuilder says = new StringBuilder(Words.sentence(Mics.counted(option, 0) + "; " + Mics.counted(option, 1) + "; at equal gain: the sound reaches them "
                + Words.number(comb.delayMs, 2, reader) + " ms apart, " + difference)).append(' ');
        says.append(comb.against ? "They are of opposite polarity, so their sum has no bass, and its first null above that is at "
                : "They are of the same polarity; the first null of their sum is at ");
        says.append(Words.hertz(comb.firstNullHz, reader)).append(comb.firstNullHz > MOST_HZ ? ", above the picture," : comb.firstNullHz < LEAST_HZ
                ? ", below the picture," : "");
        says.append(" and ").append(depth(comb, reader)).append(" against the louder alone; more follow every ").append(Words.hertz(comb.everyHz, reader)).append('.');
        says.append(" Between nulls the sum is ").append(Words.signed(comb.peakDb, 1, reader)).append(" dB: a ripple of ")
                .append(Words.number(comb.rippleDb, 0, reader)).append(" dB from peak to dip.");
        says.append(" This is of a sound both hear alike; where nulls lie too close to be drawn their range is shaded.");
        return says.toString();
    }
}
