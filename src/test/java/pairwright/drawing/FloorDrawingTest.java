package pairwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import pairwright.advice.KnowledgeStore;
import pairwright.model.Catalogue;
import pairwright.model.MicFamily;

/** The floor: everything where it is, in the direction it has, with its name, and words that say the same. */
class FloorDrawingTest {
    private static final Catalogue CATALOGUE = KnowledgeStore.builtIn().current().catalogue();
    private static final Pattern AT = Pattern.compile("translate\\((\\S+) (\\S+)\\)");
    private static final List<String> TWELVE = List.of("drum-kit", "double-bass", "tenor-saxophone", "trumpet", "violin", "cello", "acoustic-guitar", "piano-grand",
            "lead-vocal", "clarinet", "trombone", "flute");

    private static FloorPlan.Who who(String id, String name, double xM, double yM, double facingDegrees, boolean must) {
        return new FloorPlan.Who(id, name, name, source(id), xM, yM, facingDegrees, must);
    }

    private static pairwright.model.Source source(String id) {
        return CATALOGUE.sources().getOrDefault(id, CATALOGUE.sources().get("violin"));
    }

    private static FloorPlan two(Set<String> marked) {
        return new FloorPlan(8, 6, List.of(who("violin", "Fiddle", 2.3, 4.1, 90, true), who("trumpet", "Trumpet", 5, 2, 0, false)),
                List.of(new FloorPlan.Screen("gobo-1", "Gobo 1", 3, 3, 5, 3, 1.5)),
                List.of(new FloorPlan.MicAt(1, 2.8, 4.1, 270.0, MicFamily.RIBBON, pairwright.model.Pattern.FIGURE_8, 90.0, "Fiddle"),
                        new FloorPlan.MicAt(2, 5, 2.5, 180.0, MicFamily.MOVING_COIL, pairwright.model.Pattern.CARDIOID, 180.0, "Trumpet"),
                        new FloorPlan.MicAt(3, 1, 1, null, MicFamily.BOUNDARY, pairwright.model.Pattern.HALF_OMNI, null, "Room")), marked);
    }

    private static double[] at(Element group) {
        Matcher at = AT.matcher(group.getAttribute("transform"));
        assertTrue(at.find(), group.getAttribute("transform"));
        return new double[] {Double.parseDouble(at.group(1)), Double.parseDouble(at.group(2))};
    }

    private static Element turns(Element group) {
        for (var child = group.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element && element.getAttribute("class").equals("turns")) {
                return element;
            }
        }
        throw new AssertionError("nothing turns");
    }

    @Test
    void whereTheLeadsEndIsDrawnAndSaidWhereSomebodySaidIt() {
        FloorPlan plan = two(Set.of());
        assertTrue(Picture.of(FloorDrawing.of(plan, "floor", Reader.METRIC)).all("g", "lead-box").isEmpty());
        Drawing drawing = FloorDrawing.of(new FloorPlan(8, 6, plan.players(), plan.screens(), plan.mics(), Set.of(), new FloorPlan.Box(8, 1.5), List.of()), "floor", Reader.METRIC);
        Picture picture = Picture.of(drawing);
        double[] box = at(picture.all("g", "lead-box").get(0));
        Element wall = picture.all("rect", "wall").get(0);
        assertEquals(Double.parseDouble(wall.getAttribute("x")) + Double.parseDouble(wall.getAttribute("width")), box[0], 0.11);
        assertEquals(Double.parseDouble(wall.getAttribute("y")) + Double.parseDouble(wall.getAttribute("height")) * 0.75, box[1], 0.11);
        assertTrue(drawing.says().contains("The leads end at a box: 8 m from the left wall, 1.5 m from the front."), drawing.says());
    }

    @Test
    void aPlayerStandsWhereTheyAreAndLooksWhereTheyLook() {
        Picture picture = Picture.of(FloorDrawing.of(two(Set.of()), "floor", Reader.METRIC));
        Element wall = picture.all("rect", "wall").get(0);
        double pxPerM = Double.parseDouble(wall.getAttribute("data-px-per-m"));
        double left = Double.parseDouble(wall.getAttribute("x"));
        double bottom = Double.parseDouble(wall.getAttribute("y")) + Double.parseDouble(wall.getAttribute("height"));
        Element fiddle = picture.all("g", "who").get(0);
        assertEquals("violin", fiddle.getAttribute("data-who"));
        assertEquals(left + 2.3 * pxPerM, at(fiddle)[0], 0.02);
        assertEquals(bottom - 4.1 * pxPerM, at(fiddle)[1], 0.02);
        assertEquals("rotate(0)", turns(fiddle).getAttribute("transform"), "to the right is as it is drawn");
        assertEquals("rotate(-90)", turns(picture.all("g", "who").get(1)).getAttribute("transform"), "up the plan is a quarter back");
        assertEquals(8 * pxPerM, Double.parseDouble(wall.getAttribute("width")), 0.02);
        assertEquals(6 * pxPerM, Double.parseDouble(wall.getAttribute("height")), 0.02);
    }

    @Test
    void whatIsNiceToHaveAndWhatIsPointedOutIsToldByALineAndNotByAColourAlone() {
        Picture picture = Picture.of(FloorDrawing.of(two(Set.of("violin")), "floor", Reader.METRIC));
        assertEquals(List.of("4 4"), picture.all("circle", "ring").stream().filter(ring -> !ring.getAttribute("class").contains("wanted")).map(ring -> ring.getAttribute("stroke-dasharray")).toList());
        assertEquals(1, picture.all("circle", "wanted").size());
        assertEquals("who marked", picture.all("g", "who").get(0).getAttribute("class"));
    }

    @Test
    void aMicrophoneHasItsNumberItsAxisAndItsNulls() {
        Picture picture = Picture.of(FloorDrawing.of(two(Set.of()), "floor", Reader.METRIC));
        assertEquals(List.of("1", "2", "3"), picture.all("text", "on-mark").stream().map(Element::getTextContent).toList());
        assertEquals(3, picture.all("line", "null").size(), "two of the figure-8, one of the cardioid, none of the half omni");
        assertEquals(2, picture.all("path", "aim").size(), "a plate on the floor points nowhere on the plan");
        Element wall = picture.all("rect", "wall").get(0);
        double pxPerM = Double.parseDouble(wall.getAttribute("data-px-per-m"));
        Element aim = picture.all("path", "aim").get(0);
        assertTrue(aim.getAttribute("transform").endsWith("rotate(180)"), "to the left: " + aim.getAttribute("transform"));
        assertEquals(Double.parseDouble(wall.getAttribute("x")) + 2.8 * pxPerM, at(aim)[0], 0.02);
    }

    @Test
    void theWordsSayTheSame() {
        String says = FloorDrawing.of(two(Set.of("gobo-1")), "floor", Reader.METRIC).says();
        for (String part : List.of("8 m wide and 6 m deep", "Fiddle: 2.3 m from the left wall, 4.1 m from the front, facing 90 degrees.", "Trumpet: 5 m from the left wall, 2 m from the front, "
                + "facing 0 degrees; nice to have.", "Gobo 1: from 3 m from the left wall, 3 m from the front to 5 m", "1.5 m high",
                "Microphone 1, ribbon, figure 8, for Fiddle: 2.8 m from the left wall, 4.1 m from the front, pointing to 270 degrees, hearing least from 0 and 180 degrees.",
                "Microphone 2, moving coil, cardioid, for Trumpet: 5 m from the left wall, 2.5 m from the front, pointing to 180 degrees, hearing least from 0 degrees.")) {
            assertTrue(says.contains(part), part + " in " + says);
        }
        assertEquals("An arrow shows where a player looks. With a dashed ring: nice to have. Hatched bars are gobos. Numbers are microphones: the arrow is the axis, dashed rays "
                + "point where it hears least.", FloorWords.key(two(Set.of())));
    }

    @Test
    void feetStandAtTheWallsForWhomMeasuresInFeet() {
        Drawing drawing = FloorDrawing.of(two(Set.of()), "floor", new Reader(true, Locale.UK));
        Picture picture = Picture.of(drawing);
        picture.label("26 ft");
        picture.label("5 ft");
        assertFalse(drawing.says().contains(" m "), drawing.says());
    }

    @Test
    void noNameOfTwelveLiesOnAnother() {
        for (double[] room : new double[][] {{8, 6}, {6, 9}, {5, 4.5}, {14, 11}}) {
            List<FloorPlan.Who> players = new ArrayList<>();
            List<FloorPlan.MicAt> mics = new ArrayList<>();
            for (int i = 0; i < TWELVE.size(); i++) {
                double xM = room[0] * (0.12 + 0.25 * (i % 4));
                double yM = room[1] * (0.15 + 0.33 * (i / 4)) + (i % 2) * 0.2;
                players.add(who(TWELVE.get(i), "Player of " + TWELVE.get(i).replace('-', ' '), xM, yM, 30 * i, i % 3 > 0));
                mics.add(new FloorPlan.MicAt(i + 1, xM + 0.4 * Math.sin(Math.toRadians(30 * i)), yM + 0.4 * Math.cos(Math.toRadians(30 * i)), 30.0 * i + 180, MicFamily.RIBBON,
                        pairwright.model.Pattern.FIGURE_8, 90.0, TWELVE.get(i)));
            }
            Picture picture = Picture.of(FloorDrawing.of(new FloorPlan(room[0], room[1], players, List.of(), mics, Set.of()), "floor", Reader.METRIC));
            List<Picture.Label> names = names(picture);
            assertTrue(names.size() >= 12, names.toString());
            for (int one = 0; one < names.size(); one++) {
                for (int other = one + 1; other < names.size(); other++) {
                    assertFalse(names.get(one).meets(names.get(other)), room[0] + " by " + room[1] + ": " + names.get(one) + " on " + names.get(other));
                }
                assertTrue(names.get(one).left() >= 0 && names.get(one).right() <= FloorScale.WIDTH, names.get(one).toString());
            }
        }
    }

    /** The texts of the players, where their group puts them. */
    private static List<Picture.Label> names(Picture picture) {
        List<Picture.Label> names = new ArrayList<>();
        for (Element player : picture.all("g", "who")) {
            for (var child = player.getFirstChild(); child != null; child = child.getNextSibling()) {
                if (child instanceof Element text && text.getTagName().equals("text")) {
                    double x = at(player)[0] + Double.parseDouble(text.getAttribute("x"));
                    double y = at(player)[1] + Double.parseDouble(text.getAttribute("y"));
                    double half = Type.width(text.getTextContent(), Type.SIZE) / 2;
                    names.add(new Picture.Label(text.getTextContent(), x - half, y - Type.SIZE * 0.8, x + half, y + Type.SIZE * 0.2));
                }
            }
        }
        return names;
    }

    @Test
    void aRoomIsDrawnWholeHoweverLongOrWideItIs() {
        for (double[] room : new double[][] {{1, 1}, {100, 1}, {1, 100}, {100, 100}, {3.1, 22}}) {
            FloorPlan plan = new FloorPlan(room[0], room[1], List.of(who("violin", "Fiddle", room[0], room[1], 45, true)), List.of(), List.of(), Set.of());
            Picture picture = Picture.of(FloorDrawing.of(plan, "floor", Reader.METRIC));
            Element wall = picture.all("rect", "wall").get(0);
            double right = Double.parseDouble(wall.getAttribute("x")) + Double.parseDouble(wall.getAttribute("width"));
            assertTrue(right <= FloorScale.WIDTH && Double.parseDouble(wall.getAttribute("x")) >= 0, "from wall to wall " + right);
            assertTrue(picture.all("path", "grid").get(0).getAttribute("d").length() < 4000, "a grid one can see through");
        }
    }
}
