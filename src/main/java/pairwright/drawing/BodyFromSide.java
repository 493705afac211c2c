package pairwright.drawing;

import static pairwright.drawing.Outline.Kind.BODY;
import static pairwright.drawing.Outline.Kind.DETAIL;
import static pairwright.drawing.Outline.Kind.PLAYER;

import pairwright.model.Body;
import pairwright.model.BodyShape;
import pairwright.model.Point;
import pairwright.model.Standpoint;
import pairwright.model.Side;
import pairwright.model.Source;
import pairwright.model.SourceFamily;

/**
 * A source seen from the side, its sounding surface at the origin and its height above the floor: forward is to the right. What sounds
 * to the left and right of its player is seen from behind the player instead, and then the right of the player is to the right.
 */
final class BodyFromSide {
    /** Half the width of a port. */
    private static final double PORT_M = 0.08;

    private BodyFromSide() {
    }

    /** Whether it sounds to the left and right of its player. */
    static boolean soundsSideways(BodyShape shape) {
        return shape == BodyShape.SQUEEZE_BOX || shape == BodyShape.BARREL_DRUM || shape == BodyShape.GRAND_PIANO;
    }

    static Outline of(Source source, Body body, boolean fromBehind) {
        Outline outline = new Outline();
        double half = source.sizeM() / 2;
        double high = body.heightM();
        double depth = Depth.of(source);
        boolean backward = body.axisTurnDegrees() != null && Math.abs(body.axisTurnDegrees()) > 135;
        if (!fromBehind && body.shape() == BodyShape.SQUEEZE_BOX) {
            return player(outline.box(BODY, -0.2, high - 0.19, 0, high + 0.19).line(DETAIL, -0.03, high - 0.17, -0.03, high + 0.17), -0.36, high + 0.45);
        }
        if (!fromBehind && body.shape() == BodyShape.BARREL_DRUM) {
            return player(outline.round(BODY, 0, high, 0.17, 0.17).round(DETAIL, 0, high, 0.13, 0.13), -0.35, high + 0.55);
        }
        switch (body.shape()) {
            case DRUM, DRUM_PAIR -> drum(outline, body.shape() == BodyShape.DRUM ? half : half * 0.48, high, Math.min(depth, Math.max(0.05, high - 0.05)));
            case KICK_DRUM -> player(kick(outline, high, half, depth, hasPort(source)).line(DETAIL, 0.015, high - half, 0.015, high + half).line(DETAIL, -0.3, 0.02, -0.06, 0.1)
                    .line(DETAIL, -0.1, 0.08, -0.02, high), -0.6, 1.25);
            case STANDING_DRUM -> {
                outline.box(BODY, -depth, high - half, 0, high + half).line(DETAIL, -depth * 0.15, high - half, -depth * 0.15, high + half);
                if (depth > 0.25 || half > 0.3) {
                    outline.line(DETAIL, -depth, 0, -depth / 2, high - half, 0, 0);
                } else {
                    player(outline, -depth - 0.25, high + 0.4);
                }
            }
            case BARREL_DRUM -> player(outline.shape(BODY, -half, high - 0.13, -half, high + 0.13, 0, high + 0.18, half, high + 0.13, half, high - 0.13, 0,
                    high - 0.18).line(DETAIL, -half * 0.93, high - 0.13, -half * 0.93, high + 0.13).line(DETAIL, half * 0.93, high - 0.13, half * 0.93, high + 0.13),
                    0, high + 0.55);
            case KIT -> kit(outline, high);
            case CYMBALS -> player(outline.shape(BODY, -half, high - 0.015, -0.05, high + 0.01, 0, high + 0.03, 0.05, high + 0.01, half, high - 0.015)
                    .line(DETAIL, 0, 0.25, 0, high + 0.06).line(DETAIL, -0.22, 0, 0, 0.25, 0.22, 0), -half - 0.4, 1.25);
            case BELL -> bell(outline, half, high, backward);
            case BELL_UP -> player(outline.shape(BODY, -half, high, half, high, half * 0.4, high - 0.12, half * 0.35, high - 0.55, half * 0.1, high - 0.68, -half * 0.3,
                    high - 0.6, -half * 0.35, high - 0.12), -half - 0.12, high + 0.08);
            case SAXOPHONE -> {
                double rise = Math.min(0.3, high * 0.6);
                player(outline.shape(BODY, -0.045, high + 0.05, 0.045, high - 0.045, -0.06, high - rise * 0.7, -0.12, high - rise, -0.19, high - rise * 0.8,
                        -0.16, high + 0.25, -0.2, high + 0.42, -0.29, high + 0.4, -0.28, high + 0.375, -0.22, high + 0.38, -0.2, high + 0.25, -0.15,
                        high - rise * 0.75, -0.11, high - rise * 0.72, -0.09, high - rise * 0.5), -0.4, high + 0.45);
            }
            case PIPE -> pipe(outline, source, body);
            case FLUTE -> head(outline.round(BODY, 0, high - 0.03, 0.013, 0.013), -0.11, high, high);
            case GUITAR -> player(outline.box(BODY, -0.1, high - Math.min(0.19, half), 0, high + Math.min(0.19, half)).line(DETAIL, 0.01, high - 0.1, 0.01, high + 0.05), -0.26, high + 0.45);
            case VIOLIN -> violin(outline, half, body);
            case UPRIGHT_STRINGS -> {
                double low = Math.max(0.1, high - half * 0.75);
                player(outline.shape(BODY, -0.2, low, -0.03, low, -0.01, high, -0.04, high + half * 0.55, -0.18, high + half * 0.5)
                        .shape(BODY, -0.08, high + half * 0.5, -0.05, high + half * 0.5, -0.14, high + half * 1.6, -0.17, high + half * 1.6)
                        .line(DETAIL, -0.1, 0, -0.1, low).line(DETAIL, -0.01, high - 0.06, 0.02, high, -0.01, high + 0.06), -0.42, high + half * 1.3);
            }
            case HARP -> outline.box(BODY, -0.08, 0.12, 0, Math.max(high * 1.55, high + half)).line(DETAIL, -0.3, 0, -0.04, 0.12, 0.25, 0);
            case GRAND_PIANO -> player(outline.box(BODY, -1.42, high - 0.33, 0, high - 0.03).line(BODY, -1.42, high, -0.45, high + 0.8)
                    .line(DETAIL, -0.12, high - 0.03, -0.5, high + 0.75).line(DETAIL, -1.36, 0, -1.3, high - 0.33).line(DETAIL, -0.08, 0, -0.14, high - 0.33),
                    -0.7, 1.25);
            case UPRIGHT_PIANO -> {
                double top = Math.max(high + 0.35, 0.5);
                player(outline.box(BODY, -depth, 0.03, backward ? 0 : -0.18, top).box(BODY, backward ? -depth - 0.2 : -0.18, high * 0.75, backward ? -depth : 0, high * 0.85 + 0.03),
                        backward ? -depth - 0.5 : 0.42, 1.25);
                return outline.facing(backward, false);
            }
            case TABLE -> {
                double deep = Math.min(0.38, Math.max(0.16, half * 0.45));
                player(outline.box(BODY, -deep, high - 0.05, deep, high).line(DETAIL, -deep * 0.85, 0, -deep * 0.85, high - 0.05).line(DETAIL, deep * 0.85, 0, deep * 0.85,
                        high - 0.05), -deep - 0.3, Math.max(1, high + 0.65));
            }
            case SQUEEZE_BOX -> {
                player(outline.box(BODY, -half, high - 0.19, -half * 0.6, high + 0.19).box(BODY, half * 0.6, high - 0.19, half, high + 0.19), 0, high + 0.45);
                for (double x = -0.6; x < 0.55; x += 0.2) {
                    outline.line(BODY, half * x, high - 0.17, half * (x + 0.1), high + 0.17, half * (x + 0.2), high - 0.17);
                }
            }
            case CABINET -> {
                double wide = Depth.cabinetHalfM(source);
                double deep = Math.min(wide, 1.5);
                double top = Math.max(2 * high, high + half + 0.03);
                outline.box(BODY, -deep, 0, 0, top).line(DETAIL, -0.02 * deep / 0.3, 0, -0.02 * deep / 0.3, top);
                if (source.family() == SourceFamily.AMPLIFIERS) {
                    outline.shape(DETAIL, -0.01, high - half, -deep * 0.35, high - half * 0.25, -deep * 0.35, high + half * 0.25, -0.01, high + half);
                }
            }
            case HEAD -> head(outline, -0.1, 0.03 + high, high);
            case SINGING_GUITARIST -> head(outline.box(BODY, 0.04, high - 0.62, 0.13, high - 0.26), -0.1, 0.03 + high, high);
            case GROUP -> group(outline, source.sizeM(), high);
            case HAND_HELD -> player(outline.round(BODY, 0, high, half * 0.6, half), -0.35, high + 0.35);
            case FLOOR_BOARD -> outline.box(BODY, -half, 0, half, high).shape(DETAIL, -0.18, high, -0.18, high + 0.09, -0.1, high + 0.09, 0.06, high + 0.03, 0.08, high);
        }
        return outline;
    }

    /** Where a microphone goes in, the front head has a port. */
    static boolean hasPort(Source source) {
        return source.positions().stream().anyMatch(position -> position.side() == Side.INSIDE);
    }

    /** A lying shell from its struck head forward, middle at a height or, from above, on the axis. */
    static Outline kick(Outline outline, double middle, double half, double depth, boolean port) {
        double inner = depth - 0.015;
        if (!port) {
            return outline.box(BODY, 0, middle - half, depth, middle + half).line(DETAIL, inner, middle - half, inner, middle + half);
        }
        double sleeve = depth - 0.05;
        return outline.shape(BODY, 0, middle - half, depth, middle - half, depth, middle - PORT_M, sleeve, middle - PORT_M, sleeve, middle + PORT_M, depth, middle + PORT_M,
                depth, middle + half, 0, middle + half).line(DETAIL, inner, middle - half, inner, middle - PORT_M).line(DETAIL, inner, middle + PORT_M, inner, middle + half);
    }

    private static void drum(Outline outline, double half, double high, double depth) {
        outline.box(BODY, -half, high - depth, half, high).line(DETAIL, -half, high - 0.015, half, high - 0.015).line(DETAIL, -half, high - depth + 0.015, half,
                high - depth + 0.015);
        if (high - depth > 0.12) {
            outline.line(DETAIL, -half * 0.9, 0, 0, high - depth, half * 0.9, 0);
        }
        player(outline, -half - 0.3, Math.max(0.95, high + 0.5));
    }

    private static void kit(Outline outline, double high) {
        outline.box(BODY, 0.22, 0.02, 0.65, 0.56).box(BODY, -0.18, high - 0.14, 0.18, high).box(BODY, 0.18, high - 0.13, 0.44, high + 0.07)
                .box(BODY, -0.3, 0.2, 0.13, 0.6).line(BODY, 0.16, high + 0.36, 0.58, high + 0.44).line(BODY, -0.14, high + 0.12, 0.22, high + 0.12)
                .line(DETAIL, 0.37, 0, 0.37, high + 0.42).line(DETAIL, 0.04, 0, 0.04, high + 0.15).line(DETAIL, -0.14, 0, 0, high - 0.14, 0.14, 0);
        player(outline, -0.55, 1.2);
    }

    private static void bell(Outline outline, double half, double high, boolean backward) {
        double turned = backward ? -1 : 1;
        outline.shape(BODY, 0, high - half, -0.05 * turned, high - half * 0.45, -0.16 * turned, high - half * 0.2, -0.3 * turned, high - 0.014, -0.3 * turned,
                high + 0.014, -0.16 * turned, high + half * 0.2, -0.05 * turned, high + half * 0.45, 0, high + half);
        if (backward) {
            player(outline.round(DETAIL, 0.36, high + 0.12, 0.12, 0.14), 0.22, high + 0.5);
        } else {
            head(outline.box(BODY, -0.5, high - 0.06, -0.18, high + 0.05), -0.62, high + 0.03, high);
        }
    }

    private static void pipe(Outline outline, Source source, Body body) {
        double high = body.heightM();
        Point along = Standpoint.main(body).times(-Math.max(0.3, source.sizeM()));
        double length = Math.hypot(along.forwardM(), along.upM());
        double acrossX = -along.upM() / length * 0.018;
        double acrossY = along.forwardM() / length * 0.018;
        outline.shape(BODY, acrossX * 1.7, high + acrossY * 1.7, -acrossX * 1.7, high - acrossY * 1.7, along.forwardM() - acrossX, high + along.upM() - acrossY,
                along.forwardM() + acrossX, high + along.upM() + acrossY);
        double mouthM = along.upM() < -0.3 ? high - 0.25 : high + along.upM();
        head(outline, Math.min(along.forwardM(), -0.12) - 0.08, mouthM + 0.05, mouthM);
    }

    private static void violin(Outline outline, double half, Body body) {
        double high = body.heightM();
        double tilt = Math.toRadians(90 - body.axisUpDegrees()) * 0.5;
        double alongX = Math.cos(tilt);
        double alongY = -Math.sin(tilt) * 0.4;
        outline.shape(BODY, -half * alongX * 0.5, high - half * alongY * 0.5, half * alongX * 0.5, high + half * alongY * 0.5, half * alongX * 0.5,
                high + half * alongY * 0.5 - 0.04, -half * alongX * 0.5, high - half * alongY * 0.5 - 0.04)
                .line(BODY, half * alongX * 0.5, high + half * alongY * 0.5, half * alongX * 1.1, high + half * alongY * 1.1);
        head(outline, -half * 0.5 - 0.1, high + 0.08, high);
    }

    private static void group(Outline outline, double sizeM, double high) {
        int rows = sizeM > 5 ? 3 : sizeM > 2.6 ? 2 : 1;
        double gap = sizeM > 10 ? 1.55 : 0.83;
        for (int row = rows - 1; row >= 0; row--) {
            double x = -0.13 - row * gap;
            double up = row * (sizeM > 5 ? 0.2 : 0);
            outline.round(BODY, x, high + up + 0.02, 0.1, 0.13).shape(BODY, x - 0.13, high + up - 0.75, x - 0.14, high + up - 0.2, x, high + up - 0.12, x + 0.13, high + up - 0.2,
                    x + 0.13, high + up - 0.75);
        }
    }

    private static Outline head(Outline outline, double x, double y, double shoulderM) {
        return outline.shape(PLAYER, x - 0.15, shoulderM - 0.75, x - 0.16, shoulderM - 0.25, x - 0.04, shoulderM - 0.13, x + 0.08, shoulderM - 0.24, x + 0.09, shoulderM - 0.75)
                .round(BODY, x, y, 0.09, 0.125).shape(BODY, x + 0.085, y + 0.02, x + 0.115, y - 0.01, x + 0.083, y - 0.025);
    }

    private static Outline player(Outline outline, double x, double headM) {
        return outline.round(PLAYER, x, headM, 0.09, 0.12)
                .shape(PLAYER, x - 0.13, headM - 0.75, x - 0.14, headM - 0.27, x, headM - 0.16, x + 0.12, headM - 0.27, x + 0.12, headM - 0.75);
    }
}
