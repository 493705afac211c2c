package pairwright.drawing;

import java.util.ArrayList;
import java.util.List;
import pairwright.model.Mount;

/** What is round the microphones: the source and its player, the floor, stands, what must stay free, who plays beside. */
final class Surroundings {
    private static final double EDGE = 7;
    private static final double ARROW = 20;
    private static final double BOOM = 52;
    private static final double SCREEN_M = 0.15;
    private static final double NAME_WIDTH = 104;

    private final Svg svg;
    private final String key;
    private final SetUp setUp;
    private final View view;
    private final Frame frame;
    private final Labels labels;

    Surroundings(Svg svg, String key, SetUp setUp, View view, Frame frame, Labels labels) {
        this.svg = svg;
        this.key = key;
        this.setUp = setUp;
        this.view = view;
        this.frame = frame;
        this.labels = labels;
    }

    /** What follows is cut off at the frame. */
    void begin() {
        svg.open("defs");
        svg.open("clipPath", "id", key + "-frame").leaf("rect", "x", 0, "y", 0, "width", Frame.WIDTH, "height", frame.heightPx()).close();
        svg.open("pattern", "id", key + "-hatch", "width", 7, "height", 7, "patternUnits", "userSpaceOnUse", "patternTransform", "rotate(45)")
                .leaf("line", "class", "danger", "x1", 0, "y1", 0, "x2", 0, "y2", 7, "stroke", "#a3200d", "stroke-width", 1.5).close();
        svg.close();
        svg.open("g", "clip-path", "url(#" + key + "-frame)");
    }

    void end() {
        svg.close();
    }

    void keepClear(List<Zones.Zone> zones) {
        for (Zones.Zone zone : zones) {
            svg.leaf("circle", "class", "keep-clear", "cx", frame.x(zone.middle()), "cy", frame.y(zone.middle()), "r", zone.clear().distanceM() * frame.scalePxPerM(), "fill",
                    "url(#" + key + "-hatch)", "fill-opacity", 0.55, "stroke", "#a3200d", "stroke-width", 1, "stroke-dasharray", "2 3");
        }
    }

    void keepClearLabel(List<Zones.Zone> zones) {
        for (Zones.Zone zone : zones) {
            double reach = zone.clear().distanceM() * frame.scalePxPerM();
            double away = zone.middle().towardDegrees(zone.mic().place()) + 125;
            double x = frame.x(zone.middle()) + reach * 0.7 * Math.cos(Math.toRadians(away));
            double y = frame.y(zone.middle()) - reach * 0.7 * Math.sin(Math.toRadians(away));
            if (frame.holds(x, y, 2) && labels.put("keep clear", "label", x, y, away)) {
                return;
            }
        }
    }

    /** A screen against breath, half way from the mouth. */
    void popScreen(View.Seen mic) {
        double degrees = Math.toRadians(mic.surface().towardDegrees(mic.place()));
        double x = (frame.x(mic.surface()) + frame.x(mic.place())) / 2;
        double y = (frame.y(mic.surface()) + frame.y(mic.place())) / 2;
        double reach = SCREEN_M / 2 * frame.scalePxPerM();
        double acrossX = Math.sin(degrees) * reach;
        double acrossY = Math.cos(degrees) * reach;
        svg.leaf("line", "class", "source pop-screen", "x1", x - acrossX, "y1", y - acrossY, "x2", x + acrossX, "y2", y + acrossY, "stroke", "#1d1d1b", "stroke-width", 3,
                "stroke-dasharray", "3 1.5");
        labels.passing(x - acrossX, y - acrossY, x + acrossX, y + acrossY);
    }

    /** Named after what is measured, which matters more, has found its room. */
    void popScreenLabel(View.Seen mic) {
        double degrees = mic.surface().towardDegrees(mic.place()) + 90;
        double reach = SCREEN_M / 2 * frame.scalePxPerM();
        double x = (frame.x(mic.surface()) + frame.x(mic.place())) / 2 + reach * Math.cos(Math.toRadians(degrees));
        double y = (frame.y(mic.surface()) + frame.y(mic.place())) / 2 - reach * Math.sin(Math.toRadians(degrees));
        labels.put("pop screen", "label", x, y, degrees);
    }

    /** Whether the catalogue puts a screen before this place. */
    static boolean hasPopScreen(View.Seen mic) {
        return mic.mic().position().name().contains("pop screen");
    }

    void body(Outline body) {
        for (Outline.Line line : body.lines()) {
            StringBuilder path = new StringBuilder(line.xy().length * 7);
            for (int i = 0; i < line.xy().length; i += 2) {
                path.append(i == 0 ? 'M' : 'L');
                Svg.append(path, frame.x(line.xy()[i]));
                path.append(' ');
                Svg.append(path, frame.y(line.xy()[i + 1]));
            }
            if (line.closed()) {
                path.append('Z');
            }
            // legs and stands as well, but not bars and strings seen from above, which leave no room between
            if (line.kind() == Outline.Kind.BODY || line.kind() == Outline.Kind.DETAIL && !view.above() && !line.closed()) {
                passing(line);
            }
            switch (line.kind()) {
                case BODY -> svg.leaf("path", "class", "source", "d", path, "fill", line.closed() ? "#efe9dc" : "none", "stroke", "#1d1d1b", "stroke-width", 1.5, "stroke-linejoin", "round");
                case DETAIL -> svg.leaf("path", "class", "source", "d", path, "fill", "none", "stroke", "#1d1d1b", "stroke-width", 0.8);
                case PLAYER -> svg.leaf("path", "class", "faint", "d", path, "fill", "none", "stroke", "#6a675f", "stroke-width", 1, "stroke-dasharray", "3 2");
            }
        }
    }

    private void passing(Outline.Line line) {
        double[] xy = line.xy();
        int last = xy.length - (line.closed() ? 0 : 2);
        for (int i = 0; i < last; i += 2) {
            int next = (i + 2) % xy.length;
            labels.outline(frame.x(xy[i]), frame.y(xy[i + 1]), frame.x(xy[next]), frame.y(xy[next + 1]));
        }
    }

    void floor() {
        double y = frame.y(0);
        if (view.above() || y > frame.heightPx()) {
            return;
        }
        svg.leaf("line", "class", "source", "x1", 0, "y1", y, "x2", Frame.WIDTH, "y2", y, "stroke", "#1d1d1b", "stroke-width", 1.5);
        StringBuilder ticks = new StringBuilder();
        for (double x = 4; x < Frame.WIDTH + 8; x += 12) {
            ticks.append('M');
            Svg.append(ticks, x);
            ticks.append(' ');
            Svg.append(ticks, y);
            ticks.append("l-5 6");
        }
        svg.leaf("path", "class", "faint", "d", ticks, "fill", "none", "stroke", "#6a675f", "stroke-width", 0.75);
        labels.passing(0, y, Frame.WIDTH, y);
    }

    /** What holds a microphone, as a thin line: seen from the side down to the floor, seen from above to its foot. */
    void stand(View.Seen mic) {
        if (setUp.asOne() && mic.mic().number() == 2) {
            return;
        }
        Mount mount = mic.mic().placement().mount();
        double facing = Math.toRadians(mic.aimDegrees() == null ? mic.sightDegrees() : mic.aimDegrees());
        double back = mic.aimDegrees() == null ? 0 : 20;
        double x = frame.x(mic.place()) - back * Math.cos(facing);
        double y = frame.y(mic.place()) + back * Math.sin(facing);
        double side = frame.x(mic.surface()) <= frame.x(mic.place()) ? 1 : -1;
        switch (mount) {
            case CLIP -> line(frame.x(mic.surface()), frame.y(mic.surface()), x, y, 2.5);
            case STAND, BOOM, OVERHEAD -> {
                boolean reaches = mount != Mount.STAND;
                if (view.above()) {
                    double away = Math.toRadians(mic.surface().towardDegrees(mic.place()));
                    double reach = reaches ? BOOM : 16;
                    double footX = x + reach * Math.cos(away);
                    double footY = y - reach * Math.sin(away);
                    line(x, y, footX, footY, 2);
                    for (int leg = 0; leg < 3; leg++) {
                        double angle = away + Math.PI / 3 + leg * 2 * Math.PI / 3;
                        line(footX, footY, footX + 9 * Math.cos(angle), footY - 9 * Math.sin(angle), 1.5);
                    }
                } else {
                    double floorY = Math.min(frame.y(0), frame.heightPx() + 30);
                    double poleX = reaches ? Math.max(8, Math.min(Frame.WIDTH - 8, x + side * BOOM)) : x + side * 4;
                    double topY = reaches ? Math.min(floorY - 10, y + (mount == Mount.OVERHEAD ? 6 : 14)) : y;
                    line(x, y, poleX, topY, 2);
                    line(poleX, topY, poleX, floorY, 2);
                    line(poleX - 9, floorY, poleX, floorY - 9, 1.5);
                    line(poleX + 9, floorY, poleX, floorY - 9, 1.5);
                }
            }
            default -> {
                // lies, is held in the hand, or hangs on nothing that is worth a line
            }
        }
    }

    private void line(double fromX, double fromY, double toX, double toY, double width) {
        labels.passing(fromX, fromY, toX, Math.min(toY, frame.heightPx()));
        svg.leaf("line", "class", "faint", "x1", fromX, "y1", fromY, "x2", toX, "y2", toY, "stroke", "#8a867b", "stroke-width", width, "stroke-linecap", "round");
    }

    /** The neighbours that are drawn in this view: only where their angle is true. */
    static List<SetUp.Beside> neighboursShown(SetUp setUp, List<View.Seen> mics, View view) {
        return mics.isEmpty() ? List.of() : setUp.beside().stream().filter(beside -> view.showsNeighbour(mics.get(0), beside.angleDegrees())).toList();
    }

    /** Those that are not, in a few words; null where all are. */
    static String neighboursElsewhere(SetUp setUp, List<View.Seen> mics, View view) {
        List<SetUp.Beside> shown = neighboursShown(setUp, mics, view);
        List<String> names = setUp.beside().stream().filter(beside -> !shown.contains(beside)).map(SetUp.Beside::name).toList();
        return names.isEmpty() ? null : "Drawn from above only: " + String.join(", ", names);
    }

    void neighbours(List<View.Seen> mics, Reader reader) {
        List<SetUp.Beside> shown = neighboursShown(setUp, mics, view);
        if (shown.isEmpty()) {
            return;
        }
        View.Seen mic = mics.get(0);
        double micX = frame.x(mic.place());
        double micY = frame.y(mic.place());
        for (SetUp.Beside beside : shown) {
            double degrees = mic.neighbourDegrees(beside.angleDegrees());
            double angle = Math.toRadians(degrees);
            double x = micX + beside.distanceM() * frame.scalePxPerM() * Math.cos(angle);
            double y = micY - beside.distanceM() * frame.scalePxPerM() * Math.sin(angle);
            List<String> lines = new ArrayList<>(Type.lines(beside.name(), Type.SIZE, NAME_WIDTH));
            lines.add(reader.distance(beside.distanceM()) + ", " + reader.number(beside.angleDegrees(), 0) + "\u00b0");
            boolean inside = frame.holds(x, y, 26);
            double tip = inside ? Math.hypot(x - micX, y - micY) - 9 : frame.toEdge(micX, micY, angle, EDGE);
            double from = Math.min(tip - 4, MicGlyph.NULL_TO + 4);
            double tipX = micX + tip * Math.cos(angle);
            double tipY = micY - tip * Math.sin(angle);
            svg.leaf("line", "class", "neighbour", "x1", micX + from * Math.cos(angle), "y1", micY - from * Math.sin(angle), "x2", tipX, "y2", tipY, "stroke", Look.NEIGHBOUR.colour(),
                    "stroke-width", 1.25, "stroke-dasharray", "1.5 3");
            labels.passing(micX + from * Math.cos(angle), micY - from * Math.sin(angle), tipX, tipY);
            if (inside) {
                svg.leaf("path", "class", "neighbour", "d", "M" + Svg.number(x - 8) + " " + Svg.number(y) + "l8 -8l8 8l-8 8Z", "fill", "#efe9dc", "stroke", Look.NEIGHBOUR.colour(), "stroke-width", 2);
                labels.keepFree(Labels.Box.round(x, y, 9));
                labels.must(lines, "", x, y, degrees);
            } else {
                String transform = "translate(" + Svg.number(tipX) + " " + Svg.number(tipY) + ") rotate(" + Svg.number(-degrees) + ")";
                svg.leaf("path", "class", "neighbour", "transform", transform, "d", "M-" + Svg.number(ARROW) + " 0L-2 0M-9 -5L0 0L-9 5", "fill", "none", "stroke", Look.NEIGHBOUR.colour(), "stroke-width", 2);
                labels.keepFree(Labels.Box.round(tipX - 7 * Math.cos(angle), tipY + 7 * Math.sin(angle), 7));
                labels.must(lines, "", tipX - ARROW * 0.6 * Math.cos(angle), tipY + ARROW * 0.6 * Math.sin(angle), degrees + 90);
            }
        }
    }
}
