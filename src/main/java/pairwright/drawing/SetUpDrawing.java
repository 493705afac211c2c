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
        return drawing(SetUp.of(catalogue, question, option), true, key, reader);
    }

    /** Seen from the side. */
    public static Drawing fromSide(Catalogue catalogue, Question question, Option option, String key, Reader reader) {
        return drawing(SetUp.of(catalogue, question, option), false, key, reader);
    }

    /** Without air between there is nothing to measure: then both views are the way from the instrument to the preamplifier. */
    private static Drawing drawing(SetUp setUp, boolean above, String key, Reader reader) {
        return setUp.inAir().isEmpty() ? LeadPicture.of(setUp, key)
                : new SetUpPicture(setUp, View.of(setUp, above), key, reader).drawing();
    }
}
