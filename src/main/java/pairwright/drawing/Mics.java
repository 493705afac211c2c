package pairwright.drawing;

import pairwright.model.Naming;
import pairwright.model.Option;
import pairwright.model.Placement;

/** What the microphones of an option are called in a drawing. */
final class Mics {
    private Mics() {
    }

    /** Name of the type; with its place where the two are of one type and stand apart. */
    static String name(Option option, int i) {
        Placement mic = option.mics().get(i);
        boolean alike = option.mics().size() == 2 && option.mics().get(0).micType().equals(option.mics().get(1).micType());
        boolean onePlace = alike && option.mics().get(0).position().equals(option.mics().get(1).position());
        return Naming.small(mic.name()) + (alike && !onePlace ? ", " + Naming.small(mic.positionName()) : "");
    }
}
