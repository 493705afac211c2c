package pairwright.drawing;

import pairwright.model.Catalogue;
import pairwright.model.Option;
import pairwright.model.Question;

/** What two microphones do when they are added: where their sum cancels. */
public final class SumDrawing {
    private SumDrawing() {
    }

    /** The sum over frequency, with its first null; null for one microphone, a stereo pair, or two without a difference of path. */
    public static Drawing of(Catalogue catalogue, Question question, Option option, String key, Reader reader) {
        return null;
    }
}
