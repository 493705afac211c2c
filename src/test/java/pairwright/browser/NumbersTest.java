package pairwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** Worked numbers while somebody types. */
@InBrowser
class NumbersTest {
    @Test
    void aChangedNumberIsWorkedAtOnceAndTheAddressFollows(Browser browser) {
        browser.open("/numbers/delay");
        WebElement distance = browser.find("#in-distanceM");
        distance.clear();
        distance.sendKeys("80 cm");
        browser.until("the answer follows", () -> browser.find("[data-says]").getText().startsWith("Over 0.8 m sound takes 2.33 ms"));
        assertTrue(browser.at().contains("distanceM=80+cm"), browser.at());
        assertEquals("in-distanceM", browser.driver().switchTo().activeElement().getDomAttribute("id"));
        browser.until("it is said", () -> browser.find("#worked-said").getDomProperty("textContent").startsWith("Over 0.8 m"));
        browser.open(browser.at());
        assertEquals("80 cm", browser.find("#in-distanceM").getDomProperty("value"));
        assertTrue(browser.find("[data-says]").getText().startsWith("Over 0.8 m"));
    }

    @Test
    void nonsenseIsSaidAtItsFieldAndGoneWhenItIsMended(Browser browser) {
        browser.open("/numbers/delay");
        WebElement distance = browser.find("#in-distanceM");
        distance.clear();
        distance.sendKeys("far");
        browser.until("the fault stands at the field", () -> browser.find("#fault-distanceM").isDisplayed());
        assertEquals("true", distance.getDomAttribute("aria-invalid"));
        assertEquals("far", distance.getDomProperty("value"));
        distance.clear();
        distance.sendKeys("2");
        browser.until("the fault is gone", () -> !browser.find("#fault-distanceM").isDisplayed() && browser.find("[data-says]").getText().startsWith("Over 2 m"));
        assertEquals(null, distance.getDomAttribute("aria-invalid"));
    }

    @Test
    void oneStepBackLeavesThePageHoweverMuchWasTyped(Browser browser) {
        browser.open("/numbers");
        browser.find("a[href='/numbers/delay']").click();
        browser.until("the calculation", () -> !browser.all("#in-distanceM").isEmpty());
        browser.find("#in-distanceM").sendKeys("0");
        browser.until("worked", () -> browser.at().contains("distanceM=10"));
        browser.find("#in-distanceM").sendKeys(Keys.BACK_SPACE);
        browser.until("worked again", () -> browser.at().contains("distanceM=1&"));
        browser.driver().navigate().back();
        browser.until("the list", () -> browser.at().equals("/numbers"));
    }

    @Test
    void withoutScriptTheButtonDoesTheSame(Browser browser) {
        browser.withoutScript();
        browser.open("/numbers/delay");
        browser.find("#in-distanceM").clear();
        browser.find("#in-distanceM").sendKeys("3 ft");
        browser.find(".number-form button").click();
        browser.until("the answer", () -> browser.find("[data-says]").getText().startsWith("Over 0.914 m"));
    }

    @Test
    void nothingKeepsPeopleOut(Browser browser) {
        browser.open("/numbers");
        Axe.assertNoViolations(browser);
        for (String address : new String[] {"comb", "stand-stability", "exposure?levelDba=x", "proximity?units=imperial"}) {
            browser.open("/numbers/" + address);
            Axe.assertNoViolations(browser);
            browser.dark();
            Axe.assertNoViolations(browser);
            browser.light();
        }
    }

    @Test
    void nothingIsWiderThanASmallPhone(Browser browser) {
        browser.size(320, 800);
        for (String address : new String[] {"", "/comb", "/stand-stability", "/recording-angle", "/exposure?levelDba=" + "9".repeat(80)}) {
            browser.open("/numbers" + address);
            assertTrue((Boolean) browser.js("document.documentElement.scrollWidth <= 320"), address + " is " + browser.js("document.documentElement.scrollWidth"));
        }
    }
}
