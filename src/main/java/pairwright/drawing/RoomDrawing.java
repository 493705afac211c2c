package pairwright.drawing;

import pairwright.acoustics.FirstOrder;
import pairwright.model.Room;

/** A room from above, to scale, and how far from a source in its middle the direct sound still leads. */
public final class RoomDrawing {
    private static final double LONGEST = 460;
    private static final double MARGIN = 40;
    private static final double PERSON_M = 0.5;
    private static final double[] BARS_M = {0.5, 1, 2, 5, 10, 20};
    private static final double FOOT_M = 0.3048;

    private RoomDrawing() {
    }

    /**
     * From above. Not for the open air, which has no walls.
     *
     * @param key unlike that of any other picture of the same page
     */
    public static Drawing fromAbove(Room room, String key, Reader reader) {
        double criticalM = pairwright.acoustics.Room.criticalDistanceM(room.volumeM3(), room.reverbTimeS());
        double cardioidM = pairwright.acoustics.Room.criticalDistanceM(room.volumeM3(), room.reverbTimeS(), 1,
                1 / FirstOrder.randomEfficiency(FirstOrder.CARDIOID));
        // the longer wall lies across, where a page is widest
        double acrossM = Math.max(room.widthM(), room.depthM());
        double downM = Math.min(room.widthM(), room.depthM());
        double perMetre = LONGEST / acrossM;
        double width = LONGEST + 2 * MARGIN + 50;
        double height = downM * perMetre + 2 * MARGIN + 46;
        double middleX = MARGIN + LONGEST / 2;
        double middleY = MARGIN + downM * perMetre / 2;

        Svg svg = new Svg(key, width, height, "The room from above", says(room, acrossM, downM, criticalM, cardioidM, reader));
        svg.open("clipPath", "id", key + "-walls").leaf("rect", "x", MARGIN, "y", MARGIN, "width", LONGEST, "height", downM * perMetre).close();
        svg.leaf("rect", "class", "wall", "x", MARGIN, "y", MARGIN, "width", LONGEST, "height", downM * perMetre,
                "fill", "none", "stroke", "#222", "stroke-width", 3);
        svg.open("g", "clip-path", "url(#" + key + "-walls)");
        svg.leaf("circle", "class", "two", "cx", middleX, "cy", middleY, "r", cardioidM * perMetre, "fill", "none", "stroke", "#B84A00", "stroke-width", 2,
                "stroke-dasharray", "2 5");
        svg.leaf("circle", "class", "one", "cx", middleX, "cy", middleY, "r", criticalM * perMetre, "fill", "none", "stroke", "#0072B2", "stroke-width", 2,
                "stroke-dasharray", "9 5");
        svg.close();
        // a person, so that an eye has something to hold the room against
        svg.leaf("ellipse", "class", "source", "cx", middleX, "cy", middleY, "rx", PERSON_M / 2 * perMetre, "ry", PERSON_M / 4 * perMetre,
                "fill", "#ddd", "stroke", "#222", "stroke-width", 1.5);
        svg.leafText("text", reader.distance(acrossM), "class", "label", "x", middleX, "y", MARGIN - 12, "text-anchor", "middle", "font-size", 16);
        svg.leafText("text", reader.distance(downM), "class", "label", "x", MARGIN + LONGEST + 10, "y", middleY + 5, "font-size", 16);
        scale(svg, perMetre, MARGIN + downM * perMetre + 30, reader);
        return svg.drawing();
    }

    private static void scale(Svg svg, double perMetre, double y, Reader reader) {
        double barM = reader.imperial() ? FOOT_M : BARS_M[0];
        for (double tried : BARS_M) {
            double candidateM = reader.imperial() ? tried * 2 * FOOT_M : tried;
            if (candidateM * perMetre <= LONGEST / 3) {
                barM = candidateM;
            }
        }
        double end = MARGIN + barM * perMetre;
        svg.leaf("path", "class", "axis", "d", "M" + Svg.number(MARGIN) + " " + Svg.number(y - 6) + "v12m0 -6H" + Svg.number(end) + "m0 -6v12",
                "fill", "none", "stroke", "#222", "stroke-width", 1.5);
        svg.leafText("text", reader.distance(barM), "class", "label", "x", end + 10, "y", y + 5, "font-size", 16);
    }

    private static String says(Room room, double acrossM, double downM, double criticalM, double cardioidM, Reader reader) {
        return "The room from above, to scale: " + reader.distance(acrossM) + " by " + reader.distance(downM) + " and " + reader.distance(room.heightM())
                + " high, with a person in the middle. The dashed circle is where the room is as loud as the player for an omni, "
                + reader.distance(criticalM) + " away; the dotted one is the same for a cardioid, " + reader.distance(cardioidM) + " away.";
    }
}
