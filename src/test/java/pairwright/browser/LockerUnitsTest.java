package pairwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** Units by keyboard, in a browser. */
@InBrowser
class LockerUnitsTest {
    @Test
    void aUnitIsAddedAlteredAndSeenByKeyboardAlone(Browser browser) {
        browser.open("/locker");
        press(browser, "main a.button.main");
        browser.until("the kinds are there", () -> browser.at().equals("/locker/units/new"));
        press(browser, "a[href$='kind=pad']");
        browser.until("the form is there", () -> !browser.all("#label").isEmpty());
        browser.find("#label").sendKeys("Pad by key", Keys.ENTER);
        browser.until("what is wrong is told", () -> !browser.all(".form-faults").isEmpty());
        assertEquals("unit-faults", focused(browser).getDomAttribute("id"), "whoever reads on comes to what is wrong first");
        focused(browser).sendKeys(Keys.TAB);
        focused(browser).sendKeys(Keys.ENTER);
        browser.until("the link leads to its field", () -> browser.at().endsWith("#pad-lossDb"));
        assertEquals("Pad by key", browser.find("#label").getDomProperty("value"), "what was typed is kept");
        browser.find("#pad-lossDb").sendKeys("20", Keys.ENTER);
        browser.until("it is there", () -> browser.at().startsWith("/locker/units/pad-by-key"));
        assertEquals("Pad by key", browser.find("h1").getText());
        press(browser, "a[href$='/alter']");
        browser.until("the form is there", () -> !browser.all("#storedAt").isEmpty());
        browser.find("#storedAt").sendKeys("Top drawer", Keys.ENTER);
        browser.until("it was altered", () -> browser.at().endsWith("?done=altered"));
        assertTrue(browser.find("main").getText().contains("Top drawer"));
        browser.driver().navigate().refresh();
        assertTrue(browser.find(".events").getText().lines().filter(line -> line.contains("Altered")).count() == 1, browser.find(".events").getText());
        browser.open("/locker?words=drawer");
        assertEquals(1, browser.all("table.units tbody tr").size());
    }

    @Test
    void aFileGoesIntoTheFieldAndOneThatIsNoTextIsRefused(Browser browser, @TempDir Path folder) throws IOException {
        Path table = Files.writeString(folder.resolve("units.csv"), "kind,label,lossDb\npad,Grüner Dämpfer,10\n");
        Path other = Files.write(folder.resolve("other.csv"), new byte[] {'a', (byte) 0xfc, 'b'});
        browser.open("/locker/import").find("#file").sendKeys(other.toString());
        browser.until("it says why not", () -> browser.find("#file-said").getText().contains("not in UTF-8"));
        browser.find("#file").sendKeys(table.toString());
        browser.until("the table is in its field", () -> browser.find("#table").getDomProperty("value").contains("Grüner Dämpfer"));
        assertEquals("", browser.find("#file-said").getText());
        browser.find("form#look button").click();
        browser.until("what it would do is seen", () -> !browser.all("#would").isEmpty());
        assertTrue(browser.find("#would").getText().contains("1 new, 0 changed"), browser.find("#would").getText());
        Axe.assertNoViolations(browser);
        browser.withoutScript();
        assertTrue(browser.open("/locker/import").all(".file").stream().noneMatch(WebElement::isDisplayed), "a button that does nothing is not shown");
    }

    private static void press(Browser browser, String css) {
        browser.find(css).sendKeys(Keys.ENTER);
    }

    private static WebElement focused(Browser browser) {
        return browser.driver().switchTo().activeElement();
    }
}
