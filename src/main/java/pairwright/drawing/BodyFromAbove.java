package pairwright.drawing;

import static pairwright.drawing.Outline.Kind.BODY;
import static pairwright.drawing.Outline.Kind.DETAIL;
import static pairwright.drawing.Outline.Kind.PLAYER;

import pairwright.model.Body;
import pairwright.model.BodyShape;
import pairwright.model.Point;
import pairwright.model.Standpoint;
import pairwright.model.Source;
import pairwright.model.SourceFamily;

/** A source seen from above, its sounding surface at the origin: forward is to the right, the left of the player is up. */
final class BodyFromAbove {
    private BodyFromAbove() {
    }

    static Outline of(Source source, Body body) {
        Outline outline = new Outline();
        double half = source.sizeM() / 2;
        double depth = Depth.of(source);
        boolean backward = body.axisTurnDegrees() != null && Math.abs(body.axisTurnDegrees()) > 135;
        switch (body.shape()) {
            case DRUM -> player(outline.round(BODY, 0, 0, half, half).round(DETAIL, 0, 0, half * 0.92, half * 0.92), -half - 0.25, 0);
            case DRUM_PAIR -> player(outline.round(BODY, 0, half * 0.52, half * 0.48, half * 0.48).round(BODY, 0, -half * 0.52, half * 0.48, half * 0.48)
                    .round(DETAIL, 0, half * 0.52, half * 0.43, half * 0.43).round(DETAIL, 0, -half * 0.52, half * 0.43, half * 0.43), -half - 0.2, 0);
            case KICK_DRUM -> player(BodyFromSide.kick(outline, 0, half, depth, BodyFromSide.hasPort(source)).line(DETAIL, 0.015, -half, 0.015, half)
                    .box(DETAIL, -0.3, -0.05, -0.06, 0.05).line(DETAIL, -0.06, 0, -0.01, 0),
                    -0.55, 0);
            case STANDING_DRUM -> player(outline.box(BODY, -depth, -half, 0, half).line(DETAIL, -depth * 0.15, -half, -depth * 0.15, half),
                    depth > 0.25 ? half * 0.2 + 0.3 : -depth - 0.2, depth > 0.25 ? -half - 0.25 : 0);
            case BARREL_DRUM -> player(outline.shape(BODY, -0.13, -half, 0.13, -half, 0.17, 0, 0.13, half, -0.13, half, -0.17, 0)
                    .line(DETAIL, -0.13, half * 0.93, 0.13, half * 0.93).line(DETAIL, -0.13, -half * 0.93, 0.13, -half * 0.93), -0.32, 0);
            case KIT -> kit(outline);
            case CYMBALS -> player(outline.round(BODY, 0, 0, half, half).round(DETAIL, 0, 0, half * 0.3, half * 0.3).round(DETAIL, 0, 0, 0.012, 0.012),
                    -half - 0.35, -half * 0.8);
            case BELL -> bell(outline, half, backward);
            case BELL_UP -> player(outline.round(BODY, 0, 0, half, half).round(DETAIL, 0, 0, half * 0.45, half * 0.45), -half - 0.1, -0.05);
            case SAXOPHONE -> player(outline.round(BODY, 0, 0, 0.07, 0.08).round(DETAIL, 0, 0, 0.05, 0.06).box(BODY, -0.2, -0.035, -0.05, 0.035), -0.33, 0);
            case PIPE -> pipe(outline, source, body);
            case FLUTE -> head(outline.box(BODY, -0.01, -0.08 - source.sizeM(), 0.01, 0.06), -0.11, 0);
            case GUITAR -> player(outline.box(BODY, -0.1, -half, 0, half).box(BODY, -0.05, half, -0.02, half + 0.4).line(DETAIL, 0.008, -half * 0.55, 0.008, half),
                    -0.28, 0);
            case VIOLIN -> head(outline.round(BODY, 0, 0, half * 0.5, 0.1).box(BODY, half * 0.5, -0.015, half * 1.1, 0.015).line(DETAIL, -half * 0.3, 0, half, 0), -half * 0.5 - 0.1, -0.05);
            case UPRIGHT_STRINGS -> player(outline.shape(BODY, -0.2, -half * 0.55, -0.03, -half * 0.6, -0.01, 0, -0.03, half * 0.6, -0.2, half * 0.55)
                    .line(DETAIL, 0, -0.04, 0, 0.04), -0.42, 0.05);
            case HARP -> player(outline.box(BODY, -0.08, -half, 0, half), -0.4, 0);
            case GRAND_PIANO -> player(outline.shape(BODY, -0.85, 0, -0.85, 1.42, 1.05, 1.42, 1.15, 1.2, 1.05, 0.85, 0.6, 0.7, 0.35, 0.25, 0, 0.02)
                    .line(DETAIL, -0.62, 0, -0.62, 1.42).line(DETAIL, -0.75, 0.06, -0.75, 1.36), -1.25, 0.7);
            case UPRIGHT_PIANO -> player(outline.box(BODY, -depth, -half, 0, half).box(DETAIL, -0.05, -half * 0.92, 0.0, half * 0.92)
                    .line(DETAIL, -depth * 0.55, -half, -depth * 0.55, half), backward ? -depth - 0.4 : 0.42, 0);
            case TABLE -> table(outline, half);
            case SQUEEZE_BOX -> {
                player(outline.box(BODY, -0.2, -half, 0, -half * 0.6).box(BODY, -0.2, half * 0.6, 0, half), -0.36, 0);
                for (double y = -0.6; y < 0.55; y += 0.2) {
                    outline.line(BODY, -0.18, half * y, -0.02, half * (y + 0.1), -0.18, half * (y + 0.2));
                }
            }
            case CABINET -> {
                double wide = Depth.cabinetHalfM(source);
                double deep = Math.min(wide, 1.5);
                outline.box(BODY, -deep, -wide, 0, wide).line(DETAIL, -0.02 * deep / 0.3, -wide, -0.02 * deep / 0.3, wide);
                if (source.family() == SourceFamily.AMPLIFIERS) {
                    outline.shape(DETAIL, -0.01, -half, -deep * 0.35, -half * 0.25, -deep * 0.35, half * 0.25, -0.01, half);
                }
            }
            case HEAD -> head(outline, -0.1, 0);
            case SINGING_GUITARIST -> head(outline.box(BODY, 0.04, -0.24, 0.13, 0.24).box(BODY, 0.07, 0.24, 0.1, 0.6), -0.1, 0);
            case GROUP -> group(outline, source.sizeM());
            case HAND_HELD -> player(outline.round(BODY, 0, 0, half * 0.6, half), -0.35, 0);
            case FLOOR_BOARD -> outline.box(BODY, -half, -half, half, half).round(DETAIL, -0.05, 0.1, 0.13, 0.045).round(DETAIL, -0.05, -0.1, 0.13, 0.045);
        }
        return body.shape() == BodyShape.UPRIGHT_PIANO ? outline.facing(backward, true) : outline;
    }

    private static void kit(Outline outline) {
        outline.box(BODY, 0.22, -0.52, 0.65, 0.02).round(BODY, 0, 0, 0.18, 0.18).round(DETAIL, 0, 0, 0.16, 0.16).round(BODY, 0.05, 0.45, 0.18, 0.18)
                .round(BODY, 0.3, -0.05, 0.14, 0.14).round(BODY, -0.08, -0.68, 0.21, 0.21).round(DETAIL, -0.08, -0.68, 0.19, 0.19)
                .round(BODY, 0.38, 0.35, 0.21, 0.21).round(BODY, 0.3, -0.62, 0.26, 0.26).round(DETAIL, 0.05, 0.45, 0.04, 0.04)
                .round(DETAIL, 0.38, 0.35, 0.04, 0.04).round(DETAIL, 0.3, -0.62, 0.05, 0.05);
        player(outline, -0.55, -0.25);
    }

    private static void bell(Outline outline, double half, boolean backward) {
        double turned = backward ? -1 : 1;
        outline.shape(BODY, 0, -half, -0.05 * turned, -half * 0.45, -0.16 * turned, -half * 0.2, -0.3 * turned, -0.014, -0.3 * turned, 0.014, -0.16 * turned,
                half * 0.2, -0.05 * turned, half * 0.45, 0, half);
        if (backward) {
            // the bell of a horn that sounds backward is at the right hip
            player(outline.round(DETAIL, 0.36, 0.1, 0.12, 0.1), 0.22, 0.3);
        } else {
            head(outline.box(BODY, -0.5, -0.035, -0.18, 0.035), -0.62, 0);
        }
    }

    private static void pipe(Outline outline, Source source, Body body) {
        Point along = Standpoint.main(body).times(-Math.max(0.3, source.sizeM()));
        double wide = 0.018;
        outline.shape(BODY, 0, -wide * 1.6, 0, wide * 1.6, along.forwardM(), along.leftM() + wide, along.forwardM(), along.leftM() - wide);
        head(outline, Math.min(along.forwardM(), -0.12) - 0.08, 0);
    }

    private static void table(Outline outline, double half) {
        double deep = Math.min(0.38, Math.max(0.16, half * 0.45));
        outline.shape(BODY, -deep, half, deep, half * 0.96, deep * 0.55, -half, -deep * 0.55, -half);
        for (int i = 1; i < 12; i++) {
            double share = i / 12.0;
            double y = half - 2 * half * share;
            double reach = deep * (1 - 0.45 * share) * 0.9;
            outline.line(DETAIL, -reach, y, reach, y);
        }
        player(outline, -deep - 0.3, 0);
    }

    private static void group(Outline outline, double sizeM) {
        int rows = sizeM > 5 ? 3 : sizeM > 2.6 ? 2 : 1;
        double gap = sizeM > 10 ? 1.4 : 0.75;
        double round = sizeM > 10 ? 0.28 : 0.17;
        for (int row = 0; row < rows; row++) {
            int people = Math.max(2, (int) Math.round(sizeM / gap) + 1 - row % 2);
            for (int i = 0; i < people; i++) {
                double across = (i / (people - 1.0) - 0.5) * (sizeM - row % 2 * gap);
                // the ends of a row come forward, as in an arc; the middle of the first row is what is measured from
                double curve = 0.8 * across * across / Math.max(1, sizeM);
                double x = -round - row * gap * 1.1 + curve;
                outline.dot(BODY, x, across, round * 0.75, round).dot(DETAIL, x, across, round * 0.42, round * 0.42);
            }
        }
    }

    private static Outline head(Outline outline, double x, double y) {
        return outline.round(PLAYER, x - 0.03, y, 0.12, 0.23).round(BODY, x, y, 0.095, 0.075).shape(BODY, x + 0.09, y + 0.018, x + 0.113, y, x + 0.09, y - 0.018);
    }

    private static Outline player(Outline outline, double x, double y) {
        return outline.round(PLAYER, x - 0.02, y, 0.12, 0.23).round(PLAYER, x, y, 0.095, 0.075);
    }
}
