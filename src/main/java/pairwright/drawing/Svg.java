package pairwright.drawing;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes one SVG. Colours and strokes come as classes, which the style sheet of the page sets, and as plain attributes beside them, which
 * hold where there is no style sheet. Labels and values are escaped here and nowhere else.
 */
final class Svg {
    /** How wide plots are: on a narrow phone a unit is a little less than a pixel. */
    static final double PLOT_WIDTH = 360;

    private final StringBuilder out = new StringBuilder(4096);
    private final Deque<String> open = new ArrayDeque<>();
    private final String says;

    /**
     * @param key unlike that of any other picture of the same page
     * @param width in units of the picture
     * @param height in units of the picture
     * @param title what it is, in a few words
     * @param says what it shows, in sentences
     */
    Svg(String key, double width, double height, String title, String says) {
        this.says = says;
        open("svg", "xmlns", "http://www.w3.org/2000/svg", "class", "drawing", "viewBox", "0 0 " + number(width) + " " + number(height), "role", "img",
                "aria-labelledby", key + "-title " + key + "-says");
        leafText("title", title, "id", key + "-title");
        leafText("desc", says, "id", key + "-says");
    }

    /** Opens an element; attributes as name and value in turn, a value that is null leaves its attribute out. */
    Svg open(String name, Object... attributes) {
        start(name, attributes);
        out.append('>');
        open.push(name);
        return this;
    }

    /** Closes the element opened last. */
    Svg close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    /** An element without content. */
    Svg leaf(String name, Object... attributes) {
        start(name, attributes);
        out.append("/>");
        return this;
    }

    /** An element with a text in it. */
    Svg leafText(String name, String text, Object... attributes) {
        start(name, attributes);
        out.append('>').append(escaped(text)).append("</").append(name).append('>');
        return this;
    }

    /** The whole picture, all elements closed. */
    Drawing drawing() {
        while (!open.isEmpty()) {
            close();
        }
        return new Drawing(out.toString(), says);
    }

    private void start(String name, Object... attributes) {
        out.append('<').append(name);
        for (int i = 0; i < attributes.length; i += 2) {
            if (attributes[i + 1] != null) {
                String value = attributes[i + 1] instanceof Number number ? number(number.doubleValue()) : attributes[i + 1].toString();
                out.append(' ').append(attributes[i]).append("=\"").append(escaped(value)).append('"');
            }
        }
    }

    /** A coordinate, to a hundredth, always with a point. */
    static String number(double value) {
        StringBuilder text = new StringBuilder(8);
        append(text, value);
        return text.toString();
    }

    /** The same at the end of a longer text; by hand, since a curve has hundreds of them. */
    static void append(StringBuilder text, double value) {
        if (!(Math.abs(value) < 1e9)) {
            throw new IllegalArgumentException("a coordinate must be a number below 1e9, but was " + value);
        }
        long hundredths = Math.round(Math.abs(value) * 100);
        if (value < 0 && hundredths > 0) {
            text.append('-');
        }
        text.append(hundredths / 100);
        long rest = hundredths % 100;
        if (rest > 0) {
            text.append('.').append(rest / 10);
            if (rest % 10 > 0) {
                text.append(rest % 10);
            }
        }
    }

    static String escaped(String text) {
        StringBuilder safe = new StringBuilder(text.length());
        text.codePoints().forEach(point -> {
            switch (point) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> {
                    boolean halfOrNone = point >= 0xd800 && point <= 0xdfff || point == 0xfffe || point == 0xffff;
                    if (point >= 0x20 && !halfOrNone || point == '\n' || point == '\t') {
                        safe.appendCodePoint(point);
                    }
                }
            }
        });
        return safe.toString();
    }
}
