package pairwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a drawing of a floor says to whoever cannot see it. */
public final class FloorWords {
    private FloorWords() {
    }

    /** All of it, in sentences. */
    static String says(FloorPlan plan, boolean enlarged, Reader reader) {
        List<String> says = new ArrayList<>();
        says.add("The floor from above, to scale: " + tape(plan.widthM(), reader) + " wide and " + tape(plan.depthM(), reader) + " deep, the front at the bottom.");
        if (enlarged) {
            says.add("Players are drawn larger than they are.");
        }
        for (FloorPlan.Who who : plan.players()) {
            says.add(who.name() + ": " + place(who.xM(), who.yM(), who.facingDegrees(), reader) + (who.must() ? "" : "; nice to have")
                    + (plan.marked().contains(who.id()) ? "; pointed out" : "") + ".");
        }
        for (FloorPlan.Screen screen : plan.screens()) {
            says.add(screen.name() + ": from " + spot(screen.x1M(), screen.y1M(), reader) + " to " + spot(screen.x2M(), screen.y2M(), reader) + ", "
                    + tape(screen.heightM(), reader) + " high.");
        }
        if (plan.box() != null) {
            says.add("The leads end at a box: " + spot(plan.box().xM(), plan.box().yM(), reader) + ".");
        }
        for (FloorPlan.MicAt mic : plan.mics()) {
            says.add(mic(mic, reader));
        }
        if (!plan.good().isEmpty()) {
            says.add("Places that do as well are shaded, from " + tape(plan.good().stream().mapToDouble(FloorPlan.Good::xM).min().orElse(0), reader) + " to "
                    + tape(plan.good().stream().mapToDouble(FloorPlan.Good::xM).max().orElse(0), reader) + " from the left wall and from "
                    + tape(plan.good().stream().mapToDouble(FloorPlan.Good::yM).min().orElse(0), reader) + " to "
                    + tape(plan.good().stream().mapToDouble(FloorPlan.Good::yM).max().orElse(0), reader) + " from the front.");
        }
        return String.join(" ", says);
    }

    private static String mic(FloorPlan.MicAt mic, Reader reader) {
        String nulls = nullsDegrees(mic).stream().map(degrees -> number(degrees, reader)).collect(Collectors.joining(" and "));
        return "Microphone " + mic.number() + ", " + mic.family().id().replace('-', ' ') + ", " + mic.pattern().id().replace('-', ' ') + ", for " + mic.at() + ": " + spot(mic.xM(), mic.yM(), reader) + (mic.headingDegrees() == null ? "" : ", pointing to " + number(mic.headingDegrees(), reader) + " degrees")
                + (nulls.isEmpty() ? "" : ", hearing least from " + nulls + " degrees") + ".";
    }

    /** What the marks mean, in sentences, to stand below a drawing; only those that are in it. */
    public static String key(FloorPlan plan) {
        List<String> key = new ArrayList<>(List.of("An arrow shows where a player looks."));
        if (plan.players().stream().anyMatch(who -> !who.must())) {
            key.add("With a dashed ring: nice to have.");
        }
        if (!plan.screens().isEmpty()) {
            key.add("Hatched bars are gobos.");
        }
        if (plan.box() != null) {
            key.add("In the crossed square the leads end.");
        }
        if (!plan.mics().isEmpty()) {
            key.add("Numbers are microphones: the arrow is the axis, dashed rays point where it hears least.");
        }
        if (!plan.good().isEmpty()) {
            key.add("Shaded: places that do as well.");
        }
        return String.join(" ", key);
    }

    /** Where its nulls point on the plan. */
    static List<Double> nullsDegrees(FloorPlan.MicAt mic) {
        if (mic.headingDegrees() == null || mic.nullDegrees() == null) {
            return List.of();
        }
        double one = turned(mic.headingDegrees() + mic.nullDegrees());
        double other = turned(mic.headingDegrees() - mic.nullDegrees());
        return Math.abs(one - other) < 1 ? List.of(one) : List.of(one, other);
    }

    private static double turned(double degrees) {
        return (degrees % 360 + 360) % 360;
    }

    /** "2.3 m from the left wall, 4.1 m from the front, facing 90 degrees". */
    public static String place(double xM, double yM, double facingDegrees, Reader reader) {
        return spot(xM, yM, reader) + ", facing " + number(facingDegrees, reader) + " degrees";
    }

    private static String spot(double xM, double yM, Reader reader) {
        return tape(xM, reader) + " from the left wall, " + tape(yM, reader) + " from the front";
    }

    /** To a decimetre or an inch, as a floor is measured. */
    static String tape(double metres, Reader reader) {
        return reader.imperial() ? reader.distance(metres) : reader.number(metres, metres < 10 ? 2 : 1) + " m";
    }

    private static String number(double degrees, Reader reader) {
        return reader.number(degrees, 0);
    }
}
