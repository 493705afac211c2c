package pairwright.sheet;

import java.util.List;
import pairwright.drawing.Drawing;

/** What the pages of entries and rules are put together from. All of it is text ready to be shown; none of it is escaped yet. */
public final class ReadingParts {
    private ReadingParts() {
    }

    /** A link to another page, or to a place on one. */
    public record Link(String href, String text) {
    }

    /**
     * What stands around an entry.
     *
     * @param shell what is around every page
     * @param trail where the page lies, outermost first, without itself
     * @param kind what it is, in a few words, above its name; empty for none
     */
    public record Frame(Shell shell, List<Link> trail, String kind) {
    }

    /** One line of a list; the tag is one or two words beside the name, empty for none. */
    public record Line(Link to, String tag, String says) {
    }

    /** Lines that belong together; the id is the place on the page. */
    public record Group(String id, String name, List<Line> lines) {
    }

    /** Something known of an entry; what it means may be empty. */
    public record Fact(String name, String value, String means) {
    }

    /** A figure that differs from one to another of its class. */
    public record Spread(String name, String low, String typical, String high, String unit, String means) {
    }

    /** Nine values under one name, one an octave. */
    public record Curve(String name, List<String> nine) {
    }

    /**
     * Values by octave: a picture and the same in numbers.
     *
     * @param id unlike any other on the page
     * @param caption what the picture shows
     * @param drawing the picture; null for none
     * @param curves the numbers
     */
    public record Plot(String id, String caption, Drawing drawing, List<Curve> curves) {
    }

    /**
     * Where an entry is named.
     *
     * @param who the entry that names it
     * @param as what it is there
     * @param when only under these circumstances; empty for any
     * @param why the reason given
     */
    public record Mention(Link who, String as, String when, String why) {
    }

    /** What some figures rest on. */
    public record Ground(String of, String on, String note) {
    }

    /** How sure an entry is, and what it rests on. */
    public record Grounds(String confidence, List<Ground> all) {
    }
}
