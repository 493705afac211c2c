package pairwright.drawing;

import java.util.List;
import pairwright.model.Arrangement;
import pairwright.model.KeepClear;
import pairwright.model.Mount;
import pairwright.model.Pattern;
import pairwright.model.Placement;

/** One view of a set-up: what is drawn, in its order, and the room its labels find. */
final class SetUpPicture {
    private static final double SIDE_BY_SIDE = 13;
    private static final String BOTH = "1 and 2";
    private static final double IN_ONE_PX = 6;
    private static final double ALIKE = 0.99;
    private static final double[] AROUND_DEGREES = {180, 150, 210, 120, 240, 90, 270, 60, 300};

    private final SetUp setUp;
    private final View view;
    private final Reader reader;
    private final String key;
    private final List<View.Seen> mics;
    private final Frame frame;
    private final Labels labels;
    private final List<Zones.Zone> zones;
    private final Outline body;
    private final boolean inOne;
    /** Labels that found no room, said below the picture instead. */
    private final List<String> below;

    SetUpPicture(SetUp setUp, View view, String key, Reader reader) {
        this(setUp, view, key, reader, List.of());
    }

    private SetUpPicture(SetUp setUp, View view, String key, Reader reader, List<String> below) {
        this.below = below;
        this.setUp = setUp;
        this.view = view;
        this.key = key;
        this.reader = reader;
        this.mics = setUp.inAir().stream().map(mic -> view.seen(setUp, mic)).toList();
        Outline body = view.above() ? BodyFromAbove.of(setUp.source(), setUp.body()) : BodyFromSide.of(setUp.source(), setUp.body(), view.fromBehind());
        Frame.Span bodyY = new Frame.Span(view.above() ? body.leastY() : Math.min(0, body.leastY()), body.mostY());
        this.frame = Frame.around(mics, new Frame.Span(body.leastX(), body.mostX()), bodyY,
                Surroundings.neighboursShown(setUp, mics, view).isEmpty() ? Frame.ROOM : Frame.MORE_ROOM);
        this.labels = new Labels(Frame.WIDTH, frame.heightPx());
        this.zones = Zones.drawn(setUp, mics, frame.scalePxPerM());
        this.body = body;
        this.inOne = inOne();
    }

    Drawing drawing() {
        Legend legend = new Legend(reader);
        legend(legend);
        Svg svg = new Svg(key, Frame.WIDTH, frame.heightPx() + legend.height(), setUp.source().name() + (view.above() ? ", from above" : ", from the side"),
                new SetUpWords(setUp, view, mics, zones, reader).says());
        Surroundings surroundings = new Surroundings(svg, key, setUp, view, frame, labels);
        Dimensions dimensions = new Dimensions(svg, frame, labels, reader);
        surroundings.begin();
        surroundings.body(body);
        surroundings.keepClear(zones);
        surroundings.floor();
        mics.forEach(surroundings::stand);
        mics.stream().filter(Surroundings::hasPopScreen).limit(1).forEach(surroundings::popScreen);
        surroundings.end();
        dimensions.scaleBar(!view.above());
        boolean pairInLine = inOne && setUp.stereo();
        for (View.Seen mic : mics) {
            if (!(pairInLine && mic.mic().number() == 2)) {
                glyph(svg, mic);
            }
        }
        contacts(svg);
        boolean equallyHigh = mics.size() == 2 && !setUp.asOne() && Dimensions.rounded(mics.get(0).mic().heightM()) == Dimensions.rounded(mics.get(1).mic().heightM());
        for (View.Seen mic : mics) {
            boolean again = mic.mic().number() == 2 && (setUp.asOne() || inOne);
            if (!again) {
                dimensions.distance(mic, view.above(), prefix(mic));
                dimensions.offAxis(mic, view);
                if (!view.above() && !(mic.mic().number() == 2 && equallyHigh)) {
                    dimensions.height(mic, equallyHigh ? BOTH + ": " : prefix(mic));
                }
            }
        }
        surroundings.neighbours(mics, reader);
        for (View.Seen mic : mics) {
            if (showsNulls(mic)) {
                nullLabel(mic);
            }
        }
        surroundings.keepClearLabel(zones);
        mics.stream().filter(Surroundings::hasPopScreen).limit(1).forEach(surroundings::popScreenLabel);
        if (below.isEmpty() && !labels.without().isEmpty()) {
            return new SetUpPicture(setUp, view, key, reader, labels.without()).drawing();
        }
        labels.write(svg);
        svg.leaf("rect", "class", "grid", "x", 0.5, "y", 0.5, "width", Frame.WIDTH - 1, "height", frame.heightPx() - 1, "fill", "none", "stroke", "#d8d2c4");
        legend.write(svg, key, frame.heightPx());
        return svg.drawing();
    }

    /** Whether the two lie on each other in this view, and are measured alike. */
    private boolean inOne() {
        return mics.size() == 2 && Math.hypot(pixelX(mics.get(0)) - pixelX(mics.get(1)), pixelY(mics.get(0)) - pixelY(mics.get(1))) < IN_ONE_PX
                && mics.get(0).surface().apartM(mics.get(1).surface()) * frame.scalePxPerM() < IN_ONE_PX
                && Math.cos(Math.toRadians(facing(mics.get(0)) - facing(mics.get(1)))) > ALIKE
                && mics.get(0).mic().placement().distanceM() == mics.get(1).mic().placement().distanceM();
    }

    /** With two that are measured one by one, a number says whose the measure is. */
    private String prefix(View.Seen mic) {
        return inOne && !setUp.asOne() ? BOTH + ": " : mics.size() == 2 && !setUp.asOne() ? mic.mic().number() + ": " : "";
    }

    private double pixelX(View.Seen mic) {
        return frame.x(mic.capsule()) + aside(mic) * Math.sin(Math.toRadians(facing(mic)));
    }

    private double pixelY(View.Seen mic) {
        return frame.y(mic.capsule()) + aside(mic) * Math.cos(Math.toRadians(facing(mic)));
    }

    /** Two on one spot are drawn side by side, a hand apart on the paper. */
    private double aside(View.Seen mic) {
        boolean onOneSpot = setUp.asOne() && setUp.technique() != null && setUp.technique().arrangement() == Arrangement.SAME_SPOT;
        return !onOneSpot ? 0 : mic.mic().number() == 1 ? -SIDE_BY_SIDE : SIDE_BY_SIDE;
    }

    private static double facing(View.Seen mic) {
        return mic.aimDegrees() == null ? mic.sightDegrees() : mic.aimDegrees();
    }

    private void glyph(Svg svg, View.Seen mic) {
        double x = pixelX(mic);
        double y = pixelY(mic);
        MicGlyph glyph = new MicGlyph(svg, mic.mic().number(), x, y);
        Pattern pattern = mic.mic().placement().pattern();
        boolean half = !view.above() && mic.mic().placement().mount() == Mount.FLOOR && (pattern == Pattern.HALF_OMNI || pattern == Pattern.HALF_CARDIOID);
        glyph.polar(mic.mic().pattern(), mic.aimDegrees(), half);
        if (showsNulls(mic)) {
            for (double degrees : nulls(mic)) {
                glyph.nullRay(degrees, frame);
                double angle = Math.toRadians(degrees);
                labels.passing(x, y, x + MicGlyph.NULL_TO * Math.cos(angle), y - MicGlyph.NULL_TO * Math.sin(angle));
            }
        }
        glyph.body(mic.mic().address(), facing(mic), mic.aimDegrees() == null);
        if (mic.aimDegrees() != null) {
            glyph.aim(mic.aimDegrees());
        }
        double angle = Math.toRadians(facing(mic));
        double back = mic.aimDegrees() == null ? 0 : 9;
        labels.keepFree(Labels.Box.round(x - back * Math.cos(angle), y + back * Math.sin(angle), 13));
        number(svg, mic, x, y, AROUND_DEGREES);
    }

    private boolean showsNulls(View.Seen mic) {
        return mic.showsNulls();
    }

    static double[] nulls(View.Seen mic) {
        double nullDegrees = mic.mic().placement().nullDegrees();
        double aim = mic.aimDegrees();
        return nullDegrees > 179 ? new double[] {aim + nullDegrees} : new double[] {aim + nullDegrees, aim - nullDegrees};
    }

    private void nullLabel(View.Seen mic) {
        for (double degrees : nulls(mic)) {
            double angle = Math.toRadians(degrees);
            labels.put("null", "label", pixelX(mic) + MicGlyph.NULL_TO * 0.86 * Math.cos(angle), pixelY(mic) - MicGlyph.NULL_TO * 0.86 * Math.sin(angle), degrees);
        }
    }

    private void number(Svg svg, View.Seen mic, double x, double y, double[] aroundDegrees) {
        if (inOne) {
            if (mic.mic().number() == 1) {
                labels.put(BOTH, "label both", x - MicGlyph.NUMBER * Math.cos(Math.toRadians(facing(mic))), y + MicGlyph.NUMBER * Math.sin(Math.toRadians(facing(mic))), facing(mic) + 180);
            }
            return;
        }
        for (double reach = MicGlyph.NUMBER; reach <= MicGlyph.NUMBER + 20; reach += 10) {
            for (double around : aroundDegrees) {
                double angle = Math.toRadians(facing(mic) + around);
                double toX = x + reach * Math.cos(angle);
                double toY = y - reach * Math.sin(angle);
                Labels.Box box = Labels.Box.round(toX, toY, 9.5);
                if (labels.isFree(box)) {
                    labels.keepFree(box);
                    MicGlyph.number(svg, mic.mic().number(), toX, toY);
                    return;
                }
            }
        }
    }

    /** A contact or a lead beside a microphone: a small box where it is fixed. */
    private void contacts(Svg svg) {
        for (Stood mic : setUp.mics()) {
            View.Flat at = view.flat(mic.standpoint().surface());
            if (!mic.air() && frame.holds(frame.x(at), frame.y(at), 24)) {
                Look look = mic.number() == 1 ? Look.ONE : Look.TWO;
                double x = frame.x(at);
                double y = frame.y(at);
                svg.leaf("rect", "class", look.style() + " paper", "x", x - 8, "y", y - 5, "width", 16, "height", 10, "rx", 1.5, "fill", "#fcfaf5", "stroke", look.colour(), "stroke-width", 1.75);
                labels.keepFree(new Labels.Box(x - 9, y - 6, x + 9, y + 6));
                for (double around : AROUND_DEGREES) {
                    double angle = Math.toRadians(around + 45);
                    Labels.Box box = Labels.Box.round(x + 22 * Math.cos(angle), y - 22 * Math.sin(angle), 9.5);
                    if (labels.isFree(box)) {
                        labels.keepFree(box);
                        MicGlyph.number(svg, mic.number(), x + 22 * Math.cos(angle), y - 22 * Math.sin(angle));
                        break;
                    }
                }
            }
        }
    }

    private void legend(Legend legend) {
        for (Stood mic : setUp.mics()) {
            Placement placement = mic.placement();
            legend.mic(mic.number(), mic.air() ? SetUpWords.type(placement) : SetUpWords.wired(mic));
        }
        if (setUp.stereo() && setUp.asOne()) {
            legend.plain(SetUpWords.pair(setUp, reader));
        }
        below.forEach(legend::plain);
        if (mics.stream().anyMatch(this::showsNulls)) {
            legend.nulls();
        }
        String nullsElsewhere = SetUpWords.nullsElsewhere(setUp, view, mics);
        if (nullsElsewhere != null) {
            legend.plain(nullsElsewhere);
        }
        String elsewhere = Surroundings.neighboursElsewhere(setUp, mics, view);
        if (elsewhere != null) {
            legend.plain(elsewhere);
        }
        for (KeepClear clear : Zones.said(mics)) {
            legend.keepClear(clear, zones.stream().anyMatch(zone -> zone.clear().equals(clear)));
        }
    }
}
