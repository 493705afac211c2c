package pairwright.drawing;

import java.util.List;
import pairwright.model.Catalogue;
import pairwright.model.Option;
import pairwright.model.Question;
import pairwright.model.Reason;

/** The points of the reasons, one after the other, up to the score. A reason is one row, numbered as in a list in the same order. */
public final class PointsDrawing {
    private static final double ROW = 21;
    private static final double BAR = 11;
    private static final double TOP = 30;
    private static final double LABEL = 96;
    private static final double HATCH = 5;
    private static final String FOR_COLOUR = "#12704d";
    private static final String AGAINST_COLOUR = "#a5330f";

    private PointsDrawing() {
    }

    /** From nought, reason by reason, to the score. Points of one microphone of a pair are halved already. */
    public static Drawing of(Catalogue catalogue, Question question, Option option, String key, Reader reader) {
        List<Reason> reasons = option.reasons();
        double[] sums = sums(reasons);
        double least = 0;
        double most = 0;
        for (double sum : sums) {
            least = Math.min(least, sum);
            most = Math.max(most, sum);
        }
        double values = 4 + reasons.stream().mapToDouble(reason -> Type.width(Words.signed(reason.points(), 2, reader), Type.SIZE)).max().orElse(0);
        values = Math.max(values, 8 + Type.width(Words.number(option.score(), 2, reader), Type.SIZE));
        double step = Scale.step(Math.max(1, most - least), 6, "");
        Scale x = new Scale(false, Math.floor(least / step + 1e-9) * step, Math.max(step, Math.ceil(most / step - 1e-9) * step), LABEL, Svg.PLOT_WIDTH - values - 4);
        double bottom = TOP + (reasons.size() + 1) * ROW;
        Svg svg = new Svg(key, Svg.PLOT_WIDTH, bottom + 8, "Points, reason by reason", says(option, reader));
        grid(svg, x, bottom, reader);
        double before = 0;
        for (int i = 0; i < reasons.size(); i++) {
            row(svg, x, i, reasons.get(i), before, sums[i], reader);
            before = sums[i];
        }
        score(svg, x, reasons.size(), option.score(), reader);
        return svg.drawing();
    }

    /** What is reached after each reason. Points are whole hundredths, so they are added as such. */
    private static double[] sums(List<Reason> reasons) {
        double[] sums = new double[reasons.size()];
        long hundredths = 0;
        for (int i = 0; i < sums.length; i++) {
            hundredths += Math.round(reasons.get(i).points() * 100);
            sums[i] = hundredths / 100.0;
        }
        return sums;
    }

    private static void grid(Svg svg, Scale x, double bottom, Reader reader) {
        StringBuilder lines = new StringBuilder();
        double free = Double.NEGATIVE_INFINITY;
        for (Scale.Tick tick : x.ticks(6, "", reader)) {
            double at = x.at(tick.value());
            Plot.line(lines, at, TOP - 4, at, bottom);
            double half = Type.width(tick.text(), Type.SMALL) / 2;
            if (at - half > free) {
                svg.leafText("text", tick.text(), "class", "label faint", "x", at, "y", TOP - 9, "text-anchor", "middle", "font-size", Type.SMALL, "fill", "#4a4a46");
                free = at + half + 2;
            }
        }
        svg.leaf("path", "class", "grid", "d", lines, "fill", "none", "stroke", "#c9c5ba", "stroke-width", 0.7);
        StringBuilder nought = new StringBuilder();
        Plot.line(nought, x.at(0), TOP - 4, x.at(0), bottom);
        svg.leaf("path", "class", "axis", "d", nought, "fill", "none", "stroke", "#4a4a46");
        svg.leafText("text", "points", "class", "label faint", "x", 2, "y", TOP - 9, "font-size", Type.SMALL, "fill", "#4a4a46");
    }

    private static void row(Svg svg, Scale x, int i, Reason reason, double before, double after, Reader reader) {
        double middle = middle(i);
        text(svg, (i + 1) + ".", 20, middle, "end", false);
        text(svg, reason.rule(), 25, middle, null, false);
        bar(svg, x.at(before), x.at(after), middle, reason.points() < 0);
        StringBuilder on = new StringBuilder();
        Plot.line(on, x.at(after), middle - BAR / 2, x.at(after), middle + ROW - BAR / 2);
        svg.leaf("path", "class", "axis", "d", on, "fill", "none", "stroke", "#4a4a46", "stroke-width", 0.7);
        text(svg, Words.signed(reason.points(), 2, reader), Svg.PLOT_WIDTH - 1, middle, "end", false);
    }

    /** Rightward and full for, leftward and hatched against. */
    private static void bar(Svg svg, double from, double to, double middle, boolean against) {
        double left = Math.min(from, to);
        double width = Math.abs(to - from);
        double top = middle - BAR / 2;
        svg.leaf("rect", "class", against ? "bad" : "good", "x", left, "y", top, "width", width, "height", BAR, "fill", against ? "none" : FOR_COLOUR, "stroke",
                against ? AGAINST_COLOUR : FOR_COLOUR);
        if (against) {
            svg.leaf("path", "class", "bad", "d", hatch(left, top, width), "fill", "none", "stroke", AGAINST_COLOUR);
        }
    }

    /** Slanting lines within a bar. */
    private static StringBuilder hatch(double left, double top, double width) {
        StringBuilder path = new StringBuilder();
        for (double foot = left - BAR + HATCH; foot < left + width; foot += HATCH) {
            double from = Math.max(left, foot);
            double to = Math.min(left + width, foot + BAR);
            Plot.line(path, from, top + BAR - (from - foot), to, top + BAR - (to - foot));
        }
        return path;
    }

    private static void score(Svg svg, Scale x, int rows, double score, Reader reader) {
        double middle = middle(rows);
        svg.leaf("rect", "class", "sum", "x", Math.min(x.at(0), x.at(score)), "y", middle - BAR / 2, "width", Math.abs(x.at(score) - x.at(0)), "height", BAR,
                "fill", Look.SUM.colour());
        text(svg, "Score", 25, middle, null, true);
        text(svg, Words.number(score, 2, reader), Svg.PLOT_WIDTH - 1, middle, "end", true);
    }

    private static double middle(int row) {
        return TOP + row * ROW + ROW / 2;
    }

    private static void text(Svg svg, String text, double x, double middle, String anchor, boolean bold) {
        svg.leafText("text", text, "class", "label", "x", x, "y", middle + Type.SIZE * 0.35, "text-anchor", anchor, "font-size", Type.SIZE, "font-weight",
                bold ? "bold" : null, "fill", "#1d1d1b");
    }

    private static String says(Option option, Reader reader) {
        StringBuilder says = new StringBuilder("From 0, in the order of the reasons: ");
        for (int i = 0; i < option.reasons().size(); i++) {
            Reason reason = option.reasons().get(i);
            says.append(i == 0 ? "" : ", ").append(i + 1).append(". ").append(reason.rule()).append(' ').append(Words.signed(reason.points(), 2, reader));
        }
        return says.append("; together ").append(Words.number(option.score(), 2, reader)).append(" points.").toString();
    }
}
