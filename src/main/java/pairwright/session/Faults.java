package pairwright.session;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import pairwright.advice.Knowledge;
import pairwright.catalogue.Shown;
import pairwright.model.Fault;
import pairwright.model.Nearest;

/** Gathers what is wrong, in the words in which that is said elsewhere. */
final class Faults {
    private static final int MOST_IDS = 40;
    /** A list a person can look over is said. */
    private static final int MOST_SAID = 40;
    private static final int SAID = 3;

    private final Knowledge known;
    private final List<Fault> all = new ArrayList<>();

    Faults(Knowledge known) {
        this.known = known;
    }

    List<Fault> all() {
        return all;
    }

    void add(String at, String says) {
        all.add(new Fault(at, says));
    }

    /** Whether a number, if there is one, is between two. */
    boolean within(String at, Number given, double least, double most, String name) {
        return within(at, given, least, most, name, null);
    }

    boolean within(String at, Number given, double least, double most, String name, String why) {
        if (given == null || given.doubleValue() >= least && given.doubleValue() <= most) {
            return true;
        }
        add(at, name + " must be " + plain(least) + " to " + plain(most) + (why == null ? "" : ", as " + why) + ", but was " + plain(given.doubleValue()));
        return false;
    }

    void knownAll(String at, List<String> given, Collection<String> ids, String kind) {
        if (given.size() > MOST_IDS) {
            add(at, given.size() + " entries are given; at most " + MOST_IDS + " are taken. Leave some out");
            return;
        }
        for (int i = 0; i < given.size(); i++) {
            known(at + "/" + i, given.get(i), ids, kind);
        }
    }

    /** Sees that an entry of the catalogue is there, and names those that were most likely meant. */
    void known(String at, String given, Collection<String> ids, String kind) {
        if (given == null || ids.contains(given)) {
            return;
        }
        List<String> near = known.nearest(given, ids, SAID);
        add(at, "there is no " + kind + " \"" + Shown.of(given) + "\". " + (!near.isEmpty() ? "Maybe " + String.join(" or ", near) : all(given, ids, kind)));
    }

    private static String all(String given, Collection<String> ids, String kind) {
        return ids.size() <= MOST_SAID ? Nearest.remedy(Shown.of(given), new TreeSet<>(ids)) : "All ids are at " + (kind.equals("mic type") ? "/api/mics" : "/api/sources");
    }

    /** The same for what the line-up itself names. */
    boolean near(String at, String given, List<String> ids, String kind) {
        if (ids.contains(given)) {
            return true;
        }
        add(at, "there is no " + kind + " \"" + Shown.of(given) + "\" in the line-up. " + Nearest.remedy(Shown.of(given), new TreeSet<>(ids)));
        return false;
    }

    /** A text of one line. */
    void text(String at, String given, int longest, String name) {
        if (given == null) {
            return;
        }
        if (given.isBlank()) {
            add(at, name + " is empty. Write something, or leave it out");
        } else if (given.codePointCount(0, given.length()) > longest) {
            add(at, name + " is " + given.codePointCount(0, given.length()) + " characters long; at most " + longest + " are kept. Shorten it");
        } else if (given.codePoints().anyMatch(code -> Character.isISOControl(code) || code == 0x2028 || code == 0x2029 || Character.getType(code) == Character.SURROGATE)) {
            add(at, name + " holds a character that cannot be printed on one line. Take it out");
        }
    }

    /** As it was given, without the ".0" of a whole number. */
    static String plain(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e15 ? Long.toString((long) number) : Double.toString(number);
    }
}
