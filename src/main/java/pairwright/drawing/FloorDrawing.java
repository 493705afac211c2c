package pairwright.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A floor from above, to scale: walls, players as they look from above, gobos, microphones. A player is a group that carries its place and its
 * direction as plain transforms, so that a page can move it.
 */
public final class FloorDrawing {
    private static final double NAME_WIDTH = 84;
    private static final double MOST_ASIDE = 130;
    /** Half as wide as the box of the leads is drawn. */
    private static final int BOX = 5;
    private static final String FRONT = "front";

    private final FloorPlan plan;
    private final String key;
    private final Reader reader;
    private final FloorScale scale;
    private final Labels labels;
    private final List<Labels.Box> names = new ArrayList<>();

    private FloorDrawing(FloorPlan plan, String key, Reader reader) {
        this.plan = plan;
        this.key = key;
        this.reader = reader;
        this.scale = FloorScale.of(plan.widthM(), plan.depthM());
        this.labels = new Labels(FloorScale.WIDTH, scale.bottomPx() + 2);
    }

    /**
     * The drawing, and the words that say the same.
     *
     * @param key unlike that of any other picture of the same page
     */
    public static Drawing of(FloorPlan plan, String key, Reader reader) {
        return new FloorDrawing(plan, key, reader).drawing();
    }

    private Drawing drawing() {
        Map<FloorPlan.Who, PlayerGlyph> players = new LinkedHashMap<>();
        plan.players().forEach(who -> players.put(who, new PlayerGlyph(who, scale)));
        List<FloorMic> mics = plan.mics().stream().map(mic -> new FloorMic(mic, scale)).toList();
        boolean enlarged = players.values().stream().anyMatch(PlayerGlyph::enlarged);
        Svg svg = new Svg(key, FloorScale.WIDTH, scale.heightPx(), "Floor plan", FloorWords.says(plan, enlarged, reader));
        walls(svg);
        shade(svg);
        // names stay off what is written beside the walls
        labels.keepFree(new Labels.Box(0, 0, scale.x(0) - 3, scale.bottomPx()));
        labels.keepFree(new Labels.Box(0, 0, FloorScale.WIDTH, scale.y(plan.depthM()) - 3));
        players.values().forEach(player -> player.keepFree(labels));
        plan.screens().forEach(screen -> labels.passing(scale.x(screen.x1M()), scale.y(screen.y1M()), scale.x(screen.x2M()), scale.y(screen.y2M())));
        mics.forEach(mic -> mic.keepFree(labels));
        if (plan.box() != null) {
            labels.keepFree(Labels.Box.round(scale.x(plan.box().xM()), scale.y(plan.box().yM()), BOX + 1));
        }
        mics.forEach(mic -> mic.findNumber(labels));
        if (plan.box() != null) {
            box(svg, scale.x(plan.box().xM()), scale.y(plan.box().yM()));
        }
        plan.screens().forEach(screen -> screen(svg, screen));
        players.forEach((who, player) -> player(svg, who, player));
        mics.forEach(mic -> mic.write(svg));
        return svg.drawing();
    }

    private void walls(Svg svg) {
        double left = scale.x(0);
        double right = scale.x(plan.widthM());
        double top = scale.y(plan.depthM());
        double bottom = scale.bottomPx();
        StringBuilder grid = new StringBuilder();
        double gridM = scale.gridM(reader);
        for (double xM = gridM; xM < plan.widthM() - 1e-6; xM += gridM) {
            grid.append('M').append(Svg.number(scale.x(xM))).append(' ').append(Svg.number(top)).append('V').append(Svg.number(bottom));
        }
        for (double yM = gridM; yM < plan.depthM() - 1e-6; yM += gridM) {
            grid.append('M').append(Svg.number(left)).append(' ').append(Svg.number(scale.y(yM))).append('H').append(Svg.number(right));
        }
        svg.leaf("path", "class", "grid", "d", grid, "fill", "none", "stroke", "#e2dccd", "stroke-width", 0.75);
        svg.leaf("rect", "class", "wall source", "x", left, "y", top, "width", right - left, "height", bottom - top, "fill", "none", "stroke", "#1d1d1b", "stroke-width", 2.5,
                "data-px-per-m", scale.pxPerM(), "data-width-m", plan.widthM(), "data-depth-m", plan.depthM());
        text(svg, FloorWords.tape(plan.widthM(), reader), "middle", (left + right) / 2, top - 8, null);
        text(svg, FloorWords.tape(plan.depthM(), reader), "middle", left - 9, (top + bottom) / 2, "rotate(-90 " + Svg.number(left - 9) + " " + Svg.number((top + bottom) / 2) + ")");
        text(svg, FRONT, "end", right, bottom + 17, null);
        double barM = scale.barM(reader);
        double y = bottom + 28;
        svg.leaf("path", "class", "axis scale", "d", "M" + Svg.number(left) + " " + Svg.number(y - 4) + "v8m0 -4H" + Svg.number(left + barM * scale.pxPerM()) + "m0 -4v8",
                "fill", "none", "stroke", "#1d1d1b", "stroke-width", 1.5);
        text(svg, FloorWords.tape(barM, reader), "start", left + barM * scale.pxPerM() + 7, y + 4.4, null);
    }

    private void shade(Svg svg) {
        if (plan.good().isEmpty()) {
            return;
        }
        StringBuilder squares = new StringBuilder();
        for (FloorPlan.Good good : plan.good()) {
            double side = good.sideM() * scale.pxPerM();
            squares.append('M').append(Svg.number(scale.x(good.xM() - good.sideM() / 2))).append(' ').append(Svg.number(scale.y(good.yM() + good.sideM() / 2)))
                    .append('h').append(Svg.number(side)).append('v').append(Svg.number(side)).append('h').append(Svg.number(-side)).append('z');
        }
        svg.leaf("path", "class", "does-as-well", "d", squares, "fill", "#bcd3a4", "stroke", "none");
    }

    private void box(Svg svg, double x, double y) {
        svg.open("g", "class", "lead-box", "transform", at(x, y));
        svg.leaf("path", "class", "source", "d", "M" + -BOX + " " + -BOX + "h" + 2 * BOX + "v" + 2 * BOX + "h" + -2 * BOX + "zl" + 2 * BOX + " " + 2 * BOX + "m0 " + -2 * BOX + "l" + -2 * BOX + " " + 2 * BOX,
                "fill", "#efe9dc", "stroke", "#1d1d1b", "stroke-width", 1.25);
        svg.close();
    }

    private static void text(Svg svg, String text, String anchor, double x, double y, String transform) {
        svg.leafText("text", text, "class", "label", "x", x, "y", y, "text-anchor", anchor, "transform", transform, "font-family", "sans-serif", "font-size", Type.SIZE, "fill", "#1d1d1b");
    }

    private void player(Svg svg, FloorPlan.Who who, PlayerGlyph player) {
        double x = scale.x(who.xM());
        double y = scale.y(who.yM());
        Labels.Placed label = label(who.label(), x, y, 270 - who.facingDegrees());
        svg.open("g", "class", "who" + (plan.marked().contains(who.id()) ? " marked" : ""), "data-who", who.id(), "data-name", who.name(), "transform", at(x, y));
        Labels.leader(svg, label, x, y);
        player.write(svg, plan.marked().contains(who.id()));
        Labels.text(svg, label, x, y);
        svg.close();
    }

    /** Where a name goes; where everything is full it lies on a player, but on no other name while there is room for that. */
    private Labels.Placed label(String name, double x, double y, double wantedDegrees) {
        List<String> lines = Type.lines(name, Type.SIZE, NAME_WIDTH);
        Labels.Placed found = labels.find(lines, "label", x, y, wantedDegrees);
        if (found == null) {
            found = crowded(lines, x, y);
            labels.keepFree(found.box());
        }
        names.add(found.box());
        return found;
    }

    private Labels.Placed crowded(List<String> lines, double x, double y) {
        double halfWide = lines.stream().mapToDouble(line -> Type.width(line, Type.SIZE)).max().orElse(0) / 2 + 2;
        double halfHigh = lines.size() * Type.SIZE * Type.LINE / 2 + 2;
        for (double reach = 14; reach <= MOST_ASIDE; reach += 7) {
            for (int around = 0; around < 360; around += 15) {
                double toX = Math.max(halfWide, Math.min(FloorScale.WIDTH - halfWide, x + reach * Math.cos(Math.toRadians(around))));
                double toY = Math.max(halfHigh, Math.min(scale.bottomPx() - halfHigh, y + reach * Math.sin(Math.toRadians(around))));
                Labels.Box box = new Labels.Box(toX - halfWide, toY - halfHigh, toX + halfWide, toY + halfHigh);
                if (names.stream().noneMatch(box::meets)) {
                    return new Labels.Placed(lines, box, "label", x, y, reach > 30);
                }
            }
        }
        return new Labels.Placed(lines, new Labels.Box(x - halfWide, y - halfHigh, x + halfWide, y + halfHigh), "label", x, y, false);
    }

    private void screen(Svg svg, FloorPlan.Screen screen) {
        double x = scale.x(screen.middleXM());
        double y = scale.y(screen.middleYM());
        double half = screen.lengthM() / 2 * scale.pxPerM();
        double turn = Math.toDegrees(Math.atan2(screen.y1M() - screen.y2M(), screen.x2M() - screen.x1M()));
        Labels.Placed label = label(screen.name(), x, y, 90 - turn);
        svg.open("g", "class", "screen" + (plan.marked().contains(screen.id()) ? " marked" : ""), "data-screen", screen.id(), "data-name", screen.name(), "transform", at(x, y));
        Labels.leader(svg, label, x, y);
        svg.open("g", "class", "turns", "transform", "rotate(" + Svg.number(turn) + ")");
        svg.leaf("rect", "class", "source", "x", -half, "y", -3, "width", 2 * half, "height", 6, "fill", "#efe9dc", "stroke", "#1d1d1b", "stroke-width", 1.25);
        StringBuilder hatch = new StringBuilder();
        for (double across = -half + 3; across < half - 4; across += 6) {
            hatch.append('M').append(Svg.number(across)).append(" 3l4 -6");
        }
        svg.leaf("path", "class", "source", "d", hatch, "fill", "none", "stroke", "#1d1d1b", "stroke-width", 1);
        svg.close();
        Labels.text(svg, label, x, y);
        svg.close();
    }

    static String at(double x, double y) {
        return "translate(" + Svg.number(x) + " " + Svg.number(y) + ")";
    }
}
