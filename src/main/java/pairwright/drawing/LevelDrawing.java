package pairwright.drawing;

import pairwright.model.Catalogue;
import pairwright.model.Option;
import pairwright.model.Question;

/** Between noise and limit: where the running level and the loudest peak of each microphone lie. */
public final class LevelDrawing {
    private LevelDrawing() {
    }

    /** One column for each microphone that hears air. */
    public static Drawing of(Catalogue catalogue, Question question, Option option, String key, Reader reader) {
        return new Svg(key, 400, 300, "Level", "").drawing();
    }
}
