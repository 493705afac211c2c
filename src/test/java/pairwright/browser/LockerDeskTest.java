package pairwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The desk with a scanner, which types and presses Enter and never touches the mouse. */
@InBrowser
class LockerDeskTest {
    @Test
    void threeUnitsGoOutAndComeBackOneAfterTheOther(Browser browser) {
        browser.open("/locker/desk?by=Cleo");
        scan(browser, "rack-a-1");
        browser.until("the end is asked for", () -> !browser.all("#told").isEmpty());
        assertTrue(browser.find("#told").getText().contains("say when it comes back"), browser.find("#told").getText());
        scan(browser, "rack-a-1");
        browser.until("the first is out", () -> says(browser).startsWith("Rack A 1 is out with Cleo, on loan; due back "));
        scan(browser, "Tall stand 1");
        browser.until("the second is out", () -> says(browser).startsWith("Tall stand 1 is out with Cleo"));
        scan(browser, "LIFT-1");
        browser.until("the third is out", () -> says(browser).startsWith("Lift 1 is out with Cleo"));
        assertTrue(browser.find("table.out-now").getText().contains("Tall stand 1"));
        Axe.assertNoViolations(browser);
        browser.find(".ways a:not([aria-current])").sendKeys(Keys.ENTER);
        browser.until("units come back", () -> browser.find("form#desk button").getText().equals("Bring back"));
        for (String label : List.of("Rack A 1", "Tall stand 1", "Lift 1")) {
            scan(browser, label);
            browser.until(label + " is back", () -> says(browser).equals(label + " is back from Cleo."));
        }
        scan(browser, "Lift 1");
        browser.until("it is not out", () -> !browser.all("#told").isEmpty());
        assertEquals("Lift 1", browser.js("getSelection().toString() || document.activeElement.value.substring(document.activeElement.selectionStart, document.activeElement.selectionEnd)"),
                "what was scanned is chosen, so that the next scan takes its place");
        Axe.assertNoViolations(browser);
    }

    @Test
    void withoutScriptTheFieldIsReadyAsWell(Browser browser) {
        browser.withoutScript();
        browser.open("/locker/desk?way=back");
        scan(browser, "no such tag");
        browser.until("it is told", () -> !browser.all("#told").isEmpty());
        assertTrue(browser.find("#told").getText().contains("\u201cno such tag\u201d"), browser.find("#told").getText());
        assertEquals("scanned", focused(browser).getDomAttribute("id"));
    }

    /** Into whatever has the focus, as a scanner does. */
    private static void scan(Browser browser, String text) {
        browser.until("the field is ready", () -> "scanned".equals(focused(browser).getDomAttribute("id")));
        focused(browser).sendKeys(text, Keys.ENTER);
    }

    private static String says(Browser browser) {
        return browser.all("#just-done").stream().map(WebElement::getText).findFirst().orElse("");
    }

    private static WebElement focused(Browser browser) {
        return browser.driver().switchTo().activeElement();
    }
}
