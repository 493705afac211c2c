package pairwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** From a sentence to a set-up, as somebody does it at the desk and somebody else with a phone. */
@InBrowser
class AskFlowsTest {
    @Test
    void aSentenceIsAskedAndAnsweredWithTheKeysAlone(Browser browser) {
        browser.open("/").find("body").sendKeys(Keys.TAB);
        WebElement skip = browser.driver().switchTo().activeElement();
        assertEquals("#content", skip.getDomAttribute("href"), "the first key leads past the menu");
        skip.sendKeys(Keys.ENTER);
        browser.driver().switchTo().activeElement().sendKeys(Keys.TAB);
        WebElement field = browser.driver().switchTo().activeElement();
        assertEquals("words", field.getDomAttribute("id"), "the next one into the field");
        field.sendKeys("brushed sn");
        browser.until("suggestions come", () -> "true".equals(field.getDomAttribute("aria-expanded"))
                && browser.find(".suggest [role=option]").getText().startsWith("brushed snare drum"));
        field.sendKeys(Keys.ARROW_DOWN, Keys.ENTER);
        field.sendKeys(", dark", Keys.ENTER);
        browser.until("it is answered", () -> browser.at().startsWith("/?words=") && !browser.all(".option").isEmpty());
        assertTrue(heading(browser).startsWith("Snare drum, brushed, dark"), heading(browser));
    }

    @Test
    void anEditedPartChangesTheAnswerAndItsAddressAndBackAndForwardRestoreBoth(Browser browser) {
        browser.open(EveryKind.PAIRS);
        String first = browser.at();
        String heading = heading(browser);
        String best = options(browser);
        choose(browser, "#source", "trumpet");
        browser.until("the heading follows", () -> heading(browser).startsWith("Trumpet"));
        String second = browser.at();
        assertNotEquals(first, second);
        assertNotEquals(best, options(browser));
        assertTrue(second.contains("source=trumpet"), second);
        browser.until("it is told", () -> !String.valueOf(browser.find("#told").getDomProperty("textContent")).isBlank());
        String asChanged = options(browser);
        choose(browser, "#room", "church");
        browser.until("the room follows", () -> heading(browser).toLowerCase().contains("church"));
        String third = browser.at();
        browser.driver().navigate().back();
        browser.until("the answer before", () -> browser.at().equals(second) && !heading(browser).toLowerCase().contains("church"));
        assertEquals(asChanged, options(browser));
        browser.driver().navigate().back();
        browser.until("the first answer", () -> browser.at().equals(first) && heading(browser).equals(heading));
        assertEquals(best, options(browser));
        assertEquals("snare-drum", browser.find("#source").getDomProperty("value"));
        browser.driver().navigate().forward();
        browser.until("forward again", () -> browser.at().equals(second) && heading(browser).startsWith("Trumpet"));
        assertEquals(asChanged, options(browser));
        browser.open(third);
        assertTrue(heading(browser).toLowerCase().contains("church"), "the address alone brings it back");
    }

    @Test
    void aReasonUnfoldsAndLeadsToItsRuleAndBack(Browser browser) {
        browser.open(EveryKind.PAIRS);
        WebElement reason = browser.find(".option .reasons > li");
        WebElement figures = reason.findElement(By.cssSelector(".figures"));
        assertFalse(figures.isDisplayed());
        reason.findElement(By.tagName("summary")).sendKeys(Keys.ENTER);
        browser.until("its numbers are shown", figures::isDisplayed);
        WebElement rule = reason.findElement(By.cssSelector("a.rule"));
        String name = rule.getText();
        rule.sendKeys(Keys.ENTER);
        browser.until("the rule is shown", () -> browser.at().startsWith("/rules/" + name));
        assertTrue(browser.find("main").getText().contains(name));
        browser.driver().navigate().back();
        browser.until("the answer is back", () -> browser.at().equals(EveryKind.PAIRS) && !browser.all(".option").isEmpty());
    }

    @Test
    void whyNotIsAnsweredBesideTheQuestion(Browser browser) {
        browser.open(EveryKind.PAIRS);
        new Select(browser.find("#why-not-type")).selectByValue("long-ribbon");
        browser.find(".why-not button").click();
        browser.until("it is said", () -> !browser.all("#why-not .says").isEmpty());
        assertEquals(EveryKind.PAIRS, browser.at());
        assertFalse(browser.find("#why-not .says").getText().isBlank());
        Axe.assertNoViolations(browser);
    }

    @Test
    void aMoveAgainstWhatIsHeardIsFollowedToItsSetUp(Browser browser) {
        browser.open(EveryKind.PAIRS);
        new Select(browser.find("form.heard select")).selectByValue("boxy");
        browser.find("form.heard button").click();
        browser.until("moves are named", () -> !browser.all(".option .ask-moves > li").isEmpty());
        Axe.assertNoViolations(browser);
        WebElement link = browser.find(".option .ask-moves .actions a");
        String change = browser.find(".option .ask-moves .move-change").getText();
        assertFalse(change.isBlank());
        link.click();
        browser.until("the set-up after the move is shown", () -> browser.at().startsWith("/moves?") && browser.at().contains("mic="));
        assertTrue(browser.all(".option .pictures .drawing").size() >= 2, "from above and from the side");
        browser.driver().findElement(By.linkText("Back to the answer")).click();
        browser.until("back at the answer", () -> browser.at().startsWith("/?") && !browser.all(".option").isEmpty());
    }

    @Test
    void withoutScriptEverythingIsAskedAllTheSame(Browser browser) {
        browser.withoutScript();
        browser.open("/");
        browser.find("#words").sendKeys("tenor saxophone, dark", Keys.ENTER);
        browser.until("it is answered", () -> !browser.all(".option").isEmpty());
        new Select(browser.find("#room")).selectByValue("church");
        browser.find(".parts-send button").click();
        browser.until("the part is changed", () -> heading(browser).toLowerCase().contains("church"));
        new Select(browser.find("#why-not-type")).selectByValue("long-ribbon");
        browser.find(".why-not button").click();
        browser.until("why not has a page", () -> browser.at().startsWith("/why-not?") && !browser.all(".says").isEmpty());
        browser.driver().navigate().back();
        browser.find("form.heard button").click();
        browser.until("moves have a page", () -> browser.at().startsWith("/moves?"));
    }

    @Test
    void onAPhoneTheFirstOptionIsNearTheTopAndThePartsAreFoldedUntilTheyAreWanted(Browser browser) {
        browser.size(360, 740);
        browser.open(EveryKind.DANGERS);
        assertFalse(browser.find("#source").isDisplayed());
        assertTrue(browser.find(".option").getLocation().getY() < 740, "the first option is at " + browser.find(".option").getLocation().getY());
        browser.find("#parts-fold > summary").click();
        browser.until("the parts unfold", () -> browser.find("#source").isDisplayed());
        choose(browser, "#source", "cello");
        browser.until("the answer follows", () -> heading(browser).startsWith("Cello"));
        assertTrue(browser.find("#source").isDisplayed(), "and they stay as they were left");
    }

    @Test
    void onAPhoneThePartsStayOpenWhereTheSourceIsToBeChosen(Browser browser) {
        browser.size(360, 740);
        browser.open("/?words=blorp+fnord");
        assertTrue(browser.find("#source").isDisplayed());
    }

    @Test
    void onADeskTheOptionsStandBesideEachOtherAndTheirDrawingsOnOneLine(Browser browser) {
        browser.size(1400, 900);
        browser.open(EveryKind.PAIRS);
        for (String part : List.of(".option", ".option-head + .pictures", ".option-why")) {
            Object tops = browser.js("Array.from(new Set(Array.from(document.querySelectorAll(arguments[0]),"
                    + " one => Math.round(one.getBoundingClientRect().top)))).length", part);
            assertEquals(1L, tops, part);
        }
        assertEquals(3, browser.all(".option").size());
    }

    @Test
    void numbersAreWrittenAsTheReaderWritesThemAndInFeetWhereThatIsChosen(Browser browser) {
        browser.language("de-DE,de;q=0.9");
        browser.open(EveryKind.PAIRS);
        assertTrue(browser.find(".option .score").getText().matches("(?s)\\s*\\d+,\\d+.*"), browser.find(".option .score").getText());
        browser.language("en-GB");
        browser.open(EveryKind.PAIRS).find("[data-measures=imperial]").click();
        browser.until("inches", () -> browser.find(".set-lines").getText().matches("(?s).*\\d(/\\d)? in.*"));
        choose(browser, "#source", "trumpet");
        browser.until("the answer follows", () -> heading(browser).startsWith("Trumpet"));
        assertTrue(browser.at().contains("units=imperial"), browser.at());
        assertFalse(browser.find(".set-lines").getText().matches("(?s).*\\d c?m\\b.*"), browser.find(".set-lines").getText());
    }

    private static void choose(Browser browser, String select, String value) {
        // only what a person did on a page is kept by the browser for going back
        browser.find("h1").click();
        new Select(browser.find(select)).selectByValue(value);
    }

    private static String heading(Browser browser) {
        return (String) browser.js("document.querySelector('h1').textContent");
    }

    private static String options(Browser browser) {
        return (String) browser.js("Array.from(document.querySelectorAll('.option > h2'), one => one.textContent).join('; ')");
    }
}
