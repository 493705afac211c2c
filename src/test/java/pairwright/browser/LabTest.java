package pairwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** Exercises in a browser. */
@InBrowser
class LabTest {
    private static final String MEND = "/lab/practice/mend/1/11";
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
        browser.find("fieldset.asked input").sendKeys("far" + Keys.ENTER);
        browser.until("it says so", () -> !browser.all("#answer-faults").isEmpty());
        assertEquals("answer-faults", browser.js("document.activeElement.id"));
        assertEquals("far", browser.find("fieldset.asked input").getDomProperty("value"));
        assertEquals("true", browser.find("fieldset.asked input").getDomAttribute("aria-invalid"));
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
        assertEquals(5, browser.all("fieldset.asked").stream().filter(one -> one.isDisplayed()).count());
        assertFalse(browser.find("form.exercise button").isDisplayed());
    }
}
