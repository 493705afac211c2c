package pairwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Labels keep off the lines of a source where there is room beside. */
class LabelsTest {
    private static final Pattern Y = Pattern.compile("<text[^>]* y=\"([0-9.]+)\"");

    @Test
    void aLabelKeepsOffAnOutlineWhereThereIsRoomBeside() {
        Labels labels = new Labels(200, 200);
        // a level line right where the label would stand
        labels.outline(0, 90, 200, 90);
        assertTrue(labels.put("10 cm", "label", 100, 100, 90));
        double base = baseline(labels);
        assertTrue(base + Type.SIZE * 0.2 < 89 || base - Type.SIZE * 0.8 > 91, "on the line at " + base);
    }

    @Test
    void aLabelStandsOnAnOutlineBeforeItIsLeftOut() {
        Labels labels = new Labels(200, 200);
        for (double y = 0; y < 200; y += 8) {
            labels.outline(0, y, 200, y);
        }
        assertTrue(labels.put("10 cm", "label", 100, 100, 90));
        Labels full = new Labels(200, 200);
        full.keepFree(new Labels.Box(0, 0, 200, 200));
        assertFalse(full.put("10 cm", "label", 100, 100, 90));
        assertEquals(0, full.without().size());
    }

    private static double baseline(Labels labels) {
        Svg svg = new Svg("k", 200, 200, "Title", "Says.");
        labels.write(svg);
        Matcher matcher = Y.matcher(svg.drawing().svg());
        assertTrue(matcher.find());
        return Double.parseDouble(matcher.group(1));
    }
}
