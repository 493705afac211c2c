package pairwright.drawing;

import pairwright.model.Naming;
import pairwright.model.Option;
import pairwright.model.Placement;

/** What the microphones of an option are called in a drawing. */
final class Mics {
    private Mics() {
    }

    /** Name of the type; for two of one type that stand apart, their places. */
    static String name(Option option, int i) {
        if (option.mics().size() == 2 && alike(option) && !onePlace(option)) {
            String mine = place(option.mics().get(i), false);
            boolean clear = !mine.equals(place(option.mics().get(1 - i), false));
            return (i == 0 ? "first: " : "second: ") + (clear ? mine : place(option.mics().get(i), true));
        }
        return Naming.small(option.mics().get(i).name());
    }

    /** The same, always told which of the two it is. */
    static String counted(Option option, int i) {
        String which = i == 0 ? "first: " : "second: ";
        String name = name(option, i);
        return name.startsWith(which) ? name : which + name;
    }

    private static boolean alike(Option option) {
        return option.mics().get(0).micType().equals(option.mics().get(1).micType());
    }

    private static boolean onePlace(Option option) {
        return option.mics().get(0).position().equals(option.mics().get(1).position());
    }

    /** Where it stands, as far as the first comma or all of it. */
    private static String place(Placement mic, boolean whole) {
        String name = Naming.small(mic.positionName());
        int comma = name.indexOf(',');
        return whole || comma < 0 ? name : name.substring(0, comma);
    }
}
