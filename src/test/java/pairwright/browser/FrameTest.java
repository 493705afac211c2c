package pairwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** What is around every page: the menu, the measures, the light. */
@InBrowser
class FrameTest {
    @Test
    void theFirstKeyLeadsPastTheMenuToTheContent(Browser browser) {
        browser.open("/guide").find("body").sendKeys(Keys.TAB);
        assertEquals("#content", browser.driver().switchTo().activeElement().getDomAttribute("href"));
        browser.driver().switchTo().activeElement().sendKeys(Keys.ENTER);
        browser.until("the content has the focus", () -> browser.driver().switchTo().activeElement().getDomAttribute("id").equals("content"));
    }

    @Test
    void theMenuSaysWhereOneIs(Browser browser) {
        assertEquals("Guide", browser.open("/guide").find("nav [aria-current=page]").getText());
    }

    @Test
    void chosenMeasuresAreKept(Browser browser) {
        browser.open("/guide?x=1").find("[data-measures=imperial]").click();
        browser.until("the address says the measures", () -> browser.at().equals("/guide?x=1&units=imperial"));
        browser.open("/guide");
        browser.until("the measures are those of the last time", () -> browser.at().equals("/guide?units=imperial"));
        browser.find("[data-measures=metric]").click();
        browser.until("metres again", () -> browser.at().equals("/guide"));
        browser.open("/guide");
        assertEquals("/guide", browser.at());
    }

    @Test
    void chosenLightIsKeptAndNeverJumps(Browser browser) {
        browser.open("/guide");
        String light = background(browser);
        browser.find("[data-theme-choice=dark]").click();
        String dark = background(browser);
        assertFalse(light.equals(dark));
        browser.open("/guide");
        assertEquals(dark, background(browser));
        assertEquals("true", browser.find("[data-theme-choice=dark]").getDomAttribute("aria-pressed"));
        browser.find("[data-theme-choice=auto]").click();
        assertEquals(light, background(browser));
        browser.dark();
        assertEquals(dark, background(browser));
    }

    @Test
    void withoutScriptTheMeasuresCanBeChosenAndNoButtonIsShownThatDoesNothing(Browser browser) {
        browser.withoutScript();
        browser.open("/guide");
        assertFalse(browser.find(".theme").isDisplayed());
        browser.find("[data-measures=imperial]").click();
        assertTrue(browser.at().endsWith("units=imperial"), browser.at());
    }

    @Test
    void nobodyIsKeptOut(Browser browser) {
        browser.open("/guide");
        Axe.assertNoViolations(browser);
        browser.dark();
        Axe.assertNoViolations(browser);
    }

    private static String background(Browser browser) {
        return (String) browser.js("getComputedStyle(document.body).backgroundColor");
    }
}
