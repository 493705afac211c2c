package pairwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** The pages of a planned session, in a browser. */
@InBrowser
class PlanTest {
    private static final String AT = "/sessions/" + Barn.SESSION;
    private static final Pattern LEAF = Pattern.compile("/Type\\s*/Page\\b(?!s)");

    private static void planned(Browser browser, String page) {
        browser.open(AT + "/" + page);
        browser.until("it is planned without a click", () -> browser.all("#planned[data-again]").isEmpty());
    }

    private static boolean fits(Browser browser) {
        return (Boolean) browser.js("document.documentElement.scrollWidth <= innerWidth");
    }

    @Test
    void thePlanComesByItselfAndIsTakenByKeyboard(Browser browser) {
        planned(browser, "plan");
        assertFalse(browser.all(".at-seat").isEmpty());
        Axe.assertNoViolations(browser);
        if (!browser.all("form#take button").isEmpty()) {
            browser.find("form#take button").sendKeys(Keys.ENTER);
            browser.until("it says so", () -> !browser.all("#just-done").isEmpty());
        }
        assertTrue(browser.all("form#take").isEmpty(), "what is taken is not to be taken again");
        browser.size(320, 740);
        for (String page : List.of("plan", "bleed", "timing", "check", "replan", "sheets", "sheets/all", "recall")) {
            planned(browser, page);
            assertTrue(fits(browser), page);
        }
    }

    @Test
    void aTickIsRememberedAsItIsSet(Browser browser) {
        planned(browser, "check");
        boolean before = (Boolean) browser.js("document.querySelector('.channel input[name=tick]').checked");
        browser.find(".channel input[name=tick]").sendKeys(Keys.SPACE);
        browser.until("it is kept", () -> before == browser.find(".channel .tick-who").getText().isEmpty());
        planned(browser, "check");
        assertEquals(!before, browser.js("document.querySelector('.channel input[name=tick]').checked"));
        assertFalse(browser.find(".remember").isDisplayed(), "there is nothing to send");
    }

    @Test
    void aTickThatCannotBeSentWaitsAndIsSentAgain(Browser browser) {
        planned(browser, "check");
        browser.js("window.reached = window.fetch, window.fetch = function () { return Promise.reject(new Error('no network')); }, true");
        boolean before = (Boolean) browser.js("document.querySelectorAll('.channel input[name=tick]')[2].checked");
        browser.all(".channel input[name=tick]").get(2).sendKeys(Keys.SPACE);
        browser.until("it says so", () -> browser.find("#check-said").getText().startsWith("One tick is not kept yet"));
        assertEquals(!before, browser.all(".channel input[name=tick]").get(2).isSelected(), "what was ticked stands");
        browser.js("window.fetch = window.reached, true");
        browser.until("it is kept", () -> browser.find("#check-said").getText().isEmpty() && before == browser.all(".channel .tick-who").get(2).getText().isEmpty());
        planned(browser, "check");
        assertEquals(!before, browser.all(".channel input[name=tick]").get(2).isSelected());
    }

    @Test
    void withoutScriptAButtonRemembersThem(Browser browser) {
        planned(browser, "check");
        browser.withoutScript();
        browser.open(AT + "/check");
        List<?> boxes = browser.all(".channel input[name=tick]");
        boolean before = browser.all(".channel input[name=tick]").get(1).isSelected();
        browser.all(".channel input[name=tick]").get(1).sendKeys(Keys.SPACE);
        browser.find(".remember button").sendKeys(Keys.ENTER);
        browser.open(AT + "/check");
        assertEquals(boxes.size(), browser.all(".channel input[name=tick]").size());
        assertEquals(!before, browser.all(".channel input[name=tick]").get(1).isSelected());
    }

    @Test
    void whoIsNotComingIsTickedByKeyboardAndWhatIsToBeDoneStandsFirst(Browser browser) {
        planned(browser, "replan");
        browser.find("input[name=seat][value=bass]").sendKeys(Keys.SPACE);
        browser.find("form.replan button").sendKeys(Keys.ENTER);
        browser.until("it is planned anew", () -> browser.at().contains("seat=bass") && !browser.all(".change").isEmpty());
        assertTrue(browser.find(".change").getLocation().getY() < browser.find("form.replan").getLocation().getY());
        assertTrue(browser.find("input[name=seat][value=bass]").isSelected(), "what was asked stays in sight");
        Axe.assertNoViolations(browser);
        browser.size(320, 740);
        assertTrue(fits(browser));
    }

    @Test
    void whatBecameOfALineIsNotedByKeyboard(Browser browser) {
        planned(browser, "recall");
        browser.find(".recall-line input[value=changed]").sendKeys(Keys.SPACE);
        browser.find(".recall-line input[name$='.why']").clear();
        browser.find(".recall-line input[name$='.why']").sendKeys("the bell swung past it");
        browser.find("form.recall p.actions button").sendKeys(Keys.ENTER);
        browser.until("it says so", () -> !browser.all("#just-done").isEmpty());
        assertEquals("the bell swung past it", browser.find(".recall-line input[name$='.why']").getDomProperty("value"));
        assertTrue(browser.find(".recall-line input[value=changed]").isSelected());
        Axe.assertNoViolations(browser);
    }

    @Test
    void sheetsComeOutOnAHandfulOfLeavesOfEitherPaper(Browser browser) {
        planned(browser, "sheets/all");
        int leaves = browser.all(".leaf").size();
        for (boolean letter : new boolean[] {false, true}) {
            String pdf = new String(browser.pdf(letter), StandardCharsets.ISO_8859_1);
            long pages = LEAF.matcher(pdf).results().count();
            assertTrue(pages >= leaves && pages <= 2L * leaves, pages + " pages for " + leaves + " sheets");
        }
        planned(browser, "recall");
        browser.print();
        assertTrue(browser.find(".recall-line").isDisplayed(), "it is filled in by hand as well");
        assertFalse(browser.find(".recall button").isDisplayed());
    }
}
