package pairwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** What the locker covers, in a browser. */
@InBrowser
class CoverageTest {
    @Test
    void itComesByItselfAndIsFilteredByKeyboard(Browser browser) {
        browser.open("/locker/coverage");
        browser.until("it is worked out without a click", () -> !browser.all("table.served").isEmpty());
        assertTrue(browser.all("progress").isEmpty());
        assertTrue(browser.all("figure svg").stream().anyMatch(picture -> picture.getSize().getWidth() > 200));
        Axe.assertNoViolations(browser);
        browser.find(".lead a[href*='served=not-at-all']").sendKeys(Keys.ENTER);
        browser.until("only those are there", () -> browser.at().contains("served=not-at-all") && !browser.all("table.served").isEmpty());
        assertEquals("not-at-all", browser.find("#served").getDomProperty("value"));
        assertTrue(browser.all("table.served .verdict").stream().allMatch(word -> word.getText().equals("Not at all")));
        browser.find("table.served th a").sendKeys(Keys.ENTER);
        browser.until("its answer is there", () -> browser.at().startsWith("/?source="));
        assertTrue(browser.all(".fault").isEmpty(), browser.find("main").getText());
    }

    @Test
    void withoutScriptALinkLooksAgain(Browser browser) {
        browser.withoutScript();
        browser.open("/locker/coverage?locker=free&from=2031-03-02T10:00&until=2031-03-02T12:00");
        for (int looks = 0; browser.all("table.served").isEmpty() && looks < 600; looks++) {
            browser.find("main #coverage a.button").click();
        }
        assertFalse(browser.all("table.served").isEmpty());
        assertTrue(browser.find(".looked").getText().startsWith("Only what is free"), browser.find(".looked").getText());
    }
}
