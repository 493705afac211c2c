package pairwright.drawing;

import pairwright.model.Body;
import pairwright.model.BodyShape;
import pairwright.model.Source;

/** How a source stands where its entry does not say. */
final class Bodies {
    private Bodies() {
    }

    static Body of(Source source) {
        if (source.body() != null) {
            return source.body();
        }
        return switch (source.family()) {
            case DRUM_KIT, HAND_PERCUSSION -> new Body(BodyShape.DRUM, 90, null, 0.7);
            case ORCHESTRAL_PERCUSSION -> new Body(BodyShape.STANDING_DRUM, 0, null, 1.1);
            case SMALL_PERCUSSION -> new Body(BodyShape.HAND_HELD, 0, null, 1.1);
            case TUNED_PERCUSSION, STRUCK_STRINGS -> new Body(BodyShape.TABLE, 90, null, 0.85);
            case BOWED_STRINGS -> new Body(BodyShape.VIOLIN, 60, null, 1.3);
            case PLUCKED_STRINGS -> new Body(BodyShape.GUITAR, 0, null, 0.75);
            case KEYBOARDS -> new Body(BodyShape.UPRIGHT_PIANO, 0, null, 0.85);
            case FREE_REEDS -> new Body(BodyShape.SQUEEZE_BOX, 0, null, 0.8);
            case WOODWINDS -> new Body(BodyShape.PIPE, -40, null, 0.9);
            case BRASS -> new Body(BodyShape.BELL, 0, null, 1.35);
            case VOICES -> new Body(BodyShape.HEAD, 0, null, 1.55);
            case AMPLIFIERS, DIRECT -> new Body(BodyShape.CABINET, 0, null, 0.35);
            case ENSEMBLES, AMBIENCE -> new Body(BodyShape.GROUP, 0, null, 1.2);
        };
    }
}
