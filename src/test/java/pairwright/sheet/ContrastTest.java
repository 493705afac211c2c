package pairwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every colour of text can be read on every ground it may stand on: WCAG 2.2, 1.4.3, from the style sheet itself. */
class ContrastTest {
    private static final Pattern BLOCK = Pattern.compile("(:root[^{,]*)\\{([^}]*)}");
    private static final Pattern COLOUR = Pattern.compile("--([a-z0-9-]+): (#[0-9a-f]{3}(?:[0-9a-f]{3})?);");
    private static final double TEXT = 4.5;
    private static final List<String> GROUNDS = List.of("paper", "panel", "accent-soft", "danger-soft", "care-soft", "note-soft", "room");
    private static final List<String> INKS = List.of("ink", "ink-2", "accent", "danger", "care", "note", "one", "two", "sum", "wanted", "good", "bad");
    private static final Set<String> FAINT = Set.of("line");

    private final String css = css("base.css");
    private final Map<String, String> light = colours(css, ":root ");
    private final Map<String, String> dark = colours(css, ":root[data-theme=\"dark\"] ");

    @Test
    void everyColourIsAnInkAGroundOrAHairline() {
        for (String name : light.keySet()) {
            assertTrue(GROUNDS.contains(name) || INKS.contains(name) || FAINT.contains(name), name + " is in no list of this test");
        }
        assertEquals(GROUNDS.size() + INKS.size() + FAINT.size(), light.size());
        assertEquals(light.keySet(), dark.keySet());
    }

    @Test
    void darkIsTheSameWhetherTheDeviceOrTheReaderChose() {
        assertEquals(dark, colours(css, ":root:not([data-theme=\"light\"]) "));
    }

    @Test
    void allTextIsReadableOnAllGrounds() {
        assertEquals(List.of(), tooFaint(light, "light"));
        assertEquals(List.of(), tooFaint(dark, "dark"));
    }

    @Test
    void paperColourOnTheAccentAndOnInkIsReadableAsOnAButton() {
        for (Map<String, String> colours : List.of(light, dark)) {
            assertTrue(contrast(colours.get("paper"), colours.get("accent")) >= TEXT);
            assertTrue(contrast(colours.get("paper"), colours.get("ink")) >= TEXT);
        }
    }

    @Test
    void onlyTheTokensHaveColours() {
        for (String name : List.of("base.css", "ask.css", "read.css", "numbers.css", "suggest.css", "locker.css", "locker-time.css", "locker-desk.css", "session.css", "plan.css", "lab.css")) {
            String rest = BLOCK.matcher(css(name)).replaceAll("");
            Matcher raw = Pattern.compile("#[0-9a-fA-F]{3,8}\\b(?=[^{}]*})|\\brgba?\\(|\\bhsla?\\(|gradient\\(|box-shadow|text-shadow").matcher(rest);
            assertTrue(!raw.find(), () -> name + " has a colour or an effect of its own: " + raw.group());
        }
    }

    @Test
    void theReckoningItselfIsThatOfTheStandard() {
        assertEquals(21, contrast("#000000", "#ffffff"), 1e-9);
        assertEquals(4.54, contrast("#767676", "#ffffff"), 0.005);
    }

    private static List<String> tooFaint(Map<String, String> colours, String when) {
        List<String> found = new ArrayList<>();
        for (String ink : INKS) {
            for (String ground : GROUNDS) {
                double contrast = contrast(colours.get(ink), colours.get(ground));
                if (contrast < TEXT) {
                    found.add(String.format("%s: --%s on --%s is %.2f : 1", when, ink, ground, contrast));
                }
            }
        }
        return found;
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String colour) {
        double[] weight = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double part = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            sum += weight[i] * (part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    private static Map<String, String> colours(String css, String selector) {
        Map<String, String> found = new LinkedHashMap<>();
        Matcher blocks = BLOCK.matcher(css);
        while (blocks.find()) {
            if (blocks.group(1).equals(selector) && found.isEmpty()) {
                Matcher colour = COLOUR.matcher(blocks.group(2));
                while (colour.find()) {
                    found.put(colour.group(1), colour.group(2));
                }
            }
        }
        return found;
    }

    private static String css(String name) {
        try (InputStream in = Assets.class.getResourceAsStream("/pairwright/assets/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
