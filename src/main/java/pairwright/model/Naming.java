package pairwright.model;

import java.util.Locale;
import java.util.Set;

/** How the name of an entry, which begins with a capital, stands within a sentence. */
public final class Naming {
    private static final Set<String> PROPER = Set.of("French", "English", "Irish", "Scottish", "Spanish", "Indian", "Chinese", "Japanese",
            "African", "American");

    private Naming() {
    }

    /** Words of a position's name that say where whatever stands there looks. */
    private static final Set<String> LOOKING = Set.of("aimed", "looking", "pointing", "facing", "into", "toward", "axis");

    /** Whether the name of a position says where the microphone looks, so that nothing need be added to "straight". */
    public static boolean saysWhereItLooks(String positionName) {
        for (String word : positionName.split("[ ,]+")) {
            if (LOOKING.contains(word)) {
                return true;
            }
        }
        return false;
    }

    /** A name within a sentence, with its article: "the long ribbon". */
    public static String the(String name) {
        return name.startsWith("The ") ? small(name) : "the " + small(name);
    }

    /** The name of a type without what follows a comma, such as a pattern that is said where it matters. */
    public static String type(String name) {
        int comma = name.indexOf(',');
        return comma < 0 ? name : name.substring(0, comma);
    }

    /** First letter small, unless the first word is an abbreviation, as in DI, or the name of a people, as in French horn. */
    public static String small(String name) {
        return name.length() > 1 && java.lang.Character.isUpperCase(name.charAt(1)) || name.isEmpty() || PROPER.contains(name.split(" ", 2)[0])
                ? name : name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }
}
