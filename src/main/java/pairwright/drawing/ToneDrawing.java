package pairwright.drawing;

import pairwright.model.Catalogue;
import pairwright.model.Option;
import pairwright.model.Question;

/** What an option is predicted to sound like, octave by octave, against what is wanted. */
public final class ToneDrawing {
    private ToneDrawing() {
    }

    /** The colour of each microphone, of both where there are two, and of what is wanted. */
    public static Drawing of(Catalogue catalogue, Question question, Option option, String key, Reader reader) {
        return new Svg(key, 400, 300, "Tone", "").drawing();
    }
}
