package pairwright.sheet;

import java.util.Locale;
import java.util.Map;
import pairwright.model.Address;
import pairwright.model.Basis;
import pairwright.model.Confidence;
import pairwright.model.Gauge;
import pairwright.model.HabitRank;
import pairwright.model.MicFamily;
import pairwright.model.Mount;
import pairwright.model.MoveKind;
import pairwright.model.Pattern;
import pairwright.model.PowerNeed;
import pairwright.model.SourceFamily;
import pairwright.model.Tolerance;
import pairwright.model.Word;
import pairwright.rules.UnitNames;

/** What is one word in the files, in the words of a page. */
final class ReadingWords {
    /** Names of figures that say more when they are not just taken apart. */
    private static final Map<String, String> FIELDS = Map.ofEntries(
            Map.entry("maxDbSpl", "highest level"), Map.entry("maxInputDbu", "largest input"), Map.entry("needsLoadOhm", "load it needs"),
            Map.entry("selfNoiseDba", "self-noise"), Map.entry("impedanceOhm", "source impedance"), Map.entry("inputOhm", "input impedance"),
            Map.entry("crestDb", "peak over running level"), Map.entry("tier", "price class"), Map.entry("fundamentalHz", "fundamentals"),
            Map.entry("directToReverbDb", "direct sound over room"), Map.entry("reverbTimeS", "reverberation time"), Map.entry("padsDb", "pads"),
            Map.entry("widthM", "width"), Map.entry("lead", "strength of the lead"), Map.entry("fromHz", "lowest octave"), Map.entry("toHz", "highest octave"),
            Map.entry("leastDb", "least change worth a move"), Map.entry("includedDegrees", "angle between them"));

    private ReadingWords() {
    }

    /** "hand-percussion" as a heading: "Hand percussion". */
    static String heading(Word word) {
        String text = words(word);
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** "hand-percussion" within a sentence: "hand percussion". */
    static String words(Word word) {
        return word.id().replace('-', ' ');
    }

    static String family(MicFamily family) {
        return switch (family) {
            case MOVING_COIL -> "Moving coil";
            case RIBBON -> "Ribbon";
            case SMALL_DIAPHRAGM_CONDENSER -> "Small-diaphragm condenser";
            case LARGE_DIAPHRAGM_CONDENSER -> "Large-diaphragm condenser";
            case BOUNDARY -> "Boundary";
            case MINIATURE -> "Miniature";
            case SHOTGUN -> "Shotgun";
            case STEREO -> "Stereo, in one body";
            case CHARACTER -> "For an effect";
            case PICKUP -> "Contact pickup";
            case LINE -> "Line box";
        };
    }

    static String family(SourceFamily family) {
        return family == SourceFamily.DIRECT ? "Direct, by a lead" : heading(family);
    }

    static String pattern(Pattern pattern) {
        return switch (pattern) {
            case FIGURE_8 -> "figure-8";
            case HALF_OMNI -> "half omni";
            case HALF_CARDIOID -> "half cardioid";
            case LOBAR -> "lobe";
            case CONTACT -> "contact, hears no air";
            case ELECTRICAL -> "electrical, hears no air";
            default -> words(pattern);
        };
    }

    static String rank(HabitRank rank) {
        return switch (rank) {
            case FIRST -> "reached for first";
            case SECOND -> "the usual alternative";
            case AVOID -> "avoided";
        };
    }

    static String power(PowerNeed power) {
        return switch (power) {
            case NONE -> "None";
            case PHANTOM -> "Phantom power";
            case OWN_SUPPLY -> "Its own supply";
            case PHANTOM_OR_BATTERY -> "Phantom power or a cell inside";
        };
    }

    static String address(Address address) {
        return switch (address) {
            case END -> "Its end looks at the source";
            case SIDE -> "Its side looks at the source";
            case PLATE -> "It lies on a surface";
            case CLIP -> "It is clipped on";
            case CONTACT -> "It is stuck or clamped to the instrument";
            case BOX -> "A box in the lead";
        };
    }

    static String mount(Mount mount) {
        return switch (mount) {
            case STAND -> "a stand";
            case BOOM -> "a boom that reaches over";
            case OVERHEAD -> "a tall stand or boom, above heads";
            case CLIP -> "a clip on the instrument";
            case FLOOR -> "the floor or a plate";
            case INSIDE -> "a pillow, short stand or holder inside";
            case CONTACT -> "stuck or clamped on";
            case LEAD -> "a lead, no microphone";
            case HAND -> "a hand";
        };
    }

    static String tolerance(Tolerance tolerance) {
        return switch (tolerance) {
            case LOW -> "little";
            case MEDIUM -> "some";
            case HIGH -> "much";
        };
    }

    static String gauge(Gauge gauge) {
        return switch (gauge) {
            case TONE -> "Its tone over some octaves";
            case ROOM -> "The direct sound over that of the room";
            case NEIGHBOURS -> "The source over its neighbours";
            case NOISE -> "The source over the noise";
            case HEADROOM -> "What is left to the limit";
            case COMB -> "The ripple of the sum of two microphones; of one alone, the direct sound over that of the room";
            case NONE -> "No number shows it";
        };
    }

    static String move(MoveKind by) {
        return switch (by) {
            case PLAYER -> "The player";
            case INSTRUMENT -> "The instrument";
            case ROOM -> "The room";
            case SCREEN -> "A screen";
            case FITTING -> "At the microphone";
            case GAIN -> "The gain";
            case DISTANCE -> "The distance";
            case ANGLE -> "The angle";
            case POSITION -> "The place";
            case PATTERN -> "The pattern";
            case PATHS -> "The two paths";
            case SPACING -> "The farther microphone";
            case POLARITY -> "Polarity";
            case MIC -> "Another microphone";
        };
    }

    static String confidence(Confidence confidence) {
        return switch (confidence) {
            case HIGH -> "High: two or more independent sources, or universal practice";
            case MEDIUM -> "Medium";
            case LOW -> "Low: an informed estimate";
        };
    }

    static String basis(Basis basis) {
        return switch (basis) {
            case PHYSICS -> "Physics";
            case STANDARD -> "Standard";
            case PUBLISHED -> "Published measurement";
            case MEASURED -> "Measured";
            case PRACTICE -> "Trade practice";
            case ESTIMATE -> "Estimate";
            case HOUSE -> "House rule";
        };
    }

    /** The name of a figure without its unit: "signal to noise" for signalToNoiseDb. */
    static String field(String name) {
        String known = FIELDS.get(name);
        if (known != null) {
            return known;
        }
        String plain = name;
        for (String ending : UnitNames.all().keySet()) {
            boolean isUnit = name.endsWith(ending) && name.length() > ending.length() && !java.lang.Character.isUpperCase(name.charAt(name.length() - ending.length() - 1));
            if (isUnit) {
                plain = name.substring(0, name.length() - ending.length());
                break;
            }
        }
        StringBuilder words = new StringBuilder();
        plain.chars().forEach(letter -> {
            if (java.lang.Character.isUpperCase(letter)) {
                words.append(' ').append((char) java.lang.Character.toLowerCase(letter));
            } else {
                words.append((char) letter);
            }
        });
        return words.toString();
    }
}
