package pairwright.drawing;

import java.util.List;
import java.util.Set;
import pairwright.model.MicFamily;
import pairwright.model.Pattern;
import pairwright.model.Source;

/**
 * What a drawing of a floor is made from. Places are metres from the lower left corner of the room as it is drawn, x to the right and y up the
 * plan; directions are degrees on the plan, 0 up, 90 to the right.
 *
 * @param widthM along x
 * @param depthM along y
 * @param players who is there
 * @param screens gobos
 * @param mics empty before there is a plan
 * @param marked ids of players and screens that are pointed out; empty for none
 * @param box where the leads end; null where nobody said
 * @param good places that are shaded, since they would do as well; empty for none
 */
public record FloorPlan(double widthM, double depthM, List<Who> players, List<Screen> screens, List<MicAt> mics, Set<String> marked, Box box, List<Good> good) {
    public FloorPlan {
        players = List.copyOf(players);
        screens = List.copyOf(screens);
        mics = List.copyOf(mics);
        marked = Set.copyOf(marked);
        good = List.copyOf(good);
    }

    /** One of which nobody said where the leads end. */
    public FloorPlan(double widthM, double depthM, List<Who> players, List<Screen> screens, List<MicAt> mics, Set<String> marked) {
        this(widthM, depthM, players, screens, mics, marked, null, List.of());
    }

    /** The same with places shaded. */
    public FloorPlan shaded(List<Good> places) {
        return new FloorPlan(widthM, depthM, players, screens, mics, marked, box, places);
    }

    /** A square about a place, so wide. */
    public record Good(double xM, double yM, double sideM) {
    }

    /** The box or the desk in which the channels come out. */
    public record Box(double xM, double yM) {
    }

    /**
     * A player.
     *
     * @param id unlike that of any other player or screen; it stands in the drawing as {@code data-who}
     * @param name as people call them, to be said
     * @param label the same short, to be written beside them
     * @param source what is played, so that it is drawn as it looks
     * @param facingDegrees where the player looks
     * @param must whether there is no session without them; drawn with a dash where not
     */
    public record Who(String id, String name, String label, Source source, double xM, double yM, double facingDegrees, boolean must) {
    }

    /** A gobo: a line from one end to the other, {@code heightM} high; its id stands in the drawing as {@code data-screen}. */
    public record Screen(String id, String name, double x1M, double y1M, double x2M, double y2M, double heightM) {
        double middleXM() {
            return (x1M + x2M) / 2;
        }

        double middleYM() {
            return (y1M + y2M) / 2;
        }

        double lengthM() {
            return Math.hypot(x2M - x1M, y2M - y1M);
        }
    }

    /**
     * A microphone.
     *
     * @param number of its line
     * @param headingDegrees where its axis points on the plan; null where it points up or down
     * @param family what it is, to be said
     * @param pattern as it is set
     * @param nullDegrees off its axis; null where it has no null, or none that lies on the plan
     * @param at what it is there for, as people call it
     */
    public record MicAt(int number, double xM, double yM, Double headingDegrees, MicFamily family, Pattern pattern, Double nullDegrees, String at) {
    }
}
