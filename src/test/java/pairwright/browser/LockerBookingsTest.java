package pairwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;

/** Bookings by keyboard, in a browser. */
@InBrowser
class LockerBookingsTest {
    private static final String TIME = "from=" + LocalDate.now().plusDays(40) + "T10:00&until=" + LocalDate.now().plusDays(40) + "T14:00";

    @Test
    void aMonthOf31DaysFitsALaptopAndScrollsWithinItselfOnAPhone(Browser browser) {
        browser.size(1100, 900);
        browser.open("/locker/month?month=2026-12");
        assertTrue(number(browser, "document.querySelector('.scroll').scrollWidth - document.querySelector('.scroll').clientWidth") <= 0, "no day is cut");
        assertTrue(number(browser, "document.querySelector('.heat tbody th').getBoundingClientRect().width") >= 180, "a type has room for its name");
        Axe.assertNoViolations(browser);
        browser.size(380, 800);
        assertTrue(number(browser, "document.querySelector('.scroll').scrollWidth - document.querySelector('.scroll').clientWidth") > 0);
        assertTrue(number(browser, "document.documentElement.scrollWidth - window.innerWidth") <= 0, "the page itself stays where it is");
    }

    @Test
    void boxesToTickAreOnPaperAlone(Browser browser) {
        browser.open("/locker");
        String shown = "getComputedStyle(document.querySelector('.units td.tick-box')).display";
        assertEquals("none", browser.js(shown));
        browser.print();
        assertEquals("table-cell", browser.js(shown));
        assertEquals("table-cell", browser.js("getComputedStyle(document.querySelector('.units td.on-paper')).display"));
    }

    private static int number(Browser browser, String expression) {
        return ((Number) browser.js("Math.ceil(" + expression + ")")).intValue();
    }

    @Test
    void unitsAreBookedAlteredAndCancelledByKeyboardAlone(Browser browser) {
        browser.open("/locker/units/yard-vocal-1");
        press(browser, "a[href='/locker/bookings/new?unit=yard-vocal-1']");
        browser.until("the form is there with the unit", () -> browser.at().contains("unit=yard-vocal-1") && browser.find("#tick-yard-vocal-1").isSelected());
        browser.open("/locker/bookings/new?unit=yard-vocal-1&" + TIME);
        browser.find("#for").sendKeys("Singers by key", Keys.ENTER);
        browser.until("what is free then is shown, and nothing booked", () -> browser.at().contains("Singers"));
        assertEquals("Singers by key", browser.find("#for").getDomProperty("value"));
        assertTrue(browser.find("#tick-yard-vocal-1").isSelected());
        browser.find("#tick-lift-1").sendKeys(Keys.SPACE);
        press(browser, "form#booking > .actions:last-child button");
        browser.until("it is booked", () -> browser.at().endsWith("?done=booked"));
        assertEquals("Singers by key", browser.find("h1").getText());
        assertTrue(browser.find("main").getText().contains("Lift 1"));
        String booking = browser.at().replaceFirst("\\?.*", "");
        Axe.assertNoViolations(browser);

        press(browser, "a[href$='/alter']");
        browser.until("the form is there", () -> !browser.all("#note").isEmpty());
        browser.find("#tick-lift-1").sendKeys(Keys.SPACE);
        browser.find("#note").sendKeys("No lift");
        press(browser, "form#booking > .actions:last-child button");
        browser.until("it was altered", () -> browser.at().endsWith("?done=altered"));
        assertFalse(browser.find("main table").getText().contains("Lift 1"));
        press(browser, "a[href$='/cancel']");
        browser.until("it asks", () -> browser.at().endsWith("/cancel"));
        press(browser, "form#cancel button");
        browser.until("it is cancelled", () -> browser.at().equals("/locker/bookings?done=cancelled"));
        browser.open(booking);
        assertTrue(browser.find("h1").getText().endsWith("is not there any more"), browser.find("h1").getText());
        Axe.assertNoViolations(browser);
    }

    @Test
    void whatSomebodyElseTookMeanwhileIsToldAndNothingTypedIsLost(Browser browser) {
        String address = "/locker/bookings/new?unit=yard-vocal-1&unit=lift-1&" + TIME.replace("T10", "T05").replace("T14", "T09");
        browser.open(address);
        String first = browser.driver().getWindowHandle();
        browser.driver().switchTo().newWindow(WindowType.TAB);
        browser.open(address).find("#for").sendKeys("Who is first");
        press(browser, "form#booking > .actions:last-child button");
        browser.until("the other has it", () -> browser.at().endsWith("?done=booked"));
        String taken = browser.at().replaceFirst("\\?.*", "");
        browser.driver().close();
        browser.driver().switchTo().window(first);
        browser.find("#for").sendKeys("Who is second");
        browser.find("#note").sendKeys("Please keep");
        press(browser, "form#booking > .actions:last-child button");
        browser.until("what is wrong is told", () -> !browser.all(".form-faults").isEmpty());
        assertEquals("booking-faults", browser.driver().switchTo().activeElement().getDomAttribute("id"), "whoever reads on comes to what is wrong first");
        assertEquals("Who is second", browser.find("#for").getDomProperty("value"));
        assertEquals("Please keep", browser.find("#note").getDomProperty("value"));
        assertTrue(browser.find("#tick-lift-1").isSelected() && browser.find("#tick-yard-vocal-1").isSelected());
        assertTrue(browser.find("section.around a").getDomAttribute("href").endsWith(taken), browser.find("section.around").getText());
        Axe.assertNoViolations(browser);
        browser.dark();
        Axe.assertNoViolations(browser);
        browser.light();
        browser.size(320, 740);
        assertTrue((Boolean) browser.js("document.documentElement.scrollWidth <= innerWidth"), "it fits a small phone");
        browser.size(1280, 900);
        press(browser, ".nearest a");
        browser.until("the time is in the form", () -> browser.all("section.around").isEmpty());
        assertEquals("Who is second", browser.find("#for").getDomProperty("value"));
        press(browser, "form#booking > .actions:last-child button");
        browser.until("it is booked", () -> browser.at().endsWith("?done=booked"));
    }

    private static void press(Browser browser, String css) {
        WebElement control = browser.find(css);
        control.sendKeys(Keys.ENTER);
    }
}
