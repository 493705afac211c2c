package pairwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** What to buy next, in a browser. */
@InBrowser
class BuyTest {
    /** Every plan is searched anew for every type: on a busy machine that takes longer than a page may. */
    private static final int MOST_WAITS = 12;

    private static void worked(Browser browser, BooleanSupplier ready) {
        for (int waits = 1; ; waits++) {
            try {
                browser.until("it is worked out", ready);
                return;
            } catch (org.openqa.selenium.TimeoutException late) {
                if (waits == MOST_WAITS) {
                    throw late;
                }
            }
        }
    }

    @Test
    void itComesByItselfAndTheBudgetIsChangedByKeyboard(Browser browser) {
        browser.open("/sessions");
        browser.find("a[href^='/sessions/buy']").sendKeys(Keys.ENTER);
        browser.until("it is open", () -> browser.at().startsWith("/sessions/buy"));
        browser.find("input[name=budget]").sendKeys(Keys.chord(Keys.CONTROL, "a"), "0", Keys.ENTER);
        browser.until("it is asked for with nothing to spend", () -> browser.at().contains("budget=0"));
        worked(browser, () -> !browser.all("#buy .lead").isEmpty());
        assertTrue(browser.all("progress").isEmpty());
        assertTrue(browser.find("#buy .lead").getText().startsWith("With nothing to spend nothing is bought"), browser.find("#buy").getText());
        assertTrue(browser.all("figure svg").isEmpty(), "there is no curve of nothing");
        Axe.assertNoViolations(browser);
        browser.open("/sessions/buy?budget=1&tier=1");
        worked(browser, () -> !browser.all("#buy .lead").isEmpty());
        assertEquals("1", browser.find("input[name=budget]").getDomProperty("value"));
        assertFalse(browser.all("a[href^='/sessions/" + Barn.SESSION + "']").isEmpty(), browser.find("#buy").getText());
        Axe.assertNoViolations(browser);
        for (int width : new int[] {320, 800}) {
            browser.size(width, 740);
            assertTrue((Boolean) browser.js("document.documentElement.scrollWidth <= innerWidth"), width + " pixels");
            assertTrue(browser.all("caption").stream().allMatch(caption -> caption.getSize().getWidth() > 200), "no column of single words at " + width);
        }
    }

    @Test
    void withoutScriptALinkLooksAgain(Browser browser) {
        browser.withoutScript();
        browser.open("/sessions/buy?budget=0&tier=2");
        for (int looks = 0; browser.all("#buy .lead").isEmpty() && looks < 600; looks++) {
            browser.find("#buy a.button").click();
        }
        assertFalse(browser.all("#buy .lead").isEmpty());
    }
}
