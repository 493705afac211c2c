package pairwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** Exercises in a browser. */
@InBrowser
class LabTest {
    private static final String MEND = "/lab/practice/mend/1/11";
    private static final Pattern LEAF = Pattern.compile("/Type\\s*/Page\\b(?!s)");
    private static final String CURVES = "/lab/practice/curves/3/2";

    private static boolean fits(Browser browser) {
        return (Boolean) browser.js("document.documentElement.scrollWidth <= innerWidth");
    }

    @Test
    void anExerciseIsAnsweredAndMarkedByKeyboardAndSoIsAnotherOne(Browser browser) {
        browser.open(MEND);
        browser.find("input[type=radio]").sendKeys(Keys.SPACE);
        List<?> boxes = browser.all("input[type=checkbox]");
        browser.all("input[type=checkbox]").get(0).sendKeys(Keys.SPACE);
        browser.all("input[type=checkbox]").get(boxes.size() - 1).sendKeys(Keys.SPACE);
        browser.find("form.exercise button").sendKeys(Keys.ENTER);
        browser.until("it is marked", () -> !browser.all("#marked").isEmpty());
        assertTrue(browser.at().contains("a.first=a") && browser.at().contains("mark=yes"), browser.at());
        assertTrue(browser.find("input[type=radio]").isSelected(), "what was answered stays in sight");
        assertTrue(browser.all(".checks tbody tr").size() >= 3);
        Axe.assertNoViolations(browser);
        browser.find(".marked .button.main").sendKeys(Keys.ENTER);
        browser.until("there is another", () -> browser.at().equals("/lab/practice/mend/1/12"));
        assertTrue(browser.all("#marked, input:checked").isEmpty(), "nothing is answered yet");
    }

    @Test
    void withoutScriptItIsTheSame(Browser browser) {
        browser.withoutScript();
        browser.open(MEND);
        browser.find("input[type=radio]").sendKeys(Keys.SPACE);
        browser.find("form.exercise button").sendKeys(Keys.ENTER);
        browser.until("it is marked", () -> !browser.all("#marked").isEmpty());
        assertTrue(browser.find("input[type=radio]").isSelected());
    }

    @Test
    void whatIsWrongIsReadFirstAndLeadsToItsQuestion(Browser browser) {
        browser.open("/lab/practice/reckon/1/11");
        browser.find("fieldset.lab-asked input").sendKeys("far" + Keys.ENTER);
        browser.until("it says so", () -> !browser.all("#answer-faults").isEmpty());
        assertEquals("answer-faults", browser.js("document.activeElement.id"));
        assertEquals("far", browser.find("fieldset.lab-asked input").getDomProperty("value"));
        assertEquals("true", browser.find("fieldset.lab-asked input").getDomAttribute("aria-invalid"));
        Axe.assertNoViolations(browser);
        browser.find("#answer-faults a").sendKeys(Keys.ENTER);
        browser.until("it leads there", () -> "ask-1".equals(browser.js("(document.querySelector(':target') || {}).id")));
    }

    @Test
    void everyExerciseFitsTheSmallestPhone(Browser browser) {
        browser.size(320, 740);
        for (String address : List.of("/lab", MEND, CURVES, CURVES + "?a.set-up-1=a&mark=yes", "/lab/practice/choose/5/3", "/lab/practice/reckon/5/3?a.x=far&mark=yes")) {
            browser.open(address);
            browser.driver().executeScript("document.querySelectorAll('details').forEach(one => { one.open = true; })");
            assertTrue(fits(browser), address + " " + browser.js("document.documentElement.scrollWidth"));
        }
    }

    @Test
    void anExerciseIsPrintedWithItsQuestionsAndWithoutButtons(Browser browser) {
        browser.open(CURVES);
        browser.print();
        assertEquals(5, browser.all("fieldset.lab-asked").stream().filter(one -> one.isDisplayed()).count());
        assertFalse(browser.find("form.exercise button").isDisplayed());
    }

    @Test
    void aPlaceIsPressedInThePictureAndTheFieldsSayTheSame(Browser browser) {
        browser.open("/lab/practice/place/2/3");
        WebElement wall = browser.find(".shown svg [data-px-per-m]");
        WebElement svg = browser.find(".shown svg");
        int wide = wall.getRect().getWidth();
        int high = wall.getRect().getHeight();
        // offsets count from the middle of what is named: the wall is, and the room is as wide as it says
        new Actions(browser.driver()).moveToElement(wall, 0, 0).clickAndHold().moveToElement(wall, wide / 4, 0).release().perform();
        double middleM = Double.parseDouble(wall.getDomAttribute("data-width-m")) / 2;
        assertEquals(middleM, Double.parseDouble(browser.find("[data-axis=x]").getDomProperty("value")), 0.06);
        assertEquals(Double.parseDouble(wall.getDomAttribute("data-depth-m")) / 2, Double.parseDouble(browser.find("[data-axis=y]").getDomProperty("value")), 0.06);
        assertEquals("90", browser.find("[data-axis=aim]").getDomProperty("value"));
        assertTrue(browser.find(".press-said").getText().contains("looks to 90 degrees"), "it is told to a screen reader, " + high);
        assertEquals(1, svg.findElements(By.cssSelector("path.one[d]")).size());
        browser.find("form.exercise button").sendKeys(Keys.ENTER);
        browser.until("it is marked", () -> !browser.all("#marked").isEmpty());
        assertEquals("90", browser.find("[data-axis=aim]").getDomProperty("value"));
        Axe.assertNoViolations(browser);
    }

    @Test
    void aPlaceIsTypedWithoutScriptAsWell(Browser browser) {
        browser.withoutScript();
        browser.open("/lab/practice/place/1/3");
        browser.find("fieldset.lab-asked input[type=text]").sendKeys("45" + Keys.ENTER);
        browser.until("it is marked", () -> !browser.all("#marked").isEmpty());
        assertEquals("45", browser.find("fieldset.lab-asked input[type=text]").getDomProperty("value"));
    }

    @Test
    void exercisesAreMadeForAClassByKeyboardAndHandedIn(Browser browser) {
        browser.open("/lab/exercises/new?benches=2&kind=reckon");
        browser.find("#make button").sendKeys(Keys.ENTER);
        browser.until("they are made", () -> !browser.all("#just-done").isEmpty());
        browser.find("tbody th a").sendKeys(Keys.ENTER);
        browser.until("a bench", () -> browser.at().endsWith("/bench/1"));
        browser.find("fieldset.lab-asked input").sendKeys("3" + Keys.ENTER);
        browser.until("it is handed in", () -> browser.at().endsWith("/bench/1?done=handed-in"));
        assertEquals("3", browser.find("fieldset.lab-asked input").getDomProperty("value"));
    }

    @Test
    void everyPageOfAClassIsForEverybodyAndFitsTheSmallestPhone(Browser browser) {
        for (String address : EveryKind.exercises(browser)) {
            browser.light();
            browser.size(1200, 800);
            browser.open(address);
            Axe.assertNoViolations(browser);
            browser.dark();
            Axe.assertNoViolations(browser);
            browser.size(320, 740);
            browser.driver().executeScript("document.querySelectorAll('details').forEach(one => { one.open = true; })");
            assertTrue(fits(browser), address + " " + browser.js("document.documentElement.scrollWidth"));
        }
    }

    @Test
    void eachBenchHasItsOwnLeafOfEitherPaper(Browser browser) {
        browser.open(EveryKind.exercises(browser).stream().filter(address -> address.endsWith("/handouts")).findFirst().orElseThrow());
        int leaves = browser.all(".leaf").size();
        for (boolean letter : new boolean[] {false, true}) {
            long pages = LEAF.matcher(new String(browser.pdf(letter), StandardCharsets.ISO_8859_1)).results().count();
            assertTrue(pages >= leaves && pages <= 2L * leaves, pages + " pages for " + leaves + " benches");
        }
    }
}
