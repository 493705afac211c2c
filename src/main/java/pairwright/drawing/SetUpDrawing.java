package pairwright.drawing;

import pairwright.model.Catalogue;
import pairwright.model.Option;
import pairwright.model.Question;

/** Where the microphones of an option stand, to scale. */
public final class SetUpDrawing {
    private SetUpDrawing() {
    }

    /** Seen from above. */
    public static Drawing fromAbove(Catalogue catalogue, Question question, Option option, String key, Reader reader) {
        return new Svg(key, 400, 300, "From above", "").drawing();
    }

    /** Seen from the side. */
    public static Drawing fromSide(Catalogue catalogue, Question question, Option option, String key, Reader reader) {
        return new Svg(key, 400, 300, "From the side", "").drawing();
    }
}
