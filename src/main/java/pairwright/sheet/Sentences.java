package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import pairwright.rules.UnitNames;

/** The sentence of a rule before anything is filled in. */
public final class Sentences {
    private static final Map<String, String> NAMES = Map.ofEntries(
            Map.entry("mic", "the microphone"), Map.entry("pattern", "pattern"), Map.entry("position", "its place"), Map.entry("source", "the source"),
            Map.entry("room", "the room"), Map.entry("wanted", "wanted"), Map.entry("why", "the reason of the source\u2019s page"), Map.entry("danger", "what endangers it there"),
            Map.entry("keepClear", "what must stay free"), Map.entry("keptWhere", "here"), Map.entry("keptTimes", "so many"), Map.entry("triedTimes", "so many"), Map.entry("first", "the first microphone"), Map.entry("second", "the second microphone"),
            Map.entry("firstPosition", "the place of the first"), Map.entry("secondPosition", "the place of the second"), Map.entry("technique", "the technique"),
            Map.entry("care", "the care of the technique"), Map.entry("line", "the line"), Map.entry("firstSeat", "one player"), Map.entry("secondSeat", "another"), Map.entry("seat", "the player"), Map.entry("other", "the other"),
            Map.entry("unit", "the unit"), Map.entry("note", "its note"), Map.entry("channel", "the channel"), Map.entry("bank", "the bank"),
            Map.entry("stand", "the stand"), Map.entry("mateSeat", "another player"), Map.entry("near", "the nearer line"), Map.entry("far", "the farther line"),
            Map.entry("ribbons", "their lines"), Map.entry("powered", "the lines that need it"), Map.entry("valves", "the microphones with a supply of their own"),
            Map.entry("lastOnes", "these lines"), Map.entry("box", "the line box"), Map.entry("pad", "the pad"), Map.entry("usual", "its first choices"),
            Map.entry("worst", "what weighs most against it"), Map.entry("loudestPlace", "somebody"));

    private Sentences() {
    }

    /** A stretch of a sentence; filled where an answer puts a name or a number of its own. */
    public record Piece(String text, boolean filled) {
    }

    static List<Piece> pieces(Desk desk, String says) {
        List<Piece> pieces = new ArrayList<>();
        int at = 0;
        for (int open = says.indexOf('{'); open >= 0; open = says.indexOf('{', at)) {
            int close = says.indexOf('}', open);
            if (close < 0) {
                break;
            }
            add(pieces, desk.measures().sentence(says.substring(at, open)), false);
            String name = says.substring(says.charAt(open + 1) == '-' ? open + 2 : open + 1, close);
            int bar = name.indexOf('|');
            add(pieces, capitalised(says, open, words(bar < 0 ? name : name.substring(0, bar))), true);
            if (bar >= 0) {
                add(pieces, " " + name.substring(bar + 1).replace("|", " or "), false);
            }
            at = close + 1;
        }
        add(pieces, desk.measures().sentence(says.substring(at)), false);
        return pieces;
    }

    /** The same as one text. */
    static String words(Desk desk, String says) {
        return pieces(desk, says).stream().map(Piece::text).collect(Collectors.joining());
    }

    private static void add(List<Piece> pieces, String text, boolean filled) {
        if (!text.isEmpty()) {
            pieces.add(new Piece(text, filled));
        }
    }

    private static String words(String name) {
        String known = NAMES.get(name);
        if (known != null) {
            return known;
        }
        if (name.endsWith("Ratio")) {
            return "so many";
        }
        String unit = UnitNames.unitOf(name);
        return ReadingWords.field(name) + (unit.equals("1") ? "" : " in " + unit);
    }

    private static String capitalised(String says, int at, String words) {
        boolean starts = at == 0 || at > 1 && says.charAt(at - 1) == ' ' && ".?!".indexOf(says.charAt(at - 2)) >= 0;
        return starts ? words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) : words;
    }
}
