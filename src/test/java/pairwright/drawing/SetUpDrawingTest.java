package pairwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import pairwright.advice.Advisor;
import pairwright.advice.KnowledgeStore;
import pairwright.model.Answer;
import pairwright.model.Catalogue;
import pairwright.model.KeepClear;
import pairwright.model.Mount;
import pairwright.model.Neighbour;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.Point;
import pairwright.model.Standpoint;
import pairwright.model.Question;
import pairwright.model.Request;
import pairwright.model.Source;

/** What must hold of the drawings of every option of every source. */
class SetUpDrawingTest {
    private static final Reader IMPERIAL = new Reader(true, Locale.GERMANY);
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(?:\\.[0-9]+)?");

    /** Every source of the catalogue with two neighbours, one near, one far; some alone. */
    private static final List<Shown> ALL = all();

    private record Shown(Catalogue catalogue, Question question, Option option, boolean above) {
        Drawing drawing(Reader reader) {
            return above ? SetUpDrawing.fromAbove(catalogue, question, option, "k", reader) : SetUpDrawing.fromSide(catalogue, question, option, "k", reader);
        }

        SetUp setUp() {
            return SetUp.of(catalogue, question, option);
        }

        View view() {
            return View.of(setUp(), above);
        }

        String name() {
            return question.source() + " " + option.technique() + " " + option.mics().stream().map(Placement::position).toList() + (above ? " above" : " side");
        }
    }

    private static List<Shown> all() {
        KnowledgeStore store = KnowledgeStore.builtIn();
        Advisor advisor = new Advisor(store::current);
        Catalogue catalogue = store.current().catalogue();
        List<Shown> all = new ArrayList<>();
        List<Neighbour> two = List.of(new Neighbour("drum-kit", 3, 120), new Neighbour("driven-guitar-amplifier", 0.6, 75));
        for (String source : catalogue.sources().keySet()) {
            // every fourth one in a quiet room as well
            for (List<Neighbour> beside : source.hashCode() % 4 == 0 ? List.of(two, List.<Neighbour>of()) : List.of(two)) {
                Answer answer = advisor.ask(new Request(null, source, null, null, null, null, null, beside, null, null, null, null, null, null));
                for (Option option : answer.options()) {
                    all.add(new Shown(catalogue, answer.question().meant(), option, true));
                    all.add(new Shown(catalogue, answer.question().meant(), option, false));
                }
            }
        }
        return all;
    }

    @Test
    void everyDrawingIsWellFormedWithFiniteNumbersInsideItsBox() throws Exception {
        assertTrue(ALL.size() > 700, "only " + ALL.size());
        List<String> wrong = new ArrayList<>();
        for (Shown shown : ALL) {
            for (Reader reader : List.of(Reader.METRIC, IMPERIAL)) {
                Element svg = parsed(shown.drawing(reader));
                String[] box = svg.getAttribute("viewBox").split(" ");
                double width = Double.parseDouble(box[2]);
                double height = Double.parseDouble(box[3]);
                if (shown.drawing(reader).svg().contains("NaN") || width != 360 || height > 640) {
                    wrong.add(shown.name() + ": box " + String.join(" ", box));
                }
                for (Element element : elements(svg)) {
                    if (!within(element, svg, width, height)) {
                        wrong.add(shown.name() + ": " + element.getTagName() + " " + element.getAttribute("class") + " " + element.getAttribute("d") + element.getAttribute("x1") + " "
                                + element.getAttribute("y1") + " " + element.getTextContent());
                    }
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void noLabelLiesOnAnotherOrOnAMicrophoneOrOnTheEdge() {
        List<String> wrong = new ArrayList<>();
        for (Shown shown : ALL) {
            for (Reader reader : List.of(Reader.METRIC, IMPERIAL)) {
                Element svg = parsed(shown.drawing(reader));
                double width = 360;
                List<double[]> boxes = new ArrayList<>();
                for (Element text : elements(svg)) {
                    if (text.getTagName().equals("text")) {
                        double[] box = box(text);
                        if (box[0] < 0 || box[2] > width || box[1] < 0) {
                            wrong.add(shown.name() + ": over the edge: " + text.getTextContent());
                        }
                        for (double[] other : boxes) {
                            if (box[0] < other[2] - 0.5 && other[0] < box[2] - 0.5 && box[1] < other[3] - 0.5 && other[1] < box[3] - 0.5) {
                                wrong.add(shown.name() + ": on another: " + text.getTextContent());
                            }
                        }
                        boxes.add(box);
                    }
                }
                for (Element mic : elements(svg)) {
                    if (mic.getTagName().equals("g") && mic.getAttribute("class").endsWith(" mic")) {
                        double[] at = numbers(mic.getAttribute("transform"));
                        for (double[] box : boxes) {
                            if (at[0] > box[0] && at[0] < box[2] && at[1] > box[1] && at[1] < box[3]) {
                                wrong.add(shown.name() + ": on a microphone");
                            }
                        }
                    }
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void textIsLargeEnoughOnAPhone() {
        for (Shown shown : ALL) {
            for (Element text : elements(parsed(shown.drawing(Reader.METRIC)))) {
                if (text.getTagName().equals("text")) {
                    assertTrue(Double.parseDouble(text.getAttribute("font-size")) * 320 / 360 >= 11, shown.name() + ": " + text.getTextContent());
                }
            }
        }
    }

    @Test
    void fromTheSideADistanceOverTheScaleIsTheDistance() {
        int checked = 0;
        for (Shown shown : ALL) {
            Element svg = parsed(shown.drawing(Reader.METRIC));
            for (Placement mic : air(shown.option())) {
                Element line = classed(svg, "d" + (shown.option().mics().indexOf(mic) + 1));
                if (line != null && !shown.above()) {
                    assertEquals(mic.distanceM(), drawnM(svg, line), 0.01 * mic.distanceM(), shown.name());
                    checked++;
                }
            }
        }
        assertTrue(checked > 350, "only " + checked);
    }

    @Test
    void fromAboveADistanceOverTheScaleIsWhatItsLabelSays() {
        int checked = 0;
        for (Shown shown : ALL) {
            if (shown.above()) {
                Element svg = parsed(shown.drawing(Reader.METRIC));
                for (Stood mic : shown.setUp().inAir()) {
                    Element line = classed(svg, "d" + mic.number());
                    if (line != null) {
                        double alongM = mic.standpoint().place().minus(mic.standpoint().surface()).alongFloorM();
                        assertEquals(alongM, drawnM(svg, line), 0.01 * alongM + 1e-4, shown.name());
                        boolean all = alongM > 0.985 * mic.placement().distanceM();
                        String says = all ? Reader.METRIC.distance(mic.placement().distanceM()) + " from the source" : Reader.METRIC.distance(alongM) + (alongM < 0.3 ? " to the side" : " along the floor");
                        assertTrue(shown.drawing(Reader.METRIC).says().contains(says), shown.name() + ": " + says);
                        checked++;
                    }
                }
            }
        }
        assertTrue(checked > 200, "only " + checked);
    }

    @Test
    void anglesBetweenFacingAndNullAreThoseOfThePattern() {
        int checked = 0;
        for (Shown shown : ALL) {
            Element svg = parsed(shown.drawing(Reader.METRIC));
            List<Element> mics = elements(svg).stream().filter(one -> one.getAttribute("class").endsWith(" aim")).toList();
            List<Element> rays = elements(svg).stream().filter(one -> one.getAttribute("class").equals("null") && one.hasAttribute("x1") && !one.getAttribute("x1").equals("4")).toList();
            for (Element ray : rays) {
                double facing = Double.NaN;
                for (Element mic : mics) {
                    double[] at = numbers(mic.getAttribute("transform"));
                    double fromX = number(ray, "x1") - at[0];
                    double fromY = number(ray, "y1") - at[1];
                    double toX = number(ray, "x2") - at[0];
                    double toY = number(ray, "y2") - at[1];
                    // the ray starts 7 from the microphone it belongs to, straight away from it
                    if (Math.abs(Math.hypot(fromX, fromY) - 7) < 0.05 && Math.abs(fromX * toY - fromY * toX) < 5 && fromX * toX + fromY * toY > 0) {
                        facing = -at[2];
                        double drawn = Math.toDegrees(Math.atan2(-toY, toX));
                        double apart = Math.abs(((drawn - facing) % 360 + 540) % 360 - 180);
                        Placement placement = shown.option().mics().get(mic.getAttribute("class").startsWith("one") ? 0 : 1);
                        if (placement.nullDegrees() != null && Math.abs(apart - placement.nullDegrees()) < 0.5) {
                            checked++;
                            facing = 0;
                            break;
                        }
                        facing = Double.NaN;
                    }
                }
                assertFalse(Double.isNaN(facing), shown.name() + ": a null ray that is none of a microphone");
            }
        }
        assertTrue(checked > 250, "only " + checked);
    }

    @Test
    void fromAboveANeighbourIsWhereTheMicrophoneHearsItFrom() {
        int checked = 0;
        for (Shown shown : ALL) {
            if (!shown.above() || shown.question().neighbours().isEmpty()) {
                continue;
            }
            SetUp setUp = shown.setUp();
            for (Stood mic : setUp.inAir()) {
                View.Seen seen = shown.view().seen(setUp, mic);
                boolean alone = !setUp.stereo();
                if (alone && seen.aimDegrees() != null) {
                    for (Neighbour neighbour : shown.question().neighbours()) {
                        double heard = folded(neighbour.angleDegrees() + mic.placement().aimDegrees());
                        assertEquals(heard, folded(seen.aimDegrees() - seen.neighbourDegrees(neighbour.angleDegrees())), 1e-6, shown.name());
                        checked++;
                    }
                }
            }
        }
        assertTrue(checked > 150, "only " + checked);
    }

    @Test
    void whatItSaysNamesEverythingThatIsShown() {
        for (Shown shown : ALL) {
            for (Reader reader : List.of(Reader.METRIC, IMPERIAL)) {
                Drawing drawing = shown.drawing(reader);
                String says = drawing.says();
                for (Placement mic : shown.option().mics()) {
                    assertTrue(says.contains(mic.name()), shown.name() + ": " + mic.name());
                }
                for (Placement mic : air(shown.option())) {
                    assertTrue(says.contains(reader.distance(mic.distanceM())), shown.name() + ": " + reader.distance(mic.distanceM()) + " is not in " + says);
                }
                if (!shown.setUp().inAir().isEmpty()) {
                    for (String label : labels(drawing)) {
                        if (label.endsWith("\u00b0") && !label.contains(",")) {
                            assertTrue(says.contains(label.replace("\u00b0", " degrees")), shown.name() + ": " + label + " is not in " + says);
                        }
                    }
                    for (Stood mic : shown.setUp().inAir()) {
                        for (KeepClear clear : mic.position().keepClear()) {
                            assertTrue(says.contains("Keep clear " + reader.distance(clear.distanceM()) + " for " + clear.of()), shown.name());
                        }
                    }
                    String written = String.join(" ", labels(drawing));
                    for (Placement mic : air(shown.option())) {
                        if (!shown.above() && mic.distanceM() > 0) {
                            assertTrue(written.contains(reader.distance(mic.distanceM())), shown.name() + ": " + reader.distance(mic.distanceM()) + " is not in " + written);
                        }
                    }
                    if (shown.above()) {
                        for (SetUp.Beside beside : shown.setUp().beside()) {
                            assertTrue(written.contains(beside.name()), shown.name() + ": " + beside.name() + " is not in " + written);
                        }
                        for (SetUp.Beside beside : shown.setUp().beside()) {
                            assertTrue(says.contains(beside.name() + " is " + reader.distance(beside.distanceM())), shown.name());
                        }
                    }
                }
            }
        }
    }

    @Test
    void noMicrophoneLiesInAZoneThatIsDrawn() {
        int zones = 0;
        for (Shown shown : ALL) {
            Element svg = parsed(shown.drawing(Reader.METRIC));
            for (Element zone : elements(svg)) {
                if (zone.getTagName().equals("circle") && zone.getAttribute("class").equals("keep-clear")) {
                    zones++;
                    for (Element mic : elements(svg)) {
                        if (mic.getTagName().equals("g") && mic.getAttribute("class").endsWith(" mic")) {
                            double[] at = numbers(mic.getAttribute("transform"));
                            double apart = Math.hypot(at[0] - number(zone, "cx"), at[1] - number(zone, "cy"));
                            assertTrue(apart >= number(zone, "r") - 0.5, shown.name() + ": " + apart + " in " + number(zone, "r"));
                        }
                    }
                }
            }
        }
        assertTrue(zones > 40, "only " + zones);
    }

    @Test
    void whatIsElsewhereIsSaidAndNotDrawn() {
        int checked = 0;
        for (Shown shown : ALL) {
            for (Stood mic : shown.setUp().inAir()) {
                for (KeepClear clear : mic.position().keepClear()) {
                    if (List.of("the music stand", "the conductor", "the lid prop").contains(clear.of())) {
                        String said = "Keep clear " + Reader.METRIC.distance(clear.distanceM()) + " for " + clear.of() + ", not drawn.";
                        assertTrue(shown.drawing(Reader.METRIC).says().contains(said), shown.name() + ": " + said);
                        checked++;
                    }
                }
            }
        }
        assertTrue(checked > 6, "only " + checked);
    }

    @Test
    void noMicrophoneLooksAcrossTheLineOfTheOther() {
        List<String> crossed = new ArrayList<>();
        int pairs = 0;
        for (Shown shown : ALL) {
            List<Stood> mics = shown.setUp().inAir();
            if (shown.above() && mics.size() == 2 && !shown.setUp().asOne()) {
                pairs++;
                Standpoint one = mics.get(0).standpoint();
                Standpoint two = mics.get(1).standpoint();
                if (side(one, two.place()) * side(one, two.surface()) < -1e-9 && side(two, one.place()) * side(two, one.surface()) < -1e-9) {
                    crossed.add(shown.name());
                }
            }
        }
        assertTrue(pairs > 50, "only " + pairs);
        assertEquals(List.of(), crossed);
    }

    /** On which side of the line of a microphone a point lies, from above. */
    private static double side(Standpoint at, Point point) {
        Point line = at.place().minus(at.surface());
        Point to = point.minus(at.surface());
        return line.forwardM() * to.leftM() - line.leftM() * to.forwardM();
    }

    @Test
    void aPairForAGroupStandsOnItsCentreLine() {
        int checked = 0;
        for (Shown shown : ALL) {
            SetUp setUp = shown.setUp();
            boolean group = setUp.body().shape() == pairwright.model.BodyShape.GROUP && setUp.body().axisTurnDegrees() == null;
            Stood first = setUp.mics().get(0);
            if (group && setUp.stereo() && setUp.asOne() && first.position().side() == pairwright.model.Side.FRONT && first.position().spot() == null) {
                assertEquals(0, first.standpoint().place().leftM(), 1e-9, shown.name());
                assertEquals(first.capsule().leftM(), -setUp.mics().get(1).capsule().leftM(), 1e-9, shown.name());
                checked++;
            }
        }
        assertTrue(checked > 6, "only " + checked);
    }

    @Test
    void ofASpacedPairOverTwoDrumsEachHasItsOwnDrum() {
        Shown congas = ALL.stream().filter(shown -> shown.question().source().equals("congas") && shown.option().technique() != null && shown.option().technique().equals("spaced-pair")).findFirst()
                .orElseThrow();
        List<Stood> mics = congas.setUp().mics();
        assertTrue(mics.get(0).standpoint().surface().leftM() > 0.1, mics.toString());
        assertEquals(mics.get(0).standpoint().surface().leftM(), -mics.get(1).standpoint().surface().leftM(), 1e-9);
        assertEquals(mics.get(0).capsule().leftM(), -mics.get(1).capsule().leftM(), 1e-9);
    }

    @Test
    void fromTheSideANeighbourIsDrawnOnlyWhereItIsInThePlaneOfThePicture() {
        int left = 0;
        for (Shown shown : ALL) {
            if (!shown.above() && !shown.setUp().inAir().isEmpty()) {
                View.Seen mic = shown.view().seen(shown.setUp(), shown.setUp().inAir().get(0));
                Drawing drawing = shown.drawing(Reader.METRIC);
                for (SetUp.Beside beside : shown.setUp().beside()) {
                    Point sight = mic.mic().sight();
                    double toward = (sight.alongFloorM() < 1e-3 ? 180 : sight.leftDegrees()) - beside.angleDegrees();
                    double offTheSidewaysLine = Math.abs(90 - folded(toward));
                    boolean inPlane = shown.view().fromBehind() ? offTheSidewaysLine < 31 : offTheSidewaysLine > 59;
                    boolean drawn = drawing.says().contains(beside.name() + " is ");
                    assertTrue(inPlane || !drawn, shown.name() + ": " + beside.name() + " at " + toward);
                    if (!drawn) {
                        assertTrue(drawing.says().contains("Drawn from above only: ") && drawing.says().contains(beside.name()), shown.name());
                        left++;
                    }
                }
            }
        }
        assertTrue(left > 300, "only " + left);
    }

    @Test
    void bellowsAreSeenEndOnWhereTheMicrophoneIsInFront() {
        int endOn = 0;
        int across = 0;
        for (Shown shown : ALL) {
            if (!shown.above() && shown.setUp().body().shape() == pairwright.model.BodyShape.SQUEEZE_BOX) {
                Standpoint at = shown.setUp().inAir().get(0).standpoint();
                boolean atASide = Math.abs(at.leansLeftM()) > Math.abs(at.place().forwardM() - at.surface().forwardM());
                assertEquals(atASide, shown.view().fromBehind(), shown.name());
                across += atASide ? 1 : 0;
                endOn += atASide ? 0 : 1;
            }
        }
        assertTrue(across > 0 && endOn > 0, across + " across, " + endOn + " end-on");
    }

    @Test
    void aPopScreenIsDrawnWhereTheCatalogueNamesOne() {
        int screens = 0;
        for (Shown shown : ALL) {
            Drawing drawing = shown.drawing(Reader.METRIC);
            boolean named = shown.setUp().inAir().stream().anyMatch(mic -> mic.position().name().contains("pop screen"));
            assertEquals(named, drawing.svg().contains("pop-screen"), shown.name());
            assertEquals(named, drawing.says().contains("A pop screen stands half way"), shown.name());
            screens += named ? 1 : 0;
        }
        assertTrue(screens > 4, "only " + screens);
    }

    @Test
    void aNullThatLiesOutOfThePictureIsSaidToBeInTheOther() {
        int elsewhere = 0;
        for (Shown shown : ALL) {
            View other = View.of(shown.setUp(), !shown.above());
            String says = shown.drawing(Reader.METRIC).says();
            for (Stood mic : shown.setUp().inAir()) {
                boolean here = shown.view().seen(shown.setUp(), mic).showsNulls();
                boolean there = other.seen(shown.setUp(), mic).showsNulls();
                if (!here && there) {
                    assertTrue(says.contains(shown.above() ? ": drawn from the side." : ": drawn from above."), shown.name() + ": " + says);
                    elsewhere++;
                }
            }
        }
        assertTrue(elsewhere > 50, "only " + elsewhere);
    }

    @Test
    void aKickDrumThatIsMikedInsideHasAPort() {
        Shown kick = ALL.stream().filter(shown -> !shown.above() && shown.question().source().equals("kick-drum")).findFirst().orElseThrow();
        assertTrue(kick.drawing(Reader.METRIC).says().contains("Its front head has a port."));
        Outline outline = BodyFromSide.of(kick.setUp().source(), kick.setUp().body(), false);
        double frontM = outline.mostX();
        double heightM = kick.setUp().body().heightM();
        // nothing of the shell lies on the front plane where the port is
        for (Outline.Line line : outline.lines()) {
            for (int i = 0; line.kind() == Outline.Kind.BODY && i < line.xy().length; i += 2) {
                int next = (i + 2) % line.xy().length;
                boolean front = line.xy()[i] == frontM && line.xy()[next] == frontM;
                assertFalse(front && (line.xy()[i + 1] - heightM) * (line.xy()[next + 1] - heightM) < 0);
            }
        }
    }

    @Test
    void twoThatLieOnEachOtherAreNumberedTogether() {
        Shown pair = ALL.stream().filter(shown -> !shown.above() && shown.question().source().equals("choir") && shown.setUp().stereo() && shown.setUp().asOne()).findFirst().orElseThrow();
        List<String> labels = labels(pair.drawing(Reader.METRIC));
        assertTrue(labels.contains("1 and 2"), labels.toString());
        assertEquals(1, labels.stream().filter("2"::equals).count(), "only in the legend: " + labels);
    }

    @Test
    void twoMicrophonesAreToldApartByNumberFillAndDash() {
        Shown pair = ALL.stream().filter(shown -> shown.above() && air(shown.option()).size() == 2).findFirst().orElseThrow();
        Element svg = parsed(pair.drawing(Reader.METRIC));
        Element one = classed(svg, "one polar");
        Element two = classed(svg, "two polar");
        assertEquals("", one.getAttribute("stroke-dasharray"));
        assertFalse(two.getAttribute("stroke-dasharray").isEmpty());
        assertEquals(List.of("1", "2"), Stream.of("1", "2").filter(labels(pair.drawing(Reader.METRIC))::contains).toList());
    }

    @Test
    void aSourceOnALeadIsAWayOfBoxesWithoutAPattern() {
        Shown lead = ALL.stream().filter(shown -> shown.question().source().equals("bass-lead")).findFirst().orElseThrow();
        Drawing drawing = lead.drawing(Reader.METRIC);
        assertFalse(drawing.svg().contains("polar"));
        assertTrue(labels(drawing).contains("preamplifier"));
        assertTrue(labels(drawing).stream().anyMatch(text -> text.equals("phantom on") || text.equals("phantom off")));
        assertTrue(drawing.says().contains("phantom o"), drawing.says());
    }

    @Test
    void namesOfAHouseAreEscaped() {
        String hostile = "<script>\"&alert('x')</script>";
        Shown shown = ALL.stream().filter(one -> one.question().source().equals("trumpet") && one.above()).findFirst().orElseThrow();
        Source old = shown.catalogue().sources().get("trumpet");
        Source named = new Source(old.id(), hostile, old.family(), old.says(), old.words(), old.signal(), old.level(), old.lead(), old.spectrumDb(), old.fundamentalHz(), old.attack(),
                old.crestDb(), old.sizeM(), null, old.directivityIndexDb(), old.wide(), old.care(), old.ways(), old.positions(), old.habits(), old.pairs(), old.confidence(), old.basis());
        Catalogue house = new Catalogue(shown.catalogue().mics(), java.util.Map.of("trumpet", named), shown.catalogue().rooms(), shown.catalogue().characters(),
                shown.catalogue().techniques(), shown.catalogue().complaints(), shown.catalogue().grades(), shown.catalogue().tasks(), shown.catalogue().customs(), shown.catalogue().leads(), shown.catalogue().lessons(), shown.catalogue().words(), "house");
        for (boolean above : new boolean[] {true, false}) {
            Drawing drawing = new Shown(house, shown.question(), shown.option(), above).drawing(Reader.METRIC);
            assertFalse(drawing.svg().contains("<script"), drawing.svg());
            assertTrue(parsed(drawing).getElementsByTagName("title").item(0).getTextContent().startsWith(hostile));
        }
    }

    private static List<Placement> air(Option option) {
        return option.mics().stream().filter(mic -> mic.mount() != Mount.LEAD && mic.mount() != Mount.CONTACT).toList();
    }

    private static double folded(double degrees) {
        return Math.abs(((degrees % 360) + 540) % 360 - 180);
    }

    /** A line of the picture in metres, by the scale bar beside it. */
    private static double drawnM(Element svg, Element line) {
        Element bar = classed(svg, "scale");
        String barSays = null;
        for (Element element : elements(svg)) {
            if (element == bar) {
                barSays = "";
            } else if ("".equals(barSays) && element.getTagName().equals("text")) {
                barSays = element.getTextContent();
            }
        }
        double barM = Double.parseDouble(barSays.split(" ")[0]) / (barSays.endsWith(" cm") ? 100 : 1);
        return length(line) / length(bar) * barM;
    }

    private static double length(Element line) {
        return Math.hypot(number(line, "x2") - number(line, "x1"), number(line, "y2") - number(line, "y1"));
    }

    private static double number(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }

    private static List<String> labels(Drawing drawing) {
        return elements(parsed(drawing)).stream().filter(one -> one.getTagName().equals("text")).map(Element::getTextContent).toList();
    }

    /** Left, top, right, bottom of a text. */
    private static double[] box(Element text) {
        double size = number(text, "font-size");
        double wide = Type.width(text.getTextContent(), size);
        double x = number(text, "x") - (text.getAttribute("text-anchor").equals("middle") ? wide / 2 : 0);
        double y = number(text, "y");
        return new double[] {x, y - size * 0.8, x + wide, y + size * 0.2};
    }

    private static Element classed(Element svg, String style) {
        return elements(svg).stream().filter(one -> (" " + one.getAttribute("class") + " ").contains(" " + style + " ")).findFirst().orElse(null);
    }

    private static double[] numbers(String text) {
        Matcher matcher = NUMBER.matcher(text);
        List<Double> found = new ArrayList<>();
        while (matcher.find()) {
            found.add(Double.parseDouble(matcher.group()));
        }
        return found.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Whether what is drawn lies in the box; what is cut off at the frame, and what is drawn in its own measure, does not count. */
    private static boolean within(Element element, Element svg, double width, double height) {
        for (Element up = element; up != svg; up = (Element) up.getParentNode()) {
            if (up.hasAttribute("clip-path") || up.hasAttribute("transform") && up != element || up.getTagName().equals("defs")) {
                return true;
            }
        }
        List<double[]> points = new ArrayList<>();
        for (String[] names : new String[][] {{"x1", "y1"}, {"x2", "y2"}, {"cx", "cy"}, {"x", "y"}}) {
            if (element.hasAttribute(names[0]) && !element.hasAttribute("transform")) {
                points.add(new double[] {number(element, names[0]), number(element, names[1])});
            }
        }
        if (element.hasAttribute("transform")) {
            points.add(numbers(element.getAttribute("transform")));
        } else if (element.getTagName().equals("path") && element.getAttribute("class").endsWith("polar")) {
            double[] all = numbers(element.getAttribute("d"));
            for (int i = 0; i + 1 < all.length; i += 2) {
                points.add(new double[] {all[i], all[i + 1]});
            }
        }
        return points.stream().allMatch(at -> at[0] >= 0 && at[0] <= width && at[1] >= 0 && at[1] <= height);
    }

    private static List<Element> elements(Element svg) {
        NodeList all = svg.getElementsByTagName("*");
        List<Element> list = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            list.add((Element) all.item(i));
        }
        return list;
    }

    private static Element parsed(Drawing drawing) {
        try {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(drawing.svg()))).getDocumentElement();
        } catch (Exception wrong) {
            throw new AssertionError(wrong.getMessage() + " in " + drawing.svg(), wrong);
        }
    }
}
