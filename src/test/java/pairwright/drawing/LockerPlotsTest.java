package pairwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.drawing.Picture.number;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import pairwright.model.MicType;
import pairwright.model.SourceFamily;

/** The two pictures of the locker: use by day, and how many sources it serves. */
class LockerPlotsTest {
    private static final Reader READER = Reader.METRIC;
    private static final YearMonth MARCH = YearMonth.of(2027, 3);
    private static final String LONG = "Large-diaphragm condenser with every pattern there is and a name that never ends at all";

    @Test
    void aCellIsFilledFromBelowByTheShareThatIsTaken() {
        List<Integer> taken = days(MARCH);
        taken.set(2, 1);
        taken.set(3, 1);
        taken.set(8, 4);
        Picture picture = Picture.of(UseDrawing.of(MARCH, List.of(new UseDrawing.Row("Ribbon", 4, taken)), "k", READER)).whole();
        List<Element> cells = picture.all("rect", "grid");
        List<Element> part = picture.all("rect", "one");
        List<Element> full = picture.all("rect", "sum");
        assertEquals(31 + 2, cells.size(), "a cell for each day, and two that say what they mean");
        assertEquals(2 + 1, part.size());
        assertEquals(1 + 1, full.size());
        double tall = number(cells.get(0), "height");
        assertEquals(tall / 4, number(part.get(0), "height"), 0.01);
        assertEquals(number(cells.get(2), "x"), number(part.get(0), "x"), 0.01);
        assertEquals(number(cells.get(2), "y") + tall, number(part.get(0), "y") + number(part.get(0), "height"), 0.02, "from below");
        assertEquals(number(cells.get(8), "x"), number(full.get(0), "x"), 0.01);
        assertEquals(tall, number(full.get(0), "height"), 0.01);
        for (String monday : List.of("1", "8", "15", "22", "29")) {
            double middle = number(cells.get(Integer.parseInt(monday) - 1), "x") + number(cells.get(0), "width") / 2;
            assertEquals(middle, picture.label(monday).middleX(), 1);
        }
    }

    @Test
    void itsWordsSayOfEveryDayWhatTheCellsShow() {
        List<Integer> taken = days(MARCH);
        taken.set(2, 1);
        taken.set(3, 1);
        taken.set(8, 2);
        String says = UseDrawing.of(MARCH, List.of(new UseDrawing.Row("Ribbon", 2, taken), new UseDrawing.Row("Boundary", 1, days(MARCH))), "k", READER).says();
        assertEquals("Taken in March 2027. Ribbon, of 2: 1 on days 3 to 4, all on day 9, else none. Boundary, of 1: none on any day.", says);
    }

    @Test
    void anyMonthOfEveryTypeOfTheCatalogueCanBeDrawn() {
        for (int month = 1; month <= 12; month++) {
            YearMonth one = YearMonth.of(2028, month);
            List<UseDrawing.Row> rows = new ArrayList<>();
            for (MicType mic : Asked.catalogue().mics().values()) {
                int units = rows.size() % 5 * 300;
                rows.add(new UseDrawing.Row(mic.name(), units, Collections.nCopies(one.lengthOfMonth(), Math.min(units, rows.size()))));
            }
            rows.add(new UseDrawing.Row(LONG, 5000, Collections.nCopies(one.lengthOfMonth(), 6000)));
            Picture.of(UseDrawing.of(one, rows, "k", new Reader(true, Locale.GERMANY))).whole();
        }
        Picture.of(UseDrawing.of(MARCH, List.of(), "k", READER)).whole();
    }

    @Test
    void aBarIsAsLongAsItHasSourcesAndItsPartsAreToldApartWithoutColour() {
        Picture picture = Picture.of(CoverageDrawing.of(List.of(new CoverageDrawing.Bar("Brass", 6, 3, 1), new CoverageDrawing.Bar("Voices", 0, 0, 5)), "k", READER)).whole();
        List<Element> good = picture.all("rect", "good");
        List<Element> bad = picture.all("rect", "bad");
        assertEquals(2 + 2, good.size(), "two that say what they mean, then well and poorly of brass");
        assertEquals(1 + 2, bad.size());
        Element well = good.get(2);
        Element poorly = good.get(3);
        assertEquals(2, (number(well, "width") + 1.5) / (number(poorly, "width") + 1.5), 0.001);
        assertEquals(5, (number(bad.get(2), "width") + 1.5) / (number(bad.get(1), "width") + 1.5), 0.001);
        assertTrue(number(poorly, "x") > number(well, "x") + number(well, "width"), "one beside the other");
        assertTrue(!well.getAttribute("fill").equals("none") && poorly.getAttribute("fill").equals("none") && poorly.getAttribute("stroke-dasharray").isEmpty()
                && !bad.get(1).getAttribute("stroke-dasharray").isEmpty());
        assertEquals(2, picture.all("path", "good").size(), "poorly is hatched, here and where it is explained");
    }

    @Test
    void itsWordsSayEveryNumberThatIsDrawn() {
        Drawing drawing = CoverageDrawing.of(List.of(new CoverageDrawing.Bar("Brass", 6, 3, 1), new CoverageDrawing.Bar("Voices", 0, 0, 5)), "k", READER);
        assertEquals("Sources served, by family. Brass, of 10: 6 well, 3 poorly, 1 not at all. Voices, of 5: 0 well, 0 poorly, 5 not at all.", drawing.says());
        Picture picture = Picture.of(drawing);
        picture.label("6 · 3 · 1");
        picture.label("0 · 0 · 5");
    }

    @Test
    void everyFamilyAndAVeryLongNameCanBeDrawn() {
        List<CoverageDrawing.Bar> bars = new ArrayList<>();
        for (SourceFamily family : SourceFamily.values()) {
            bars.add(new CoverageDrawing.Bar(family.id(), bars.size() % 4, bars.size() % 3, bars.size() % 2));
        }
        bars.add(new CoverageDrawing.Bar(LONG, 120, 30, 2500));
        bars.add(new CoverageDrawing.Bar("None", 0, 0, 0));
        Picture.of(CoverageDrawing.of(bars, "k", new Reader(true, Locale.GERMANY))).whole();
        Picture.of(CoverageDrawing.of(List.of(), "k", READER)).whole();
    }

    private static List<Integer> days(YearMonth month) {
        return new ArrayList<>(Collections.nCopies(month.lengthOfMonth(), 0));
    }
}
