package pairwright.drawing;

import java.util.List;
import pairwright.model.Placement;
import pairwright.model.PowerNeed;

/** A set-up without air: from the instrument by a box and leads to the preamplifier. */
final class LeadPicture {
    private static final double ROW = 92;

    private LeadPicture() {
    }

    static Drawing of(SetUp setUp, String key) {
        StringBuilder says = new StringBuilder();
        for (Stood mic : setUp.mics()) {
            Placement placement = mic.placement();
            says.append(says.isEmpty() ? "" : " ").append(Words.sentence(setUp.source().name() + ": through " + placement.name() + " to a preamplifier, "
                    + mic.power().switched(placement.phantom()))).append(' ')
                    .append(Words.sentence(placement.positionName()));
        }
        Svg svg = new Svg(key, Frame.WIDTH, setUp.mics().size() * ROW + 16, setUp.source().name() + ", by lead", says.toString());
        for (int i = 0; i < setUp.mics().size(); i++) {
            row(svg, setUp, setUp.mics().get(i), 12 + i * ROW);
        }
        return svg.drawing();
    }

    private static void row(Svg svg, SetUp setUp, Stood mic, double top) {
        Look look = mic.number() == 1 ? Look.ONE : Look.TWO;
        svg.leaf("path", "class", look.style(), "d", "M102 " + Svg.number(top + 30) + "C112 " + Svg.number(top + 44) + " 118 " + Svg.number(top + 18) + " 130 " + Svg.number(top + 30) + "M240 "
                + Svg.number(top + 30) + "C250 " + Svg.number(top + 44) + " 256 " + Svg.number(top + 18) + " 266 " + Svg.number(top + 30), "fill", "none", "stroke", look.colour(),
                "stroke-width", 2.25, "stroke-dasharray", look.dash());
        box(svg, "source", "#1d1d1b", 6, top, 96, List.of(setUp.source().name()));
        box(svg, look.style() + " paper", look.colour(), 130, top, 110, mic.power() != PowerNeed.PHANTOM_OR_BATTERY ? List.of(mic.placement().name())
                : List.of(mic.placement().name(), mic.placement().phantom() ? "phantom or a fresh cell" : "a fresh cell in it"));
        box(svg, "source", "#1d1d1b", 266, top, 88, List.of("preamplifier", "phantom " + (mic.placement().phantom() ? "on" : "off")));
        MicGlyph.number(svg, mic.number(), 130, top);
    }

    private static void box(Svg svg, String style, String colour, double x, double top, double width, List<String> texts) {
        svg.leaf("rect", "class", style, "x", x, "y", top, "width", width, "height", 62, "rx", 2, "fill", style.equals("source") ? "#efe9dc" : "#fcfaf5", "stroke", colour, "stroke-width", 1.75);
        List<String> lines = texts.stream().flatMap(text -> Type.lines(text, Type.SIZE, width - 8).stream()).toList();
        double y = top + 31 - (lines.size() - 1) * Type.SIZE * Type.LINE / 2 + 4.4;
        for (String line : lines) {
            svg.leafText("text", line, "class", "label", "x", x + width / 2, "y", y, "text-anchor", "middle", "font-family", "sans-serif", "font-size", Type.SIZE, "fill", "#1d1d1b");
            y += Type.SIZE * Type.LINE;
        }
    }
}
