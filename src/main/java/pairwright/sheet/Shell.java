package pairwright.sheet;

import java.util.List;
import java.util.stream.Stream;

/**
 * What every page has around its content.
 *
 * @param title of the page
 * @param section which part of the site it belongs to: ask, sessions, locker, catalogue, rules, numbers, listen, lab or guide; empty for none
 * @param visit what the reader came for
 * @param parts what the menu leads to
 * @param version of the program
 * @param mark address of the mark
 * @param style address of the style sheet
 * @param first address of the script that runs before anything is shown
 * @param script address of the script
 */
public record Shell(String title, String section, Visit visit, List<Part> parts, String version, String mark, String style, String first, String script) {
    /** The parts of the site, in the order of the menu. */
    public static final List<Part> PARTS = List.of(new Part("ask", "/", "Ask"), new Part("catalogue", "/catalogue", "Catalogue"),
            new Part("rules", "/rules", "Rules"), new Part("numbers", "/numbers", "Numbers"), new Part("listen", "/listen", "Listen"), new Part("lab", "/lab", "Lab"), new Part("guide", "/guide", "Guide"));
    /** The same where there is a locker. */
    static final List<Part> WITH_LOCKER = Stream.concat(Stream.concat(PARTS.stream().limit(1), Stream.of(new Part("sessions", "/sessions", "Sessions"), new Part("locker", "/locker", "Locker"))), PARTS.stream().skip(1))
            .toList();

    /** A part of the site, where it begins, and what it is called. */
    public record Part(String id, String address, String name) {
    }
}
