package pairwright.drawing;

import pairwright.model.Catalogue;
import pairwright.model.Option;
import pairwright.model.Question;

/** The points of the reasons, one after the other, up to the score. */
public final class PointsDrawing {
    private PointsDrawing() {
    }

    /** From nought, reason by reason, to the score. */
    public static Drawing of(Catalogue catalogue, Question question, Option option, String key, Reader reader) {
        return new Svg(key, 400, 300, "Points", "").drawing();
    }
}
