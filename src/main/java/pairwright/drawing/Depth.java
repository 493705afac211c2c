package pairwright.drawing;

import pairwright.model.Position;
import pairwright.model.Source;
import pairwright.model.SourceFamily;

/** Sizes of a body that no entry gives but that follow from it. */
final class Depth {
    private Depth() {
    }

    /** How deep the shell or case is: as deep as the way to its far side is long, else in proportion. */
    static double of(Source source) {
        double depth = 0;
        for (Position position : source.positions()) {
            depth = Math.max(depth, position.pathM() == null ? 0 : position.pathM());
        }
        if (depth > 0) {
            return depth;
        }
        return switch (Bodies.of(source).shape()) {
            case UPRIGHT_PIANO -> Math.min(0.6, source.sizeM() * 0.5);
            case STANDING_DRUM -> 0.15 * source.sizeM();
            default -> 0.5 * source.sizeM();
        };
    }

    /** Half the width of a box round a sounding surface. */
    static double cabinetHalfM(Source source) {
        return source.family() == SourceFamily.AMPLIFIERS && source.sizeM() < 0.5 ? source.sizeM() * 0.9 : source.sizeM() * 0.55;
    }
}
