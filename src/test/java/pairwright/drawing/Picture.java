package pairwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A drawing read back: its elements, where its texts stand, and which value a place in it stands for. */
final class Picture {
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
    private final Drawing drawing;
    private final Element root;
    private final double width;
    private final double height;

    /** A text and the room it takes. */
    record Label(String text, double left, double top, double right, double bottom) {
        boolean meets(Label other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }

        double middleX() {
            return (left + right) / 2;
        }
    }

    private Picture(Drawing drawing, Element root) {
        this.drawing = drawing;
        this.root = root;
        String[] box = root.getAttribute("viewBox").split(" ");
        this.width = Double.parseDouble(box[2]);
        this.height = Double.parseDouble(box[3]);
    }

    static Picture of(Drawing drawing) {
        try {
            return new Picture(drawing, DocumentBuilderFactory.newInstance().newDocumentBuilder()
                    .parse(new InputSource(new StringReader(drawing.svg()))).getDocumentElement());
        } catch (Exception broken) {
            throw new AssertionError("not well formed: " + drawing.svg(), broken);
        }
    }

    List<Element> all(String name) {
        List<Element> found = new ArrayList<>();
        NodeList nodes = root.getElementsByTagName(name);
        for (int i = 0; i < nodes.getLength(); i++) {
            found.add((Element) nodes.item(i));
        }
        return found;
    }

    List<Element> all(String name, String style) {
        return all(name).stream().filter(element -> List.of(element.getAttribute("class").split(" ")).contains(style)).toList();
    }

    List<Label> labels() {
        return all("text").stream().map(Picture::label).toList();
    }

    Label label(String text) {
        return labels().stream().filter(label -> label.text().equals(text)).findFirst().orElseThrow(() -> new AssertionError("no \"" + text + "\" in " + labels()));
    }

    private static Label label(Element text) {
        double size = Double.parseDouble(inherited(text, "font-size"));
        assertTrue(size >= 11, "too small to read: " + text.getTextContent());
        double wide = Type.width(text.getTextContent(), size);
        String anchor = inherited(text, "text-anchor");
        double x = number(text, "x");
        double left = anchor.equals("end") ? x - wide : anchor.equals("middle") ? x - wide / 2 : x;
        double baseline = number(text, "y");
        return new Label(text.getTextContent(), left, baseline - size * 0.72, left + wide, baseline + size * 0.05);
    }

    private static String inherited(Element element, String attribute) {
        for (Node node = element; node instanceof Element one; node = node.getParentNode()) {
            if (one.hasAttribute(attribute)) {
                return one.getAttribute(attribute);
            }
        }
        return "";
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /** The numbers of a path, in their order. */
    static double[] path(Element path) {
        Matcher matcher = NUMBER.matcher(path.getAttribute("d"));
        List<Double> numbers = new ArrayList<>();
        while (matcher.find()) {
            numbers.add(Double.parseDouble(matcher.group()));
        }
        return numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Where a value stands between two numbers that are written beside a straight axis. */
    static double value(double at, double oneAt, double one, double otherAt, double other) {
        return one + (at - oneAt) / (otherAt - oneAt) * (other - one);
    }

    /** What every picture has to be: named, described, all of it within its frame, no text on another. */
    Picture whole() {
        assertEquals("img", root.getAttribute("role"));
        Element title = all("title").get(0);
        Element desc = all("desc").get(0);
        assertEquals(title.getAttribute("id") + " " + desc.getAttribute("id"), root.getAttribute("aria-labelledby"));
        assertEquals(drawing.says(), desc.getTextContent());
        assertTrue(!title.getTextContent().isBlank() && desc.getTextContent().endsWith("."), drawing.says());
        assertTrue(!drawing.svg().contains("NaN") && !drawing.svg().contains("Infinity") && !drawing.says().contains("NaN") && !drawing.says().contains("\u221e"),
                drawing.says());
        assertTrue(!drawing.svg().contains(" style="), "the content security policy allows no style of an element");
        List<Label> labels = labels();
        for (int i = 0; i < labels.size(); i++) {
            Label label = labels.get(i);
            within(label.text(), label.left(), label.top());
            within(label.text(), label.right(), label.bottom());
            for (Label other : labels.subList(i + 1, labels.size())) {
                assertTrue(!label.meets(other), "\"" + label.text() + "\" meets \"" + other.text() + "\" in " + drawing.says());
            }
        }
        for (Element circle : all("circle")) {
            double r = number(circle, "r");
            within("circle", number(circle, "cx") - r, number(circle, "cy") - r);
            within("circle", number(circle, "cx") + r, number(circle, "cy") + r);
        }
        for (Element rect : all("rect")) {
            within("rect", number(rect, "x"), number(rect, "y"));
            within("rect", number(rect, "x") + number(rect, "width"), number(rect, "y") + number(rect, "height"));
        }
        for (Element path : all("path")) {
            if (!path.getAttribute("d").contains("A")) {
                double[] numbers = path(path);
                for (int i = 0; i < numbers.length; i += 2) {
                    within("path", numbers[i], numbers[i + 1]);
                }
            }
        }
        return this;
    }

    private void within(String what, double x, double y) {
        assertTrue(x >= -0.01 && x <= width + 0.01 && y >= -0.01 && y <= height + 0.01,
                what + " leaves the picture at " + x + ", " + y + " of " + width + ", " + height + ": " + drawing.says());
    }
}
